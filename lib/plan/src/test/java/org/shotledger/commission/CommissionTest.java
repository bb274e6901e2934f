package org.shotledger.commission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.commission.StartLine.Stage;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;
import org.shotledger.wiring.CheckValue.State;
import org.shotledger.wiring.SensorVerdict;

/** Commissioning of the invented demonstration car: its lists hold the figures of plan and sheet. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CommissionTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final BoostTable BOOST =
            BoostTable.of(new double[] {4000, 6000, 7800}, new double[] {4e4, 9e4, 11e4});
    private static final Plan PLAN = Plan.of(
            JOB, JOB.setup().withBoost(new BoostTarget(BOOST, BOOST, 5_000)).withJets(new JetPair(1.0e-3, 0.52e-3)));
    private static final SensorChecks CHECKS = SensorChecks.of(JOB, PLAN.setup());

    @Test
    void at_prime_fuel_pressures_are_those_of_the_regulators() {
        assertEquals(3.0e5, expected("main fuel pressure", State.PRIME), 1);
        assertEquals(3.5e5, expected("nitrous fuel pressure", State.PRIME), 1);
        assertEquals(0.78, expected("ethanol content", State.PRIME), 1e-9);
        assertEquals(99_000, expected("plenum pressure", State.ENGINE_OFF), 1);
        assertEquals(291.15, expected("coolant temperature", State.ENGINE_OFF), 1e-9);
    }

    private static double expected(String sensor, State state) {
        return CHECKS.values().stream()
                .filter(value -> value.sensor().equals(sensor) && value.state() == state)
                .findFirst()
                .orElseThrow()
                .expected();
    }

    @Test
    void the_readings_of_the_sheet_are_judged_and_the_wrong_pull_up_is_named() {
        List<SensorVerdict> verdicts = CHECKS.judge();
        List<String> bad = verdicts.stream()
                .filter(verdict -> !verdict.good())
                .map(SensorVerdict::sensor)
                .toList();
        assertEquals(List.of("coolant temperature"), bad);
        SensorVerdict coolant =
                verdicts.stream().filter(verdict -> !verdict.good()).findFirst().orElseThrow();
        assertEquals(
                "pull-up is 4700 ohm, table made for 2490 ohm",
                coolant.causes().get(0).what());
    }

    @Test
    void the_first_start_comes_in_order_and_the_bottle_last() {
        List<StartLine> lines = StartList.of(PLAN).lines();
        for (int i = 1; i < lines.size(); i++) {
            assertTrue(
                    lines.get(i).stage().compareTo(lines.get(i - 1).stage()) >= 0,
                    lines.get(i).action());
        }
        assertTrue(lines.stream()
                .noneMatch(line -> line.caution().isBlank() || line.stop().isBlank()));
        assertTrue(lines.stream()
                .filter(line -> line.stage().compareTo(Stage.NITROUS) < 0)
                .noneMatch(line -> line.action().contains("open the bottle")));
        StartLine first = lines.stream()
                .filter(line -> line.action().startsWith("Mend the safety chain"))
                .findFirst()
                .orElseThrow();
        assertEquals(Stage.BEFORE_POWER, first.stage());
    }

    @Test
    void controller_tables_hold_the_evaluated_figures_and_say_where_straight_lines_leave_them() {
        ControllerTables own = ControllerTables.of(PLAN);
        assertEquals(0, own.boostAbove(), 1e-6);
        assertTrue(own.carries());
        for (ControllerTables.Row row : own.rows()) {
            assertEquals(PLAN.setup().boost().armed().at(row.rpm()), row.boostArmed());
            assertEquals(row.nitrous() ? PLAN.setup().retard() : 0, row.retard());
            if (row.nitrous() && !Double.isNaN(row.lambdaShown())) {
                assertEquals(PLAN.stated().at(row.rpm()).orElseThrow().lambda(), row.lambdaShown(), 1e-12);
            }
        }
        BoostTable bent = BoostTable.of(new double[] {4000, 6000, 7800}, new double[] {9e4, 2e4, 9e4});
        Plan dip = Plan.of(JOB, PLAN.setup().withBoost(new BoostTarget(bent, bent, 5_000)));
        ControllerTables coarse = ControllerTables.of(dip, 4000, 7800);
        assertEquals(7e4, coarse.boostAbove(), 1e-6);
        assertEquals(6000, coarse.boostAboveAt());
        assertFalse(coarse.carries());
        assertThrows(IllegalArgumentException.class, () -> ControllerTables.of(PLAN, 5000, 4000));
    }

    @Test
    void the_job_list_takes_prices_and_progress_from_the_sheet_and_adds_the_sheets_own() {
        JobList list = JobList.of(PLAN);
        JobItem jets = item(list, "nitrous-jets");
        assertEquals(6, jets.amount());
        assertEquals(1.0e-3, jets.size());
        assertEquals(27, jets.cost(), 1e-9);
        assertTrue(item(list, "bottle").fitted());
        assertFalse(list.open().contains(item(list, "bottle")));
        assertEquals(4, item(list, "base-tune").hours());
        double used = PLAN.stated().pass().orElseThrow().massUsed();
        assertTrue(list.passCost() > 14 * used, "nitrous at 14 a kilogram, and fuel");
        assertTrue(list.cost(list.items()) > list.cost(list.open()));
        Job done = JOB.with("parts.items.bottle.fitted", "no");
        assertFalse(item(JobList.of(Plan.of(done, PLAN.setup())), "bottle").fitted());
    }

    private static JobItem item(JobList list, String key) {
        return list.items().stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
