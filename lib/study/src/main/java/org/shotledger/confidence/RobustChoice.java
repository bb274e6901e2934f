package org.shotledger.confidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.shotledger.study.Candidate;
import org.shotledger.study.SweepResult;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * The combination with the highest chance of reaching the wish inside every limit, among the best and the front of a sweep.
 *
 * @param chosen the combination
 * @param confidence how sure it is
 * @param others every combination that was weighed, most certain first
 * @param mostAtHalf most power that some combination reaches inside every limit with a chance of 50 %, W; NaN when none does
 * @param mostAtNearlySure the same with 95 %
 */
public record RobustChoice(
        Candidate chosen, Confidence confidence, List<Confidence> others, double mostAtHalf, double mostAtNearlySure) {
    private static final double HALF = 0.5;
    private static final double NEARLY_SURE = 0.95;

    /** Copies the list. */
    public RobustChoice {
        others = List.copyOf(others);
    }

    /**
     * Weighs the best and the front of a sweep.
     *
     * @param swept the sweep
     * @param unknowns what is not known exactly
     * @param most how many combinations are weighed, at least 1; each takes a few dozen exact evaluations
     * @param draws draws for each, 1600 or more
     * @param seed seed
     * @return the choice
     * @throws IllegalArgumentException when the sweep has no combination that keeps every limit, or the models cover none of them
     */
    public static RobustChoice among(SweepResult swept, List<Unknown> unknowns, int most, int draws, long seed) {
        Map<Long, Candidate> candidates = new LinkedHashMap<>();
        swept.best().forEach(c -> candidates.putIfAbsent(c.outcome().index(), c));
        swept.front().stream()
                .filter(c -> c.outcome().wheelPower() >= 0.97 * swept.task().wanted())
                .forEach(c -> candidates.putIfAbsent(c.outcome().index(), c));
        Map<Confidence, Candidate> weighed = new LinkedHashMap<>();
        for (Candidate candidate : candidates.values().stream().limit(most).toList()) {
            Plan plan = Plan.of(candidate, swept.space().build(), swept.space().wish());
            weigh(plan, unknowns, draws, seed).ifPresent(c -> weighed.put(c, candidate));
        }
        List<Confidence> sorted = new ArrayList<>(weighed.keySet());
        sorted.sort(Comparator.comparingDouble((Confidence c) -> -c.both().probability()));
        if (sorted.isEmpty()) {
            throw new IllegalArgumentException("None of the " + candidates.size()
                    + " combinations near the wish can be weighed; sweep a wider space first.");
        }
        return new RobustChoice(
                weighed.get(sorted.get(0)), sorted.get(0), sorted, mostAt(sorted, HALF), mostAt(sorted, NEARLY_SURE));
    }

    private static Optional<Confidence> weigh(Plan plan, List<Unknown> unknowns, int draws, long seed) {
        try {
            return Optional.of(ConfidenceStudy.quick(plan, unknowns, draws, seed));
        } catch (IllegalArgumentException beyondTheModels) {
            return Optional.empty();
        }
    }

    private static double mostAt(List<Confidence> all, double confidence) {
        return all.stream()
                .mapToDouble(c -> c.powerAt(confidence))
                .filter(Double::isFinite)
                .max()
                .orElse(Double.NaN);
    }

    /**
     * What near certainty costs.
     *
     * @return power that can be promised with 50 % less that with 95 %, W; NaN when one of them cannot
     */
    public double priceOfCertainty() {
        return mostAtHalf - mostAtNearlySure;
    }

    /**
     * The choice in one sentence.
     *
     * @return the combination, its chance, and the price of certainty
     */
    public String summary() {
        String price = Double.isFinite(priceOfCertainty())
                ? String.format(
                        Locale.ROOT,
                        "an even chance inside every limit goes up to %s, a chance of 95 %% to %s: certainty costs %s",
                        QuantityKind.POWER.text(mostAtHalf, UnitSystem.US),
                        QuantityKind.POWER.text(mostAtNearlySure, UnitSystem.US),
                        QuantityKind.POWER.text(priceOfCertainty(), UnitSystem.US))
                : "none of them keeps every limit with a chance of 95 %";
        return String.format(
                Locale.ROOT,
                "Of %d combinations %s has the highest chance of reaching the wish inside every limit, %.0f %%; %s.",
                others.size(),
                chosen.combination().name(),
                100 * confidence.both().probability(),
                price);
    }
}
