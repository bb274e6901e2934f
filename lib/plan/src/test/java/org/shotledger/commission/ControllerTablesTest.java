package org.shotledger.commission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Setup;

/** Each column of the controller's table against the setup and the model, and where straight lines leave the boost that was evaluated. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ControllerTablesTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final BoostTable OFF = BoostTable.of(new double[] {4000, 8000}, new double[] {2e4, 6e4});
    private static final BoostTable ARMED = BoostTable.of(new double[] {4000, 8000}, new double[] {4e4, 12e4});
    private static final Setup SETUP = JOB.setup()
            .withBoost(new BoostTarget(OFF, ARMED, 5_000))
            .withJets(new JetPair(1.0e-3, 0.52e-3))
            .withRetard(6);
    private static final Plan PLAN = plan(SETUP);

    private static Plan plan(Setup setup) {
        return Plan.of(JOB.withCases(List.of(JOB.stated())), setup);
    }

    private static ControllerTables.Row row(Plan plan, double rpm) {
        return ControllerTables.of(plan, 1, rpm).rows().get(1);
    }

    /** At 7000 rpm both tables are three quarters of the way: 5 and 10 kPa in ten; the arming of the sheet is open there. */
    @Test
    void a_row_where_the_nitrous_may_open_is_the_open_point() {
        ControllerTables.Row row = row(PLAN, 7000);
        assertEquals(5e4, row.boostOff(), 1e-6);
        assertEquals(10e4, row.boostArmed(), 1e-6);
        assertTrue(row.nitrous());
        assertEquals(6, row.retard());
        assertEquals(SETUP.mixture(), row.lambdaTarget());
        var model = Evaluate.model(JOB.car(), SETUP, JOB.stated());
        double plenum = JOB.stated().air().pressure() + 10e4;
        OperatingPoint on = model.at(7000, plenum, Mode.NITROUS);
        OperatingPoint closed = model.at(7000, plenum, Mode.ARMED);
        assertEquals(on.lambda(), row.lambdaShown(), 1e-6);
        assertEquals(on.main().duty(), row.mainDuty(), 1e-6);
        double change = (on.main().massFlow() - closed.main().massFlow())
                / closed.main().massFlow();
        assertTrue(Math.abs(change) > 1e-3, "change " + change);
        assertEquals(change, row.mainFuel(), 1e-6);
    }

    /** Below the arming speed the duty is that of the closed point, and nothing is said of a mixture with nitrous. */
    @Test
    void a_row_below_the_arming_speed_has_no_nitrous_and_no_retard() {
        double rpm = SETUP.arming().rpmLow() - 500;
        ControllerTables.Row row = row(PLAN, rpm);
        assertFalse(row.nitrous());
        assertEquals(0, row.retard());
        assertTrue(Double.isNaN(row.lambdaShown()) && Double.isNaN(row.mainFuel()));
        double duty = PLAN.stated().at(rpm).orElseThrow().main().duty();
        assertEquals(duty, row.mainDuty(), 1e-9);
    }

    @Test
    void without_jets_no_row_opens() {
        ControllerTables.Row row = row(plan(SETUP.withoutJets()), 7000);
        assertFalse(row.nitrous());
        assertEquals(0, row.retard());
        assertTrue(Double.isNaN(row.lambdaShown()) && !Double.isNaN(row.mainDuty()));
    }

    /** The upper end of the breathing table has an answer; a step beyond there is none, nor below its lower end. */
    @Test
    void outside_the_breathing_table_there_are_no_figures() {
        var breathing = JOB.car().engine().volumetricEfficiency();
        ControllerTables tables =
                ControllerTables.of(PLAN, breathing.low() - 1, breathing.high(), breathing.high() + 1);
        assertTrue(Double.isNaN(tables.rows().get(0).mainDuty()));
        assertFalse(Double.isNaN(tables.rows().get(1).mainDuty()));
        assertTrue(Double.isNaN(tables.rows().get(2).mainDuty()));
    }

    @Test
    void two_to_sixty_four_rising_speeds_are_taken() {
        assertEquals(2, ControllerTables.of(PLAN, 1, 2).rows().size());
        double[] most = IntStream.rangeClosed(1, 64).asDoubleStream().toArray();
        assertEquals(64, ControllerTables.of(PLAN, most).rows().size());
        double[] more = IntStream.rangeClosed(1, 65).asDoubleStream().toArray();
        assertThrows(IllegalArgumentException.class, () -> ControllerTables.of(PLAN, more));
        assertThrows(IllegalArgumentException.class, () -> ControllerTables.of(PLAN, 4000));
        String said = assertThrows(IllegalArgumentException.class, () -> ControllerTables.of(PLAN, 4000, 4000))
                .getMessage();
        assertTrue(said.contains("do not rise"), said);
    }

    /** The tables of the setup and both ends of its arming, each once. */
    @Test
    void its_own_speeds_are_those_of_the_setup() {
        var arming = SETUP.arming();
        assertEquals(
                List.of(4000.0, arming.rpmLow(), arming.rpmHigh(), 8000.0),
                ControllerTables.of(PLAN).rows().stream()
                        .map(ControllerTables.Row::rpm)
                        .toList());
    }

    private static ControllerTables from4000To7800(BoostTable armed) {
        return ControllerTables.of(
                plan(SETUP.withBoost(new BoostTarget(armed, armed, 5_000)).withoutJets()), 4000, 7800);
    }

    /** A controller holds its end values: 90 kPa at 8000 rpm where 50 were evaluated, and at 3000 rpm where 20 were. */
    @Test
    void boost_above_the_evaluated_is_found_beyond_the_controllers_own_speeds() {
        ControllerTables late =
                from4000To7800(BoostTable.of(new double[] {4000, 7800, 8000}, new double[] {9e4, 9e4, 5e4}));
        assertEquals(4e4, late.boostAbove(), 1e-6);
        assertEquals(8000, late.boostAboveAt());
        ControllerTables early =
                from4000To7800(BoostTable.of(new double[] {3000, 4000, 7800}, new double[] {2e4, 9e4, 9e4}));
        assertEquals(7e4, early.boostAbove(), 1e-6);
        assertEquals(3000, early.boostAboveAt());
    }

    /** A bump that was evaluated and is not entered runs below it: that is no danger. */
    @Test
    void boost_below_the_evaluated_is_carried() {
        ControllerTables bump =
                from4000To7800(BoostTable.of(new double[] {4000, 6000, 7800}, new double[] {4e4, 9e4, 4e4}));
        assertEquals(0, bump.boostAbove());
        assertTrue(bump.carries());
    }

    @Test
    void the_boost_controls_own_tolerance_is_the_bound() {
        assertTrue(new ControllerTables(PLAN, List.of(), 5_000, 6000).carries());
        assertFalse(new ControllerTables(PLAN, List.of(), 5_000.1, 6000).carries());
    }
}
