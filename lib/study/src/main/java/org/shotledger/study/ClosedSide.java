package org.shotledger.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.limits.Limit;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/** The limits with the nitrous closed, exact. They do not know the spark, which is later only while it flows: each is worked out once. */
final class ClosedSide {
    private final Plan plan;
    private final Names names;
    private final List<Case> weathers;
    private final Map<Setup, Closest> known = new HashMap<>();

    ClosedSide(Plan plan, Names names) {
        this.plan = plan;
        this.names = names;
        this.weathers =
                plan.job().cases().stream().map(Site::weather).distinct().toList();
    }

    Closest of(Setup setup) {
        return known.computeIfAbsent(setup.withRetard(plan.setup().retard()), this::closest);
    }

    private Closest closest(Setup setup) {
        Closest closest = Closest.NONE;
        for (Case weather : weathers) {
            for (Limit limit : Evaluate.closed(plan.car(), setup, weather).all()) {
                closest = closest.or(limit.relativeMargin(), names.of(limit.key()));
            }
        }
        return closest;
    }
}
