package org.shotledger.stepup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.ledger.PowerUncertainty;
import org.shotledger.plan.Plan;
import org.shotledger.plan.Shots;
import org.shotledger.setup.Setup;

/**
 * A ladder of shots from small to target, all at the boost of the plan: a list of setups, each worked out in full.
 *
 * @param offPower wheel power with the nitrous closed at that boost, W
 * @param shots the shots, smallest first; the last is the plan itself
 */
public record StepUp(double offPower, List<Shot> shots) {
    /** Shares of the full shot that are tried: common practice, no source. */
    public static final List<Double> USUAL_SHARES = List.of(0.4, 0.6, 0.8);

    /** What to look at after each step, whatever its figures say. */
    public static final List<String> CHECKS = List.of(
            "Three clean pulls that agree within 2 % of power before the next step (common practice, no source).",
            "Read every spark plug after each step: no grey or shining specks on the insulator, no blunted or blued strap, all"
                    + " cylinders alike (common practice, no source). One plug that differs is a reason to stop.",
            "Plugs one heat range colder for each 75 to 100 hp of nitrous, of a kind without a projected tip (common practice,"
                    + " no source; the plug maker's table decides).",
            "Read the log before the next step: mixture, both fuel pressures, bottle pressure, knock or cylinder signal, boost,"
                    + " injector duty, supply voltage. A channel that is missing is a reason to stop.",
            "Look into oil and coolant, listen for ringing after the pull, check the jets once more by number and by side.");

    private static final double TWO = 2;
    /** Margins that differ by less are the same margin, worked out twice. */
    private static final double SAME = 1e-6;

    public StepUp {
        shots = List.copyOf(shots);
    }

    /**
     * The ladder of a plan at 40, 60, 80 and 100 % of its shot.
     *
     * @param plan the plan
     * @return the ladder; without shots when the plan uses no nitrous
     */
    public static StepUp of(Plan plan) {
        return of(plan, USUAL_SHARES);
    }

    /**
     * The ladder of a plan.
     *
     * @param plan the plan
     * @param shares shares of the full shot before the full one, ascending, each above 0 and below 1
     * @return the ladder; a share is left out for which the jets have no pair of its own, or none that is as far from every limit as
     *     the full shot
     */
    public static StepUp of(Plan plan, List<Double> shares) {
        for (double share : shares) {
            if (!(share > 0 && share < 1)) {
                throw new IllegalArgumentException(
                        "A share of the step-up plan is " + share + "; allowed is above 0 and below 1.");
            }
        }
        if (plan.setup().jets().isEmpty() || plan.stated().withNitrous().isEmpty()) {
            return new StepUp(plan.stated().power(), List.of());
        }
        Shots sizer = plan.shots();
        double off = sizer.offPower();
        List<Plan> steps = new ArrayList<>();
        for (double share : shares) {
            double wanted = off + share * (plan.stated().power() - off);
            double before =
                    steps.isEmpty() ? 0 : steps.get(steps.size() - 1).stated().power();
            sizer.setupsFor(wanted)
                    .flatMap(setup -> noCloser(plan, setup).stream())
                    .filter(step -> step.stated().power() > before)
                    .filter(step -> step.stated().power() < plan.stated().power())
                    .findFirst()
                    .ifPresent(steps::add);
        }
        steps.add(plan);
        List<Shot> shots = new ArrayList<>();
        for (Plan step : steps) {
            shots.add(shot(plan, step, shots.size() + 1, off));
        }
        return new StepUp(off, shots);
    }

    /** A smaller shot that is closer to some limit than the full one is no step towards it. */
    private static Optional<Plan> noCloser(Plan full, Setup setup) {
        Plan step = Plan.of(full.job(), setup);
        boolean asFar = step.parts().leastMargin() >= full.parts().leastMargin() - SAME;
        return asFar && !step.stated().withNitrous().isEmpty() ? Optional.of(step) : Optional.empty();
    }

    private static Shot shot(Plan full, Plan step, int number, double off) {
        OperatingPoint point = step.stated().strongest().orElseThrow();
        double added = point.wheelPower() - off;
        double band = TWO * PowerUncertainty.of(step.car(), point, off);
        double low = point.wheelPower() - band;
        double high = point.wheelPower() + band;
        return new Shot(
                number,
                added / (full.stated().power() - off),
                step,
                point,
                added,
                low,
                high,
                SparkAdvice.of(step.stated(), point),
                new Checkpoints(step.stated(), point).all(low, high));
    }

    /**
     * The last step.
     *
     * @return the shot of the plan itself; empty when it uses no nitrous
     */
    public Optional<Shot> fullShot() {
        return shots.isEmpty() ? Optional.empty() : Optional.of(shots.get(shots.size() - 1));
    }
}
