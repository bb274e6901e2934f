package org.shotledger.whathelps;

import org.shotledger.limits.Verdict;

/**
 * One change, tried.
 *
 * @param change the change
 * @param before the value as the sheet states it
 * @param after the value tried
 * @param verdict verdict of the plan that was found then; broken for a change that is refused
 * @param helps true when that plan is better: no longer broken, less broken, closer to the power asked for, or less tight
 * @param powerGained wheel power of the new plan over that of the old one, W; NaN for a change that is refused
 * @param marginGained smallest relative margin of the new plan over that of the old one, each counted up to what is called tight;
 *     NaN for a change that is refused
 * @param limit the limit that is then the closest, in words, or why the change is refused
 */
public record Attempt(
        Change change,
        String before,
        String after,
        Verdict verdict,
        boolean helps,
        double powerGained,
        double marginGained,
        String limit) {

    static Attempt refused(Change change, String before, String after, String why) {
        return new Attempt(change, before, after, Verdict.BROKEN, false, Double.NaN, Double.NaN, "refused: " + why);
    }

    /**
     * Whether it mends the plan.
     *
     * @return true when the power is reached inside every limit
     */
    public boolean mends() {
        return verdict != Verdict.BROKEN;
    }
}
