package org.shotledger.stepup;

import java.util.List;
import org.shotledger.budget.JetChoice;

/**
 * One shot of the ladder.
 *
 * @param step its number, 1 for the smallest
 * @param share what it adds over what the last shot adds, as a fraction
 * @param option its jets and what they give
 * @param added wheel power it adds at its strongest point, W
 * @param lowPower lower end of the expected wheel power, two standard uncertainties below, W
 * @param highPower upper end, W
 * @param spark its retard
 * @param checkpoints the figures to read before the next step
 */
public record Shot(
        int step,
        double share,
        JetChoice.Option option,
        double added,
        double lowPower,
        double highPower,
        Spark spark,
        List<Checkpoint> checkpoints) {

    /** Copies the checkpoints. */
    public Shot {
        checkpoints = List.copyOf(checkpoints);
    }
}
