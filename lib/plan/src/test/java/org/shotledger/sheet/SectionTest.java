package org.shotledger.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.units.QuantityKind;

/** What a section gives for what is written, where each value is said to come from, and what it says of what cannot be read. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SectionTest {
    private final SheetReading reading = new SheetReading("s.yaml", Path.of("."));

    private SheetSection sheet(String... lines) {
        Problems problems = new Problems();
        var root = YamlSheet.read(String.join("\n", lines) + "\n", "s.yaml", problems);
        assertEquals(List.of(), problems.list());
        return SheetSection.root(reading, root.orElseThrow());
    }

    private List<String> said() {
        return reading.problems().list().stream().map(Problem::toString).toList();
    }

    private Found found(String path) {
        return reading.found().get(path);
    }

    @Test
    void a_value_carries_its_place_its_reason_and_how_it_is_known() {
        SheetSection engine = sheet(
                        "engine:",
                        "  from: drawing",
                        "  provenance: published",
                        "  bore: 85.3 mm +/- 0.02 mm",
                        "  stroke: {value: 84 mm, from: gauge, provenance: measured}",
                        "  rod: {value: 147 mm, sure: yes}")
                .section("engine");
        assertEquals(0.0853, engine.figure("bore", QuantityKind.LENGTH, 0.04, 0.14), 1e-12);
        assertEquals(0.084, engine.figure("stroke", QuantityKind.LENGTH, 0.04, 0.14), 1e-12);
        assertEquals(0.147, engine.figure("rod", QuantityKind.LENGTH, 0.04, 0.4), 1e-12);
        assertEquals(
                new Found(
                        "engine.bore",
                        "85.3 mm +/- 0.02 mm",
                        QuantityKind.LENGTH,
                        found("engine.bore").value(),
                        found("engine.bore").halfWidth(),
                        "drawing",
                        "published",
                        "s.yaml",
                        4,
                        Found.Meant.UNSAID),
                found("engine.bore"));
        assertEquals(0.02e-3, engine.halfWidth("bore"), 1e-12);
        assertEquals(0.02e-3 / Math.sqrt(3), engine.uncertainty("bore"), 1e-12);
        assertTrue(Double.isNaN(engine.halfWidth("none")) && Double.isNaN(engine.uncertainty("none")));
        assertEquals("gauge", found("engine.stroke").from());
        assertEquals("measured", found("engine.stroke").provenance());
        assertEquals(Found.Meant.REASONED, found("engine.stroke").meant());
        assertEquals(Found.Meant.SURE, found("engine.rod").meant());
        assertEquals("drawing", found("engine.rod").from());
        assertEquals("engine", engine.path());
        assertEquals("x", engine.make(() -> "x"));
        assertEquals(List.of(), said());
    }

    @Test
    void a_default_says_that_it_is_one() {
        SheetSection s = sheet("a: 1 mm");
        assertEquals(0.5, s.figureOr("share", QuantityKind.FRACTION, 0, 1, 0.5, "habit"));
        assertEquals(3, s.countOr("count", 1, 9, 3, "habit"));
        assertTrue(s.yesOr("flag", true, "habit"));
        assertFalse(s.yesOr("other", false, "habit"));
        assertEquals(2, s.choiceOr("kind", Map.of("two", 2), "two", "habit"));
        assertEquals("words", s.textOr("note-of-mine", "words"));
        for (String path : List.of("share", "count", "flag", "other", "kind")) {
            assertEquals("default: habit", found(path).from(), path);
            assertEquals("common practice", found(path).provenance(), path);
        }
        assertEquals("no", found("other").text());
        assertEquals("yes", found("flag").text());
        assertEquals(3, found("count").value());
        assertEquals("two", found("kind").text());
    }

    @Test
    void what_stands_there_goes_before_the_default() {
        SheetSection s = sheet(
                "share: 20 %", "count: 4", "flag: no", "kind: one", "text: some words", "list: [1 mm, {value: 2 mm}]");
        assertEquals(0.2, s.figureOr("share", QuantityKind.FRACTION, 0, 1, 0.5, "habit"), 1e-12);
        assertEquals(4, s.countOr("count", 1, 9, 3, "habit"));
        assertFalse(s.yesOr("flag", true, "habit"));
        Map<String, Integer> kinds = new LinkedHashMap<>();
        kinds.put("two", 2);
        kinds.put("one", 1);
        assertEquals(1, s.choiceOr("kind", kinds, "two", "habit"));
        assertEquals(1, s.choice("kind", kinds));
        assertEquals("some words", s.textOr("text", "words"));
        assertEquals("some words", s.text("text"));
        assertEquals(List.of(0.001, 0.002), s.figures("list", QuantityKind.LENGTH, 0, 1));
        assertEquals(0.002, found("list[1]").value(), 1e-12);
        assertTrue(s.measures("share", QuantityKind.FRACTION));
        assertFalse(s.measures("share", QuantityKind.MASS));
        assertFalse(s.measures("none", QuantityKind.MASS));
        assertEquals(List.of(), said());
    }

    /** 1 bar on a gauge is 1 bar more than what is around it: here 0.9 bar, or the standard atmosphere where that is not known. */
    @Test
    void a_gauge_pressure_counts_from_what_is_around_it() {
        SheetSection s = sheet("gauge: 1 bar gauge", "abs: 1 bar abs", "wide: {value: 1 bar gauge}");
        assertEquals(1.9e5, s.pressure("gauge", 0, 1e6, 0.9e5), 1e-6);
        assertEquals(1e5, s.pressure("abs", 0, 1e6, 0.9e5), 1e-6);
        assertEquals(201_325, s.pressure("gauge", 0, 1e6, Double.NaN), 1e-6);
        assertTrue(Double.isNaN(s.pressure("gauge", 0, 1.8e5, 0.9e5)), "1.9 bar absolute are above 1.8");
        assertTrue(s.measures("wide", QuantityKind.GAUGE_PRESSURE));
    }

    /** The ends of a range are in it, a little beyond is refused in the unit in which it was written. */
    @Test
    void figures_are_held_to_their_range_and_counts_are_whole() {
        SheetSection s = sheet(
                "low: 40 mm",
                "high: 140 mm",
                "below: 39.9 mm",
                "above: 14.1 cm",
                "half: 2.5",
                "word: wide",
                "many: 10");
        assertEquals(0.04, s.figure("low", QuantityKind.LENGTH, 0.04, 0.14), 1e-12);
        assertEquals(0.14, s.figure("high", QuantityKind.LENGTH, 0.04, 0.14), 1e-12);
        assertTrue(Double.isNaN(s.figure("below", QuantityKind.LENGTH, 0.04, 0.14)));
        assertTrue(Double.isNaN(s.figure("above", QuantityKind.LENGTH, 0.04, 0.14)));
        assertEquals(1, s.count("half", 1, 9));
        assertTrue(Double.isNaN(s.figure("word", QuantityKind.LENGTH, 0.04, 0.14)));
        assertEquals(1, s.count("many", 1, 9));
        assertNull(found("below"));
        List<String> said = said();
        assertEquals(
                "s.yaml, line 3, column 8, below: \"39.9 mm\" is not plausible for \"below\"; allowed is 40 to 140 mm.",
                said.get(0));
        assertTrue(said.get(1).endsWith("allowed is 4 to 14 cm."), said.get(1));
        assertTrue(said.get(2).endsWith("A whole number is wanted from 1 to 9."), said.get(2));
        assertTrue(said.get(3).contains("\"wide\""), said.get(3));
        assertEquals(5, said.size());
    }

    @Test
    void what_is_missing_or_not_known_is_said_with_its_place() {
        SheetSection s =
                sheet("engine:", "  strokes: 85 mm", "  empty:", "  list: 1 mm", "  kind: doubl", "turbo: 3", "  ");
        SheetSection engine = s.section("engine");
        assertTrue(Double.isNaN(engine.figure("stroke", QuantityKind.LENGTH, 0.04, 0.14)));
        assertTrue(Double.isNaN(engine.figure("empty", QuantityKind.LENGTH, 0.04, 0.14)));
        assertEquals(List.of(), engine.figures("list", QuantityKind.LENGTH, 0, 1));
        Map<String, Integer> kinds = new LinkedHashMap<>();
        kinds.put("single", 1);
        kinds.put("double", 2);
        assertEquals(1, engine.choice("kind", kinds));
        assertNull(engine.make(() -> "x"));
        SheetSection turbo = s.section("turbo");
        assertTrue(
                Double.isNaN(turbo.figure("area", QuantityKind.LENGTH, 0, 1)),
                "what lies in it is not asked for again");
        SheetSection absent = s.section("bottle");
        assertEquals("", absent.text("name"));
        assertNull(absent.make(() -> "x"));
        assertEquals(
                List.of(
                        "s.yaml, line 2, column 3, engine.stroke: \"engine.stroke\" is missing; write a length from 40 to 140 mm.",
                        "s.yaml, line 3, column 9, engine.empty: \"engine.empty\" has no value; write a length from 40 to 140"
                                + " mm.",
                        "s.yaml, line 4, column 9, engine.list: \"engine.list\" is not a list; write figures in square brackets,"
                                + " each from 0 to 1000 mm.",
                        "s.yaml, line 5, column 9, engine.kind: \"doubl\" is not a choice for \"engine.kind\"; the nearest name is"
                                + " \"double\"; allowed are single, double.",
                        "s.yaml, line 2, column 3, engine.strokes: \"strokes\" is not known in \"engine\"; the nearest name is"
                                + " \"stroke\"; known are stroke, empty, list, kind.",
                        "s.yaml, line 6, column 1, turbo: \"turbo\" is not a section; write its values on the lines below,"
                                + " indented.",
                        "s.yaml, line 1, column 1, bottle: The section \"bottle\" is missing; add it."),
                said());
    }

    @Test
    void what_stands_beside_a_value_must_be_known() {
        SheetSection s = sheet(
                "a: {value: 1 mm, form: gauge}",
                "b: {value: 1 mm, provenance: hearsay}",
                "c: {value: 1 mm, sure: perhaps}",
                "d: {value: [1 mm]}",
                "e: [[1 mm]]");
        for (String key : List.of("a", "b", "c", "d")) {
            s.figure(key, QuantityKind.LENGTH, 0, 1);
        }
        assertEquals(List.of(), s.figures("e", QuantityKind.LENGTH, 0, 1));
        List<String> said = said();
        assertTrue(said.get(0)
                .contains("\"form\" is not known beside a value; known are value, from, provenance, sure, note."));
        assertTrue(
                said.get(1).contains("\"hearsay\" is not a provenance; allowed are measured, published,"), said.get(1));
        assertTrue(said.get(2).contains("\"perhaps\" is no answer here; write yes or no."), said.get(2));
        assertTrue(said.get(3).endsWith("\"value\" must be a plain figure or word."), said.get(3));
        assertTrue(said.get(4).endsWith("e[0]: A plain figure is wanted here."), said.get(4));
        assertEquals(5, said.size());
        assertEquals("", found("b").provenance());
    }

    @Test
    void sections_are_found_filled_and_read_elsewhere() {
        SheetSection s = sheet("parts:", "  from: shop", "  one: {size: 1 mm}", "  two: {size: 2 mm}", "extra: 1");
        assertEquals(
                List.of("one", "two"),
                List.copyOf(s.section("parts").namedSections().keySet()));
        assertEquals(
                0.002, s.section("parts").namedSections().get("two").figure("size", QuantityKind.LENGTH, 0, 1), 1e-12);
        assertEquals("shop", found("parts.two.size").from(), "the reason of the section around it");
        assertTrue(s.sectionIf("none").isEmpty());
        assertEquals("parts", s.sectionIf("parts").orElseThrow().path());
        SheetSection filled = s.section("parts")
                .section("one")
                .filled("size", Map.of("size", "9 mm", "length", "3 mm"), "catalogue", "published");
        assertEquals(0.001, filled.figure("size", QuantityKind.LENGTH, 0, 1), 1e-12);
        assertEquals(0.003, filled.figure("length", QuantityKind.LENGTH, 0, 1), 1e-12);
        assertEquals("catalogue", found("parts.one.length").from());
        assertEquals("published", found("parts.one.length").provenance());
        assertEquals(3, found("parts.one.length").line(), "where the part is named");
        s.readElsewhere("extra");
        assertEquals("x", s.make(() -> "x"));
        s.report("extra", "It is not so.");
        assertNull(s.make(() -> "x"));
        assertEquals(List.of("s.yaml, line 5, column 8, extra: It is not so."), said());
    }

    @Test
    void what_a_maker_refuses_is_told_at_its_section() {
        SheetSection engine = sheet("engine:", "  a: 1 mm").section("engine");
        engine.figure("a", QuantityKind.LENGTH, 0, 1);
        assertNull(engine.make(() -> {
            throw new IllegalArgumentException("Too small.");
        }));
        assertEquals(List.of("s.yaml, line 2, engine: Too small."), said());
    }
}
