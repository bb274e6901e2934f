package org.shotledger.reconcile;

import org.shotledger.budget.Budget;
import org.shotledger.budget.Conditions;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Entry;
import org.shotledger.budget.Evaluation;
import org.shotledger.flow.FeedFlow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.spread.Supply;

/**
 * How far a plan may lie off without anything being wrong: standard uncertainties (JCGM 100) of one expected figure.
 *
 * @param tolerance from what parts may differ, SI; NaN when it is not stated apart
 * @param toleranceWords what that is
 * @param all from everything the plan states, SI; NaN when it states none
 * @param allWords what that is
 */
public record Doubt(double tolerance, String toleranceWords, double all, String allWords) {
    static final Doubt NONE = new Doubt(Double.NaN, "", Double.NaN, "");
    private static final double ROOT3 = Math.sqrt(3);
    private static final double NUDGE = 0.01;

    /**
     * The doubt about an expected figure.
     *
     * @param budget the plan
     * @param what the figure
     * @param point the expected operating point
     * @return its standard uncertainties
     */
    static Doubt of(Budget budget, Compared what, Evaluation point) {
        return switch (what) {
            case WHEEL_POWER, CRANK_POWER -> power(budget, what, point);
            case LAMBDA -> lambda(budget, point);
            case MANIFOLD_PRESSURE -> stated(budget, "base-pull.boost", "the stated band of the boost", 1);
            case FUEL_PRESSURE -> stated(budget, "injection.regulator.base-pressure", "the band of the regulator", 1);
            case NITROUS_FUEL_PRESSURE ->
                stated(budget, "wet-kit.fuel.regulator.base-pressure", "the band of the regulator", 1);
            case BOTTLE_PRESSURE -> NONE;
        };
    }

    private static Doubt stated(Budget budget, String path, String words, double factor) {
        return budget.build()
                .origin(path)
                .map(o -> o.uncertainty() * factor)
                .filter(u -> u > 0)
                .map(u -> new Doubt(Double.NaN, "", u, words))
                .orElse(NONE);
    }

    /** The ledger's own figure with the nitrous on, the base pull's share with it off. */
    private static Doubt power(Budget budget, Compared what, Evaluation point) {
        double base = budget.build().basePull().uncertainty()
                / budget.build().basePull().wheelPower();
        double share = base;
        String words = "the base pull";
        if (point.nitrousOn()) {
            Entry entry = budget.ledger().find("wheel-power").orElseThrow();
            share = entry.uncertainty() / entry.value();
            words = "the base pull and the nitrous flow model";
        }
        double power = what == Compared.WHEEL_POWER
                ? point.wheelPower()
                : point.power().brake();
        return share > 0 ? new Doubt(Double.NaN, "", share * power, words) : NONE;
    }

    /** Base mixture; with the nitrous on the bore of both jets, one drill for all, and the flow model. */
    private static Doubt lambda(Budget budget, Evaluation point) {
        double main = budget.build()
                .origin("base-pull.lambda")
                .map(o -> o.uncertainty())
                .filter(u -> u > 0)
                .orElse(0.0);
        if (!point.nitrousOn()) {
            return main > 0 ? new Doubt(Double.NaN, "", main, "the base pull's mixture") : NONE;
        }
        JetPair pair = point.demand().jets().orElseThrow();
        double byNitrous = slope(budget, point, true);
        double byFuel = slope(budget, point, false);
        double drill = Supply.USUAL_BORE_TOLERANCE / ROOT3;
        double jets = Math.hypot(byNitrous * 2 * drill / pair.nitrousBore(), byFuel * 2 * drill / pair.fuelBore());
        Entry flow = budget.ledger().find("nitrous-flow").orElseThrow();
        double model = flow.uncertainty() > 0 ? byNitrous * flow.uncertainty() / flow.value() : 0;
        return new Doubt(
                jets,
                "the jets' usual tolerance (half a thousandth of an inch on the bore; common practice, no source)",
                Math.sqrt(jets * jets + model * model + main * main),
                "the jets' tolerance, the nitrous flow model and the base pull's mixture together");
    }

    /** Change of lambda by a relative change of one flow. */
    private static double slope(Budget budget, Evaluation point, boolean nitrous) {
        Conditions at = point.conditions();
        Demand demand = point.demand();
        FeedFlow feed = budget.evaluator().feed(at, demand);
        double up = budget.evaluator()
                .sharing(at, point.rpm(), demand, feed, nitrous ? 1 + NUDGE : 1, nitrous ? 1 : 1 + NUDGE)
                .lambda();
        double down = budget.evaluator()
                .sharing(at, point.rpm(), demand, feed, nitrous ? 1 - NUDGE : 1, nitrous ? 1 : 1 - NUDGE)
                .lambda();
        return (up - down) / (2 * NUDGE);
    }
}
