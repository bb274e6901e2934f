package org.shotledger.logs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Findings on made-up logs in which one thing is wrong, and none on sound ones. */
class LogFindingsTest {
    private static final double STEP = 0.02;

    private static LogFindings log(String heading, int rows, IntToDoubleFunction time, IntToDoubleFunction value) {
        StringBuilder text = new StringBuilder("time [s],engine speed [rpm]," + heading + "\n");
        for (int i = 0; i < rows; i++) {
            double v = value.applyAsDouble(i);
            text.append(String.format(
                    Locale.ROOT,
                    "%.3f,%.0f,%s%n",
                    time.applyAsDouble(i),
                    3000 + 10.0 * i,
                    Double.isNaN(v) ? "" : String.format(Locale.ROOT, "%.4f", v)));
        }
        return EngineLog.read(new StringReader(text.toString()), "made-up.csv", LogMapping.NONE)
                .findings();
    }

    private static Finding only(LogFindings findings, Finding.Kind kind) {
        List<Finding> found = findings.of(kind);
        assertEquals(1, found.size(), findings.toString());
        return found.get(0);
    }

    private static double wave(int i) {
        return 0.80 + 0.02 * Math.sin(0.3 * i);
    }

    @Test
    void a_sound_log_has_no_finding_about_its_values() {
        Random random = new Random(3);
        LogFindings findings = log("lambda", 400, i -> i * STEP, i -> 0.8 + 0.01 * random.nextGaussian());
        assertTrue(
                findings.all().stream().allMatch(f -> f.kind() == Finding.Kind.MISSING_CHANNEL), findings.toString());
    }

    @Test
    void a_coarse_resolution_is_no_frozen_and_no_clipped_sensor() {
        LogFindings findings =
                log("lambda", 1000, i -> i * STEP, i -> 0.7 + Math.round(8 * Math.sin(0.01 * i)) / 100.0);
        assertTrue(findings.of(Finding.Kind.FROZEN).isEmpty(), findings.toString());
    }

    @Test
    void a_gap_is_named_and_not_bridged() {
        LogFindings findings = log("lambda", 200, i -> (i < 100 ? i : i + 20) * STEP, LogFindingsTest::wave);
        Finding gap = only(findings, Finding.Kind.GAP);
        assertEquals(99 * STEP, gap.from(), 1e-9);
        assertEquals(120 * STEP, gap.to(), 1e-9);
        double[] inside = findings.series(LogChannel.LAMBDA).at(new double[] {2.1}, findings.longestStep());
        assertTrue(Double.isNaN(inside[0]));
    }

    @Test
    void falling_and_repeated_times_are_told_and_left_out() {
        LogFindings falling = log("lambda", 100, i -> (i == 50 ? 40 : i) * STEP, LogFindingsTest::wave);
        assertEquals(
                50 * 1,
                falling.log().line(only(falling, Finding.Kind.TIME_FALLS).count() + 48) - 1);
        assertEquals(99, falling.series(LogChannel.LAMBDA).size());
        LogFindings twice = log("lambda", 100, i -> (i == 50 ? 49 : i) * STEP, LogFindingsTest::wave);
        assertEquals(49 * STEP, only(twice, Finding.Kind.TIME_TWICE).from(), 1e-9);
    }

    @Test
    void empty_cells_are_counted() {
        LogFindings findings = log("lambda", 100, i -> i * STEP, i -> i >= 30 && i < 35 ? Double.NaN : wave(i));
        assertEquals(5, only(findings, Finding.Kind.NO_VALUE).count());
    }

    @Test
    void a_clipped_sensor_is_found_and_its_values_are_not_trusted() {
        LogFindings findings =
                log("manifold pressure [bar abs]", 200, i -> i * STEP, i -> Math.min(2.5, 1.2 + 0.01 * i));
        Finding clipped = only(findings, Finding.Kind.CLIPPED);
        assertEquals(130 * STEP, clipped.from(), 1.01 * STEP);
        assertTrue(clipped.sentence().contains("2.50 bar abs"), clipped.sentence());
        double[] values = findings.series(LogChannel.MANIFOLD_PRESSURE).values();
        assertTrue(Double.isNaN(values[150]));
        assertFalse(Double.isNaN(values[100]));
    }

    @Test
    void a_frozen_sensor_is_found_while_the_engine_moves() {
        LogFindings findings = log("lambda", 200, i -> i * STEP, i -> i >= 60 && i < 110 ? wave(60) : wave(i));
        Finding frozen = only(findings, Finding.Kind.FROZEN);
        assertEquals(50, frozen.count());
        assertEquals(60 * STEP, frozen.from(), 1e-9);
    }

    @Test
    void a_gauge_pressure_taken_for_absolute_is_implausible_at_atmosphere() {
        LogFindings findings = log("manifold pressure [bar abs]", 100, i -> i * STEP, i -> 0.012 * i);
        assertTrue(only(findings, Finding.Kind.IMPLAUSIBLE).sentence().contains("gauge pressure"));
    }

    @Test
    void an_air_fuel_ratio_taken_for_lambda_is_implausible() {
        LogFindings findings = log("lambda", 100, i -> i * STEP, i -> 11.8 + 0.01 * (i % 7));
        assertTrue(only(findings, Finding.Kind.IMPLAUSIBLE).sentence().contains("air-fuel ratio"));
    }

    @Test
    void boost_at_idle_points_to_an_absolute_pressure_taken_for_gauge() {
        StringBuilder text = new StringBuilder("time [s],engine speed [rpm],manifold pressure [bar gauge]\n");
        for (int i = 0; i < 50; i++) {
            text.append(String.format(Locale.ROOT, "%.2f,%d,%.3f%n", i * STEP, 900 + i % 3, 0.95 + 0.001 * (i % 5)));
        }
        LogMapping mapping = LogMapping.NONE.withAmbient(0.98e5);
        LogFindings findings = EngineLog.read(new StringReader(text.toString()), "idle.csv", mapping)
                .findings();
        assertEquals(50, only(findings, Finding.Kind.SUSPECT_UNIT).count());
    }

    @Test
    void a_noisy_fault_becomes_one_finding() {
        LogFindings findings = log("lambda", 200, i -> i * STEP, i -> i % 3 == 0 ? Double.NaN : wave(i));
        assertEquals(67, only(findings, Finding.Kind.NO_VALUE).count());
    }
}
