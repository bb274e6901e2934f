package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.setup.Case;
import org.shotledger.setup.DaySheet;
import org.shotledger.workshop.Workshop;

/** A job with one thing changed: that thing and nothing else, with the reason that goes with it. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class JobTest {
    private final Job job = Job.load(DemoSheetTest.DEMO.getParent().toString());

    @Test
    void a_part_of_a_job_is_exchanged_and_the_rest_is_the_same() {
        Job other = job.with("tune.lambda", "0.79");
        assertEquals(
                new Job(
                        other.car(),
                        job.target(),
                        job.setup(),
                        job.day(),
                        job.cases(),
                        job.places(),
                        job.workshop(),
                        job.source()),
                job.with(other.car()));
        assertEquals(0.79, job.with(other.setup()).setup().mixture(), 1e-12);
        assertSame(job.car(), job.with(other.setup()).car());
        assertEquals(DaySheet.USUAL, job.with(DaySheet.USUAL).day());
        assertSame(job.setup(), job.with(DaySheet.USUAL).setup());
        Workshop none = Job.read(
                        job.source().text().replaceAll("(?s)\ntrack:.*?\nelectrical:", "\nelectrical:"), folder())
                .workshop();
        assertEquals(none, job.with(none).workshop());
        assertFalse(none.equals(job.workshop()));
        List<Case> one = List.of(job.stated());
        assertEquals(one, job.withCases(one).cases());
        assertSame(job.target(), job.withCases(one).target());
    }

    @Test
    void another_target_brings_its_own_passes_into_the_setup() {
        Job four = job.with(
                job.with("target.passes", "4").with("target.pass-time", "8 s").target());
        assertEquals(4, four.setup().passes().count());
        assertEquals(8, four.setup().passes().seconds());
        assertEquals(4, four.target().passes());
        assertEquals(3, job.setup().passes().count());
        assertEquals(four.setup(), job.setup().withPasses(four.setup().passes()));
    }

    @Test
    void a_case_is_one_that_must_hold_or_the_weather_of_a_place() {
        Case cold = job.cases().get(1);
        assertSame(cold, job.caseNamed(cold.name()));
        Case home = job.caseNamed("home");
        assertEquals("home", home.name());
        assertEquals(291.15, home.air().temperature(), 1e-9);
        assertEquals(13.5, home.voltage());
        assertEquals(300.15, job.air("event").temperature(), 1e-9);
        assertEquals(
                "The sheet of Whimbrel has no conditions named 'away'; it has [event, home].",
                assertThrows(IllegalArgumentException.class, () -> job.caseNamed("away"))
                        .getMessage());
    }

    @Test
    void a_figure_that_changes_has_the_reason_it_is_given_or_says_what_it_was() {
        assertTrue(
                job.with("engine.stroke", "84 mm")
                        .source()
                        .text()
                        .contains(
                                "stroke: {value: 84 mm, provenance: assumed, from: \"changed from 84.6 mm, no reason given\"}"));
        assertTrue(job.with("engine.stroke", "84 mm", "measured", "dial")
                .source()
                .text()
                .contains("stroke: {value: 84 mm, provenance: measured, from: \"dial\"}"));
        // 84.6 mm is 8.46 cm: the drawing is still where it comes from
        assertTrue(job.with("engine.stroke", "8.46 cm", "measured", "dial")
                .source()
                .text()
                .contains("stroke: {value: 8.46 cm, from: crankshaft drawing}"));
        assertTrue(job.with("engine.name", "seven").source().text().contains("\n  name: seven\n"));
        assertTrue(
                job.stating("engine.nitrous-work", "0.9", "assumed", "a guess")
                        .source()
                        .text()
                        .contains(
                                "engine:\n  nitrous-work: {value: 0.9, provenance: assumed, from: \"a guess\"}\n  name: straight six\n"));
        assertEquals(
                0.084,
                job.stating("engine.stroke", "84 mm", "measured", "dial")
                        .car()
                        .engine()
                        .stroke(),
                1e-12);
    }

    @Test
    void a_section_is_added_once() {
        String bare = job.source().text().replaceAll("(?s)\nday:.*?scale-step: 1 lb\n", "\n");
        Job added = Job.read(bare, folder()).adding("day:\n  rest: 7 min\n");
        assertEquals(420, added.day().rest());
        assertThrows(org.shotledger.sheet.SheetException.class, () -> added.adding("day:\n  rest: 8 min\n"));
    }

    @Test
    void flow_tests_come_in_the_order_of_the_sheet() {
        String test =
                ": {kind: nitrous, jets: 43 thou, seconds: 10 s, before: 24 kg, after: 23.3 kg, bottle-pressure: 900 psi gauge}\n";
        assertEquals(
                List.of("second", "first"),
                job.adding("flow-tests:\n  second" + test + "  first" + test).flowTests().stream()
                        .map(org.shotledger.nitrous.FlowTested::name)
                        .toList());
        assertEquals(List.of(), job.flowTests());
    }

    @Test
    void what_is_unusual_is_told_with_its_line() {
        assertEquals(List.of(), job.unusual());
        List<String> said = job.with("vehicle.mass", "9000 kg").unusual().stream()
                .map(p -> p.field() + " " + p.line())
                .toList();
        assertEquals(List.of("vehicle.mass 198"), said);
    }

    @Test
    void shown_it_says_how_many_values_it_has_and_whether_it_is_invented() {
        int values = job.car().origins().size();
        assertEquals("Whimbrel, an invented job: " + values + " values from job.yaml", job.toString());
        assertEquals(
                "Whimbrel: " + values + " values from job.yaml",
                job.with("invented", "no").toString());
    }

    /** Written into a folder of its own it has all its tables; written over itself nothing but the sheet is written. */
    @Test
    void saved_the_tables_go_with_the_sheet(@TempDir Path folder) throws IOException {
        job.save(folder.resolve("my.yaml"));
        for (String table : List.of("compressor-map.csv", "jets.csv", "main-pump.csv", "volumetric-efficiency.csv")) {
            assertEquals(Files.readString(folder().resolve(table)), Files.readString(folder.resolve(table)));
        }
        Job there = Job.load(folder.resolve("my.yaml"));
        assertEquals(job.source().text(), Files.readString(folder.resolve("my.yaml")));
        assertEquals(List.of(), job.differences(there));
        Files.delete(folder.resolve("jets.csv"));
        there.save(folder.resolve("again.yaml"));
        assertEquals(job.source().text(), Files.readString(folder.resolve("again.yaml")));
        assertFalse(Files.exists(folder.resolve("jets.csv")));
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        assertEquals(
                "The table " + folder.toRealPath().resolve("jets.csv")
                        + " cannot be read any more; nothing was written.",
                assertThrows(UncheckedIOException.class, () -> there.save(elsewhere.resolve("my.yaml")))
                        .getMessage());
        try (var files = Files.list(elsewhere)) {
            assertEquals(0, files.count());
        }
    }

    private static Path folder() {
        return DemoSheetTest.DEMO.getParent();
    }
}
