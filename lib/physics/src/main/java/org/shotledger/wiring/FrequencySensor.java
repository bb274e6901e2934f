package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;

/**
 * A speed sensor: {@code f = k x}, pulses per second over speed.
 *
 * @param name what it is called
 * @param kind {@code ROTATION} in rpm or {@code SPEED} in m/s
 * @param low least speed at which its edges are trusted
 * @param high greatest speed
 * @param hertzPerUnit pulses per second for one rpm (teeth/60) or one m/s (teeth over the tyre's circumference in m), above zero
 */
public record FrequencySensor(String name, QuantityKind kind, double low, double high, double hertzPerUnit)
        implements Sensor {

    public FrequencySensor {
        Require.named("sensor", name);
        if (kind != QuantityKind.ROTATION && kind != QuantityKind.SPEED) {
            throw new IllegalArgumentException("The frequency sensor " + name + " measures "
                    + (kind == null ? "nothing" : kind.words()) + "; it must be rotation or speed.");
        }
        Require.notNegative("least speed of " + name, low, "");
        Require.within("greatest speed of " + name, high, Math.nextUp(low), 1e6, "");
        Require.positive("pulses of " + name, hertzPerUnit, "Hz per unit");
    }

    /**
     * Speed of a shaft by its teeth.
     *
     * @param name what it is called
     * @param teeth pulses in a turn, 1 or more
     * @param high greatest speed, rpm
     * @return the sensor
     */
    public static FrequencySensor shaft(String name, int teeth, double high) {
        return new FrequencySensor(name, QuantityKind.ROTATION, 0, high, teeth / 60.0);
    }

    /**
     * Speed of the car by a wheel's teeth.
     *
     * @param name what it is called
     * @param teeth pulses in a turn of the wheel, 1 or more
     * @param tyreRadius rolling radius, m
     * @param high greatest speed, m/s
     * @return the sensor
     */
    public static FrequencySensor wheel(String name, int teeth, double tyreRadius, double high) {
        Require.positive("rolling radius at " + name, tyreRadius, "m");
        return new FrequencySensor(name, QuantityKind.SPEED, 0, high, teeth / (2 * Math.PI * tyreRadius));
    }

    @Override
    public QuantityKind outputKind() {
        return QuantityKind.FREQUENCY;
    }

    @Override
    public double output(double value) {
        return hertzPerUnit * value;
    }

    @Override
    public String law() {
        return "pulses counted over time (definition)";
    }

    @Override
    public String faults() {
        return "No pulses is standstill or a broken wire, which look alike: compare with another speed before it may arm anything; twice"
                + " the speed is a threshold in the noise.";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                new Check("standing", low, output(low)),
                new Check("at half its range, by another instrument", high / 2, output(high / 2)));
    }
}
