package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.shotledger.bottle.Passes.ScaleRow;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.DaySheet;
import org.shotledger.setup.Setup;

/** A day of the invented demonstration car: books, and what its figures must do when one thing changes. */
class DayOutcomeTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Setup SETUP = JOB.setup().withJets(new JetPair(1.2e-3, 0.6e-3));
    private static final DaySheet.Mother MOTHER = new DaySheet.Mother(30e-3, 20, 293.15);

    private static DayOutcome day(DaySheet sheet) {
        return DayOutcome.of(JOB.car(), SETUP, sheet, JOB.stated()).orElseThrow();
    }

    private static DaySheet sheet(double rest, int bottles, OptionalDouble chilled) {
        return new DaySheet(rest, 12.5, bottles, Optional.of(MOTHER), chilled, 1);
    }

    private static final DayOutcome LONG = day(sheet(1800, 2, OptionalDouble.empty()));

    @Test
    void each_pass_begins_with_what_the_one_before_left() {
        for (int i = 1; i < LONG.runs().size(); i++) {
            DayOutcome.Run before = LONG.runs().get(i - 1);
            DayOutcome.Run now = LONG.runs().get(i);
            double expected = now.bottle() == before.bottle()
                    ? before.pass().massLeft()
                    : JOB.setup().bottle().charge();
            assertEquals(expected, now.pass().start().mass(), 1e-9);
            assertEquals(now.bottle() == before.bottle(), now.before().isPresent());
        }
    }

    @Test
    void a_second_bottle_doubles_the_day_and_a_short_wait_is_told() {
        assertEquals(2 * day(sheet(1800, 1, OptionalDouble.empty())).wholePasses(), LONG.wholePasses());
        assertTrue(LONG.wholePasses() >= 4 && LONG.tooShort().isEmpty());
        DayOutcome hasty = day(sheet(30, 1, OptionalDouble.empty()));
        assertEquals(2, hasty.tooShort().orElseThrow().number());
        assertTrue(hasty.runs().get(1).pass().start().temperature()
                < LONG.runs().get(1).pass().start().temperature() - 0.5);
    }

    // 350 W at 12.5 V take 28 A
    @Test
    void the_heater_takes_its_current_for_its_time() {
        LONG.runs()
                .forEach(run -> run.before()
                        .ifPresent(wait -> assertEquals(28 * wait.heaterSeconds() / 3600, wait.ampereHours(), 1e-9)));
        assertTrue(LONG.ampereHours() > 1);
    }

    @Test
    void what_the_mother_bottle_loses_the_bottle_has_and_it_must_be_colder_to_take_it() {
        DayOutcome.Filled first = LONG.refills().get(0);
        assertTrue(first.refill().reached());
        assertEquals(JOB.setup().bottle().charge(), first.refill().own().mass(), 1e-6);
        assertEquals(
                MOTHER.charge() - first.refill().transferred(),
                first.refill().mother().mass(),
                1e-9);
        assertTrue(first.warmest() < MOTHER.temperature());
        assertTrue(first.unchilled() < first.refill().transferred());
        DayOutcome.Filled last = LONG.refills().get(LONG.refills().size() - 1);
        assertFalse(last.refill().reached());
        assertTrue(last.refill().mother().mass() > 0);
        // colder than it must be: no less goes over
        DayOutcome cold = day(sheet(1800, 1, OptionalDouble.of(first.warmest() - 10)));
        assertTrue(cold.refills().size() >= LONG.refills().size());
    }

    @Test
    void the_scale_gives_the_day_s_count_and_falls_with_the_charge() {
        List<ScaleRow> scale = LONG.scale();
        long first = LONG.runs().stream()
                .filter(run -> run.bottle() == 1 && run.pass().whole())
                .count();
        assertEquals((double) first, scale.get(0).passes(), 1);
        for (int i = 1; i < scale.size(); i++) {
            assertTrue(scale.get(i).passes() <= scale.get(i - 1).passes());
        }
        assertEquals(0, scale.get(scale.size() - 1).passes());
    }

    @Test
    void a_hot_day_begins_no_pass_colder_and_nothing_is_thrown_at_the_ends() {
        for (double celsius : new double[] {-20, 10, 34, 50}) {
            var at = JOB.stated().withAir(new org.shotledger.engine.MoistAir(88e3, celsius + 273.15, 0.3));
            DayOutcome day = DayOutcome.of(JOB.car(), SETUP, sheet(3600, 1, OptionalDouble.empty()), at)
                    .orElseThrow();
            assertFalse(day.runs().isEmpty());
            double start = day.runs().get(0).pass().start().pressure();
            assertEquals(NitrousOxide.saturationPressure(303.15), start, 0.02 * start);
        }
        assertTrue(DayOutcome.of(JOB.car(), SETUP.withoutJets(), DaySheet.USUAL, JOB.stated())
                .isEmpty());
    }

    /** A cold morning, the bottle filled as cold as the sheet says, the finest scale: the heater works, rows are a fortieth of the charge. */
    @Test
    void what_the_sheet_of_the_day_says_is_done() {
        var cold = JOB.stated().withAir(new org.shotledger.engine.MoistAir(88e3, 283.15, 0.3));
        DaySheet fine = new DaySheet(1800, 12.5, 1, Optional.of(MOTHER), OptionalDouble.of(270), 0.01);
        DayOutcome day = DayOutcome.of(JOB.car(), SETUP, fine, cold).orElseThrow();
        assertEquals(270, day.refills().get(0).before().temperature());
        assertTrue(day.refills().get(0).heating().orElseThrow().seconds() > 60);
        double warm = day.heating().orElseThrow().seconds();
        // 350 W have at least what shell and contents gain of their own: 12.4 kg of aluminium by 20 K and 7.7 kg of
        // nitrous oxide
        assertTrue(warm > 12.4 * 900 * 20 / 350 && warm < 6 * 3600, "s: " + warm);
        double charge = JOB.setup().bottle().charge();
        List<ScaleRow> scale = day.scale();
        assertEquals(charge, scale.get(0).charge(), 1e-9);
        assertEquals(charge / 40, scale.get(0).charge() - scale.get(1).charge(), 1e-9);
        assertEquals(
                day.runs().stream().filter(run -> run.pass().whole()).count(),
                day.wholePasses(),
                "and one that was cut short");
        assertEquals(day.runs().size() - 1, day.wholePasses());
        var hot = JOB.stated().withAir(new org.shotledger.engine.MoistAir(88e3, 308.15, 0.3));
        assertTrue(
                DayOutcome.of(JOB.car(), SETUP, fine, hot)
                        .orElseThrow()
                        .heating()
                        .isEmpty(),
                "warm of itself");
    }

    /** No plan fills a bottle beyond 0.68 kg/L: 8.57 kg in 12.6 L, whatever the charge of the setup. */
    @Test
    void a_refill_ends_at_the_legal_filling() {
        Setup full = SETUP.withBottle(new org.shotledger.setup.BottleFill(8.8, 298));
        DaySheet once = new DaySheet(1800, 12.5, 1, Optional.of(MOTHER), OptionalDouble.empty(), 5);
        DayOutcome.Filled first = DayOutcome.of(JOB.car(), full, once, JOB.stated())
                .orElseThrow()
                .refills()
                .get(0);
        assertTrue(first.refill().reached());
        assertEquals(0.68 * 12.6, first.refill().own().mass(), 1e-6);
    }
}
