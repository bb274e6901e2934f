package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.boost.Turbine;
import org.shotledger.car.Turbo;
import org.shotledger.job.Job;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Setup;

/** Where the demonstration car has an operating point: the speeds looked at, the boost there is, and what is told where there is none. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class OperatingRangeTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Setup SETUP =
            JOB.setup().withBoost(BoostTarget.constant(1.3e5)).withJets(new JetPair(1.0e-3, 0.56e-3));
    private static final PointModel MODEL = Evaluate.model(JOB.car(), SETUP, JOB.stated());
    private static final double AMBIENT = JOB.stated().air().pressure();
    private static final double WANTED = AMBIENT + 1.3e5;

    private static Optional<OperatingPoint> held(double rpm, double plenum, Mode mode) {
        return new HeldBoost(MODEL, AMBIENT).point(rpm, plenum, mode);
    }

    @Test
    void speeds_are_whole_hundreds_with_both_ends() {
        assertArrayEquals(new double[] {5830, 5900, 6000, 6100, 6120}, Speeds.over(5830, 6120));
        assertArrayEquals(new double[] {6000, 6100}, Speeds.over(6000, 6100));
        assertArrayEquals(new double[] {6000}, Speeds.over(6000, 6000));
    }

    /** Red line 8000 rpm, breathing table from 2000 rpm on. */
    @Test
    void the_nitrous_is_looked_at_where_the_engine_runs() {
        double first = JOB.car().engine().volumetricEfficiency().low();
        double[] cut = Speeds.withNitrous(JOB.car(), new ActivationWindow(7750, 9000));
        assertArrayEquals(new double[] {7750, 7800, 7900, 8000}, cut);
        assertEquals(0, Speeds.withNitrous(JOB.car(), new ActivationWindow(8100, 9000)).length);
        assertArrayEquals(new double[] {8000}, Speeds.withNitrous(JOB.car(), new ActivationWindow(8000, 9000)));
        assertEquals(first, Speeds.withNitrous(JOB.car(), new ActivationWindow(0.5 * first, 7000))[0]);
    }

    /** From 0.6 of the opening speed in steps of 250 rpm, but from the middle of the range at the latest; in the window as above. */
    @Test
    void all_speeds_begin_below_the_window_and_end_at_the_red_line() {
        double[] all = Speeds.all(JOB.car(), new ActivationWindow(5830, 6120));
        assertArrayEquals(
                new double[] {
                    3500, 3750, 4000, 4250, 4500, 4750, 5000, 5250, 5500, 5750, 5830, 5900, 6000, 6100, 6120, 6250,
                    6500, 6750, 7000, 7250, 7500, 7750, 8000
                },
                all);
        assertEquals(4000, Speeds.all(JOB.car(), new ActivationWindow(7500, 7900))[0]);
    }

    @Test
    void speeds_without_a_point_are_missing() {
        OperatingPoint at = MODEL.at(7000, WANTED, Mode.NITROUS);
        assertArrayEquals(
                new double[] {6900, 7100},
                Speeds.missing(new double[] {6900, 7000, 7100}, List.of(at)).toArray());
    }

    /** The car with another turbine, m2: the larger it is, the less it drives the compressor. */
    private static PointModel turbine(double area) {
        Turbo turbo = JOB.car().turbo();
        Turbine old = turbo.turbine();
        Turbine other = new Turbine(old.name(), area, old.efficiency(), old.mechanicalEfficiency(), old.exhaustLoss());
        return Evaluate.model(
                JOB.car()
                        .with(new Turbo(
                                turbo.map(),
                                other,
                                turbo.inlet(),
                                turbo.cooler(),
                                turbo.exhaustTemperature(),
                                turbo.boostCeiling())),
                SETUP,
                JOB.stated());
    }

    /** The least pressure looked at: the compressor map does not begin at ambient pressure. */
    private static final double LEAST = AMBIENT + 0.4e5;

    /** Not up to speed: the boost is the most that turbine and compressor hold together, found within 500 Pa, and no more is promised. */
    @Test
    void without_nitrous_the_boost_is_what_the_turbocharger_holds() {
        PointModel weak = turbine(2400e-6);
        OperatingPoint slow =
                new HeldBoost(weak, LEAST).point(7000, WANTED, Mode.BOOST_ALONE).orElseThrow();
        assertEquals(WANTED, slow.wanted());
        assertEquals(Mode.BOOST_ALONE, slow.mode());
        assertTrue(slow.plenumPressure() > LEAST && slow.plenumPressure() < WANTED, slow::toString);
        assertTrue(slow.shaft().holdsBoost());
        assertFalse(weak.at(7000, slow.plenumPressure() + 500, Mode.BOOST_ALONE)
                .shaft()
                .holdsBoost());
        OperatingPoint fast = held(7000, WANTED, Mode.BOOST_ALONE).orElseThrow();
        assertEquals(WANTED, fast.plenumPressure());
        assertEquals(WANTED, fast.wanted());
        OperatingPoint none = new HeldBoost(turbine(2000e-6), LEAST)
                .point(4000, WANTED, Mode.BOOST_ALONE)
                .orElseThrow();
        assertEquals(LEAST, none.plenumPressure());
        assertFalse(none.shaft().holdsBoost());
    }

    /** With nitrous a turbine that cannot drive the compressor is a limit, and the point stays as it was asked for. */
    @Test
    void with_nitrous_the_boost_asked_for_is_kept_for_the_limit_to_tell() {
        OperatingPoint on = new HeldBoost(turbine(4000e-6), LEAST)
                .point(7000, WANTED, Mode.NITROUS)
                .orElseThrow();
        assertEquals(WANTED, on.plenumPressure());
        assertFalse(on.shaft().holdsBoost());
    }

    /** Beyond the map with nitrous: the highest boost that has an answer, found within 500 Pa. */
    @Test
    void beyond_the_compressor_map_the_highest_boost_with_an_answer_is_taken() {
        double beyond = AMBIENT + 2.3e5;
        OperatingPoint most =
                new HeldBoost(MODEL, LEAST).point(7000, beyond, Mode.NITROUS).orElseThrow();
        assertEquals(beyond, most.wanted());
        assertTrue(most.plenumPressure() > WANTED);
        assertThrows(NoAnswerException.class, () -> MODEL.at(7000, most.plenumPressure() + 500, Mode.NITROUS));
    }

    @Test
    void where_even_ambient_pressure_has_no_answer_there_is_no_point() {
        assertEquals(Optional.empty(), held(20_000, WANTED, Mode.NITROUS));
        assertEquals(Optional.empty(), held(20_000, WANTED, Mode.BOOST_ALONE));
    }

    private static Limit unanswered(double rpm, double gauge, Mode mode) {
        Unanswered unanswered = new Unanswered(MODEL);
        unanswered.look(new double[] {rpm}, List.of(), any -> AMBIENT + gauge, mode);
        return unanswered.limit("a case");
    }

    /** Without nitrous a turbocharger that is not up to speed is no fault; beyond the map, or outside the engine's speeds, it is one. */
    @Test
    void what_has_no_answer_breaks_a_limit_and_what_is_only_slow_does_not() {
        assertEquals(Verdict.HOLDS, unanswered(2000, 1.3e5, Mode.BOOST_ALONE).verdict());
        assertEquals(Verdict.HOLDS, unanswered(2000, 1.3e5, Mode.ARMED).verdict());
        assertEquals(Verdict.BROKEN, unanswered(2000, 1.3e5, Mode.NITROUS).verdict());
        assertEquals(Verdict.HOLDS, unanswered(5000, 1.0e5, Mode.BOOST_ALONE).verdict());
        Limit beyond = unanswered(7000, 3.5e5, Mode.BOOST_ALONE);
        assertEquals(Verdict.BROKEN, beyond.verdict());
        assertTrue(beyond.reason().contains("of the compressor map"), beyond.reason());
        assertEquals("7,000 rpm, nitrous not armed", beyond.place());
        assertEquals(1, beyond.value());
        assertEquals(Verdict.BROKEN, unanswered(20_000, 1.3e5, Mode.BOOST_ALONE).verdict());
        Limit all = new Unanswered(MODEL).limit("a case");
        assertEquals(Verdict.HOLDS, all.verdict());
        assertEquals("all engine speeds", all.place());
        assertEquals("every engine speed has an answer", all.reason());
    }
}
