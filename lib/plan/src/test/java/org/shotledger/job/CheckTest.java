package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(ReplaceUnderscores.class)
class CheckTest {

    @Test
    void the_shipped_sheet_and_its_tables_are_good() throws IOException {
        try (Stream<Path> files = Files.list(DemoSheetTest.DEMO.getParent())) {
            assertEquals(
                    List.of(),
                    Check.files(files.filter(Files::isRegularFile).sorted().toList()));
        }
    }

    @Test
    void each_invented_file_says_so() throws IOException {
        try (Stream<Path> files = Files.walk(DemoSheetTest.DEMO.getParent())) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String first = Files.readAllLines(file).get(0);
                assertTrue(
                        first.startsWith("#")
                                && first.toLowerCase(java.util.Locale.ROOT).contains("invented"),
                        file.toString());
            }
        }
    }

    @Test
    void a_new_folder_can_be_used_at_once_and_is_never_overwritten(@TempDir Path folder) {
        Path place = folder.resolve("job");
        List<Path> written = Starter.write(place);
        assertEquals(7, written.size());
        assertEquals(List.of(), Check.files(written));
        Job job = Job.load(place);
        assertTrue(job.car().invented());
        assertTrue(job.source().text().contains("EVERY FIGURE HERE IS INVENTED"));
        assertEquals(
                "There is something in " + place
                        + " already and nothing is overwritten; name a new or an empty folder.",
                assertThrows(IllegalArgumentException.class, () -> Starter.write(place))
                        .getMessage());
    }

    /** CGA G-8.2 and G-8.3, 49 CFR 173.301, from memory: the hazards that the sheet itself must name, where one begins. */
    @Test
    void the_starter_names_every_hazard_and_asks_for_the_markings(@TempDir Path folder) {
        Starter.write(folder);
        String text = Job.load(folder).source().text();
        for (String said : List.of(
                "suffocate without warning",
                "burns skin by cold",
                "oil, grease",
                "open flame",
                "vents outside the car",
                "outdoors",
                "away from people and ignition",
                "backfires",
                "second valve in series",
                "without the controller",
                "Closed courses",
                "transport",
                "water-capacity",
                "service-pressure",
                "relief-pressure")) {
            assertTrue(text.contains(said), said);
        }
    }

    /** A bottle filled, warmed or kept beyond its rules is refused, and no sheet moves them. */
    @Test
    void what_breaks_a_hard_limit_of_the_bottle_is_refused_and_cannot_be_loosened(@TempDir Path folder)
            throws IOException {
        Path sheet = Starter.write(folder).get(6);
        String text = Files.readString(sheet);
        List<String[]> broken = List.of(
                new String[] {"charge: 10 lb", "charge: 13 lb", "charge per water capacity"},
                new String[] {"charge: 10 lb", "charge: 1 lb", "pressure at the start"},
                new String[] {"relief-pressure: 3000", "relief-pressure: 4000", "burst rating of the disc"},
                new String[] {"relief-pressure: 3000", "relief-pressure: 1300", "hottest soak"},
                new String[] {"start-temperature: 30 degC", "start-temperature: 36 degC", "pressure at the start"},
                new String[] {"hottest-soak: 50 degC", "hottest-soak: 20 degC", "allowed is 50"},
                new String[] {
                    "bottle-pressure-high: 1000 psi gauge",
                    "bottle-pressure-high: 1000 psi gauge\n  relief-share: 95 %",
                    "allowed is 30"
                });
        for (String[] change : broken) {
            assertTrue(text.contains(change[0]), change[0]);
            Files.writeString(sheet, text.replace(change[0], change[1]));
            String said = Check.files(List.of(sheet)).toString();
            assertTrue(said.contains(change[2]), change[1] + ": " + said);
            assertTrue(!said.matches("(?s).*\\b(relax|relieve|loosen|raise the limit)\\w*.*"), said);
        }
        Files.writeString(sheet, text);
        assertEquals(List.of(), Check.files(List.of(sheet)));
    }

    /** A day of one's own is read with its units; a mother bottle beyond the legal filling is refused. */
    @Test
    void a_day_is_read_and_an_overfilled_mother_bottle_refused(@TempDir Path folder) throws IOException {
        Path sheet = Starter.write(folder).get(6);
        var day = Job.load(sheet).day();
        assertEquals(1200, day.rest());
        assertEquals(44 * 0.45359237, day.mother().orElseThrow().charge(), 1e-9);
        String text = Files.readString(sheet);
        Files.writeString(sheet, text.replace("charge: 44 lb", "charge: 50 lb"));
        String said = Check.files(List.of(sheet)).toString();
        assertTrue(said.contains("day.mother-bottle.charge") && said.contains("44.97 lb"), said);
        Files.writeString(sheet, text.replaceAll("(?s)\nday:.*?scale-step: 1 lb\n", "\n"));
        assertEquals(org.shotledger.setup.DaySheet.USUAL, Job.load(sheet).day());
    }

    @Test
    void an_empty_folder_is_filled_and_nothing_hidden_stays(@TempDir Path folder) throws IOException {
        Starter.write(folder);
        assertTrue(Check.files(List.of(folder)).isEmpty());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(7, files.count());
        }
    }

    @Test
    void where_nothing_can_be_written_nothing_is_left(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        assertEquals(
                "The folder " + file.resolve("job") + " cannot be written; nothing was left there.",
                assertThrows(java.io.UncheckedIOException.class, () -> Starter.write(file.resolve("job")))
                        .getMessage());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList());
        }
    }

    @Test
    void problems_of_several_files_come_together(@TempDir Path folder) throws IOException {
        Path jets = Files.writeString(folder.resolve("jets.csv"), "bore [thou]\n20\nwide\n500\n");
        Path odd = Files.writeString(folder.resolve("odd.csv"), "apples,pears\n1,2\n");
        Path text = Files.writeString(folder.resolve("notes.txt"), "x");
        List<String> found = Check.files(List.of(jets, odd, text)).stream()
                .map(p -> p.toString().replace(folder + "/", ""))
                .toList();
        assertEquals(
                List.of(
                        "jets.csv, line 3, column 1, bore: \"wide\" is not a number; write one without its unit.",
                        "jets.csv, line 4, column 1, bore: \"500\" is not plausible; allowed is 3.93701 to 393.701"
                                + " thou.",
                        "odd.csv, line 1: No column of any known table stands in the heading; known tables are"
                                + " compressor map (speed, flow, volume flow, pressure ratio, efficiency); fuel pump"
                                + " (voltage, pressure, flow, current); volumetric efficiency (engine speed, volumetric"
                                + " efficiency); injector dead time (voltage, dead time); jet ladder (bore).",
                        "notes.txt: This is neither a job sheet (.yaml) nor a table (.csv); name one of them."),
                found);
    }
}
