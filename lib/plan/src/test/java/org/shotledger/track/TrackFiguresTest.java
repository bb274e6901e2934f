package org.shotledger.track;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.engine.MoistAir;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.PassPlan;
import org.shotledger.setup.Setup;
import org.shotledger.track.TrackPass.Moment;
import org.shotledger.workshop.Track;

/** What a pass and the card of a day show, worked out again from the parts; every test runs its own pass. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class TrackFiguresTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Setup SETUP =
            JOB.setup().withBoost(BoostTarget.constant(1.1e5)).withJets(new JetPair(1.0e-3, 0.52e-3));
    private static final Outcome OUTCOME = Evaluate.of(JOB.car(), SETUP, JOB.stated());
    private static final Track EIGHTH = new Track(List.of(201.168), 0, 0, 1.1, 0, new Track.Coming(2, 0.1, 0, 1, 100));

    private static Plan plan(Setup setup, MoistAir air) {
        return Plan.of(JOB.withCases(List.of(JOB.stated().withAir(air))), setup);
    }

    private static Plan plan(Setup setup) {
        return plan(setup, JOB.stated().air());
    }

    /** Each row from the speed of the shaft and the nitrous used; both fuels by the trapezoid between rows. */
    @Test
    void every_row_of_a_pass_is_the_field_at_its_shaft_and_its_bottle() {
        TrackPass pass = TrackPass.of(OUTCOME, EIGHTH);
        EngineField field = EngineField.of(OUTCOME);
        BottleOverMass bottle = (BottleOverMass) BottleOverMass.of(OUTCOME, field);
        double fuel = 0;
        double flowBefore = 0;
        double timeBefore = 0;
        int open = 0;
        int shifting = 0;
        for (Moment row : pass.moments()) {
            double strength = row.nitrous() * bottle.strength(row.used());
            double plenum = field.plenum(row.rpm(), row.shaft() * Math.PI / 30, strength);
            assertEquals(plenum - JOB.stated().air().pressure(), row.boost(), 1e-3);
            assertEquals(bottle.pressure(row.used()), row.bottlePressure(), 1e-3);
            double flow = 0;
            if (row.power() > 0) {
                flow = field.fuel(row.rpm(), plenum, row.nitrous());
                double lambda = field.lambda(row.rpm(), plenum, row.nitrous())
                        + row.nitrous() * bottle.lambdaChange(row.used());
                assertEquals(lambda, row.lambda(), 1e-9);
                assertEquals(field.peak(row.rpm(), plenum, strength), row.peakPressure(), 1e-3);
            } else {
                assertTrue(Double.isNaN(row.lambda()) && Double.isNaN(row.peakPressure()));
                shifting++;
            }
            fuel += (row.time() - timeBefore) * (flow + flowBefore) / 2;
            timeBefore = row.time();
            flowBefore = flow;
            assertEquals(fuel, row.fuel(), 1e-9);
            open += row.nitrous() > 0 ? 1 : 0;
        }
        assertTrue(open > 10 && shifting > 2, open + " rows open, " + shifting + " in shifts");
        assertTrue(fuel > 0.05, "kg: " + fuel);
    }

    @Test
    void without_nitrous_there_is_no_bottle_to_show() {
        TrackPass none = TrackPass.of(Evaluate.of(JOB.car(), SETUP.withoutJets(), JOB.stated()), EIGHTH);
        assertTrue(none.moments().stream().allMatch(row -> Double.isNaN(row.bottlePressure()) && row.used() == 0));
        assertEquals(Optional.empty(), none.highest(Moment::bottlePressure));
        assertTrue(none.bottleLasts());
    }

    @Test
    void the_highest_moment_passes_over_what_is_no_number() {
        TrackPass pass = TrackPass.of(OUTCOME, EIGHTH);
        double most = 0;
        for (Moment row : pass.moments()) {
            most = row.peakPressure() > most ? row.peakPressure() : most;
        }
        assertEquals(most, pass.highest(Moment::peakPressure).orElseThrow().peakPressure());
    }

    /** The compressor map has no answer below 2700 rpm; the engine there is that of the lowest speed with one. */
    @Test
    void a_car_that_starts_below_every_answer_of_the_models_still_runs() {
        Job job = JOB.with("vehicle.launch-speed", "2500 rpm");
        TrackPass slow = TrackPass.of(Evaluate.of(job.car(), SETUP, job.stated()), EIGHTH);
        assertTrue(
                slow.moments().stream().allMatch(row -> Double.isFinite(row.power()) && Double.isFinite(row.shaft())));
        double time = TrackPass.of(OUTCOME, EIGHTH).finish().time();
        assertTrue(slow.finish().time() > time && slow.finish().time() < 1.3 * time, slow.finish() + " after " + time);
    }

    /** A plan that counts one second knows too little nitrous for the pass; the bottle is then emptied anew. */
    @Test
    void a_pass_that_takes_more_than_was_counted_gets_the_whole_bottle() {
        Setup brief = SETUP.withPasses(new PassPlan(1, 1));
        Outcome outcome = Evaluate.of(JOB.car(), brief, JOB.stated());
        double counted = outcome.pass().orElseThrow().massUsed();
        TrackPass pass = TrackPass.of(outcome, EIGHTH);
        double used = pass.result().nitrousUsed();
        assertTrue(used > 1.5 * counted, used + " of " + counted + " kg");
        assertTrue(pass.knownNitrous() >= used && pass.bottleLasts());
        TrackPass over = new TrackPass(outcome, EIGHTH, pass.result(), pass.moments(), Math.nextDown(used));
        assertFalse(over.bottleLasts());
        assertTrue(new TrackPass(outcome, EIGHTH, pass.result(), pass.moments(), used).bottleLasts());
    }

    /** Sheet: second gear, 0.1 s; what differs stands in the row's name. */
    @Test
    void the_usual_comparison_differs_in_what_it_says() {
        List<PassComparison.Row> rows = PassComparison.usual(plan(SETUP)).rows();
        assertEquals(
                List.of(
                        "the plan",
                        "boost alone, bottle closed",
                        "half a second later",
                        "ramp of a second from 40 %",
                        "from gear 3 on",
                        "from gear 1 on"),
                rows.stream().map(PassComparison.Row::name).toList());
        Track.Coming set = JOB.workshop().track().arming();
        assertEquals(2, set.gear());
        assertEquals(set, coming(rows, 0));
        assertEquals(new Track.Coming(2, 0.6, set.ramp(), set.startShare(), set.hysteresis()), coming(rows, 2));
        assertEquals(new Track.Coming(2, 0.1, 1, 0.4, set.hysteresis()), coming(rows, 3));
        assertEquals(new Track.Coming(3, 0.1, set.ramp(), set.startShare(), set.hysteresis()), coming(rows, 4));
        assertEquals(new Track.Coming(1, 0.1, set.ramp(), set.startShare(), set.hysteresis()), coming(rows, 5));
        assertEquals(0, rows.get(1).pass().nitrousSeconds());
        assertTrue(rows.get(0).pass().nitrousSeconds() > rows.get(2).pass().nitrousSeconds());
        assertEquals(
                List.of("the plan"),
                PassComparison.usual(plan(SETUP.withoutJets())).rows().stream()
                        .map(PassComparison.Row::name)
                        .toList());
    }

    private static Track.Coming coming(List<PassComparison.Row> rows, int i) {
        return rows.get(i).pass().track().arming();
    }

    /** What the air does to the card needs no nitrous. */
    private static TrackCard alone(double start, MoistAir air) {
        return TrackCard.of(plan(
                SETUP.withoutJets().withBottle(new BottleFill(SETUP.bottle().charge(), start)), air));
    }

    /** The standard atmosphere at 1000 m has 89876 Pa and 8.50 degrees (ISO 2533); dry air denser than at -1000 m stays there. */
    @Test
    void density_altitude_is_where_the_standard_air_is_as_thin() {
        assertEquals(1000, alone(293.15, new MoistAir(89_876, 281.65, 0)).densityAltitude(), 5);
        // 20 degrees warmer at the same pressure: 1.1117 * 281.65 / 301.65 = 1.0380 kg/m3, which the table has at 1700
        // m
        TrackCard warm = alone(293.15, new MoistAir(89_876, 301.65, 0));
        assertEquals(1.0380, warm.density(), 5e-4);
        assertEquals(1695, warm.densityAltitude(), 15);
        assertEquals(-1000, alone(293.15, new MoistAir(112e3, 260, 0)).densityAltitude());
    }

    /** The charge falls by what a pass uses, until less than half a pass is left. */
    @Test
    void the_scale_is_counted_down_by_what_a_pass_uses() {
        double used = OUTCOME.pass().orElseThrow().massUsed();
        Setup setup = SETUP.withBottle(new BottleFill(3.2 * used, 303)).withPasses(new PassPlan(9, 10));
        Plan plan = plan(setup);
        TrackCard card = TrackCard.of(plan);
        double each = plan.stated().pass().orElseThrow().massUsed();
        assertEquals(
                plan.stated().pass().orElseThrow().given(), card.left().get(0).passes());
        for (int i = 0; i < card.left().size(); i++) {
            TrackCard.Left left = card.left().get(i);
            assertEquals(3.2 * used - i * each, left.charge(), 1e-9);
            assertTrue(left.charge() > each / 2, "less than half a pass is no row");
            assertTrue(
                    i == 0 || left.passes() <= card.left().get(i - 1).passes(),
                    card.left().toString());
        }
        double after = 3.2 * used - card.left().size() * each;
        assertTrue(after <= each / 2, "the next row would have " + after);
        Plan once = plan(setup.withPasses(new PassPlan(1, 10)));
        assertEquals(2, TrackCard.of(once).left().size(), "one more than asked for");
    }

    /**
     * Ten degrees more with the same water; a bottle that is to be cooler than that air takes its warmth, never above 308 K. Nitrous oxide
     * at 20 degrees boils at 50.5 bar (Lemmon and Span, J. Chem. Eng. Data 51 (2006) 785).
     */
    @Test
    void the_hotter_hour_warms_air_and_bottle() {
        MoistAir mild = new MoistAir(95e3, 290, 0.6);
        TrackCard card = alone(293.15, mild);
        assertEquals(50.5e5, card.bottlePressure(), 0.4e5);
        Outcome hotter = card.hotter();
        assertEquals(300, hotter.at().air().temperature(), 1e-9);
        assertEquals(95e3, hotter.at().air().pressure());
        assertEquals(mild.vapourPressure(), hotter.at().air().vapourPressure(), 1e-6 * mild.vapourPressure());
        assertEquals(JOB.stated().name() + ", hotter", hotter.at().name());
        assertEquals(300, hotter.setup().bottle().startTemperature(), 1e-9);
        TrackCard hot = alone(293.15, new MoistAir(95e3, 303, 0.2));
        assertEquals(308, hot.hotter().setup().bottle().startTemperature());
        assertEquals(303, alone(303, mild).hotter().setup().bottle().startTemperature());
    }
}
