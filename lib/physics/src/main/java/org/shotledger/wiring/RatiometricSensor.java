package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;
import org.shotledger.units.UnitSystem;

/**
 * A sensor whose output is a share of its supply, {@code U = U_s (a + (b - a) (p - p_0)/(p_1 - p_0))}.
 *
 * @param name what it is called
 * @param kind what it measures: gauge or absolute pressure for the usual ones
 * @param low value at the lower end, SI
 * @param high value at the upper end, SI
 * @param supply supply of the sensor, V
 * @param lowShare share of the supply at the lower end, 0 to 1
 * @param highShare share of the supply at the upper end, 0 to 1
 */
public record RatiometricSensor(
        String name, QuantityKind kind, double low, double high, double supply, double lowShare, double highShare)
        implements Sensor {

    public RatiometricSensor {
        Require.named("sensor", name);
        Require.given("kind of " + name, kind);
        Require.within("upper end of " + name, high, Math.nextUp(low), 1e9, "SI units");
        Require.within("supply of " + name, supply, 1, 30, "V");
        Require.within("lower share of " + name, lowShare, 0, 1, "");
        Require.within("upper share of " + name, highShare, Math.nextUp(lowShare), 1, "");
    }

    /**
     * A sensor of gauge pressure.
     *
     * @param name what it is called
     * @param low gauge pressure at the lower end, Pa
     * @param high gauge pressure at the upper end, Pa
     * @param supply supply of the sensor, V
     * @param lowShare share of the supply at the lower end, 0 to 1
     * @param highShare share of the supply at the upper end, 0 to 1
     */
    public RatiometricSensor(String name, double low, double high, double supply, double lowShare, double highShare) {
        this(name, QuantityKind.GAUGE_PRESSURE, low, high, supply, lowShare, highShare);
    }

    @Override
    public double output(double value) {
        return supply * (lowShare + (highShare - lowShare) * (value - low) / (high - low));
    }

    @Override
    public double output(double value, InputConditions conditions) {
        return output(value) * conditions.supply();
    }

    @Override
    public String law() {
        return "a straight line between both ends, as a share of the supply: an input that measures against the same supply cancels"
                + " its error (definition)";
    }

    @Override
    public String faults() {
        return "An output below " + volts(lowShare) + " or above " + volts(highShare)
                + " is a broken wire or a short circuit, not a pressure: it must cut the nitrous oxide.";
    }

    @Override
    public List<Check> checks() {
        boolean absolute = kind == QuantityKind.ABSOLUTE_PRESSURE;
        double vented = Math.min(high, Math.max(low, absolute ? UnitFactors.ATMOSPHERE : 0));
        double loaded = low + 0.75 * (high - low);
        return List.of(
                new Check(
                        absolute
                                ? "line open to the air at sea level, or the barometer of the day"
                                : "line open to the air",
                        vented,
                        output(vented)),
                new Check("against a reference gauge", loaded, output(loaded)));
    }

    private String volts(double share) {
        return QuantityKind.VOLTAGE.text(supply * share, UnitSystem.SI);
    }
}
