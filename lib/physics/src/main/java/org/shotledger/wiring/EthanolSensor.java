package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;

/**
 * A flex-fuel sensor: a square wave whose frequency rises in a straight line with the ethanol content by volume.
 *
 * <p>50 Hz without ethanol and 150 Hz with nothing else are common practice of the trade; no published standard was found. The width of
 * its pulses carries the temperature of the fuel, by a law that differs between sensors and is not guessed here.
 *
 * @param name what it is called
 * @param none frequency without ethanol, Hz
 * @param pure frequency in pure ethanol, Hz
 */
public record EthanolSensor(String name, double none, double pure) implements Sensor {
    /** Frequency without ethanol, Hz (common practice, no source). */
    public static final double USUAL_NONE = 50;
    /** Frequency in pure ethanol, Hz (common practice, no source). */
    public static final double USUAL_PURE = 150;

    /** Content at which it is checked, as a fuel sold as E85 may have. */
    private static final double PUMP_FUEL = 0.85;

    public EthanolSensor {
        Require.named("sensor", name);
        Require.within("frequency without ethanol of " + name, none, 1, 1e5, "Hz");
        Require.within("frequency in pure ethanol of " + name, pure, none + 1, 1e5, "Hz");
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.FRACTION;
    }

    @Override
    public QuantityKind outputKind() {
        return QuantityKind.FREQUENCY;
    }

    @Override
    public double low() {
        return 0;
    }

    @Override
    public double high() {
        return 1;
    }

    /** {@inheritDoc} The value is the ethanol content by volume, 0 to 1. */
    @Override
    public double output(double value) {
        return none + (pure - none) * value;
    }

    @Override
    public String law() {
        return "a straight line of frequency over ethanol content by volume (common practice, no source); the width of the pulses"
                + " carries the fuel's temperature, by the sensor's own sheet";
    }

    @Override
    public String faults() {
        return "A frequency below " + hertz(none) + " or above " + hertz(pure)
                + ", or none at all, is a fault or foul fuel, not a content: hold the last good one and keep the nitrous oxide off. Water"
                + " in the fuel reads as ethanol, and standing fuel is not the fuel in the tank.";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                new Check("in gasoline without ethanol", 0, output(0)),
                new Check("in fuel whose content was found by a water test", PUMP_FUEL, output(PUMP_FUEL)));
    }

    private static String hertz(double frequency) {
        return QuantityKind.FREQUENCY.text(frequency, org.shotledger.units.UnitSystem.SI);
    }
}
