package org.shotledger.confidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.shotledger.plan.Alternative;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * The plan with the highest chance of reaching the target inside every limit in every case.
 *
 * @param weighed every plan that was weighed, most certain first; at least one
 * @param unanswered how many could not be weighed because the models have no answer around them
 */
public record RobustChoice(List<Confidence> weighed, int unanswered) {
    /** Chance at which a setup is as likely to hold as not. */
    private static final double HALF = 0.5;
    /** Chance that counts as nearly sure: our choice, as in statistics at large. */
    private static final double NEARLY_SURE = 0.95;

    public RobustChoice {
        weighed = List.copyOf(weighed);
    }

    /**
     * Weighs a plan and those of its alternatives that come nearest to the target.
     *
     * @param plan the plan
     * @param most how many alternatives, 0 or more; each takes about two exact evaluations for every unknown
     * @param draws draws for each, 1600 or more
     * @param seed seed
     * @return the choice
     */
    public static RobustChoice around(Plan plan, int most, int draws, long seed) {
        Stream<Setup> others = plan.alternatives().stream()
                .filter(a ->
                        plan.target().reachedBy(a.wheelPower()) && !a.setup().equals(plan.setup()))
                .sorted(Comparator.comparingDouble((Alternative a) -> -a.leastMargin()))
                .limit(most)
                .map(Alternative::setup);
        return among(
                Stream.concat(Stream.of(plan), others.map(setup -> Plan.of(plan.job(), setup)))
                        .toList(),
                draws,
                seed);
    }

    /**
     * Weighs given plans, each with its own bands.
     *
     * @param plans at least one
     * @param draws draws for each, 1600 or more
     * @param seed seed
     * @return the choice
     * @throws IllegalArgumentException when the models have no answer around any of them
     */
    public static RobustChoice among(List<Plan> plans, int draws, long seed) {
        List<Confidence> weighed = new ArrayList<>();
        IllegalArgumentException last = new IllegalArgumentException("There is no plan to weigh; give at least one.");
        for (Plan plan : plans) {
            try {
                weighed.add(ConfidenceStudy.quick(plan, Unknowns.of(plan), draws, seed));
            } catch (IllegalArgumentException beyondTheModels) {
                last = beyondTheModels;
            }
        }
        if (weighed.isEmpty()) {
            throw last;
        }
        weighed.sort(
                Comparator.comparingDouble((Confidence c) -> -c.stated().both().probability()));
        return new RobustChoice(weighed, plans.size() - weighed.size());
    }

    /**
     * The plan that is most certain.
     *
     * @return the first of those weighed
     */
    public Confidence chosen() {
        return weighed.get(0);
    }

    /**
     * Most power that some plan reaches inside every limit.
     *
     * @param confidence with this probability, above 0 and below 1
     * @return W; NaN when none keeps every limit so often
     */
    public double mostAt(double confidence) {
        return weighed.stream()
                .mapToDouble(c -> c.powerAt(confidence))
                .filter(Double::isFinite)
                .max()
                .orElse(Double.NaN);
    }

    /**
     * The choice in one sentence.
     *
     * @return its chance and what certainty costs
     */
    public String summary() {
        double sure = mostAt(NEARLY_SURE);
        String price = Double.isFinite(sure)
                ? "an even chance inside every limit goes up to " + power(mostAt(HALF)) + ", a chance of 95 % to "
                        + power(sure)
                : "none of them keeps every limit with a chance of 95 %";
        return String.format(
                Locale.ROOT,
                "Of %d plans the one with %s has the highest chance of reaching the target inside every limit, %s; %s.",
                weighed.size(),
                power(chosen().plan().stated().power()),
                chosen().stated().both().text(),
                price);
    }

    private static String power(double watts) {
        return QuantityKind.POWER.text(watts, UnitSystem.US);
    }
}
