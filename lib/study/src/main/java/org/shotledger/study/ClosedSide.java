package org.shotledger.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.evaluate.Speeds;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/**
 * The limits with the nitrous closed, exact: driving without it, armed outside its speeds, and just after it has closed. Driving
 * without it knows neither spark nor boost of the armed engine, the others no spark: each is worked out once.
 */
final class ClosedSide {
    private final Plan plan;
    private final List<Case> weathers;
    private final Map<Setup, Closest> known = new HashMap<>();

    ClosedSide(Plan plan) {
        this.plan = plan;
        this.weathers =
                plan.job().cases().stream().map(Site::weather).distinct().toList();
    }

    Closest of(Setup setup) {
        BoostTarget boost = setup.boost();
        Setup off = plan.setup().withMixture(setup.mixture()).withoutJets();
        Setup armed = off.withBoost(new BoostTarget(boost.armed(), boost.armed(), boost.tolerance()));
        return known.computeIfAbsent(off, this::off).or(known.computeIfAbsent(armed, this::armed));
    }

    private Closest off(Setup off) {
        Closest closest = Closest.NONE;
        for (Case weather : weathers) {
            for (OperatingPoint point : Evaluate.of(plan.car(), off, weather).off()) {
                closest = closest.or(closest(point));
            }
        }
        return closest;
    }

    private Closest armed(Setup armed) {
        Car car = plan.car();
        Closest closest = Closest.NONE;
        for (Case weather : weathers) {
            for (double rpm : Speeds.all(car, armed.arming())) {
                if (!armed.arming().contains(rpm)) {
                    closest = closest.or(Evaluate.at(car, armed, weather, rpm)
                            .map(this::closest)
                            .orElse(Closest.NONE));
                }
            }
            closest = closest.or(closing(armed, weather));
        }
        return closest;
    }

    private Closest closing(Setup armed, Case at) {
        double[] open = Speeds.withNitrous(plan.car(), armed.arming());
        double rpm = open[open.length - 1];
        try {
            double plenum = at.air().pressure() + armed.boost().armed().at(rpm);
            OperatingPoint point = Evaluate.model(plan.car(), armed, at).at(rpm, plenum, Mode.CLOSING);
            return point.shaft().holdsBoost() ? closest(point) : Closest.NONE;
        } catch (NoAnswerException none) {
            // an engine that cannot hold this boost without nitrous has less: no limit is closer
            return Closest.NONE;
        }
    }

    private Closest closest(OperatingPoint point) {
        Closest closest = Closest.NONE;
        double[] margins = PointLimits.margins(plan.car(), point);
        for (int i = 0; i < margins.length; i++) {
            closest = closest.or(margins[i], i);
        }
        return closest;
    }
}
