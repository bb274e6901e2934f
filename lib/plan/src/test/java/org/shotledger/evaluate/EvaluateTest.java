package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.shotledger.engine.MoistAir;
import org.shotledger.fuel.Mixture;
import org.shotledger.job.Job;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Provenance;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/** Laws that an outcome must obey whatever the figures of the demonstration car are. */
class EvaluateTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Setup SETUP =
            JOB.setup().withBoost(BoostTarget.constant(1.3e5)).withJets(new JetPair(1.0e-3, 0.56e-3));
    private static final Outcome OUTCOME = Evaluate.of(JOB.car(), SETUP, JOB.stated());

    /** The limits a setup with nitrous is held against; a rule that is taken out of the lists is missed here. */
    private static final Set<String> EXPECTED = Set.of(
            "answered",
            "peak-pressure",
            "pins",
            "crank-torque",
            "piston-speed",
            "lambda-lean",
            "lambda-rich",
            "knock",
            "compressor-choke",
            "compressor-surge",
            "turbo-speed",
            "boost-ceiling",
            "turbine-flow",
            "boost-reached",
            "injector-duty",
            "main-pump",
            "kit-pump",
            "feed-loss",
            "bottle-low",
            "bottle-hot",
            "filling-density",
            "service-pressure",
            "pressure-at-21",
            "disc-rating",
            "start-temperature",
            "start-pressure-high",
            "start-pressure-low",
            "start-pressure-disc",
            "soak-pressure-disc",
            "heater-off",
            "passes",
            "fuel-cell",
            "nitrous-solenoid",
            "fuel-solenoid",
            "nitrous-passage",
            "fuel-passage",
            "rpm-window");

    @Test
    void every_limit_is_held_against_every_outcome_with_nitrous() {
        for (Case at : JOB.cases()) {
            Outcome outcome = Evaluate.of(JOB.car(), SETUP, at);
            Set<String> keys =
                    outcome.limits().all().stream().map(Limit::key).collect(Collectors.toCollection(TreeSet::new));
            assertEquals(new TreeSet<>(EXPECTED), keys, at.name());
            for (Limit limit : outcome.limits().all()) {
                assertTrue(
                        Double.isFinite(limit.value()) && Double.isFinite(limit.bound()), limit.key() + ": " + limit);
            }
            assertTrue(outcome.limits().all().stream()
                    .allMatch(limit -> limit.caseName().equals(at.name())));
        }
    }

    @Test
    void nitrous_at_speeds_without_an_answer_breaks_the_setup() {
        Outcome wide = Evaluate.of(JOB.car(), SETUP.withArming(new ActivationWindow(1500, 7800)), JOB.stated());
        long answered = wide.withNitrous().size();
        Limit limit = wide.limits().find("answered").orElseThrow();
        assertEquals(Verdict.BROKEN, limit.verdict());
        assertTrue(answered < Speeds.withNitrous(JOB.car(), wide.setup().arming()).length);
        assertTrue(limit.place().startsWith("1,500"), limit.place());
    }

    @Test
    void a_limit_that_the_builder_may_leave_out_is_held_where_it_is_stated() throws IOException {
        Path sheet = Path.of("../../data/whimbrel/job.yaml");
        String text =
                Files.readString(sheet).replaceFirst("(?m)^limits:$", "limits:\n  exhaust-temperature: 1020 degC");
        Job stated = Job.read(text, sheet.getParent());
        Limit limit = Evaluate.of(stated.car(), SETUP, stated.stated())
                .limits()
                .find("exhaust-temperature")
                .orElseThrow();
        assertEquals(1020 + 273.15, limit.bound(), 1e-9);
        assertTrue(Double.isFinite(limit.value()), limit.toString());
    }

    @Test
    void without_nitrous_the_limits_of_the_engine_stay() {
        Set<String> keys = Evaluate.of(JOB.car(), SETUP.withoutJets(), JOB.stated()).limits().all().stream()
                .map(Limit::key)
                .collect(Collectors.toSet());
        assertTrue(
                keys.containsAll(List.of("peak-pressure", "crank-torque", "lambda-lean", "main-pump")),
                keys.toString());
        assertTrue(!keys.contains("nitrous-solenoid") && !keys.contains("filling-density"), keys.toString());
    }

    @Test
    void a_limit_is_known_as_well_as_the_sheet_says() {
        Limit peak = OUTCOME.limits().find("peak-pressure").orElseThrow();
        assertEquals(JOB.car().provenance("limits.peak-pressure"), peak.provenance());
        assertEquals(JOB.car().reason("limits.peak-pressure"), peak.reason());
        assertEquals(
                Provenance.COMMON_PRACTICE,
                OUTCOME.limits().find("knock").orElseThrow().provenance());
        assertTrue(OUTCOME.limits().find("soak-pressure-disc").orElseThrow().hard());
    }

    @Test
    void a_limit_stands_where_its_margin_is_smallest() {
        double most = 0;
        for (List<OperatingPoint> points : List.of(OUTCOME.off(), OUTCOME.armed(), OUTCOME.changeover())) {
            for (OperatingPoint point : points) {
                most = Math.max(most, point.crankTorque());
            }
        }
        assertEquals(most, OUTCOME.limits().find("crank-torque").orElseThrow().value());
    }

    /** A colder bottle has less pressure: from 10 to 30 degrees it never feeds more, and runs richer with the same fuel. */
    @Test
    void a_colder_bottle_never_feeds_more() {
        double last = 0;
        double lean = 0;
        for (double temperature = 283; temperature <= 303; temperature += 4) {
            Case at = JOB.stated().withBottle(BottleState.at(temperature));
            OperatingPoint point = Evaluate.at(JOB.car(), SETUP, at, 7000).orElseThrow();
            assertTrue(point.nitrous().massFlow() >= last, temperature + " K");
            assertTrue(point.lambda() >= lean, temperature + " K");
            last = point.nitrous().massFlow();
            lean = point.lambda();
        }
    }

    @Test
    void the_calibrated_models_give_the_base_pull_back() {
        var pull = JOB.car().basePull();
        double sum = 0;
        double measured = 0;
        for (var point : pull.points()) {
            sum += Calibration.pulled(JOB.car(), SETUP, point.rpm(), point.gaugePressure())
                    .orElseThrow()
                    .wheelPower();
            measured += point.wheelPower();
        }
        assertEquals(measured, sum, 1e-5 * measured);
    }

    /** The base pull has its fuel; more ethanol in the tank cools the charge and gives more power at the same boost and lambda. */
    @Test
    void more_ethanol_gives_more_power_at_one_boost() {
        double last = 0;
        for (double share : new double[] {0.30, 0.50, 0.70, 0.85}) {
            double power = Evaluate.of(
                            JOB.car(), SETUP.withoutJets(), JOB.stated().withFuel(share))
                    .power();
            assertTrue(power > last, "ethanol " + share);
            last = power;
        }
    }

    @Test
    void oxygen_balances_over_all_streams() {
        // mass fractions of oxygen: dry air 0.2314, nitrous oxide 15.999/44.013 (atomic masses, IUPAC 2021 abridged)
        Mixture m = OUTCOME.strongest().orElseThrow().charge().mixture();
        double supplied = 0.2314 * m.dryAir() + 15.999 / 44.013 * m.nitrous();
        double demanded = m.mainFlow() * m.mainFuel().oxygenDemand()
                + m.nitrousFuelFlow() * m.nitrousFuel().oxygenDemand();
        assertEquals(supplied / demanded, OUTCOME.strongest().orElseThrow().lambda(), 1e-3);
    }

    /** Where no operating point is, no limit can be held: that must not look safe. The map of the car ends near pressure ratio 3.4. */
    @Test
    void a_boost_beyond_the_compressor_map_is_broken_and_says_why() {
        for (double boost : new double[] {2.6e5, 2.76e5, 3.5e5}) {
            Outcome beyond = Evaluate.of(JOB.car(), SETUP.withBoost(BoostTarget.constant(boost)), JOB.stated());
            Limit answered = limit(beyond, "answered");
            assertEquals(Verdict.BROKEN, answered.verdict(), boost + ": " + answered);
            assertTrue(answered.reason().startsWith("no answer: "), answered.reason());
        }
        assertEquals(Verdict.HOLDS, limit(OUTCOME, "answered").verdict());
    }

    /** Ice is a limit only where it can hold the throttle open: nozzles before it. */
    @Test
    void ice_is_a_limit_before_the_throttle_and_nowhere_else() {
        assertTrue(OUTCOME.limits().all().stream().noneMatch(l -> l.key().equals("throttle-ice")));
        Job before = JOB.with("nitrous-system.position", "before-throttle")
                .with("nitrous-system.nozzles", "1")
                .with("turbo.charge-cooler.effectiveness", "95 %");
        Setup one = SETUP.withJets(new JetPair(2.4e-3, 1.37e-3));
        Case damp = JOB.stated().withAir(new MoistAir(88e3, 275, 0.95));
        Limit ice = limit(Evaluate.of(before.car(), one, damp), "throttle-ice");
        assertEquals(Verdict.BROKEN, ice.verdict(), ice::toString);
        Case dry = JOB.stated().withAir(new MoistAir(88e3, 300, 0));
        assertEquals(
                Verdict.HOLDS,
                limit(Evaluate.of(before.car(), one, dry), "throttle-ice").verdict());
    }

    private static Limit limit(Outcome outcome, String key) {
        return outcome.limits().all().stream()
                .filter(l -> l.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /**
     * 0.77 lb in 10 s for each 100 hp at the crankshaft is what the cycle needs with all work arriving; the trade's 0.8 to 1.0 lb are
     * common practice, no source. More promised than the first, or less than the second, is an error.
     */
    @Test
    void nitrous_for_its_power_lies_beside_the_figures_of_the_trade() {
        OperatingPoint on = OUTCOME.strongest().orElseThrow();
        OperatingPoint off =
                Evaluate.model(JOB.car(), SETUP, JOB.stated()).at(on.rpm(), on.plenumPressure(), Mode.ARMED);
        double crank = on.power().brake() - off.power().brake();
        double pounds = 10 * on.nitrous().massFlow() / 0.45359237 / (crank / 74569.987);
        assertTrue(pounds > 0.77 && pounds < 1.0, "lb in 10 s per 100 hp: " + pounds);
    }

    @Test
    void the_bottle_empties_and_cools_over_a_pass() {
        List<PassOutcome.Moment> moments = OUTCOME.overPass();
        assertTrue(moments.size() > 3);
        for (int i = 1; i < moments.size(); i++) {
            assertTrue(moments.get(i).liquid() < moments.get(i - 1).liquid());
            assertTrue(moments.get(i).temperature() <= moments.get(i - 1).temperature() + 1e-9);
        }
        assertTrue(moments.get(moments.size() - 1).massFlow() < moments.get(0).massFlow());
        assertTrue(moments.get(moments.size() - 1).lambda() < moments.get(0).lambda());
    }

    /** The first of all passes is that of the outcome; what one leaves the next begins with; the bottle begins each as warm. */
    @Test
    void every_pass_is_told_over_its_seconds() {
        List<PassOutcome> passes = Evaluate.passes(JOB.car(), SETUP, JOB.stated());
        assertEquals(JOB.target().passes(), passes.size());
        assertEquals(OUTCOME.overPass(), passes.get(0).moments());
        double used = 0;
        for (PassOutcome pass : passes) {
            PassOutcome.Moment first = pass.moments().get(0);
            var vessel = JOB.car().bottle().vessel();
            double left = JOB.setup().bottle().charge() - used;
            assertEquals(vessel.charged(left, 303.15).liquidMass(), first.liquid(), 1e-6);
            used += pass.massUsed();
        }
        assertTrue(Evaluate.passes(JOB.car(), SETUP.withoutJets(), JOB.stated()).isEmpty());
    }

    @Test
    void one_speed_asked_alone_is_that_of_the_outcome() {
        for (OperatingPoint point : OUTCOME.withNitrous()) {
            assertEquals(
                    point.wheelPower(), OUTCOME.at(point.rpm()).orElseThrow().wheelPower(), 1e-9 * point.wheelPower());
        }
    }
}
