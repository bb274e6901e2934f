package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.confidence.FlowTestAdvice;
import org.shotledger.plan.Plan;
import org.shotledger.session.Session;
import org.shotledger.setup.Setup;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;

/** The nitrous side of the invented demonstration job, and its flow tests, as a reader sees them. */
class FeedViewTest {
    private static final Plan PLAN = Demo.PLAN;

    @Test
    void everyJetShownNamesThePartThatChokesAndThePlansOwnIsAmongThem() {
        Listing rows = FlowTables.limiting(PLAN.stated()).in(Shown.SI);
        double own = 1e3 * PLAN.setup().jets().orElseThrow().nitrousBore();
        assertTrue(
                Demo.column(rows, 0).stream().anyMatch(cell -> Math.abs(Double.parseDouble(cell) - own) < 1e-6),
                () -> own + " mm is not in " + Demo.column(rows, 0));
        // the passages of 1.8 mm (71 thou) have over four times the area of the smallest jets shown, and no more than
        // the largest with
        // their boiling flow behind them
        List<String> choking = Demo.column(rows, 1);
        assertEquals("nitrous jet", choking.get(0));
        assertEquals("nozzle passage", choking.get(choking.size() - 1));
    }

    @Test
    void theWholeSideIsShownByOneVerb() {
        String html = Session.feed(PLAN).toHtml();
        for (String part :
                List.of("<svg", "What limits the nitrous oxide", "filter half blocked", "not purged", "until liquid")) {
            assertTrue(html.contains(part), part);
        }
        Setup dry = PLAN.setup().withoutJets();
        assertTrue(Session.feed(Plan.of(PLAN.job(), dry)).toText().contains("no nitrous oxide"));
    }

    @Test
    void theAdviceSaysWhatItsTestThenLeaves() {
        FlowTestAdvice advice = FlowTestAdvice.of(PLAN);
        FlowTestAdvice.Worth first = advice.tests().get(0);
        String said = FlowTables.said(advice);
        // a normal distribution holds nine in ten within 1.645 deviations
        String day = String.format(
                java.util.Locale.ROOT,
                "%.0f %% on the day",
                164.5 * first.after().deviation());
        assertTrue(said.contains(day), said);
        Listing rows = FlowTables.chances("the flows alone", advice.chances(unknown -> false, 1 << 12, 3));
        assertEquals(3, Demo.column(rows, 0).size());
        assertEquals(3, Demo.column(rows, 3).stream().distinct().count(), "each test moves the chance of both");
    }
}
