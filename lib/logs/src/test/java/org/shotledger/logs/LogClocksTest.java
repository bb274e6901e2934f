package org.shotledger.logs;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;

/** Clocks, rates, lost rows and several pulls, on made-up logs. */
class LogClocksTest {
    private static LogFindings read(String text) {
        return EngineLog.read(new StringReader(text), "made-up.csv", LogMapping.NONE)
                .findings();
    }

    /** Two seconds at 3000 rpm, then a pull of four seconds to 7000, 50 rows a second; what the function leaves null is lost. */
    private static String run(String heading, IntFunction<String> row) {
        StringBuilder text = new StringBuilder(heading + "\n");
        for (int i = 0; i < 300; i++) {
            String cells = row.apply(i);
            text.append(cells == null ? "" : cells + "\n");
        }
        return text.toString();
    }

    private static double rpm(int i) {
        return i < 100 ? 3000 : 3000 + 20.0 * (i - 100);
    }

    private static String row(double time, int i, String more) {
        return String.format(Locale.ROOT, "%.2f,%.1f%s", time, rpm(i), more);
    }

    private static final String SPEED = "time [s],engine speed [rpm]";

    @Test
    void rows_lost_within_a_pull_do_not_end_it() {
        LogFindings findings = read(run(SPEED, i -> i % 37 < 2 || (i >= 200 && i < 215) ? null : row(0.02 * i, i, "")));
        Pulls pulls = Pulls.in(findings, PullRule.USUAL);
        assertEquals(1, pulls.all().size(), pulls.why());
        assertEquals(4000, pulls.widest().rpmHigh() - pulls.widest().rpmLow(), 200);
        // two rows lost make a step of three, no gap; fifteen do
        assertEquals(1, findings.of(Finding.Kind.GAP).size(), findings.toString());
    }

    @Test
    void a_channel_at_half_rate_has_its_own_times_and_is_no_loss() {
        LogFindings findings = read(run(
                SPEED + ",lambda",
                i -> row(0.02 * i, i, i % 2 == 0 ? String.format(Locale.ROOT, ",%.4f", 0.9 - 1e-4 * i) : ",")));
        Series lambda = findings.series(LogChannel.LAMBDA);
        assertEquals(150, lambda.size());
        assertEquals(0.04, lambda.step(), 1e-9);
        assertEquals(0.9 - 101e-4, lambda.at(new double[] {2.02}, findings.longestStep(LogChannel.LAMBDA))[0], 1e-9);
        assertEquals(1, findings.of(Finding.Kind.OWN_RATE).size());
        assertTrue(findings.of(Finding.Kind.NO_VALUE).isEmpty(), findings.toString());
    }

    @Test
    void each_channel_in_rows_of_its_own_is_read() {
        LogFindings findings = read(run(
                SPEED + ",lambda",
                i -> row(0.02 * i, i, ",") + "\n"
                        + String.format(Locale.ROOT, "%.2f,,%.4f", 0.02 * i, 0.9 - 1e-4 * i)));
        assertEquals(300, findings.series(LogChannel.ENGINE_SPEED).size());
        assertEquals(300, findings.series(LogChannel.LAMBDA).size());
        assertFalse(findings.log().times().coarse());
    }

    @Test
    void a_clock_that_begins_anew_makes_a_second_pull_and_nothing_is_joined_across() {
        String part = run(SPEED, i -> row(0.02 * i, i, ""));
        String second = run(SPEED, i -> String.format(Locale.ROOT, "%.2f,%.1f", 0.02 * i, rpm(i) + 7));
        LogFindings findings = read(part + "Second pull\n" + second.substring(second.indexOf('\n') + 1));
        assertEquals(1, findings.of(Finding.Kind.CLOCK_RESTARTS).size());
        assertEquals(1, findings.of(Finding.Kind.LINES_BETWEEN).size(), findings.toString());
        Pulls pulls = Pulls.in(findings, PullRule.USUAL);
        assertEquals(2, pulls.all().size(), pulls.why());
        assertEquals(pulls.all(), pulls.chosen("all"));
        assertEquals(List.of(pulls.all().get(1)), pulls.chosen("2"));
        String refused = assertThrows(IllegalArgumentException.class, () -> pulls.chosen("3"))
                .getMessage();
        assertTrue(refused.contains("pull 2 from"), refused);
        Series speed = findings.series(LogChannel.ENGINE_SPEED);
        double[] between = speed.at(new double[] {10}, 1000);
        assertTrue(Double.isNaN(between[0]));
    }

    @Test
    void rows_that_stand_twice_are_used_once() {
        LogFindings findings = read(run(SPEED, i -> {
            String block = "";
            if (i == 150) {
                StringBuilder again = new StringBuilder();
                for (int k = 130; k < 150; k++) {
                    again.append(row(0.02 * k, k, "")).append('\n');
                }
                block = again.toString();
            }
            return block + row(0.02 * i, i, "");
        }));
        assertEquals(20, findings.of(Finding.Kind.ROWS_REPEATED).get(0).count());
        assertEquals(300, findings.series(LogChannel.ENGINE_SPEED).size());
        assertTrue(findings.of(Finding.Kind.CLOCK_RESTARTS).isEmpty());
    }

