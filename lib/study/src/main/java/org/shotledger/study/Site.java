package org.shotledger.study;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.evaluate.Speeds;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/**
 * One engine speed in one weather at which combinations are looked at.
 *
 * @param at the weather; its bottle is not looked at
 * @param rpm engine speed, rev/min
 * @param mode on, or opening with the boost that the control may overshoot
 */
record Site(Case at, double rpm, Mode mode) {

    /** Plenum pressure here, Pa absolute. */
    double plenum(Setup setup) {
        double over = mode == Mode.OPENING ? setup.boost().tolerance() : 0;
        return at.air().pressure() + setup.boost().armed().at(rpm) + over;
    }

    /** The case without what does not reach the engine but through the nitrous flow. */
    static Case weather(Case at) {
        return at.withBottle(BottleState.FULL).named("");
    }

    /**
     * The sites of a plan: in every weather both ends and the middle of the speeds with nitrous, the speed of most power, and those
     * at which a limit of the plan is closest. They are the plan's, whatever is varied, so that no verdict hangs on the other
     * values of an axis.
     */
    static List<Site> of(Plan plan) {
        List<Site> sites = new ArrayList<>();
        for (Case weather :
                plan.job().cases().stream().map(Site::weather).distinct().toList()) {
            TreeSet<Double> speeds = ends(plan);
            for (Outcome outcome : plan.outcomes()) {
                outcome.strongest().ifPresent(point -> speeds.add(point.rpm()));
                if (weather(outcome.at()).equals(weather)) {
                    speeds.addAll(closest(plan.car(), outcome.withNitrous()));
                }
            }
            speeds.forEach(rpm -> sites.add(new Site(weather, rpm, Mode.NITROUS)));
            sites.add(new Site(weather, speeds.first(), Mode.OPENING));
        }
        return sites;
    }

    private static TreeSet<Double> ends(Plan plan) {
        double[] open = Speeds.withNitrous(plan.car(), plan.setup().arming());
        return new TreeSet<>(List.of(open[0], open[open.length / 2], open[open.length - 1]));
    }

    private static List<Double> closest(Car car, List<OperatingPoint> points) {
        List<Double> speeds = new ArrayList<>();
        double[] least = new double[PointLimits.count()];
        java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
        double[] where = new double[least.length];
        for (OperatingPoint point : points) {
            double[] margins = PointLimits.margins(car, point);
            for (int i = 0; i < least.length; i++) {
                if (margins[i] < least[i]) {
                    least[i] = margins[i];
                    where[i] = point.rpm();
                }
            }
        }
        for (double rpm : where) {
            if (rpm > 0) {
                speeds.add(rpm);
            }
        }
        return speeds;
    }
}
