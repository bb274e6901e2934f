package org.shotledger.confidence;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * How sure a plan is.
 *
 * @param plan the plan
 * @param unknowns what is not known exactly
 * @param draws number of draws
 * @param reach chance that the wheel power reaches the wish
 * @param keep chance that every limit is kept
 * @param both chance of both together
 * @param limits chance that each limit is kept over the band, by its name
 * @param power wheel power of all draws
 * @param kept wheel power of the draws that keep every limit
 * @param influences what each unknown does, strongest first
 * @param powerDifference largest relative difference of power between the quadratic forms and the exact evaluation at random
 *     places; NaN when it was not looked at
 * @param lambdaDifference the same for lambda
 */
public record Confidence(
        Plan plan,
        List<Unknown> unknowns,
        int draws,
        Chance reach,
        Chance keep,
        Chance both,
        Map<String, Chance> limits,
        Propagation power,
        Propagation kept,
        List<Influence> influences,
        double powerDifference,
        double lambdaDifference) {

    /** Copies the lists. */
    public Confidence {
        unknowns = List.copyOf(unknowns);
        influences = List.copyOf(influences);
    }

    /**
     * The wheel power that can be promised inside every limit.
     *
     * @param confidence probability, above 0 and below 1
     * @return the most power that is reached, with every limit kept, with that probability, W; NaN when the limits alone are
     *     kept less often
     */
    public double powerAt(double confidence) {
        double[] values = kept.sorted();
        long needed = Math.round(confidence * draws);
        return needed <= values.length && needed > 0 ? values[(int) (values.length - needed)] : Double.NaN;
    }

    /**
     * The unknown whose better knowledge narrows the result most for its effort.
     *
     * @return what to measure next
     */
    public Influence measureNext() {
        return influences.stream()
                .max(Comparator.comparingDouble(Influence::gainPerEffort))
                .orElseThrow();
    }

    /**
     * The answer in one sentence.
     *
     * @return chances, spread, and what to measure next
     */
    public String summary() {
        return String.format(
                Locale.ROOT,
                "%s: %.0f %% chance of %s at the wheels, %.0f %% of keeping every limit, %.0f %% of both (95 %% interval of the draws"
                        + " %.1f to %.1f %%); power %s with a standard uncertainty of %s. Measure \"%s\" next. Chances are those of the"
                        + " stated distributions and these models, not of a part that breaks.",
                plan.name(),
                100 * reach.probability(),
                QuantityKind.POWER.text(plan.wish().wheelPower(), UnitSystem.US),
                100 * keep.probability(),
                100 * both.probability(),
                100 * both.low(),
                100 * both.high(),
                QuantityKind.POWER.text(power.mean(), UnitSystem.US),
                QuantityKind.POWER.text(power.deviation(), UnitSystem.US),
                influences.isEmpty() ? "nothing" : measureNext().unknown().path());
    }
}
