package org.shotledger.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.units.Amount;
import org.shotledger.units.UnitSystem;

/**
 * Setups around one plan: every combination of the values of its axes.
 *
 * @param plan the plan; what is not varied stays as it is there
 * @param axes values of every axis, SI, in the order of {@link Axis}; one value where it is not varied
 */
public record Space(Plan plan, Map<Axis, List<Double>> axes) {
    private static final int MOST_VALUES = 100_000;

    public Space {
        axes = new EnumMap<>(axes);
    }

    /**
     * The plan alone, nothing varied yet.
     *
     * @param plan a plan with jets
     * @return the space
     * @throws IllegalArgumentException when the plan uses no nitrous
     */
    public static Space of(Plan plan) {
        Setup setup = plan.setup();
        if (plan.outcomes().stream().allMatch(outcome -> outcome.withNitrous().isEmpty())) {
            throw new IllegalArgumentException("The plan of " + plan.job().name()
                    + " uses no nitrous, or the models answer no engine speed with it; a study begins at a setup with jets: give one to"
                    + " Plan.of(job, setup).");
        }
        Map<Axis, List<Double>> axes = new EnumMap<>(Axis.class);
        for (Axis axis : Axis.values()) {
            axes.put(axis, List.of(axis.of(setup)));
        }
        return new Space(plan, axes);
    }

    /**
     * The same with an axis varied.
     *
     * @param axis what is varied
     * @param values SI, each once
     * @return the changed space
     * @throws IllegalArgumentException when there is none, one stands twice, or a setup cannot have it
     */
    public Space vary(Axis axis, double... values) {
        long different = Arrays.stream(values).distinct().count();
        if (values.length == 0 || values.length > MOST_VALUES || different < values.length) {
            throw new IllegalArgumentException("The axis '" + axis.words() + "' has " + values.length + " values, "
                    + different + " of them different; give 1 to " + MOST_VALUES + " values, each once.");
        }
        for (double value : values) {
            axis.set(plan.setup(), value);
        }
        Map<Axis, List<Double>> changed = new EnumMap<>(axes);
        changed.put(axis, DoubleStream.of(values).boxed().toList());
        return new Space(plan, changed);
    }

    /**
     * The same with an axis varied.
     *
     * @param axis what is varied
     * @param values each with its unit, for example {@code "24 thou"} or {@code "1.7 bar gauge"}
     * @return the changed space
     */
    public Space vary(Axis axis, String... values) {
        return vary(
                axis,
                Arrays.stream(values)
                        .mapToDouble(text -> Amount.read(text, axis.kind()).si())
                        .toArray());
    }

    /**
     * The same with evenly spaced values.
     *
     * @param axis what is varied
     * @param from first value with its unit
     * @param to last value with its unit
     * @param count how many values, 2 or more
     * @return the changed space
     */
    public Space range(Axis axis, String from, String to, int count) {
        if (count < 2 || count > MOST_VALUES) {
            throw new IllegalArgumentException("The axis '" + axis.words() + "' asks for " + count
                    + " values; a range has 2 to " + MOST_VALUES + ".");
        }
        double low = Amount.read(from, axis.kind()).si();
        double high = Amount.read(to, axis.kind()).si();
        double[] values = new double[count];
        Arrays.setAll(values, i -> low + (high - low) * i / (count - 1));
        return vary(axis, values);
    }

    /**
     * The same with the jets of the ladder between two sizes.
     *
     * @param axis {@link Axis#NITROUS_JET} or {@link Axis#FUEL_JET}
     * @param from smallest hole with its unit
     * @param to largest hole with its unit
     * @return the changed space
     */
    public Space ladder(Axis axis, String from, String to) {
        double low = Amount.read(from, axis.kind()).si() * (1 - 1e-9);
        double high = Amount.read(to, axis.kind()).si() * (1 + 1e-9);
        return vary(
                axis,
                DoubleStream.of(plan.car().nitrous().ladder().bores())
                        .filter(bore -> bore >= low && bore <= high)
                        .toArray());
    }

    /**
     * How many combinations there are.
     *
     * @return product of the axes' lengths
     */
    public long size() {
        return axes.values().stream().mapToLong(List::size).reduce(1, Math::multiplyExact);
    }

    /** How many values an axis has. */
    int count(Axis axis) {
        return axes.get(axis).size();
    }

    /**
     * The setup of a combination.
     *
     * @param index 0 to {@link #size} - 1; the last axis goes round first
     * @return the setup
     */
    public Setup setup(long index) {
        Setup setup = plan.setup();
        for (Map.Entry<Axis, Double> value : values(index).entrySet()) {
            setup = value.getKey().set(setup, value.getValue());
        }
        return setup;
    }

    /**
     * The values of a combination.
     *
     * @param index 0 to {@link #size} - 1
     * @return SI, by axis
     */
    public Map<Axis, Double> values(long index) {
        Map<Axis, Double> values = new EnumMap<>(Axis.class);
        long rest = index;
        List<Axis> innermostFirst = new ArrayList<>(EnumSet.allOf(Axis.class));
        Collections.reverse(innermostFirst);
        for (Axis axis : innermostFirst) {
            values.put(axis, axes.get(axis).get((int) (rest % count(axis))));
            rest /= count(axis);
        }
        return values;
    }

    /**
     * A combination in words: what is varied.
     *
     * @param index 0 to {@link #size} - 1
     * @param system the units
     * @return for example {@code "boost 1.25 bar gauge, nitrous jet 1.092 mm"}
     */
    public String words(long index, UnitSystem system) {
        return values(index).entrySet().stream()
                .filter(value -> count(value.getKey()) > 1)
                .map(value ->
                        value.getKey().words() + " " + value.getKey().kind().text(value.getValue(), system))
                .collect(Collectors.joining(", "));
    }
}
