package org.shotledger.stepup;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.JetChoice;
import org.shotledger.budget.ShotSizer;
import org.shotledger.budget.WishException;
import org.shotledger.flow.JetFlow;

/**
 * A ladder of shots from small to target, all at the boost of the budget.
 *
 * @param offPower wheel power with the nitrous off at that boost, W
 * @param shots the shots, smallest first; the last is the budget's own pair
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

    /** Copies the list. */
    public StepUp {
        shots = List.copyOf(shots);
    }

    /**
     * The plan of a budget at 40, 60, 80 and 100 % of its shot.
     *
     * @param budget the budget
     * @return the plan
     */
    public static StepUp of(Budget budget) {
        return of(budget, USUAL_SHARES);
    }

    /**
     * The plan of a budget.
     *
     * @param budget the budget
     * @param shares shares of the full shot before the full one, ascending, each above 0 and below 1
     * @return the plan; a share for which the ladder has no pair of its own is left out
     */
    public static StepUp of(Budget budget, List<Double> shares) {
        ShotSizer sizer = ShotSizer.of(budget);
        double off = sizer.off().wheelPower();
        JetChoice.Option full = budget.jets().chosen();
        List<JetChoice.Option> options = new ArrayList<>();
        for (double share : shares) {
            if (!(share > 0 && share < 1)) {
                throw new IllegalArgumentException(
                        "A share of the step-up plan is " + share + "; allowed is above 0 and below 1.");
            }
            addIfNew(options, sizer, off + share * (full.wheelPower() - off), full);
        }
        options.add(full);
        List<Shot> shots = new ArrayList<>();
        for (JetChoice.Option option : options) {
            shots.add(shot(budget, sizer, option, shots.size() + 1, off));
        }
        return new StepUp(off, shots);
    }

    private static void addIfNew(
            List<JetChoice.Option> options, ShotSizer sizer, double wheelPower, JetChoice.Option full) {
        try {
            JetChoice.Option option = sizer.onLadder(wheelPower);
            double before =
                    options.isEmpty() ? 0 : options.get(options.size() - 1).wheelPower();
            if (option.wheelPower() > before && option.wheelPower() < full.wheelPower()) {
                options.add(option);
            }
        } catch (WishException noJets) {
            // the ladder begins above this share
        }
    }

    private static Shot shot(Budget budget, ShotSizer sizer, JetChoice.Option option, int step, double off) {
        Evaluation point = sizer.strongest(option.pair());
        double added = point.wheelPower() - off;
        double band = TWO * uncertainty(budget, point, off);
        double low = point.wheelPower() - band;
        double high = point.wheelPower() + band;
        return new Shot(
                step,
                added / (budget.jets().chosen().wheelPower() - off),
                option,
                added,
                low,
                high,
                SparkAdvice.of(budget, point),
                new Checkpoints(budget, point).all(low, high));
    }

    /**
     * The base pull carries the power without nitrous, the flow model and the effectiveness what nitrous adds; the three are
     * taken as independent.
     */
    private static double uncertainty(Budget budget, Evaluation point, double off) {
        var pull = budget.build().basePull();
        double added = point.wheelPower() - off;
        double flow = point.nitrous().jets().stream()
                .mapToDouble(JetFlow::expectedError)
                .max()
                .orElse(0);
        double effectiveness = budget.ledger()
                .find("nitrous-effectiveness")
                .map(e -> e.uncertainty() / e.value())
                .orElse(0.0);
        double base = pull.uncertainty() / pull.wheelPower() * off;
        return Math.sqrt(base * base + added * added * (flow * flow + effectiveness * effectiveness));
    }

    /**
     * The last step.
     *
     * @return the shot of the budget itself
     */
    public Shot fullShot() {
        return shots.get(shots.size() - 1);
    }
}
