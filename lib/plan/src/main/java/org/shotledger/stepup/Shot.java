package org.shotledger.stepup;

import java.util.List;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;

/**
 * One shot of the ladder.
 *
 * @param step its number, 1 for the smallest
 * @param share what it adds over what the last shot adds, as a fraction
 * @param plan its setup with its outcome in every case and every limit; that of the last shot is the plan itself
 * @param point its operating point of most power in the case of the target
 * @param added wheel power it adds there, W
 * @param lowPower lower end of the expected wheel power, two standard uncertainties below, W
 * @param highPower upper end, W
 * @param spark its retard
 * @param checkpoints the figures to read before the next step
 */
public record Shot(
        int step,
        double share,
        Plan plan,
        OperatingPoint point,
        double added,
        double lowPower,
        double highPower,
        Spark spark,
        List<Checkpoint> checkpoints) {

    public Shot {
        checkpoints = List.copyOf(checkpoints);
    }

    /**
     * What is set for this shot.
     *
     * @return the setup that is run and that every figure of the shot was worked out for
     */
    public Setup setup() {
        return plan.setup();
    }

    /**
     * The power expected of it.
     *
     * @return W at the wheels in the case of the target
     */
    public double wheelPower() {
        return point.wheelPower();
    }
}
