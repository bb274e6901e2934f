package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;

/**
 * Temperature of the fuel by the width of a content sensor's pulses, a straight line between two points.
 *
 * <p>1 ms at -40 degC and 5 ms at 125 degC are common practice of the trade; no published standard was found, so the sensor's own sheet
 * goes first.
 *
 * @param name what it is called
 * @param low temperature at the narrow end, K
 * @param high temperature at the wide end, K
 * @param narrow width at {@code low}, s
 * @param wide width at {@code high}, s
 */
public record PulseWidthSensor(String name, double low, double high, double narrow, double wide) implements Sensor {
    /** K. */
    private static final double ROOM = 293.15;

    public PulseWidthSensor {
        Require.named("sensor", name);
        Require.within("lower temperature of " + name, low, 200, 400, "K");
        Require.within("upper temperature of " + name, high, Math.nextUp(low), 500, "K");
        Require.within("narrow pulse of " + name, narrow, 1e-5, 0.1, "s");
        Require.within("wide pulse of " + name, wide, Math.nextUp(narrow), 0.1, "s");
    }

    /**
     * The usual line.
     *
     * @param name what it is called
     * @return 1 ms at -40 degC to 5 ms at 125 degC, common practice, no source
     */
    public static PulseWidthSensor usual(String name) {
        return new PulseWidthSensor(name, 233.15, 398.15, 1e-3, 5e-3);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.TEMPERATURE;
    }

    @Override
    public QuantityKind outputKind() {
        return QuantityKind.TIME;
    }

    @Override
    public double output(double value) {
        return narrow + (wide - narrow) * (value - low) / (high - low);
    }

    @Override
    public String law() {
        return "a straight line of pulse width over temperature (common practice, no source); mind whether the controller times the low"
                + " or the high part of the wave";
    }

    @Override
    public String faults() {
        return "A width outside its ends is a fault; with the wrong part of the wave timed, the temperature changes with the content.";
    }

    @Override
    public List<Check> checks() {
        double room = Math.min(high, Math.max(low, ROOM));
        double warm = low + 0.75 * (high - low);
        return List.of(
                new Check("car left over night, by a thermometer", room, output(room)),
                new Check("fuel after a drive, by a thermometer in the return", warm, output(warm)));
    }
}
