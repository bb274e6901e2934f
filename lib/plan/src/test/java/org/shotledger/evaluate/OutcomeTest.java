package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.car.Car;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.job.Job;
import org.shotledger.limits.Limit;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.JetSide;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.PassPlan;
import org.shotledger.setup.Setup;

/** How an outcome is put together: which points, which bottle, which pass. A narrow window and one short pass, so that it is quick. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class OutcomeTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Car CAR = JOB.car();
    private static final double TOLERANCE = 0.08e5;
    private static final Setup SETUP = JOB.setup()
            .withBoost(new BoostTarget(BoostTable.constant(1.2e5), BoostTable.constant(1.0e5), TOLERANCE))
            .withJets(new JetPair(1.0e-3, 0.56e-3))
            .withArming(new ActivationWindow(6500, 7000))
            .withPasses(new PassPlan(2, 5));
    private static final Case AT = JOB.stated();
    private static final double AMBIENT = AT.air().pressure();

    private static Outcome outcome(Case at) {
        return Evaluate.of(CAR, SETUP, at);
    }

    @Test
    void driving_without_nitrous_and_armed_have_their_own_boost() {
        Outcome outcome = outcome(AT);
        assertEquals(Speeds.all(CAR, SETUP.arming()).length, outcome.off().size(), "all speeds have an answer");
        for (OperatingPoint point : outcome.off()) {
            assertEquals(Mode.BOOST_ALONE, point.mode());
            assertEquals(AMBIENT + 1.2e5, point.wanted(), 1e-6);
            assertEquals(0, point.nitrous().massFlow());
        }
        double last = 0;
        for (OperatingPoint point : outcome.armed()) {
            assertEquals(AMBIENT + 1.0e5, point.wanted(), 1e-6);
            boolean open = point.rpm() >= 6500 && point.rpm() <= 7000;
            assertEquals(open ? Mode.NITROUS : Mode.ARMED, point.mode(), point.rpm() + " rpm");
            assertEquals(open, point.nitrous().massFlow() > 0);
            assertTrue(point.rpm() > last, "in order, each speed once");
            last = point.rpm();
        }
        assertEquals(
                List.of(6500.0, 6600.0, 6700.0, 6800.0, 6900.0, 7000.0),
                outcome.withNitrous().stream().map(OperatingPoint::rpm).toList());
        assertEquals(8000, last);
    }

    /** The nitrous opens with the boost as far over its target as is allowed, and leaves its boost behind when it closes. */
    @Test
    void the_changeover_is_at_both_ends_of_the_window() {
        List<OperatingPoint> changeover = outcome(AT).changeover();
        assertEquals(
                List.of(Mode.OPENING, Mode.CLOSING),
                changeover.stream().map(OperatingPoint::mode).toList());
        assertEquals(6500, changeover.get(0).rpm());
        assertEquals(AMBIENT + 1.0e5 + TOLERANCE, changeover.get(0).plenumPressure(), 1e-6);
        assertTrue(changeover.get(0).nitrous().massFlow() > 0);
        assertEquals(7000, changeover.get(1).rpm());
        assertEquals(AMBIENT + 1.0e5, changeover.get(1).plenumPressure(), 1e-6);
        assertEquals(0, changeover.get(1).nitrous().massFlow());
    }

    @Test
    void the_power_is_the_most_with_the_nitrous_on() {
        Outcome outcome = outcome(AT);
        double most = outcome.withNitrous().stream()
                .mapToDouble(OperatingPoint::wheelPower)
                .max()
                .orElseThrow();
        assertEquals(most, outcome.power());
        assertEquals(most, outcome.strongest().orElseThrow().wheelPower());
        assertEquals(outcome.armed(), outcome.overRpm());
        assertEquals(outcome.pass().orElseThrow().moments(), outcome.overPass());
        assertTrue(outcome.overPass().size() > 6);
        Outcome off = Evaluate.of(CAR, SETUP.withoutJets(), AT);
        assertEquals(off.off().stream().max(Comparator.comparingDouble(OperatingPoint::wheelPower)), off.strongest());
        assertEquals(List.of(), off.armed());
        assertEquals(List.of(), off.changeover());
        assertEquals(Optional.empty(), off.pass());
        assertEquals(List.of(), off.overPass());
        Outcome nowhere =
                new Outcome(CAR, SETUP, AT, List.of(), List.of(), List.of(), Optional.empty(), outcome.limits());
        assertEquals(0, nowhere.power());
    }

    @Test
    void one_speed_is_open_in_the_window_and_closed_beside_it() {
        assertEquals(
                Mode.NITROUS, Evaluate.at(CAR, SETUP, AT, 6750).orElseThrow().mode());
        assertEquals(Mode.ARMED, Evaluate.at(CAR, SETUP, AT, 7250).orElseThrow().mode());
        assertEquals(
                Mode.ARMED,
                Evaluate.at(CAR, SETUP.withoutJets(), AT, 6750).orElseThrow().mode());
        assertEquals(Optional.empty(), Evaluate.at(CAR, SETUP, AT, 20_000));
        assertEquals(
                outcome(AT).at(6600).orElseThrow().wheelPower(),
                Evaluate.at(CAR, SETUP, AT, 6600).orElseThrow().wheelPower());
    }

    /** As charged at 30 degC it stands under its own pressure; a given temperature is boiling liquid; the last pass leaves it colder. */
    @Test
    void the_bottle_is_at_the_moment_of_the_case() {
        double full = bottle(AT);
        assertEquals(
                CAR.bottle().vessel().charged(SETUP.bottle().charge(), 303.15).pressure(), full, 1);
        assertEquals(NitrousOxide.saturationPressure(290), bottle(AT.withBottle(BottleState.at(290))), 1);
        double last = bottle(AT.withBottle(BottleState.LAST));
        assertTrue(last < full - 1e5, full + " to " + last);
        PassOutcome end = Evaluate.passes(CAR, SETUP, AT).get(1);
        assertEquals(end.moments().get(end.moments().size() - 1).pressure(), last, 1);
        // without nitrous nothing is drawn
        assertEquals(
                full,
                Evaluate.model(CAR, SETUP.withoutJets(), AT.withBottle(BottleState.LAST))
                        .at(6500, AMBIENT + 1e5, Mode.ARMED)
                        .bottle()
                        .pressure(),
                1);
    }

    private static double bottle(Case at) {
        return Evaluate.at(CAR, SETUP, at, 6500).orElseThrow().bottle().pressure();
    }

    /** Two passes of five seconds: both whole, begun as warm as the first, each with its own number, time and mass. */
    @Test
    void each_pass_is_told_from_opening_to_its_end() {
        List<PassOutcome> passes = Evaluate.passes(CAR, SETUP, AT);
        assertEquals(List.of(1, 2), passes.stream().map(PassOutcome::number).toList());
        for (PassOutcome pass : passes) {
            List<PassOutcome.Moment> moments = pass.moments();
            assertEquals(0, moments.get(0).time());
            assertEquals(5, moments.get(moments.size() - 1).time(), 1e-9);
            assertEquals(5, pass.seconds(), 1e-9);
            assertTrue(moments.size() > 6 && moments.size() <= 14, "moments " + moments.size());
            // what has flowed has left the bottle: the mean flow times the time
            double used = 0;
            for (int i = 1; i < moments.size(); i++) {
                double step = moments.get(i).time() - moments.get(i - 1).time();
                assertTrue(step > 0);
                used += step * (moments.get(i).massFlow() + moments.get(i - 1).massFlow()) / 2;
            }
            assertEquals(used, pass.massUsed(), 0.02 * used);
            assertEquals(303.15, moments.get(0).temperature(), 1e-6);
            // two of two asked for, counted to one more
            assertEquals(3, pass.wholePasses());
            assertEquals(3, pass.given(), 1e-9);
        }
        PassOutcome.Moment first = passes.get(0).moments().get(0);
        OperatingPoint strongest = outcome(AT).strongest().orElseThrow();
        assertEquals(strongest.wheelPower(), first.wheelPower(), 1e-3 * strongest.wheelPower());
        assertEquals(strongest.lambda(), first.lambda(), 1e-3);
        // the flow of a case that passes more empties it sooner
        PassOutcome more =
                Evaluate.passes(CAR, SETUP, AT.with(Factor.NITROUS_FLOW, 1.2)).get(0);
        assertEquals(1.2, more.massUsed() / passes.get(0).massUsed(), 0.05);
        assertEquals(List.of(), Evaluate.passes(CAR, SETUP.withoutJets(), AT));
    }

    /** The pass told is the first, and the last one asked for where the case speaks of that. */
    @Test
    void the_pass_of_an_outcome_is_the_one_its_case_speaks_of() {
        assertEquals(1, outcome(AT).pass().orElseThrow().number());
        Case last = AT.withBottle(BottleState.LAST);
        assertEquals(2, outcome(last).pass().orElseThrow().number());
        // a small charge ends before the seventh of eight passes: the last that could be run
        Setup many = SETUP.withPasses(new PassPlan(8, 10));
        PassOutcome cut = Evaluate.of(CAR, many, last).pass().orElseThrow();
        assertTrue(cut.number() < 8 && cut.seconds() < 10, cut::toString);
        assertEquals(cut.wholePasses() + cut.seconds() / 10, cut.given(), 1e-9);
        assertEquals(cut.number(), cut.wholePasses() + 1);
    }

    @Test
    void between_two_moments_lies_a_straight_line() {
        List<PassOutcome.Moment> moments = List.of(
                new PassOutcome.Moment(1, 300, 5e6, 4, 0.1, 0.8, 500),
                new PassOutcome.Moment(3, 296, 4e6, 3, 0.2, 0.7, 400));
        assertEquals(298, PassOutcome.at(moments, 2, PassOutcome.Moment::temperature), 1e-9);
        assertEquals(475, PassOutcome.at(moments, 1.5, PassOutcome.Moment::wheelPower), 1e-9);
        assertEquals(300, PassOutcome.at(moments, 1, PassOutcome.Moment::temperature), 1e-9);
        assertEquals(296, PassOutcome.at(moments, 3, PassOutcome.Moment::temperature), 1e-9);
        assertTrue(Double.isNaN(PassOutcome.at(moments, 0.9, PassOutcome.Moment::temperature)));
        assertTrue(Double.isNaN(PassOutcome.at(moments, 3.1, PassOutcome.Moment::temperature)));
    }

    /** Asked together or one by one the answer is the same: nothing is shared that a case changes. */
    @Test
    void several_cases_together_are_each_as_alone() {
        List<Case> cases = List.of(
                AT,
                AT.named("flow").with(Factor.NITROUS_FLOW, 0.9),
                AT.named("low").withAir(new org.shotledger.engine.MoistAir(AMBIENT - 3e3, 300, 0.3)));
        List<Outcome> together = Evaluate.all(CAR, SETUP, cases);
        for (int i = 0; i < cases.size(); i++) {
            Outcome alone = outcome(cases.get(i));
            assertEquals(cases.get(i), together.get(i).at());
            assertEquals(alone.limits(), together.get(i).limits());
            assertEquals(alone.pass(), together.get(i).pass());
        }
    }

    @Test
    void the_closed_limits_and_the_bottle_s_are_those_of_the_whole() {
        Outcome whole = outcome(AT);
        List<OperatingPoint> closed = java.util.stream.Stream.of(whole.off(), whole.armed(), whole.changeover())
                .flatMap(List::stream)
                .filter(point -> !point.mode().nitrousFlows())
                .toList();
        double most =
                closed.stream().mapToDouble(OperatingPoint::crankTorque).max().orElseThrow();
        var limits = Evaluate.closed(CAR, SETUP, AT);
        assertEquals(most, limits.find("crank-torque").orElseThrow().value());
        assertEquals(0, limits.find("answered").orElseThrow().value());
        assertEquals(Optional.empty(), limits.find("feed-loss"));
        BottleOutcome bottle = Evaluate.bottle(new Bottles(), CAR, SETUP, AT).orElseThrow();
        for (Limit limit : bottle.limits()) {
            Limit same = whole.limits().find(limit.key()).orElseThrow();
            assertEquals(limit.key().equals("fuel-cell") ? 0 : same.value(), limit.value(), limit.key());
        }
        assertEquals(bottle(AT.withBottle(BottleState.LAST)), bottle.end().pressure(), 1);
        assertEquals(Optional.empty(), Evaluate.bottle(new Bottles(), CAR, SETUP.withoutJets(), AT));
        // a closed window that reaches beyond the map is told
        Setup beyond = SETUP.withBoost(new BoostTarget(BoostTable.constant(3.5e5), BoostTable.constant(1e5), 0));
        assertTrue(
                Evaluate.closed(CAR, beyond, AT).find("answered").orElseThrow().value() > 0);
        Setup armed = SETUP.withBoost(new BoostTarget(BoostTable.constant(1e5), BoostTable.constant(3.5e5), 0));
        assertTrue(
                Evaluate.closed(CAR, armed, AT).find("answered").orElseThrow().value() > 0);
    }

    /** Speeds whose boost lies beyond the compressor map are counted and named: in the window, armed beside it, and without nitrous. */
    @Test
    void each_speed_without_an_answer_is_counted() {
        BoostTable held = BoostTable.constant(1.0e5);
        BoostTable window =
                BoostTable.of(new double[] {6400, 6500, 7000, 7100}, new double[] {1.0e5, 3.5e5, 3.5e5, 1.0e5});
        assertUnanswered(new BoostTarget(held, window, 0), 6, "6,500 rpm, nitrous on");
        BoostTable above = BoostTable.of(new double[] {7000, 7250}, new double[] {1.0e5, 3.5e5});
        assertUnanswered(new BoostTarget(held, above, 0), 4, "7,250 rpm, nitrous armed, closed");
        BoostTable without = BoostTable.of(new double[] {7500, 7750}, new double[] {1.0e5, 3.5e5});
        assertUnanswered(new BoostTarget(without, held, 0), 2, "7,750 rpm, nitrous not armed");
    }

    private static void assertUnanswered(BoostTarget boost, int count, String first) {
        Limit limit = Evaluate.of(CAR, SETUP.withBoost(boost), AT)
                .limits()
                .find("answered")
                .orElseThrow();
        assertEquals(count, limit.value());
        assertEquals(first, limit.place());
    }

    @Test
    void the_fuel_cell_is_held_against_the_largest_flow_of_all_passes() {
        Outcome outcome = outcome(AT);
        double most = outcome.armed().stream()
                .mapToDouble(p -> p.nitrousFuel().massFlow())
                .max()
                .orElseThrow();
        double density = CAR.fuels().nitrous().density(298.15);
        assertEquals(
                2 * 5 * most / density,
                outcome.limits().find("fuel-cell").orElseThrow().value(),
                1e-9);
    }

    @Test
    void what_was_not_measured_is_said_once_for_each_side() {
        Outcome outcome = outcome(AT);
        List<String> nitrous = outcome.outside(JetSide.NITROUS);
        assertEquals(nitrous.stream().distinct().toList(), nitrous);
        assertEquals(
                outcome.withNitrous().get(0).nitrous().outside().stream()
                        .distinct()
                        .toList(),
                nitrous);
        assertEquals(List.of(), Evaluate.of(CAR, SETUP.withoutJets(), AT).outside(JetSide.NITROUS));
        // holes of a fifth of a millimetre were never measured
        Outcome small = Evaluate.of(CAR, SETUP.withJets(new JetPair(0.2e-3, 0.15e-3)), AT);
        assertEquals(1, small.outside(JetSide.NITROUS).size(), small.outside(JetSide.NITROUS)::toString);
        String fuel = CAR.nitrous().fuel().jet().outside();
        assertEquals(fuel.isEmpty() ? List.of() : List.of(fuel), outcome.outside(JetSide.FUEL));
    }
}
