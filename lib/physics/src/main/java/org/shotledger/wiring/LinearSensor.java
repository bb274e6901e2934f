package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;

/**
 * A device that puts out a voltage of its own in a straight line, such as the amplifier of a lambda probe:
 * {@code U = U_0 + (U_1 - U_0) (x - x_0)/(x_1 - x_0)}.
 *
 * @param name what it is called
 * @param kind what it measures
 * @param low value at the lower end, SI
 * @param high value at the upper end, SI
 * @param lowVolts output at the lower end, V, 0 to 10
 * @param highVolts output at the upper end, V, 0 to 10, other than {@code lowVolts}
 */
public record LinearSensor(String name, QuantityKind kind, double low, double high, double lowVolts, double highVolts)
        implements Sensor {

    public LinearSensor {
        Require.named("sensor", name);
        Require.given("kind of " + name, kind);
        Require.within("upper end of " + name, high, Math.nextUp(low), 1e9, "SI units");
        Require.within("output at the lower end of " + name, lowVolts, 0, 10, "V");
        Require.within("output at the upper end of " + name, highVolts, 0, 10, "V");
        if (lowVolts == highVolts) {
            throw new IllegalArgumentException(
                    "The sensor " + name + " puts out " + lowVolts + " V at both ends; give two different outputs.");
        }
    }

    @Override
    public double output(double value) {
        return lowVolts + (highVolts - lowVolts) * (value - low) / (high - low);
    }

    @Override
    public String law() {
        return "a straight line of the device's own voltage, whatever the supply (definition); controller and device must share one"
                + " ground, or every reading is off by the voltage between both";
    }

    @Override
    public String faults() {
        return "A broken wire floats and a short circuit reads an end of the line, both of which look like a value: choose a device that"
                + " shows a fault by a voltage outside its line.";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                new Check("device set to put out its lower end", low, lowVolts),
                new Check("device set to put out its upper end", high, highVolts));
    }
}
