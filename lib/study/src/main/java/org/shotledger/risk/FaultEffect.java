package org.shotledger.risk;

import java.util.Optional;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;

/**
 * What a fault does to the engine and what catches it.
 *
 * @param fault the fault
 * @param severity how far it was followed, 0 to 1; below 1 where the models end before its full size
 * @param outcome the engine at that severity
 * @param knock end-gas integral of the worst cylinder against that of the plan, a relative measure; above one is nearer to
 *     knock
 * @param broken the broken limit that hurts soonest, else the one with the smallest margin; empty when none is broken
 * @param detection what catches it, and whether in time
 */
public record FaultEffect(
        Fault fault, double severity, FaultOutcome outcome, double knock, Optional<Limit> broken, Detection detection) {

    /**
     * The verdict on the limits, before anything catches the fault.
     *
     * @return broken also where the models end before the fault has its full size
     */
    public Verdict verdict() {
        return severity < 1 ? Verdict.BROKEN : outcome.verdict();
    }

    /**
     * The limit that breaks, in words.
     *
     * @return its name, or that the models end, or "none"
     */
    public String brokenWords() {
        return broken.map(Limit::name)
                .orElse(severity < 1 || !outcome.refusal().isEmpty() ? outcome.refusal() : "none");
    }
}
