package org.shotledger.supply;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.shotledger.curve.Bracket;
import org.shotledger.curve.Curve;
import org.shotledger.units.Require;

/**
 * Pumps side by side or one after the other, fed through the same wiring.
 *
 * @param name what it is called
 * @param pumps at least one
 * @param arrangement how they are joined
 * @param wiringResistance of feed and return of each pump, ohm, 0 to 1
 */
public record PumpGroup(String name, List<Pump> pumps, Arrangement arrangement, double wiringResistance) {
    /** More than any pump here passes, m3/s: where the search for the flow of pumps in a row begins. */
    private static final double MOST_FLOW = 0.02;
    /** Share of a range to which a flow or a pressure is found. */
    private static final double CLOSE = 1e-15;

    /** How pumps are joined. */
    public enum Arrangement {
        /** Side by side: flows add at one pressure. */
        PARALLEL,
        /** One after the other: pressures add at one flow. */
        SERIES
    }

    public PumpGroup {
        Require.named("pump group", name);
        if (pumps.isEmpty()) {
            throw new IllegalArgumentException("The pump group " + name + " has no pump; give one.");
        }
        pumps = List.copyOf(pumps);
        Require.given("arrangement of " + name, arrangement);
        Require.within("wiring resistance of " + name, wiringResistance, 0, 1, "ohm");
    }

    /**
     * Flow of the group against a pressure.
     *
     * @param rise pressure rise over the group, Pa
     * @param supplyVoltage where the wiring begins, V
     * @return m3/s
     */
    public double flow(double rise, double supplyVoltage) {
        return switch (arrangement) {
            case PARALLEL -> sideBySide(rise, supplyVoltage);
            case SERIES -> inSeries(rise, supplyVoltage);
        };
    }

    /**
     * What the group can pass at any pressure rise: nothing beyond the pressure at which its table ends, and no more than
     * the table's first row below it. Pumps in a row share the rise, so theirs ends at the sum of their tables' ends.
     *
     * @param rise pressure rise wanted, Pa
     * @param supplyVoltage before the wiring, V
     * @return m3/s
     */
    public double capacity(double rise, double supplyVoltage) {
        return rise > end(Curve::high) ? 0 : flow(Math.max(rise, end(Curve::low)), supplyVoltage);
    }

    /** An end of the pressure rises that the tables cover. */
    private double end(ToDoubleFunction<Curve> of) {
        return switch (arrangement) {
            case PARALLEL -> of.applyAsDouble(pumps.get(0).lines().get(0).flow());
            case SERIES ->
                pumps.stream()
                        .mapToDouble(
                                pump -> of.applyAsDouble(pump.lines().get(0).flow()))
                        .sum();
        };
    }

    /**
     * Voltage left at a pump after the wiring, {@code U = U_supply - R I(U)}.
     *
     * @param pump one of the pumps
     * @param rise pressure rise over that pump, Pa
     * @param supplyVoltage where the wiring begins, V
     * @return V
     */
    public double terminalVoltage(Pump pump, double rise, double supplyVoltage) {
        double voltage = supplyVoltage;
        for (int i = 0; i < 30; i++) {
            double held = Math.min(Math.max(voltage, pump.lowestVoltage()), pump.highestVoltage());
            double next = supplyVoltage - wiringResistance * pump.current(rise, held);
            if (Math.abs(next - voltage) < 1e-9) {
                break;
            }
            voltage = next;
        }
        return voltage;
    }

    private double sideBySide(double rise, double supplyVoltage) {
        double sum = 0;
        for (Pump pump : pumps) {
            sum += pump.flow(rise, terminalVoltage(pump, rise, supplyVoltage));
        }
        return sum;
    }

    /** The flow at which the pressures of all pumps add up to the rise. */
    private double inSeries(double rise, double supplyVoltage) {
        return Bracket.edge(flow -> seriesRise(flow, supplyVoltage) > rise, 0, MOST_FLOW, CLOSE * MOST_FLOW)
                .inside();
    }

    private double seriesRise(double flow, double supplyVoltage) {
        double sum = 0;
        for (Pump pump : pumps) {
            sum += riseAt(pump, flow, supplyVoltage);
        }
        return sum;
    }

    /** The pressure at which one pump gives a flow; the ends of its table where the flow lies outside. */
    private double riseAt(Pump pump, double flow, double supplyVoltage) {
        Curve table = pump.lines().get(0).flow();
        return Bracket.edge(
                        rise -> pump.flow(rise, terminalVoltage(pump, rise, supplyVoltage)) > flow,
                        table.low(),
                        table.high(),
                        CLOSE * table.high())
                .inside();
    }
}
