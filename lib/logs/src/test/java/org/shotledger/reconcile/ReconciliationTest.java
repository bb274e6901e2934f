package org.shotledger.reconcile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.PowerCorrection;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.Finding;
import org.shotledger.logs.LogFindings;
import org.shotledger.plan.Plan;
import org.shotledger.reconcile.Overlay.Judgement;
import org.shotledger.reconcile.Overlay.Part;
import org.shotledger.units.UnitSystem;

/** The demonstration's logs, invented with stated errors: each of them is found again, and nothing else. */
class ReconciliationTest {
    private static final Path DEMO = Path.of("../../data/whimbrel");
    private static final Outcome OUTCOME = Plan.find(Job.load(DEMO)).stated();
    private static final LogFindings WITH = log("pull-with-nitrous.csv");
    private static final LogFindings WITHOUT = log("pull-without-nitrous.csv");
    private static final Reconciliation LAID = Reconciliation.of(OUTCOME, WITH);
    private static final double HP = 745.69987158227022;

    private static LogFindings log(String name) {
        return EngineLog.read(DEMO.resolve("logs").resolve(name)).findings();
    }

    private static Part part(ComparedChannel what, boolean on) {
        return LAID.overlay(what).part(on).orElseThrow();
    }

    /** Regression: with {@code -Dwrite.demo.logs=true} the files are written anew after the plan has changed. */
    @ParameterizedTest
    @CsvSource({"pull-with-nitrous.csv, true", "pull-without-nitrous.csv, false"})
    void the_logs_are_what_the_program_invents(String name, boolean nitrous) throws IOException {
        Path file = DEMO.resolve("logs").resolve(name);
        String invented = DemoLog.text(OUTCOME, nitrous);
        if (Boolean.getBoolean("write.demo.logs")) {
            Files.writeString(file, invented);
        }
        assertEquals(invented, Files.readString(file), "write the logs anew with -Dwrite.demo.logs=true");
    }

    @Test
    void the_findings_are_the_errors_put_in() {
        List<Finding.Kind> kinds =
                WITH.all().stream().map(Finding::kind).distinct().toList();
        assertEquals(
                List.of(
                        Finding.Kind.UNKNOWN_COLUMN,
                        Finding.Kind.MIXED_UNITS,
                        Finding.Kind.GAP,
                        Finding.Kind.CLIPPED,
                        Finding.Kind.NO_VALUE),
                kinds);
        assertTrue(
                WITH.of(Finding.Kind.CLIPPED).stream().allMatch(f -> f.channel().equals("manifold pressure")));
    }

    @Test
    void the_late_lambda_is_aligned() {
        assertEquals(DemoLog.LAMBDA_LAG, LAID.lambdaLag().seconds(), DemoLog.STEP / 2, LAID.lambdaLag()::sentence);
    }

    @Test
    void the_small_fuel_jets_show_as_a_lean_mixture_with_nitrous_and_not_without() {
        assertEquals(0, part(ComparedChannel.LAMBDA, false).mean(), 0.001);
        assertEquals(Judgement.WITHIN, part(ComparedChannel.LAMBDA, false).judgement());
        Part on = part(ComparedChannel.LAMBDA, true);
        assertEquals(expectedLeaner(), on.mean(), 0.002);
        assertEquals(Judgement.BEYOND_TOLERANCE, on.judgement());
        String sentence = LAID.overlay(ComparedChannel.LAMBDA).sentence(on, UnitSystem.US);
        assertTrue(sentence.contains("leaner than expected on average"), sentence);
        assertTrue(
                sentence.contains(
                        "beyond what the jets' usual tolerance (half a thousandth of an inch on the bore; common"
                                + " practice, no source) explains"),
                sentence);
    }

    /** By the mixture's own sum: lambda goes with the inverse of the fuel, of which the nitrous circuit brings a share. */
    private static double expectedLeaner() {
        OperatingPoint peak = OUTCOME.at(6900).orElseThrow();
        double main = peak.main().massFlow();
        double extra = peak.nitrousFuel().massFlow();
        double left = main + DemoLog.FUEL_BORE * DemoLog.FUEL_BORE * extra;
        return peak.lambda() * ((main + extra) / left - 1);
    }

