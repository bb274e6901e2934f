package org.shotledger.view;

import org.shotledger.display.Displayable;
import org.shotledger.plan.Plan;
import org.shotledger.table.Shown;

/** The nitrous side of a plan as a whole: what limits its flow, what moves it, and how well it is known. */
public final class FeedView {
    private FeedView() {}

    /**
     * The flow over bottle pressure with its band, measured holes and a square-root law; the part that chokes with each jet; and how far a filter,
     * a hose and a missed purge move the flow.
     *
     * @param plan the plan
     * @param shown the units
     * @return pictures, sentences and tables; one sentence where the plan uses no nitrous
     */
    public static Displayable of(Plan plan, Shown shown) {
        if (plan.stated().withNitrous().isEmpty()) {
            return new Sentence("This plan sprays no nitrous oxide: there is no feed path to look at.");
        }
        String outside = String.join(" ", plan.outside());
        return View.of(
                FlowCharts.againstSquareRoot(plan.stated(), shown.first()),
                new Sentence(FlowCharts.whyFlatter(plan.stated())),
                new Sentence(outside.isEmpty() ? "" : "Outside what was measured: " + outside),
                FlowTables.limiting(plan.stated()).in(shown),
                FlowTables.changes(plan.stated()).in(shown));
    }
}
