package org.shotledger.logs;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.sheet.SheetException;

/** Reading logs: headings, mappings, units, and what is refused. */
class LogReadingTest {
    private static final double PSI = 6894.757293168;

    private static EngineLog read(String text, String mapping) {
        LogMapping columns = mapping.isEmpty() ? LogMapping.NONE : LogMapping.read(mapping, "log.yaml");
        return EngineLog.read(new StringReader(text), "pull.csv", columns);
    }

    private static String refusal(String text, String mapping) {
        return assertThrows(SheetException.class, () -> read(text, mapping)).getMessage();
    }

    @Test
    void headings_with_units_need_no_mapping() {
        EngineLog log = read("""
                # made up
                time [s],engine speed [rpm],manifold pressure [psi abs],injector duty [%],nitrous on
                0,3000,29.4,45,off
                0.02,3010,29.5,,on
                """, "");
        assertEquals(List.of("made up"), log.comments());
        assertEquals(29.4 * PSI, log.values(LogChannel.MANIFOLD_PRESSURE)[0], 1e-6);
        assertArrayEquals(new double[] {0.45, Double.NaN}, log.values(LogChannel.INJECTOR_DUTY), 1e-12);
        assertArrayEquals(new double[] {0, 1}, log.values(LogChannel.NITROUS_ON));
        assertEquals(4, log.line(1));
    }

    @Test
    void a_mapping_names_columns_units_ambient_and_lines_to_pass_over() {
        EngineLog log = read("""
                Session;Tuesday
                Vehicle;none
                Time;Eng Spd;MAP;AFR 1;Junk
                s;rpm;kPa;;
                0,00;3000;120,5;7,84;a
                0,02;3010;121,0;7,90;b
                """, """
                ambient: 0.872 bar abs
                lines-before-heading: 2
                lines-after-heading: 1
                channels:
                  time: {column: Time, unit: s}
                  engine-speed: {column: Eng Spd, unit: rpm}
                  manifold-pressure: {column: MAP, unit: kPa gauge}
                  lambda: {column: AFR 1, stoichiometric: 9.8}
                """);
        assertEquals(List.of("Session;Tuesday", "Vehicle;none"), log.comments());
        assertEquals(0.872e5 + 120.5e3, log.values(LogChannel.MANIFOLD_PRESSURE)[0], 1e-6);
        assertEquals(0.8, log.values(LogChannel.LAMBDA)[0], 1e-12);
        assertEquals(0.02, log.values(LogChannel.TIME)[1]);
        assertEquals(5, log.line(0));
        assertTrue(
                log.findings().of(Finding.Kind.UNKNOWN_COLUMN).get(0).sentence().contains("\"Junk\""));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        time [s],engine speed\\n0,1                        | line 1, column 2, engine speed: The column "engine speed" has no unit
        time [s],manifold pressure [bar]\\n0,1             | does not say which pressure
        time [s],manifold pressure [bar gauge]\\n0,1       | nothing says above which ambient
        time [s],engine speed [degC]\\n0,1                 | line 1, column 2, engine speed: In the heading, "degC"
        engine speed [rpm]\\n1                             | The log has no time
        time [s],engine speed [rpm],engine speed [rpm]\\n0,1,1 | stands twice
        time [s],engine speed [rpm]\\n0,3000 rpm           | line 2, column 2, engine speed: "3000 rpm" is not a number
        time [s],engine speed [rpm]\\n0,1,2\\n1,1          | The row has 3 cells where the heading has 2
        time [s],nitrous on\\n0,maybe                      | neither on nor off
        time [s]                                           | has no rows
        """)
    void what_cannot_be_used_is_refused_in_one_sentence_with_its_place(String text, String expected) {
        String message = refusal(text.replace("\\n", "\n"), "");
        assertTrue(message.contains(expected), message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        channels: {engine-sped: {column: a}}                    | the nearest name is "engine-speed"
        channels: {time: {column: Tme}}                         | log.yaml, line 1, channels.time.column: The mapping names the column "Tme", which the log pull.csv has not; the nearest name is "time"
        channels: {time: {column: time, unit: furlong}}         | furlong
        channels: {time: {colum: time}}                         | "channels.time.column" is missing
        channels: {time: {column: time}, lambda: {column: time}}| to two channels
        ambient: 0.9 bar abs                                    | "channels" is missing
        """)
    void a_mapping_that_cannot_be_used_says_where_and_why(String mapping, String expected) {
        String message = refusal("time,a\n0,1\n", mapping);
        assertTrue(message.contains(expected), message);
    }

    @Test
    void a_last_row_that_breaks_off_is_a_finding_and_no_other() {
        EngineLog log = read("time [s],engine speed [rpm]\n0,1\n1,2\n2", "");
        assertEquals(2, log.rows());
        assertEquals(1, log.findings().of(Finding.Kind.CUT_SHORT).size());
    }

    @Test
    void the_nearest_channel_is_offered_for_an_unknown_column() {
        EngineLog log = read("time [s],engin speed [rpm]\n0,1\n", "");
        String sentence = log.findings().of(Finding.Kind.UNKNOWN_COLUMN).get(0).sentence();
        assertTrue(sentence.contains("\"engine speed\""), sentence);
        assertTrue(
                log.findings().of(Finding.Kind.MISSING_CHANNEL).get(0).channel().contains("engine speed"));
    }

    @Test
    void pressures_in_several_units_are_pointed_out() {
        EngineLog log = read("time [s],manifold pressure [kPa abs],bottle pressure [psi abs]\n0,200,900\n", "");
        assertTrue(log.findings().of(Finding.Kind.MIXED_UNITS).get(0).sentence().contains("kPa abs and in psi abs"));
    }

    @Test
    void the_mapping_beside_a_log_is_found(@TempDir Path folder) throws IOException {
        Path log = Files.writeString(folder.resolve("a.csv"), "t\n0\n1\n");
        Files.writeString(folder.resolve("log.yaml"), "channels: {time: {column: t, unit: ms}}");
        assertEquals(1e-3, EngineLog.read(log).values(LogChannel.TIME)[1]);
        Files.writeString(folder.resolve("a.log.yaml"), "channels: {time: {column: t, unit: s}}");
        assertEquals(1, EngineLog.read(log).values(LogChannel.TIME)[1]);
    }

    @Test
    void the_check_tells_logs_from_other_tables(@TempDir Path folder) throws IOException {
        Path log = Files.writeString(folder.resolve("a.csv"), "time [s],lambda\n0,0.8\n1,\n");
        Path table = Files.writeString(folder.resolve("b.csv"), "bore [thou]\n14\n");
        Path mapping = Files.writeString(folder.resolve("c.log.yaml"), "channels: {tme: {column: t}}");
        Path mapped = Files.writeString(folder.resolve("c.csv"), "t\n0\n");
        assertTrue(LogCheck.knows(log) && LogCheck.knows(mapping) && LogCheck.knows(mapped));
        assertTrue(!LogCheck.knows(table) && !LogCheck.knows(folder) && !LogCheck.knows(folder.resolve("none.csv")));
        assertEquals(List.of(), LogCheck.file(log).problems());
        assertTrue(LogCheck.file(log).findings().stream().anyMatch(f -> f.kind() == Finding.Kind.NO_VALUE));
        assertEquals(1, LogCheck.file(mapping).problems().size());
        assertEquals(1, LogCheck.file(mapped).problems().size());
    }
}
