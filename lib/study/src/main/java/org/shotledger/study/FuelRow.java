package org.shotledger.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToIntFunction;
import org.shotledger.budget.Limit;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;

/**
 * The fuel settings that can be gone through in one sweep: every jet of one circuit, or of all circuits whose flow does not
 * depend on the plenum pressure.
 */
final class FuelRow {
    final long[] offsets;
    /** Fuel flow at the reference pressure, kg/s, ascending. */
    final double[] flow;

    final double lowest;
    final double highest;
    /** Flow at a plenum pressure over that at the reference; null where it is always 1. */
    final DoubleUnaryOperator share;

    private final List<KitTable.Circuit> circuits;
    private final int[] circuit;
    private final int[] jet;

    private record Place(int circuit, int jet, double flow) {}

    private FuelRow(List<KitTable.Circuit> circuits, double reference, boolean steady) {
        this.circuits = circuits;
        List<Place> settings = new ArrayList<>();
        for (int c = 0; c < circuits.size(); c++) {
            for (int j = 0; j < circuits.get(c).jets().length; j++) {
                settings.add(new Place(c, j, circuits.get(c).flow(j, reference).massFlow()));
            }
        }
        settings.sort(Comparator.comparingDouble(Place::flow));
        offsets = settings.stream()
                .mapToLong(s -> circuits.get(s.circuit).offsets()[s.jet])
                .toArray();
        flow = settings.stream().mapToDouble(Place::flow).toArray();
        circuit = settings.stream().mapToInt(Place::circuit).toArray();
        jet = settings.stream().mapToInt(Place::jet).toArray();
        lowest = flow[0];
        highest = flow[flow.length - 1];
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

    /** What the settings answer for between two plenum pressures. */
    KitMargins kit(Scale plenum, ToIntFunction<String> number) {
        double[][] margins = new double[KitMargins.NODES][flow.length];
        int[][] keys = new int[KitMargins.NODES][flow.length];
        boolean[][] limited = new boolean[KitMargins.NODES][flow.length];
        for (int node = 0; node < KitMargins.NODES; node++) {
            for (int i = 0; i < flow.length; i++) {
                KitTable.Circuit of = circuits.get(circuit[i]);
                FuelFlow passed = of.flow(jet[i], KitMargins.pressure(plenum, node));
                Limit closest = of.closest(jet[i], passed);
                margins[node][i] = closest.relativeMargin();
                keys[node][i] = number.applyAsInt(closest.key());
                limited[node][i] = passed.pumpLimited();
            }
        }
        return new KitMargins(plenum, margins, keys, limited);
    }
}
