package org.shotledger.whathelps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.job.Job;
import org.shotledger.limits.Verdict;
import org.shotledger.plan.Plan;

/** What is recommended must do what it says: the changed job is planned again in full. */
class WhatHelpsTest {
    private static final Job JOB =
            Job.load(Path.of("../../data/whimbrel")).with("target.passes", "2").with("target.wheel-power", "680 hp");
    private static final Job CHOKED = JOB.with("nitrous-system.fuel.solenoid.bore", "0.8 mm");
    private static final Plan BROKEN = Plan.find(CHOKED);

    @Test
    void the_change_found_lets_the_plan_be_made() {
        assertEquals(Verdict.BROKEN, BROKEN.verdict());
        Change larger =
                Change.times("a larger fuel solenoid", "nitrous-system.fuel.solenoid.bore", Cost.SMALL_PART, 3.75);
        WhatHelps search = WhatHelps.of(BROKEN, List.of(larger), 1);
        Attempt found = search.cheapest()
                .orElseThrow(() -> new AssertionError(search.attempts().toString()));
        Plan mended = Plan.find(CHOKED.with(found.change().path(), found.after()));
        assertNotEquals(Verdict.BROKEN, mended.verdict(), found.toString());
        assertEquals(mended.stated().power() - BROKEN.stated().power(), found.powerGained(), 1e-6);
    }

    @Test
    void a_change_that_mends_a_part_of_the_way_counts_as_help() {
        Plan far = Plan.find(
                JOB.with(JOB.target().withWheelPower(1.3 * JOB.target().wheelPower())));
        assertEquals(Verdict.BROKEN, far.verdict());
        Change stronger = Change.times("a stronger crank", "limits.crank-torque", Cost.ENGINE, 1.02);
        Change both = Change.times("pistons for more pressure", "limits.peak-pressure", Cost.ENGINE, 1.06);
        WhatHelps search = WhatHelps.of(far, List.of(stronger, both), 2);
        assertEquals(2, search.attempts().size());
        for (Attempt attempt : search.helping()) {
            assertTrue(attempt.marginGained() > 0 || attempt.powerGained() > 0 || attempt.mends(), attempt.toString());
        }
    }

    @Test
    void no_change_may_move_a_hard_limit() {
        for (String path : List.of("limits.relief-share", "bottle.relief-pressure", "bottle.hottest-soak")) {
            var refused =
                    assertThrows(IllegalArgumentException.class, () -> Change.times("more", path, Cost.SETTING, 1.1));
            assertTrue(refused.getMessage().contains("not to be moved"), refused.getMessage());
        }
    }

    @Test
    void every_common_change_names_a_value_of_the_sheet_and_parts_come_from_the_catalogue() {
        List<Change> parts = CommonChanges.withParts(Path.of("../../data/catalogue"));
        assertEquals(CommonChanges.ALL.size(), parts.size());
        for (Change change : parts) {
            assertTrue(change.fits(JOB), change.path());
        }
        Change solenoid = parts.stream()
                .filter(c -> c.path().equals("nitrous-system.fuel.solenoid.bore"))
                .findFirst()
                .orElseThrow();
        var now = CHOKED.car().origin(solenoid.path()).orElseThrow();
        String next = solenoid.steps().get(0).from(now).orElseThrow();
        assertTrue(CHOKED.with(solenoid.path(), next)
                        .car()
                        .nitrous()
                        .fuel()
                        .solenoid()
                        .bore()
                > now.value());
    }

    @Test
    void a_change_the_sheet_refuses_is_reported_and_not_thrown() {
        Change absurd = Change.to("an absurd solenoid", "nitrous-system.nitrous.solenoid.bore", Cost.SMALL_PART, "4 m");
        WhatHelps search = WhatHelps.of(BROKEN, List.of(absurd), 1);
        assertTrue(
                search.attempts().get(0).limit().startsWith("refused: "),
                search.attempts().toString());
        assertFalse(search.attempts().get(0).helps());
    }
}
