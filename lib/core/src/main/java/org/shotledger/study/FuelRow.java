package org.shotledger.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.shotledger.budget.Limit;
import org.shotledger.wetkit.FuelCircuit.FuelFlow;

/**
 * The fuel settings that can be gone through in one sweep: every jet of one circuit, or of all circuits whose flow does not
 * depend on the plenum pressure.
 */
final class FuelRow {
    final long[] offsets;
    /** Fuel flow at the reference pressure, kg/s. */
    final double[] flow;

    final double lowest;
    final double highest;
    /** Flow at a plenum pressure over that at the reference; null where it is always 1. */
    final DoubleUnaryOperator share;

    private final List<KitTable.Circuit> circuits;
    private final int[] circuit;
    private final int[] jet;

    private FuelRow(List<KitTable.Circuit> circuits, double reference, boolean steady) {
        this.circuits = circuits;
        int length = circuits.stream().mapToInt(c -> c.jets().length).sum();
        offsets = new long[length];
        flow = new double[length];
        circuit = new int[length];
        jet = new int[length];
        int at = 0;
        for (int c = 0; c < circuits.size(); c++) {
            for (int j = 0; j < circuits.get(c).jets().length; j++) {
                offsets[at] = circuits.get(c).offsets()[j];
                flow[at] = circuits.get(c).flow(j, reference).massFlow();
                circuit[at] = c;
                jet[at] = j;
                at++;
            }
        }
        lowest = java.util.Arrays.stream(flow).min().orElseThrow();
        highest = java.util.Arrays.stream(flow).max().orElseThrow();
        share = steady ? null : circuits.get(0).share(reference);
    }

    static List<FuelRow> of(List<KitTable.Circuit> circuits, double low, double high) {
        List<FuelRow> rows = new ArrayList<>();
        List<KitTable.Circuit> steady =
                circuits.stream().filter(c -> c.steady(low, high)).toList();
        if (!steady.isEmpty()) {
            rows.add(new FuelRow(steady, high, true));
        }
        circuits.stream().filter(c -> !steady.contains(c)).forEach(c -> rows.add(new FuelRow(List.of(c), high, false)));
        return rows;
    }

    int length() {
        return flow.length;
    }

    double share(double plenum) {
        return share == null ? 1 : share.applyAsDouble(plenum);
    }

    DoubleUnaryOperator shares() {
        return share == null ? any -> 1 : share;
    }

    /**
     * The closest of the limits that the fuel settings answer for, at the lowest and the highest of some plenum pressures: with
     * one of them the pump works hardest, whichever way the regulator is referenced.
     */
    Kit kit(double[] plenums, java.util.function.ToIntFunction<String> number) {
        Kit kit = new Kit(new double[flow.length], new int[flow.length], new boolean[flow.length]);
        double low = java.util.Arrays.stream(plenums).min().orElseThrow();
        double high = java.util.Arrays.stream(plenums).max().orElseThrow();
        java.util.Arrays.fill(kit.margins, Double.POSITIVE_INFINITY);
        for (int i = 0; i < flow.length; i++) {
            add(kit, i, high, number);
            if (low < high) {
                add(kit, i, low, number);
            }
        }
        return kit;
    }

    private void add(Kit kit, int i, double plenum, java.util.function.ToIntFunction<String> number) {
        FuelFlow passed = circuits.get(circuit[i]).flow(jet[i], plenum);
        Limit closest = circuits.get(circuit[i]).closest(jet[i], passed);
        kit.limited[i] |= passed.pumpLimited();
        if (closest.relativeMargin() < kit.margins[i]) {
            kit.margins[i] = closest.relativeMargin();
            kit.keys[i] = number.applyAsInt(closest.key());
        }
    }

    /**
     * What the fuel settings of a row answer for.
     *
     * @param margins smallest margin of fuel pump and fuel solenoid
     * @param keys number of that limit
     * @param limited whether the pump cannot hold the regulated pressure
     */
    @SuppressWarnings("ArrayRecordComponent") // columns of a table, read only and never compared
    record Kit(double[] margins, int[] keys, boolean[] limited) {}
}
