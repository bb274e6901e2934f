package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.sheet.Problem;

/** A sheet as format 1 wrote it, kept as it was: it must go on being read. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SheetFormatTest {
    private static final Path FOLDER = DemoSheetTest.DEMO.getParent();
    private static final String OLD = resource("format-1.yaml");

    private final Job job = Job.read(OLD, FOLDER);

    @Test
    void an_old_sheet_is_read_and_each_change_is_told_with_its_line() {
        assertEquals(
                List.of(
                        "job.yaml, line 7, format: The sheet has format 1 and was read as format 3, which saving it writes;"
                                + " look through what changed.",
                        "job.yaml, line 161, bottle.thermostat: The value is now called \"heater-off-temperature\"; it was"
                                + " renamed.",
                        "job.yaml, line 41, engine.valves-per-cylinder: Nothing is calculated from this value any more; it"
                                + " was taken out, or made a comment.",
                        "job.yaml, line 178, electrical.bottle-distance: Nothing is calculated from this value any more; it"
                                + " was taken out, or made a comment.",
                        "job.yaml, line 149, wet-kit.window: The value is now called \"arming\"; it was renamed.",
                        "job.yaml, line 116, wet-kit: The value is now called \"nitrous-system\"; it was renamed."),
                job.notices().stream().map(Problem::toString).toList());
        assertEquals(305.15, job.car().bottle().heaterOff(), 1e-9);
    }

    @Test
    void what_does_not_change_stays_to_the_letter_and_on_its_line() {
        List<String> before = OLD.lines().toList();
        List<String> after = job.source().text().lines().toList();
        assertEquals(before.size(), after.size());
        assertEquals("format: 3", after.get(6));
        assertEquals("  # valves-per-cylinder: 4", after.get(40));
        assertEquals("  heater-off-temperature: 32 degC", after.get(160));
        assertEquals("  # bottle-distance: 4.1 m", after.get(177));
        List<Integer> changed = List.of(6, 40, 115, 148, 160, 177);
        for (int i = 0; i < before.size(); i++) {
            if (!changed.contains(i)) {
                assertEquals(before.get(i).replace("standing:", "provenance:"), after.get(i));
            }
        }
        assertEquals(
                161,
                job.car().origin("bottle.heater-off-temperature").orElseThrow().line());
    }

    @Test
    void saved_it_is_a_sheet_of_the_new_format_and_the_same_job(@TempDir Path folder) {
        job.save(folder.resolve("job.yaml"));
        Job again = Job.load(folder);
        assertEquals(job.setup(), again.setup());
        assertEquals(job.cases(), again.cases());
        assertEquals(List.of(), again.notices());
        assertEquals(List.of(), job.differences(again));
    }

    @Test
    void a_value_in_braces_or_over_several_lines_goes_without_a_trace_of_its_neighbours() {
        Job braces = Job.read(
                OLD.replace("  valves-per-cylinder: 4\n", "")
                        .replace("  name: straight six\n", "  name: {value: straight six, from: badge}\n")
                        .replaceFirst(
                                "(?s)electrical:\n.*?\n\n",
                                "electrical: {alternator: 140 A, bottle-distance: 4.1 m, battery: 70 A h}\n\n"),
                FOLDER);
        assertTrue(braces.source().text().contains("electrical: {alternator: 140 A, battery: 70 A h}"));
        Job lines = Job.read(
                OLD.replace(
                        "  valves-per-cylinder: 4\n",
                        "  valves-per-cylinder:\n    value: 4\n\n    from: the head\n  # next\n"),
                FOLDER);
        assertTrue(lines.source()
                .text()
                .contains("  # valves-per-cylinder:\n    # value: 4\n\n    # from: the head\n  # next\n  red-line"));
    }

    /** The word was a key; in a reason, between quotes or over lines, it is the writer's own. */
    @Test
    void a_word_of_the_writer_is_not_taken_for_a_key() {
        String quoted = "from: \"gauge, standing: upright\", standing: measured}";
        String block =
                "  cylinders:\n    value: 6\n    from: >\n      counted\n      standing: beside it\n    standing: measured\n";
        Job told = Job.read(
                OLD.replace("from: bore gauge, standing: measured}", quoted).replace("  cylinders: 6\n", block),
                FOLDER);
        assertEquals(
                "gauge, standing: upright",
                told.car().origin("engine.bore").orElseThrow().from());
        assertEquals(
                "counted standing: beside it",
                told.car().origin("engine.cylinders").orElseThrow().from().strip());
        for (String path : List.of("engine.bore", "engine.cylinders")) {
            assertEquals("measured", told.car().origin(path).orElseThrow().provenance());
        }
    }

    @Test
    void in_a_list_too_the_key_is_renamed_and_the_word_of_the_writer_is_not() {
        String gears = OLD.lines()
                .filter(line -> line.startsWith("  gears: ["))
                .findFirst()
                .orElseThrow();
        String first = gears.substring(gears.indexOf('[') + 1, gears.indexOf(','));
        String told = gears.replace(
                "[" + first, "[{value: " + first + ", standing: measured, from: \"box, standing: on end\"}");
        var gear = Job.read(OLD.replace(gears, told), FOLDER)
                .car()
                .origin("vehicle.gears[0]")
                .orElseThrow();
        assertEquals("box, standing: on end", gear.from());
        assertEquals("measured", gear.provenance());
    }

    @Test
    void without_a_format_a_sheet_is_read_as_the_newest_and_all_else_is_told_too() {
        String none = job.source().text().replace("format: 3\n", "").replace("  red-line: ", "  redline: ");
        assertEquals(
                List.of("format", "engine.red-line", "engine.redline"),
                org.junit.jupiter.api.Assertions.assertThrows(
                                org.shotledger.sheet.SheetException.class, () -> Job.read(none, FOLDER))
                        .problems()
                        .stream()
                        .map(Problem::field)
                        .toList());
    }

    /** Format 2 knew the new names of format 2 and not those that it had put away. */
    @Test
    void a_sheet_of_the_second_format_is_renamed_only_where_the_third_changed() {
        String second = OLD.replace("format: 1", "format: 2")
                .replace("  thermostat: ", "  heater-off-temperature: ")
                .replace("  valves-per-cylinder: 4\n", "")
                .replace("  bottle-distance: 4.1 m\n", "");
        assertEquals(
                List.of("format", "wet-kit.window", "wet-kit"),
                Job.read(second, FOLDER).notices().stream().map(Problem::field).toList());
        assertEquals(
                List.of("bottle.thermostat"),
                org.junit.jupiter.api.Assertions.assertThrows(
                                org.shotledger.sheet.SheetException.class,
                                () -> Job.read(
                                        second.replace("\n  heater-power", "\n  thermostat: 32 degC\n  heater-power"),
                                        FOLDER))
                        .problems()
                        .stream()
                        .map(Problem::field)
                        .toList());
    }

    @Test
    void whoever_shows_an_old_sheet_sees_what_changed() {
        List<String> lines = job.toString().lines().toList();
        assertEquals(7, lines.size());
        assertTrue(lines.get(0).matches("Heron, an invented job: \\d+ values from job.yaml"), lines.get(0));
        assertEquals(job.notices().get(5).toString(), lines.get(6));
    }

    @Test
    void a_sheet_of_the_current_format_is_left_alone() {
        assertFalse(OLD.equals(job.source().text()));
        assertEquals(List.of(), Job.load(DemoSheetTest.DEMO).notices());
    }

    static String resource(String name) {
        try (var in = SheetFormatTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