    @Test
    void what_agrees_is_said_to_agree() {
        assertEquals(0, part(ComparedChannel.WHEEL_POWER, false).mean(), 1.5 * HP);
        assertEquals(Judgement.WITHIN, part(ComparedChannel.WHEEL_POWER, true).judgement());
        assertEquals(0, part(ComparedChannel.BOTTLE_PRESSURE, true).mean(), 2 * 6895);
        assertEquals(0, part(ComparedChannel.NITROUS_FUEL_PRESSURE, true).mean(), 1 * 6895);
        assertEquals(
                Judgement.UNSTATED, part(ComparedChannel.BOTTLE_PRESSURE, true).judgement());
    }

    @Test
    void a_clipped_sensor_is_left_out_and_counted() {
        assertTrue(
                DemoLog.SENSOR_END * 1e3 < OUTCOME.strongest().orElseThrow().plenumPressure(),
                "the sensor must end below the strongest");
        Part off = part(ComparedChannel.MANIFOLD_PRESSURE, false);
        assertTrue(off.left() == 0 && off.points() > 5, off.toString());
        assertEquals(Judgement.WITHIN, off.judgement());
        Part on = part(ComparedChannel.MANIFOLD_PRESSURE, true);
        assertTrue(on.left() > 0 && on.points() > 5, on.toString());
        double[] measured = LAID.overlay(ComparedChannel.MANIFOLD_PRESSURE).measured();
        assertTrue(Arrays.stream(measured).allMatch(v -> Double.isNaN(v) || v < DemoLog.SENSOR_END * 1e3));
    }

    @Test
    void a_figure_that_is_nowhere_to_be_trusted_is_not_compared(@TempDir Path folder) throws IOException {
        double below = OUTCOME.at().air().pressure() / 1e3 + 40;
        Path file = Files.writeString(folder.resolve("pull-with-nitrous.csv"), DemoLog.text(OUTCOME, true, below));
        Files.copy(DEMO.resolve("logs/log.yaml"), folder.resolve("log.yaml"));
        Overlay laid =
                Reconciliation.of(OUTCOME, EngineLog.read(file).findings()).overlay(ComparedChannel.MANIFOLD_PRESSURE);
        for (Part part : laid.parts()) {
            assertEquals(Judgement.NOT_COMPARED, part.judgement());
            assertTrue(laid.sentence(part, UnitSystem.US).contains("cannot be compared"), part.toString());
        }
        assertEquals(2, laid.parts().size());
    }

    @Test
    void two_pulls_tell_what_the_nitrous_adds() {
        NitrousShare share = NitrousShare.of(OUTCOME, WITH, WITHOUT);
        double lean = part(ComparedChannel.WHEEL_POWER, true).mean();
        assertEquals(share.expected() + lean, share.measured(), 2 * HP);
        assertTrue(share.points().get(0).uncertainty() < 2.5 * HP, share.toString());
        assertTrue(share.summary(UnitSystem.US).contains("was the same within"), share.summary(UnitSystem.US));
        assertThrows(IllegalArgumentException.class, () -> NitrousShare.of(OUTCOME, WITH, WITH));
    }

    @Test
    void power_is_corrected_only_as_far_as_the_standard_allows() {
        MoistAir planned = OUTCOME.at().air();
        assertEquals(1, factor(planned), 1e-12);
        MoistAir damp = new MoistAir(planned.pressure() + 500, planned.temperature(), planned.relativeHumidity());
        double expected = PowerCorrection.STP.factor(damp) / PowerCorrection.STP.factor(planned);
        assertEquals(expected, factor(damp), 1e-9);
        String refused = assertThrows(
                        IllegalArgumentException.class,
                        () -> Reconciliation.of(OUTCOME, WITH, PowerCorrection.ISO_1585, planned))
                .getMessage();
        assertTrue(refused.contains("does not allow"), refused);
    }

    private static double factor(MoistAir air) {
        double[] corrected = Reconciliation.of(OUTCOME, WITH, PowerCorrection.STP, air)
                .overlay(ComparedChannel.WHEEL_POWER)
                .measured();
        return corrected[5] / LAID.overlay(ComparedChannel.WHEEL_POWER).measured()[5];
    }
}
