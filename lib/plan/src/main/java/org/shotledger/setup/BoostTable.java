package org.shotledger.setup;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.shotledger.units.Require;

/**
 * Boost wanted over engine speed, as a boost controller holds it: straight lines between the steps, the end values held
 * beyond both ends.
 *
 * @param steps ascending in engine speed, at least one
 */
public record BoostTable(List<Step> steps) {

    /**
     * One break point.
     *
     * @param rpm engine speed, rev/min, positive
     * @param gaugePressure plenum pressure wanted above the ambient, Pa, -0.5 to 8 bar
     */
    public record Step(double rpm, double gaugePressure) {
        public Step {
            Require.positive("engine speed of a boost step", rpm, "rpm");
            Require.within("boost of a step", gaugePressure, -0.5e5, 8e5, "Pa");
        }
    }

    public BoostTable {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException(
                    "A boost table has no step; give at least one engine speed and its boost.");
        }
        for (int i = 1; i < steps.size(); i++) {
            if (!(steps.get(i).rpm > steps.get(i - 1).rpm)) {
                throw new IllegalArgumentException(
                        "The engine speeds of a boost table do not rise: " + steps.get(i - 1).rpm
                                + " rpm is followed by " + steps.get(i).rpm + " rpm; put them in order.");
            }
        }
    }

    /**
     * The same boost at every speed.
     *
     * @param gaugePressure Pa above ambient
     * @return the table
     */
    public static BoostTable constant(double gaugePressure) {
        return new BoostTable(List.of(new Step(1000, gaugePressure)));
    }

    /**
     * A table from two rows of figures.
     *
     * @param rpm engine speeds, rev/min, ascending, shape (n)
     * @param gaugePressure boost at each, Pa above ambient, shape (n)
     * @return the table
     */
    public static BoostTable of(double[] rpm, double[] gaugePressure) {
        return new BoostTable(IntStream.range(0, rpm.length)
                .mapToObj(i -> new Step(rpm[i], gaugePressure[i]))
                .toList());
    }

    /**
     * Boost wanted at an engine speed.
     *
     * @param rpm engine speed, rev/min
     * @return Pa above ambient
     */
    public double at(double rpm) {
        if (rpm <= steps.get(0).rpm) {
            return steps.get(0).gaugePressure;
        }
        for (int i = 1; i < steps.size(); i++) {
            Step before = steps.get(i - 1);
            Step step = steps.get(i);
            if (rpm <= step.rpm) {
                double share = (rpm - before.rpm) / (step.rpm - before.rpm);
                return before.gaugePressure + share * (step.gaugePressure - before.gaugePressure);
            }
        }
        return steps.get(steps.size() - 1).gaugePressure;
    }

    /**
     * The same speeds with changed boost.
     *
     * @param change from Pa gauge to Pa gauge
     * @return the changed table
     */
    public BoostTable map(DoubleUnaryOperator change) {
        return new BoostTable(steps.stream()
                .map(s -> new Step(s.rpm, change.applyAsDouble(s.gaugePressure)))
                .toList());
    }

    /**
     * The highest boost of the table.
     *
     * @return Pa above ambient
     */
    public double highest() {
        return steps.stream().mapToDouble(Step::gaugePressure).max().orElseThrow();
    }
}
