package org.shotledger.revision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.causes.Cause;
import org.shotledger.causes.InventedLogs;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.job.Job;
import org.shotledger.job.SheetDifference;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.logs.LogMapping;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Factor;
import org.shotledger.stepup.Checkpoint.Figure;
import org.shotledger.stepup.Shot;
import org.shotledger.stepup.StepUp;
import org.shotledger.units.UnitSystem;

/** Logs of a step are held against that step, and what they show goes into the sheet only as it is shown. */
class NextStepTest {
    private static final Path FOLDER = Path.of("../../data/whimbrel");
    private static final Job JOB = Job.load(FOLDER);
    private static final Plan PLAN = Plan.find(JOB);
    private static final Shot FIRST = StepUp.of(PLAN).shots().get(0);

    private static LogFindings log(String setup, double fuelFlow, double lambdaReading) {
        return InventedLogs.of(FIRST.plan().stated(), setup, fuelFlow, lambdaReading);
    }

    private static NextStep next(LogFindings log) {
        return NextStep.of(RunSetup.of(PLAN, log.log(), FOLDER), log);
    }

    private static CheckpointReading reading(NextStep next, Figure figure) {
        return next.readings().stream()
                .filter(r -> r.checkpoint().figure() == figure)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_log_of_step_1_is_held_against_step_1() {
        NextStep next = next(log("step 1", 1, 1));
        assertEquals("step 1", next.run().name());
        CheckpointReading power = reading(next, Figure.WHEEL_POWER);
        assertEquals(FIRST.wheelPower(), power.read(), 0.01 * FIRST.wheelPower());
        assertEquals(Call.GO, power.call(), power.reason());
        assertEquals(Call.GO, reading(next, Figure.LAMBDA).call());
        assertEquals(Call.HOLD, reading(next, Figure.INJECTOR_DUTY).call(), "not logged");
        assertEquals(Call.HOLD, next.call(), next.sentence(UnitSystem.US));
        assertTrue(next.reasons().stream().noneMatch(r -> r.startsWith("stop")), next.reasons()::toString);
    }

    @Test
    void held_against_the_plan_the_same_log_misses_power() {
        NextStep next = next(log("plan", 1, 1));
        assertTrue(
                reading(next, Figure.WHEEL_POWER).read() < 0.98 * PLAN.stated().power());
    }

    @Test
    void lean_stops_rich_holds_and_a_sensor_that_may_read_rich_stops() {
        assertEquals(Call.STOP, next(log("step 1", 0.75, 1)).call());
        NextStep rich = next(log("step 1", 1.6, 1));
        assertEquals(Call.HOLD, reading(rich, Figure.LAMBDA).call(), rich.sentence(UnitSystem.SI));
        NextStep sensor = next(log("step 1", 0.75, 0.95));
        assertEquals(Call.STOP, reading(sensor, Figure.LAMBDA).call(), sensor.sentence(UnitSystem.SI));
        assertTrue(reading(sensor, Figure.LAMBDA).reason().contains("may read rich"), sensor.sentence(UnitSystem.SI));
    }

    @Test
    void a_setup_that_is_not_there_is_refused_with_what_there_is() {
        String step = assertThrows(
                        IllegalArgumentException.class,
                        () -> RunSetup.of(PLAN, log("step 99", 1, 1).log(), FOLDER))
                .getMessage();
        assertTrue(step.contains("step 99") && step.contains("which has"), step);
        String file = assertThrows(
                        IllegalArgumentException.class,
                        () -> RunSetup.of(PLAN, log("other.yaml", 1, 1).log(), FOLDER))
                .getMessage();
        assertTrue(file.contains("no file beside it"), file);
    }

    @Test
    void a_log_that_names_no_setup_is_told_so() {
        RunSetup run = RunSetup.of(PLAN, log("", 1, 1).log(), FOLDER);
        assertEquals("plan", run.name());
        assertTrue(run.sentence().contains("does not say"), run.sentence());
    }

    @Test
    void an_accepted_finding_becomes_a_revision_that_predicts_the_log() {
        LogFindings log = log("step 1", 0.93, 1);
        NextStep next = next(log);
        SheetRevision revision = SheetRevision.of(JOB, next.run(), next.causes(), List.of(Cause.FUEL_JETS));
        List<SheetDifference> changed = revision.differences();
        assertEquals(1, changed.size(), revision.toString());
        assertEquals("nitrous-system.fuel.jet-flow-factor", changed.get(0).path());
        assertEquals("measured: log of invented.csv, step 1", changed.get(0).reasonAfter());
        double rpm = 6900;
        double plenum = FIRST.point().plenumPressure();
        double was = Evaluate.model(JOB.car(), FIRST.setup(), JOB.stated())
                .nitrousFuel(plenum)
                .massFlow();
        double is = Evaluate.model(revision.after().car(), FIRST.setup(), JOB.stated())
                .nitrousFuel(plenum)
                .massFlow();
        double size = next.causes().suspect(Cause.FUEL_JETS).orElseThrow().size();
        assertEquals(1 + size, is / was, 1e-3, "at " + rpm);
        assertTrue(JOB.differences(JOB).isEmpty()
                && SheetRevision.of(JOB, next.run(), next.causes(), List.of())
                        .differences()
                        .isEmpty());
    }

    /** What a sensor was found to read goes into the mapping, and read with it the log agrees. */
    @Test
    void a_sensor_that_reads_wrong_is_put_right_in_the_mapping() {
        NextStep next = next(log("step 1", 1, 1.05));
        SheetRevision revision = SheetRevision.of(JOB, next.run(), next.causes(), List.of(Cause.LAMBDA_SENSOR));
        assertTrue(revision.differences().isEmpty(), revision.toString());
        String line = revision.notes().get(0);
        String reads = line.substring(line.indexOf("reads: "), line.indexOf('"', line.indexOf("reads: ")));
        LogMapping mapping = LogMapping.read(
                "channels:\n  lambda: {column: L, " + reads + "}\n  time: {column: T, unit: s}\n", "a.yaml");
        double[] read = EngineLog.read(new StringReader("T,L\n0,1.05\n1,0.84\n"), "a.csv", mapping)
                .values(LogChannel.LAMBDA);
        assertEquals(1, read[0], 0.005);
        assertEquals(0.8, read[1], 0.004);
    }

    private static String quoted(String note, String key) {
        int from = note.indexOf('"' + key);
        return note.substring(from + 1, note.indexOf('"', from + 1));
    }

    /** The same log read with a mapping that holds a part of the error and with the one that is then advised. */
    @Test
    void a_correction_that_the_mapping_holds_is_added_to_and_not_replaced() {
        String channels = """
                setup: step 1
                channels:
                  lambda: {column: lambda, %s}
                  bottle-pressure: {column: bottle pressure, unit: kPa abs, %s}
                """;
        String text = InventedLogs.text(FIRST.plan().stated(), 1.08, 7e5);
        LogMapping held = LogMapping.read(channels.formatted("reads: 1.03", "offset: 2 bar"), "a.yaml");
        NextStep next =
                next(EngineLog.read(new StringReader(text), "a.csv", held).findings());
        List<String> notes = SheetRevision.of(
                        JOB, next.run(), next.causes(), List.of(Cause.LAMBDA_SENSOR, Cause.BOTTLE_GAUGE))
                .notes();
        String reads = quoted(notes.get(0), "reads");
        String offset = quoted(notes.get(1), "offset");
        double lambdaBand =
                2 * next.causes().suspect(Cause.LAMBDA_SENSOR).orElseThrow().standard();
        double gaugeBand =
                2 * next.causes().suspect(Cause.BOTTLE_GAUGE).orElseThrow().standard() / 1e5;
        assertEquals(1.08, Double.parseDouble(reads.substring(7)), 1.08 * lambdaBand, notes.get(0));
        assertEquals(
                7,
                Double.parseDouble(offset.substring(offset.indexOf(' ') + 1, offset.lastIndexOf(' '))),
                gaugeBand,
                notes.get(1));
        assertTrue(notes.get(0).contains("in place of \"reads: 1.030\""), notes.get(0));
        LogMapping advised = LogMapping.read(channels.formatted(reads, offset), "a.yaml");
        NextStep again =
                next(EngineLog.read(new StringReader(text), "a.csv", advised).findings());
        assertTrue(again.causes().first().isEmpty(), again.causes().toString());
    }

    /** The revised sheet predicts the power that the log shows: the share that the sheet holds times what the log shows of it. */
    @Test
    void work_of_the_nitrous_goes_into_the_engine_and_predicts_the_power() {
        LogFindings log = InventedLogs.withNitrousWork(FIRST.plan().stated(), "step 1", 0.8);
        NextStep next = next(log);
        double size = next.causes().suspect(Cause.NITROUS_WORK).orElseThrow().size();
        SheetRevision revision = SheetRevision.of(JOB, next.run(), next.causes(), List.of(Cause.NITROUS_WORK));
        assertEquals(
                List.of("engine.nitrous-work"),
                revision.differences().stream().map(SheetDifference::path).toList());
        double before = JOB.car().model().nitrous().value();
        double after = revision.after().car().model().nitrous().value();
        assertEquals(before * (1 + size), after, 1e-3);
        double rpm = FIRST.point().rpm();
        double plenum = FIRST.point().plenumPressure();
        double shown = Evaluate.model(JOB.car(), FIRST.setup(), JOB.stated().with(Factor.NITROUS_WORK, 0.8))
                .at(rpm, plenum, Mode.NITROUS)
                .wheelPower();
        double predicted = Evaluate.model(revision.after().car(), FIRST.setup(), JOB.stated())
                .at(rpm, plenum, Mode.NITROUS)
                .wheelPower();
        assertEquals(shown, predicted, 0.01 * shown);
    }

    @Test
    void what_the_log_does_not_show_cannot_be_accepted() {
        NextStep next = next(log("step 1", 0.93, 1));
        String refused = assertThrows(
                        IllegalArgumentException.class,
                        () -> SheetRevision.of(JOB, next.run(), next.causes(), List.of(Cause.BOTTLE_GAUGE)))
                .getMessage();
        assertTrue(refused.contains("bottle pressure gauge") && refused.contains("accept one of"), refused);
    }
}
