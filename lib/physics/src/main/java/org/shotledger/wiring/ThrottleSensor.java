package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;

/**
 * A throttle position by two learnt points, closed and fully open, in either direction.
 *
 * @param name what it is called
 * @param closed output closed, V
 * @param open output fully open, V
 * @param supply voltage over its track, V, 1 to 30
 */
public record ThrottleSensor(String name, double closed, double open, double supply) implements Sensor {
    /** Least travel over the supply, and least distance of both ends from the rails: common practice, no source. */
    private static final double LEAST_TRAVEL = 0.2;

    /** Share of the supply at either end in which a broken wire is told from an end of travel: common practice, no source. */
    private static final double MARGIN = 0.02;

    public ThrottleSensor {
        Require.named("sensor", name);
        Require.within("supply of " + name, supply, 1, 30, "V");
        Require.within("output of " + name + " closed", closed, MARGIN * supply, (1 - MARGIN) * supply, "V");
        Require.within("output of " + name + " open", open, MARGIN * supply, (1 - MARGIN) * supply, "V");
        if (Math.abs(open - closed) < LEAST_TRAVEL * supply) {
            throw new IllegalArgumentException("The throttle " + name + " travels from " + closed + " V to " + open
                    + " V; below a fifth of its supply of " + supply
                    + " V the ends were hardly learnt with the pedal moved: learn both again.");
        }
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.FRACTION;
    }

    @Override
    public double low() {
        return 0;
    }

    @Override
    public double high() {
        return 1;
    }

    @Override
    public double output(double value) {
        return closed + (open - closed) * value;
    }

    @Override
    public double output(double value, InputConditions conditions) {
        return output(value) * conditions.supply();
    }

    /**
     * Whether the output rises as the throttle opens.
     *
     * @return false where track or plug runs the other way round
     */
    public boolean rising() {
        return open > closed;
    }

    @Override
    public String law() {
        return "a straight line between two learnt points, " + (rising() ? "rising" : "falling")
                + " as it opens (definition)";
    }

    @Override
    public String faults() {
        return "An output beyond both ends by a fiftieth of the supply is a broken wire or a short circuit; it must not count as open.";
    }

    @Override
    public List<Check> checks() {
        return List.of(new Check("pedal free, engine off", 0, closed), new Check("pedal down, engine off", 1, open));
    }
}
