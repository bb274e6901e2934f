package org.shotledger.track;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Setup;
import org.shotledger.workshop.Track;

/** The invented demonstration car along a track: laws that hold whatever its figures are, and a rule of the trade as a band. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class TrackPassTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Setup SETUP =
            JOB.setup().withBoost(BoostTarget.constant(1.1e5)).withJets(new JetPair(1.0e-3, 0.52e-3));
    private static final Outcome OUTCOME = Evaluate.of(JOB.car(), SETUP, JOB.stated());
    private static final TrackPass.Prepared CAR = TrackPass.prepared(OUTCOME);
    private static final Track QUARTER =
            new Track(Track.USUAL.marks(), Track.USUAL.rollOut(), 0, 1.1, 0, new Track.Coming(2, 0.1, 0, 1, 100));
    private static final TrackPass PASS = CAR.on(QUARTER);

    @Test
    void every_joule_is_found_again() {
        assertTrue(Math.abs(PASS.result().energy().imbalance()) < 1e-6);
    }

    /** Power from the trace, integrated by another rule than the integrator's, is the engine's work of the books. */
    @Test
    void the_work_of_the_trace_is_that_of_the_books() {
        List<TrackPass.Moment> rows = PASS.moments();
        double work = 0;
        for (int i = 1; i < rows.size(); i++) {
            work += (rows.get(i).power() + rows.get(i - 1).power())
                    / 2
                    * (rows.get(i).time() - rows.get(i - 1).time());
        }
        double books = PASS.result().energy().engine();
        assertEquals(books, work, 0.02 * books);
    }

    @Test
    void seconds_and_mass_of_the_nitrous_belong_together() {
        double flow = OUTCOME.overPass().get(0).massFlow();
        assertTrue(PASS.nitrousSeconds() > 1);
        // the flow falls as the bottle empties, and never rises above that of the first moment by more than the boost's
        // share
        assertTrue(PASS.result().nitrousUsed() <= 1.05 * flow * PASS.nitrousSeconds());
        assertTrue(PASS.result().nitrousUsed() >= 0.7 * flow * PASS.nitrousSeconds());
        assertTrue(PASS.bottleLasts());
    }

    @Test
    void the_nitrous_flows_inside_its_engine_speeds_and_gears_only() {
        for (TrackPass.Moment row : PASS.moments()) {
            if (row.nitrous() > 0) {
                assertTrue(row.gear() >= 2, "gear " + row.gear());
                assertTrue(
                        row.rpm() >= SETUP.arming().rpmLow() - 101
                                && row.rpm() <= SETUP.arming().rpmHigh() + 1,
                        "rpm " + row.rpm());
            }
        }
    }

    /** A held point of the pass is the operating point that judged the setup. */
    @Test
    void power_with_the_boost_asked_for_is_that_of_the_outcome() {
        TrackPass.Moment there = PASS.moments().stream()
                .filter(row -> row.nitrous() == 1 && !row.held() && Math.abs(row.boost() - 1.1e5) < 500)
                .findFirst()
                .orElseThrow();
        double expected = OUTCOME.at(there.rpm()).orElseThrow().power().brake();
        assertEquals(expected, there.power(), 0.03 * expected);
    }

    /** t = 5.825 (m/P)^(1/3) and v = 234 (P/m)^(1/3) with lb, hp, s and mph (Huntington's rule, from memory; a trade rule, not physics). */
    @Test
    void the_finish_lies_where_the_rule_of_power_and_weight_puts_it() {
        double pounds = JOB.car().vehicle().orElseThrow().mass() / 0.45359237;
        double horses = OUTCOME.power() / 745.69987;
        double time = 5.825 * Math.cbrt(pounds / horses);
        double speed = 234 * Math.cbrt(horses / pounds) * 0.44704;
        assertEquals(time, PASS.finish().time(), 0.2 * time);
        assertEquals(speed, PASS.finish().speed(), 0.1 * speed);
    }

    @Test
    void later_nitrous_is_a_slower_pass_and_none_the_slowest() {
        TrackPass later = CAR.on(QUARTER.with(new Track.Coming(3, 1, 0, 1, 100)));
        TrackPass none = TrackPass.of(Evaluate.of(JOB.car(), SETUP.withoutJets(), JOB.stated()), QUARTER);
        assertTrue(PASS.finish().time() < later.finish().time());
        assertTrue(later.finish().time() < none.finish().time());
        assertEquals(0, none.nitrousSeconds());
    }
}
