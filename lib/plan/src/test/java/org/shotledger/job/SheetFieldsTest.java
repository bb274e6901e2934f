package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.units.QuantityKind;

/** The table of fields holds what the schema holds, each with its explanation, and gives it to whoever asks. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SheetFieldsTest {
    private static final Set<String> OWN = Set.of("from", "provenance", "note");

    @Test
    void every_field_of_the_schema_is_explained_and_no_other() throws IOException {
        JsonNode schema =
                new ObjectMapper().readTree(Files.readString(Path.of("../../data/schema/job-sheet.schema.json")));
        Set<String> paths = new TreeSet<>();
        collect(schema, schema, "", paths);
        for (String path : paths) {
            assertFalse(SheetFields.at(path).isEmpty(), path);
        }
        for (SheetField field : SheetFields.all()) {
            assertTrue(paths.stream().anyMatch(path -> SheetFields.at(path).contains(field)), field.path());
            assertFalse(
                    field.what().isBlank()
                            || field.how().isBlank()
                            || field.moves().isBlank(),
                    field.path());
            assertEquals(field.hasRange(), !field.source().isBlank(), field.path());
        }
    }

    private static void collect(JsonNode schema, JsonNode node, String path, Set<String> paths) {
        String ref = node.path("$ref").asText();
        JsonNode at = ref.equals("#/$defs/conditions")
                        || ref.equals("#/$defs/load")
                        || ref.matches("#/\\$defs/(?!figure|plain|table|from|provenance).*")
                ? schema.at(ref.substring(1))
                : node;
        if (!at.path("type").asText().equals("object")) {
            paths.add(path);
            return;
        }
        at.path("properties").properties().stream()
                .filter(e -> !OWN.contains(e.getKey()))
                .forEach(e ->
                        collect(schema, e.getValue(), path.isEmpty() ? e.getKey() : path + "." + e.getKey(), paths));
        if (at.path("additionalProperties").isObject()) {
            collect(schema, at.path("additionalProperties"), path + ".*", paths);
        }
    }

    @Test
    void every_figure_of_the_demonstration_has_a_range_in_a_unit_of_its_kind() {
        Job.load(DemoSheetTest.DEMO).car().origins().values().stream()
                // readings are what is judged itself, prices and hours are the shop's own, a sensor's own figures span
                // its range
                .filter(
                        o -> o.kind() != null
                                && !o.path()
                                        .matches(
                                                "format|readings\\..*|parts\\..*|wiring\\..*\\.price|controller\\.expanders\\..*\\.price"
                                                        + "|wiring\\.sensors\\..*\\.(low|high|class|warm-idle|values.*|resistances.*)"))
                .forEach(o -> assertTrue(SheetFields.ranged(o.path(), o.kind()).isPresent(), o.path()));
    }

    @Test
    void a_field_is_found_by_its_place_by_its_last_part_and_by_its_section() {
        String whole = SheetFields.explain("conditions.event.altitude");
        assertTrue(whole.startsWith("conditions.*.altitude\n  what it is: height of the place"), whole);
        assertTrue(whole.contains("usual: -100 to 3000 m"), whole);
        assertTrue(SheetFields.explain("valve-kv").startsWith("nitrous-system.nitrous.valve-kv\n"));
        assertTrue(SheetFields.explain("bottle").contains("bottle.charge: "));
        assertEquals(
                "A job sheet has no field \"valve-kw\"; the nearest name is \"valve-kv\".",
                assertThrows(IllegalArgumentException.class, () -> SheetFields.explain("valve-kw"))
                        .getMessage());
    }

    @Test
    void an_explanation_is_whole_and_names_the_source_of_its_range() {
        assertEquals(
                "vehicle.mass\n  what it is: mass of the car with driver\n  usual: 600 to 2800 kg (range: common practice, no"
                        + " source)\n  how to get it: a scale\n  what it changes: pass and grip",
                SheetFields.explain(" vehicle.mass "));
        assertTrue(SheetFields.explain("engine.compression-ratio")
                .contains("\n  usual: 7 to 14 (a number without a unit) (range: common practice, no source)\n"));
        assertFalse(SheetFields.explain("vehicle.tyres").contains("usual"));
        SheetField sourced = SheetFields.all().stream()
                .filter(f -> f.hasRange() && !f.source().equals("common practice"))
                .findFirst()
                .orElseThrow();
        assertTrue(SheetFields.explain(sourced.path()).contains(" (range: " + sourced.source() + ")\n"));
    }

    @Test
    void a_section_is_listed_line_by_line_and_all_sections_with_their_fields() {
        List<String> lines = SheetFields.explain("vehicle").lines().toList();
        assertTrue(
                lines.contains("vehicle.mass: mass of the car with driver (usual 600 to 2800 kg)"), lines.toString());
        assertTrue(lines.stream().allMatch(line -> line.startsWith("vehicle.")));
        assertTrue(lines.stream().anyMatch(line -> line.startsWith("vehicle.tyres: ") && !line.contains("(usual")));
        assertTrue(SheetFields.explain("solenoid").lines().allMatch(line -> line.contains(".solenoid.")));
        List<String> sections = SheetFields.sections().lines().toList();
        assertEquals(
                sections.size(),
                sections.stream()
                        .map(line -> line.split(": ", -1)[0])
                        .distinct()
                        .count());
        assertTrue(sections.contains("driveline: layout, loss, drag-torque"), sections.toString());
        assertFalse(sections.stream().anyMatch(line -> line.startsWith("name")));
        assertTrue(
                assertThrows(IllegalArgumentException.class, () -> SheetFields.explain("qqqqqqqqqqqqqqqqqq"))
                        .getMessage()
                        .matches(
                                "A job sheet has no field \"qqqqqqqqqqqqqqqqqq\"; its sections are format, name, .*, limits.*\\."));
    }

    /** A standard atmosphere is 1.01325 bar (ISO 2533); psi by the exact inch and pound. */
    @Test
    void a_range_of_gauge_pressures_counts_for_absolute_ones_and_the_other_way_round() {
        SheetField boost = SheetFields.at("base-pull.boost").get(0);
        assertEquals(
                -0.2e5, boost.usual(QuantityKind.GAUGE_PRESSURE).orElseThrow().low(), 1e-6);
        assertEquals(
                3.5e5, boost.usual(QuantityKind.GAUGE_PRESSURE).orElseThrow().high(), 1e-6);
        assertEquals(
                0.81325e5,
                boost.usual(QuantityKind.ABSOLUTE_PRESSURE).orElseThrow().low(),
                1e-6);
        assertEquals(
                4.51325e5,
                boost.usual(QuantityKind.ABSOLUTE_PRESSURE).orElseThrow().high(),
                1e-6);
        SheetField absolute = new SheetField("x", "1", "2", "bar abs", "", "", "", "");
        assertEquals(
                1e5,
                absolute.usual(QuantityKind.ABSOLUTE_PRESSURE).orElseThrow().low(),
                1e-6);
        assertEquals(
                -0.01325e5,
                absolute.usual(QuantityKind.GAUGE_PRESSURE).orElseThrow().low(),
                1e-6);
        assertEquals(
                0.98675e5,
                absolute.usual(QuantityKind.GAUGE_PRESSURE).orElseThrow().high(),
                1e-6);
        assertEquals(
                "0.813250 to 4.51325 bar abs",
                boost.rangeLike("1 bar abs", QuantityKind.ABSOLUTE_PRESSURE).replace("0.81325 ", "0.813250 "));
        assertTrue(boost.usual(QuantityKind.MASS).isEmpty());
        assertTrue(boost.usual(null).isEmpty());
        assertTrue(
                SheetFields.at("vehicle.tyres").get(0).usual(QuantityKind.MASS).isEmpty());
        assertTrue(SheetFields.ranged("vehicle.mass", QuantityKind.MASS).isPresent());
        assertTrue(SheetFields.ranged("vehicle.mass", QuantityKind.TIME).isEmpty());
    }

    @Test
    void the_ends_of_a_range_are_usual_and_what_is_beyond_them_is_not() {
        SheetField.Usual usual = new SheetField.Usual(-4, 10);
        for (double within : new double[] {-4, 10, 0, 10 + 9e-9, -4 - 9e-9}) {
            assertTrue(usual.holds(within), "" + within);
        }
        for (double beyond : new double[] {-4 - 2e-8, 10 + 2e-8, 100, -100, Double.NaN}) {
            assertFalse(usual.holds(beyond), "" + beyond);
        }
    }
}
