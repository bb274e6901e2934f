package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.sheet.Problem;

/** What is said of a figure that can be but seldom is, and what silences it; the line is that of the sheet. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class UnusualTest {
    private static final String MEND = "; mend it, or say \"from: ...\" or \"sure: yes\" beside it if it is meant.";
    private static final String BAND =
            " has a band so wide that it says little; mend the band, or say \"sure: yes\" beside it if it is meant.";

    @Test
    void a_figure_outside_its_range_is_told_in_the_unit_in_which_it_stands() throws IOException {
        // 600 to 2800 kg; a pound is 0.45359237 kg
        assertEquals(
                "job.yaml, line 198, vehicle.mass: \"7000 lb\" is unusual for \"vehicle.mass\"; usual is 1322.77 to 6172.94"
                        + " lb (common practice, no source)" + MEND,
                said("mass: 1540 kg", "mass: 7000 lb").get(0));
    }

    /** A range in gauge pressure holds a standard atmosphere more in absolute pressure. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "mass: 1540 kg|mass: 2800 kg|",
                "mass: 1540 kg|mass: 2801 kg|\"2801 kg\" is unusual",
                "mass: 1540 kg|mass: 600 kg|",
                "mass: 1540 kg|mass: 599 kg|\"599 kg\" is unusual",
                "mass: 1540 kg|mass: {value: 599 kg, from: scales}|",
                "mass: 1540 kg|mass: {value: 599 kg, sure: yes}|",
                "mass: 1540 kg|mass: {value: 599 kg, from: \"changed from 1540 kg, no reason given\"}|\"599 kg\" is unusual",
                "mass: 1540 kg|mass: {value: 599 kg, from: \"told when this sheet was begun\"}|\"599 kg\" is unusual",
                "mass: 1540 kg|mass: {value: 599 kg, from: \"estimated: a guess\"}|\"599 kg\" is unusual",
                "filter-loss: 2|filter-loss: 0|",
                // a band of more than a quarter of its value, of more than four fifths of an estimate
                "mass: 1540 kg|mass: 1540 kg +/- 385 kg|",
                "mass: 1540 kg|mass: 1540 kg +/- 386 kg|band",
                "mass: 1540 kg|mass: {value: 1540 kg +/- 386 kg, from: scales}|band",
                "mass: 1540 kg|mass: {value: 1540 kg +/- 386 kg, sure: yes}|",
                "mass: 1540 kg|mass: {value: 1540 kg +/- 1230 kg, provenance: estimated}|",
                "mass: 1540 kg|mass: {value: 1540 kg +/- 1233 kg, provenance: estimated}|band",
                // a temperature has no share: 30 K, or a quarter of what the probe shows in Celsius
                "temperature: 18 degC|temperature: 18 degC +/- 29 K|",
                "temperature: 18 degC|temperature: 18 degC +/- 31 K|band",
                "exhaust-temperature: {value: 930 degC,|exhaust-temperature: {value: 930 degC +/- 230 K,|",
                "exhaust-temperature: {value: 930 degC,|exhaust-temperature: {value: 930 degC +/- 235 K,|band",
            })
    void what_is_meant_is_left_alone(String before, String after, String part) throws IOException {
        List<String> said = said(before, after.replace('#', '\n')).stream()
                .filter(s -> !s.contains("does not go with the rest"))
                .toList();
        assertEquals(part == null ? 0 : 1, said.size(), said.toString());
        if (part != null) {
            assertTrue(said.get(0).contains(part)
                    && (said.get(0).endsWith(MEND) || said.get(0).endsWith(BAND)));
        }
    }

    @Test
    void a_wide_band_is_told_with_the_figure() throws IOException {
        assertEquals(
                List.of("job.yaml, line 198, vehicle.mass: \"1540 kg +/- 400 kg\" at \"vehicle.mass\"" + BAND),
                said("mass: 1540 kg", "mass: 1540 kg +/- 400 kg"));
    }

    /** 720 hp over 0.3 t is 2400 hp/t. What is outside its range is not told a second time for not going with the rest. */
    @Test
    void a_contradiction_is_told_once_and_silenced_only_by_saying_sure() throws IOException {
        String rest =
                "\"vehicle.mass\", 300 kg, does not go with the rest: power asked for over mass in hp for each tonne is"
                        + " 2400; usual is 70 to 1400 (common practice, no source); mend what is wrong, or say \"sure: yes\" beside"
                        + " \"vehicle.mass\" if it is meant.";
        List<String> told = said("mass: 1540 kg", "mass: {value: 300 kg, from: scales}");
        assertEquals(List.of("job.yaml, line 198, vehicle.mass: " + rest), mass(told));
        assertEquals(1, mass(said("mass: 1540 kg", "mass: 300 kg")).size());
        assertEquals(List.of(), mass(said("mass: 1540 kg", "mass: {value: 300 kg, sure: yes}")));
        Problem problem = EditedDemo.job("count: 6\n  voltage", "count: 7\n  voltage")
                .unusual()
                .get(0);
        assertEquals(List.of("injection.count", 81, "7"), List.of(problem.field(), problem.line(), problem.found()));
    }

    private static List<String> mass(List<String> said) {
        return said.stream().filter(s -> s.contains("vehicle.mass: ")).toList();
    }

    /** Two free inputs fewer, two free outputs fewer: the line of "need" and of "output-current" in the sheet. */
    @Test
    void a_signal_without_a_pin_and_a_gap_in_the_chain_are_told_with_their_lines(@TempDir Path folder)
            throws IOException {
        String poor =
                EditedDemo.text("inputs-used: 13", "inputs-used: 15", "\n  outputs-used: 11", "\n  outputs-used: 13");
        poor = poor.replaceFirst("pulsing-outputs-used: .*", "pulsing-outputs-used: 8");
        List<String> lines = poor.lines().toList();
        List<Problem> missing = WiringCheck.problems(Job.read(poor, EditedDemo.FOLDER));
        assertTrue(missing.size() > 0);
        for (Problem problem : missing) {
            String key = problem.field().substring("wiring.signals.".length());
            String line = lines.get(problem.line() - 1);
            assertTrue(line.startsWith("    " + key + ": {channel: "), line);
            assertTrue(line.contains("need: must"), line);
            assertTrue(
                    problem.sentence()
                            .matches(key.replace('-', ' ')
                                    + " must be there and has no pin: .*; free a pin, give it another way or"
                                    + " add an expander, the nitrous must not be armed without it\\."),
                    problem.sentence());
        }
        Job good = Job.load(DemoSheetTest.DEMO);
        assertEquals(List.of(), WiringCheck.problems(good));
        Problem gap = WiringCheck.notices(good).get(0);
        assertEquals(
                "  output-current: 4 A", Files.readAllLines(DemoSheetTest.DEMO).get(gap.line() - 1));
        assertEquals("wiring.safety", gap.field());
        assertTrue(
                gap.sentence()
                        .matches("It does not hold that .* \\(.*nitrous solenoid: keeps it flowing when stuck.*\\)\\."),
                gap.sentence());
        String none = Files.readString(DemoSheetTest.DEMO).replaceAll("(?s)\nwiring:.*?\nparts:", "\nparts:");
        assertEquals(List.of(), WiringCheck.notices(Job.read(none, EditedDemo.FOLDER)));
        EditedDemo.copyTables(folder);
        Path sheet = Files.writeString(folder.resolve("my.yml"), poor.replace("mass: 1540 kg", "mass: 2801 kg"));
        Check.Result result = Check.file(sheet);
        assertEquals(
                missing.stream().map(Problem::field).toList(),
                result.problems().stream().map(Problem::field).toList());
        assertEquals(1, result.notices().size());
        assertEquals(
                List.of("vehicle.mass"),
                result.unusual().stream().map(Problem::field).toList());
    }

    private static List<String> said(String... edits) throws IOException {
        return EditedDemo.job(edits).unusual().stream().map(Problem::toString).toList();
    }
}
