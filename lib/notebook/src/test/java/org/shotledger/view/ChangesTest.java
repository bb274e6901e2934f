package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shotledger.document.Revision;
import org.shotledger.plan.Plan;
import org.shotledger.table.Shown;
import org.shotledger.units.UnitSystem;

/** What is told when a plan is issued again. */
class ChangesTest {
    private static final Plan BEFORE = Demo.PLAN;
    private static Plan after;

    @BeforeAll
    static void change() {
        after = Demo.Written.BEFORE; // that issue came before the plan; here it is looked at from the other side
    }

    @Test
    void theSheetIsToldWithTheNewReasonsAndWithoutTheOldOnes() {
        var rows = Changes.sheet(BEFORE, after);
        assertEquals(
                List.of("target.wheel-power", "bottle.start-temperature"),
                Demo.column(rows, 0).stream()
                        .sorted(java.util.Comparator.reverseOrder())
                        .toList());
        assertEquals("a cooler <bottle>", Demo.cell(rows, "bottle.start-temperature", 3));
        assertEquals("changed from 720 hp, no reason given", Demo.cell(rows, "target.wheel-power", 3));
        assertTrue(rows.toHtml().contains("a cooler &lt;bottle&gt;"), "escaped");
    }

    @Test
    void thePlanIsToldInBothUnits() {
        var us = Changes.plan(BEFORE, after).in(Shown.US);
        assertEquals("720 hp", Demo.cell(us, "wheel power asked for", 1));
        assertEquals("680 hp", Demo.cell(us, "wheel power asked for", 2));
        assertEquals("536.9 kW", Demo.cell(Changes.plan(BEFORE, after).in(Shown.SI), "wheel power asked for", 1));
        assertNotEquals(Demo.cell(us, "nitrous oxide flow", 1), Demo.cell(us, "nitrous oxide flow", 2));
        assertEquals("82.4 \u00b0F", Demo.cell(us, "bottle temperature", 2));
    }

    @Test
    void sentencesTellOnlyWhatShows() {
        assertEquals(List.of("The plan is the same."), Changes.sentences(BEFORE, BEFORE));
        assertTrue(Changes.sheet(BEFORE, BEFORE).isEmpty());
        assertTrue(
                Changes.sentences(BEFORE, after)
                        .contains("Wheel power asked for: 720 hp (536.9 kW), now 680 hp (507.1 kW)."),
                Changes.sentences(BEFORE, after).toString());
    }

    @Test
    void theNextIssueKeepsTheHistoryNewestFirst() {
        Issue first = Issue.first("A", "2026-06-20")
                .between("the owner", "the builder")
                .in(UnitSystem.SI);
        Issue third =
                first.next(BEFORE, "B", "2026-07-04", "A cooler bottle.").next(after, "C", "2026-07-11", "Less power.");
        assertEquals("C", third.number());
        assertEquals(List.of("Less power."), third.reasons());
        assertEquals(
                List.of("B", "A"),
                third.history().stream().map(Revision::number).toList());
        assertEquals(List.of("First issue."), third.history().get(1).differences());
        assertEquals("the owner", third.customer());
        assertEquals(UnitSystem.SI, third.charts());
        assertTrue(third.previous().isPresent() && first.previous().isEmpty());
        assertFalse(first.history().iterator().hasNext());
    }

    @Test
    void aSecondIssueTellsWhatChangedAndWhy() {
        var content = Demo.Written.DOCUMENT.content();
        assertEquals(
                List.of("B", "A"),
                content.revisions().stream().map(Revision::number).toList());
        List<String> told = content.revisions().get(0).differences();
        assertEquals(Demo.Written.REASON, told.get(0));
        assertTrue(told.size() > 2, told.toString());
    }
}
