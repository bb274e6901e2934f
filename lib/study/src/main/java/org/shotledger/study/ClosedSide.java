package org.shotledger.study;

import java.util.List;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;
import org.shotledger.study.BottleSide.Closest;

/** The limits with the nitrous closed, exact: driving without it, armed outside its speeds, and just after it has closed. */
final class ClosedSide {
    private ClosedSide() {}

    static Closest of(Plan plan, Setup setup) {
        Closest closest = new Closest();
        BoostTarget boost = setup.boost();
        Setup off = setup.withoutJets();
        Setup armed = off.withBoost(new BoostTarget(boost.armed(), boost.armed(), boost.tolerance()));
        List<Case> cases = plan.job().cases();
        for (int i = 0; i < cases.size(); i++) {
            Case at = cases.get(i);
            for (OperatingPoint point : Evaluate.of(plan.car(), off, at).off()) {
                offer(plan.car(), point, closest, i);
            }
            for (OperatingPoint point : Evaluate.of(plan.car(), armed, at).off()) {
                if (!setup.arming().contains(point.rpm())) {
                    offer(plan.car(), point, closest, i);
                }
            }
            closing(plan.car(), armed, at, closest, i);
        }
        return closest;
    }

    private static void closing(Car car, Setup armed, Case at, Closest closest, int i) {
        double[] open = org.shotledger.evaluate.Speeds.withNitrous(car, armed.arming());
        double rpm = open[open.length - 1];
        try {
            double plenum = at.air().pressure() + armed.boost().armed().at(rpm);
            OperatingPoint point = Evaluate.model(car, armed, at).at(rpm, plenum, Mode.CLOSING);
            if (point.shaft().holdsBoost()) {
                offer(car, point, closest, i);
            }
        } catch (NoAnswerException none) {
            // an engine that cannot hold this boost without nitrous has less: no limit is closer
        }
    }

    private static void offer(Car car, OperatingPoint point, Closest closest, int at) {
        double[] margins = PointLimits.margins(car, point);
        for (int i = 0; i < margins.length; i++) {
            closest.offer(margins[i], i, at);
        }
    }
}
