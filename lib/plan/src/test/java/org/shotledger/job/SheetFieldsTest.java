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
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

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
}