    @Test
    void one_time_far_ahead_does_not_move_the_rows_behind_it() {
        LogFindings findings = read(run(SPEED, i -> row(i == 50 ? 5000 : 0.02 * i, i, "")));
        Series speed = findings.series(LogChannel.ENGINE_SPEED);
        assertEquals(299, speed.size());
        assertEquals(5.98, speed.time()[298], 1e-9);
    }

    @Test
    void rows_of_a_coarse_clock_are_spread() {
        LogFindings findings = read(run(SPEED, i -> row(Math.floor(0.2 * i + 1e-9) * 0.1, i, "")));
        assertEquals(1, findings.of(Finding.Kind.COARSE_CLOCK).size(), findings.toString());
        Series speed = findings.series(LogChannel.ENGINE_SPEED);
        assertEquals(300, speed.size());
        assertEquals(0.02, speed.step(), 1e-9);
        assertEquals(1, Pulls.in(findings, PullRule.USUAL).all().size());
    }

    @Test
    void clock_times_pass_midnight_with_and_without_a_date() {
        double[] plain = read("time,engine speed [rpm]\n23:59:59.980,3000\n00:00:00.000,3001\n00:00:00.020,3002\n")
                .log()
                .time();
        assertArrayEquals(new double[] {86399.98, 86400, 86400.02}, plain, 1e-6);
        double[] dated = read("time,engine speed [rpm]\n2026-12-31T23:59:59.98Z,3000\n2027-01-01T00:00:00.02Z,3001\n")
                .log()
                .time();
        assertEquals(0.04, dated[1] - dated[0], 1e-6);
        double[] half = read("time,engine speed [rpm]\n11:59:59.98 AM,3000\n12:00:00.02 PM,3001\n")
                .log()
                .time();
        assertEquals(0.04, half[1] - half[0], 1e-6);
    }

    @Test
    void where_there_is_no_pull_the_sentence_says_what_the_engine_did() {
        String throttle = Pulls.in(read(run(SPEED + ",throttle [%]", i -> row(0.02 * i, i, ",62"))), PullRule.USUAL)
                .why();
        assertTrue(throttle.contains("without the throttle at least 90 % open"), throttle);
        String few = Pulls.in(read(run(SPEED, i -> i > 140 ? null : row(0.02 * i, i, ""))), PullRule.USUAL)
                .why();
        assertTrue(few.contains("at least 1000 rpm and 1.0 s are wanted"), few);
        String still = Pulls.in(read(run(SPEED, i -> row(0.02 * i, 0, ""))), PullRule.USUAL)
                .why();
        assertTrue(still.contains("nowhere rises"), still);
        assertFalse(throttle.contains("nowhere") || few.contains("nowhere"));
    }

    @Test
    void thousands_placeholders_and_words_are_read_and_what_stays_open_is_told() {
        LogFindings findings = read(
                "time [s],engine speed [rpm],lambda,nitrous on\n0.02,\"4,201\",----,FALSE\n0.04,\"4,204\",0.81,TRUE\n");
        assertArrayEquals(new double[] {4201, 4204}, findings.log().values(LogChannel.ENGINE_SPEED));
        assertTrue(Double.isNaN(findings.log().values(LogChannel.LAMBDA)[0]));
        assertArrayEquals(new double[] {0, 1}, findings.log().values(LogChannel.NITROUS_ON));
        LogFindings open = read("time [s];engine speed [rpm]\n1;4,201\n2;4,204\n");
        assertEquals(1, open.of(Finding.Kind.DECIMAL_UNDECIDED).size());
        LogMapping told = LogMapping.read("decimal: point\nchannels: {time: {column: time}}", "m.yaml");
        LogFindings settled = EngineLog.read(
                        new StringReader("time [s];engine speed [rpm]\n1;4,201\n2;4,204\n"), "a.csv", told)
                .findings();
        assertEquals(4201, settled.log().values(LogChannel.ENGINE_SPEED)[0]);
        assertTrue(settled.of(Finding.Kind.DECIMAL_UNDECIDED).isEmpty());
    }

    @Test
    void a_word_of_its_own_for_on_is_named_in_the_mapping() {
        LogMapping mapping = LogMapping.read("channels: {nitrous-on: {column: State, on: FIRE}}", "m.yaml");
        EngineLog log =
                EngineLog.read(new StringReader("time [s],State\n0,READY\n1,FIRE\n2,READY\n"), "a.csv", mapping);
        assertArrayEquals(new double[] {0, 1, 0}, log.values(LogChannel.NITROUS_ON));
    }

    @Test
    void later_steps_are_told_what_they_will_miss() {
        LogFindings findings =
                read(run(SPEED + ",nitrous on,lambda", i -> row(0.02 * i, i, i > 250 ? ",off,0.8" + i : ",off,")));
        List<String> missed = LaterSteps.missed(findings, PullRule.USUAL).stream()
                .map(Finding::sentence)
                .toList();
        assertTrue(missed.stream().anyMatch(s -> s.contains("nitrous is never on")), missed.toString());
        assertTrue(missed.stream().anyMatch(s -> s.contains("no vehicle speed")), missed.toString());
        assertTrue(
                missed.stream().anyMatch(s -> s.startsWith("The lambda has values to be trusted in")),
                missed.toString());
        assertTrue(findings.of(Finding.Kind.MISSING_CHANNEL).stream()
                .anyMatch(f -> f.sentence().contains("power can be judged only by acceleration")));
    }
}
