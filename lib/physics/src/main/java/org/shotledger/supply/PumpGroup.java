package org.shotledger.supply;

import java.util.List;
import java.util.function.ToDoubleFunction;
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
    /** How pumps are joined. */
    public enum Arrangement {
        /** Side by side: flows add at one pressure. */
        PARALLEL,
        /** One after the other: pressures add at one flow. */
        SERIES
    }

    /** Checks the group. */
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
     * One pump alone.
     *
     * @param pump the pump
     * @param wiringResistance of feed and return, ohm
     * @return the group
     */
    public static PumpGroup of(Pump pump, double wiringResistance) {
        return new PumpGroup(pump.name(), List.of(pump), Arrangement.PARALLEL, wiringResistance);
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
     * Spare flow over the flow needed, at the worst of some conditions.
     *
     * @param needed m3/s, above zero
     * @param rises pressure rises that may come, Pa
     * @param supplyVoltages voltages that may come, V
     * @return least {@code capacity/needed - 1}; negative where the pumps run short
     */
    public double worstMargin(double needed, double[] rises, double[] supplyVoltages) {
        Require.positive("fuel flow needed", needed, "m3/s");
        double worst = Double.POSITIVE_INFINITY;
        for (double rise : rises) {
            for (double voltage : supplyVoltages) {
                worst = Math.min(worst, capacity(rise, voltage) / needed - 1);
            }
        }
        return worst;
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
        double low = 0;
        double high = 0.02;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (seriesRise(middle, supplyVoltage) > rise) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
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
        double low = pump.lines().get(0).flow().low();
        double high = pump.lines().get(0).flow().high();
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (pump.flow(middle, terminalVoltage(pump, middle, supplyVoltage)) > flow) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
