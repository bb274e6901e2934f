package org.shotledger.track;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.plan.Plan;
import org.shotledger.workshop.Track;
import org.shotledger.workshop.Track.Coming;

/**
 * Passes that differ in one thing, side by side.
 *
 * @param rows the passes by what is different, the plan's own first
 */
public record PassComparison(List<Row> rows) {
    public PassComparison {
        rows = List.copyOf(rows);
    }

    /**
     * One pass.
     *
     * @param name what is different
     * @param pass the pass
     */
    public record Row(String name, TrackPass pass) {}

    /**
     * The plan's own pass, the same without nitrous, and with the nitrous coming on later, in a ramp, and in other gears.
     *
     * @param plan the plan
     * @return the passes
     * @throws IllegalArgumentException as {@link TrackPass#of(Plan)}
     */
    public static PassComparison usual(Plan plan) {
        Coming set = plan.job().workshop().track().arming();
        Map<String, Coming> others = new LinkedHashMap<>();
        others.put(
                "half a second later",
                new Coming(set.gear(), set.delay() + 0.5, set.ramp(), set.startShare(), set.hysteresis()));
        others.put("ramp of a second from 40 %", new Coming(set.gear(), set.delay(), 1, 0.4, set.hysteresis()));
        others.put(
                "from gear " + (set.gear() + 1) + " on",
                new Coming(set.gear() + 1, set.delay(), set.ramp(), set.startShare(), set.hysteresis()));
        if (set.gear() > 1) {
            others.put("from gear 1 on", new Coming(1, set.delay(), set.ramp(), set.startShare(), set.hysteresis()));
        }
        return of(plan, others);
    }

    /**
     * The plan's own pass, the same without nitrous, and with the nitrous coming on in other ways.
     *
     * @param plan the plan
     * @param others by what is different
     * @return the passes
     * @throws IllegalArgumentException as {@link TrackPass#of(Plan)}
     */
    public static PassComparison of(Plan plan, Map<String, Coming> others) {
        Track track = plan.job().workshop().track();
        TrackPass.Prepared engine = TrackPass.prepared(plan.stated());
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("the plan", engine.on(track)));
        if (plan.setup().jets().isPresent()) {
            Outcome closed = Evaluate.of(
                    plan.car(), plan.setup().withoutJets(), plan.stated().at());
            rows.add(new Row("boost alone, bottle closed", TrackPass.of(closed, track)));
            others.forEach((name, coming) -> rows.add(new Row(name, engine.on(track.with(coming)))));
        }
        return new PassComparison(rows);
    }
}
