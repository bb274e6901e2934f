package org.shotledger.study;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/** The limits with the nitrous closed, exact. They know boost and mixture only, so each pair of these is worked out once. */
final class ClosedSide {
    /** What they depend on. */
    private record Alike(Setup setup) {}

    private ClosedSide() {}

    /** One of the setups that have these limits in common. */
    static Setup alike(Plan plan, Setup setup) {
        return plan.setup().withBoost(setup.boost()).withMixture(setup.mixture());
    }

    /** The closest of them. */
    static Closest closest(Plan plan, Names names, Setup setup) {
        Closest closest = Closest.NONE;
        for (Limit limit : limits(plan, setup).all()) {
            closest = closest.or(limit.relativeMargin(), names.of(limit.key()));
        }
        return closest;
    }

    /** Each where it is closest over all cases. */
    static Limits limits(Plan plan, Setup setup) {
        Setup alike = alike(plan, setup);
        return plan.known().of(new Alike(alike), () -> worked(plan, alike));
    }

    /** Of the cases that share a weather only the first is looked at. */
    private static Limits worked(Plan plan, Setup setup) {
        Map<Case, Case> first = new LinkedHashMap<>();
        plan.job().cases().forEach(at -> first.putIfAbsent(Site.weather(at), at));
        return Limits.closest(first.values().stream()
                .flatMap(at -> Evaluate.closed(plan.car(), setup, at).all().stream())
                .toList());
    }
}
