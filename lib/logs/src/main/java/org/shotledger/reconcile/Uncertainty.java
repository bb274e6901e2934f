package org.shotledger.reconcile;

import org.shotledger.car.SheetPaths;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.flow.JetFlow;
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
public record Uncertainty(double tolerance, String toleranceWords, double all, String allWords) {
    static final Uncertainty NONE = new Uncertainty(Double.NaN, "", Double.NaN, "");
    private static final double ROOT3 = Math.sqrt(3);
    /** Relative step of a derivative: our choice. */
    private static final double NUDGE = 0.01;

    /**
     * The uncertainty about an expected figure.
     *
     * @param outcome what the setup that was run is expected to do
     * @param what the figure
     * @param point the expected operating point
     * @return its standard uncertainties
     */
    static Uncertainty of(Expectation expectation, Outcome outcome, ComparedChannel what, OperatingPoint point) {
        return switch (what) {
            case WHEEL_POWER, CRANK_POWER -> power(expectation, outcome, what, point);
            case LAMBDA -> lambda(expectation, outcome, point);
            case MANIFOLD_PRESSURE -> stated(outcome, "base-pull.boost", "the stated band of the boost", 1);
            case FUEL_PRESSURE -> stated(outcome, "injection.regulator.base-pressure", "the band of the regulator", 1);
            case NITROUS_FUEL_PRESSURE ->
                stated(outcome, SheetPaths.fuelPressureAtJets(outcome.car()), "the band of the regulator", 1);
            case BOTTLE_PRESSURE -> NONE;
        };
    }

    private static Uncertainty stated(Outcome outcome, String path, String words, double factor) {
        return outcome.car()
                .origin(path)
                .map(o -> o.uncertainty() * factor)
                .filter(u -> u > 0)
                .map(u -> new Uncertainty(Double.NaN, "", u, words))
                .orElse(NONE);
    }

    /** The base pull carries the power without nitrous, the flow of the jets what the nitrous adds; taken as independent. */
    private static Uncertainty power(
            Expectation expectation, Outcome outcome, ComparedChannel what, OperatingPoint point) {
        double base = outcome.car().basePull().uncertainty();
        double power = what == ComparedChannel.WHEEL_POWER
                ? point.wheelPower()
                : point.power().brake();
        if (!point.mode().nitrousFlows()) {
            return base > 0 ? new Uncertainty(Double.NaN, "", base * power, "the base pull") : NONE;
        }
        double alone =
                expectation.without(point).map(OperatingPoint::wheelPower).orElse(0.0);
        double added = (point.wheelPower() - alone) / point.wheelPower();
        double share = Math.hypot(base * (1 - added), flow(point) * added);
        return new Uncertainty(Double.NaN, "", share * power, "the base pull and the nitrous flow model");
    }

    /** Relative error the flow model expects of itself. */
    private static double flow(OperatingPoint point) {
        return point.nitrous().jets().stream()
                .mapToDouble(JetFlow::expectedError)
                .max()
                .orElse(0);
    }

    /** Base mixture; with the nitrous on the bore of both jets, one drill for all, and the flow model. */
    private static Uncertainty lambda(Expectation expectation, Outcome outcome, OperatingPoint point) {
        double main = outcome.car()
                .origin("base-pull.lambda")
                .map(o -> o.uncertainty())
                .filter(u -> u > 0)
                .orElse(0.0);
        if (!point.mode().nitrousFlows()) {
            return main > 0 ? new Uncertainty(Double.NaN, "", main, "the base pull's mixture") : NONE;
        }
        JetPair pair = outcome.setup().jets().orElseThrow();
        double byNitrous = slope(expectation, point, true);
        double byFuel = slope(expectation, point, false);
        double drill = Supply.USUAL_BORE_TOLERANCE / ROOT3;
        double jets = Math.hypot(byNitrous * 2 * drill / pair.nitrousBore(), byFuel * 2 * drill / pair.fuelBore());
        double model = byNitrous * flow(point);
        return new Uncertainty(
                jets,
                "the jets' usual tolerance (half a thousandth of an inch on the bore; common practice, no source)",
                Math.sqrt(jets * jets + model * model + main * main),
                "the jets' tolerance, the nitrous flow model and the base pull's mixture together");
    }

    /** Change of lambda by a relative change of one flow. */
    private static double slope(Expectation expectation, OperatingPoint point, boolean nitrous) {
        return (lambda(expectation, point, nitrous, 1 + NUDGE) - lambda(expectation, point, nitrous, 1 - NUDGE))
                / (2 * NUDGE);
    }

    private static double lambda(Expectation expectation, OperatingPoint point, boolean nitrous, double share) {
        return expectation
                .sharing(point, nitrous ? share : 1, nitrous ? 1 : share)
                .map(OperatingPoint::lambda)
                .orElse(Double.NaN);
    }
}
