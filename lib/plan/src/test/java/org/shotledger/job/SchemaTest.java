package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
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
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The schema shipped for editors, judged by an independent validator (JSON Schema 2020-12). */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SchemaTest {
    private static final Path FILE = Path.of("../../data/schema/job-sheet.schema.json");
    private static final ObjectMapper JSON = new ObjectMapper();

    private final String good = Files.readString(DemoSheetTest.DEMO);
    private final JsonNode schema = JSON.readTree(Files.readString(FILE));
    private final Schema validator = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(FILE), InputFormat.JSON);

    SchemaTest() throws IOException {}

    @Test
    void the_shipped_sheets_fit_the_schema(@TempDir Path folder) throws IOException {
        assertEquals(List.of(), errors(good));
        Starter.write(folder);
        assertEquals(List.of(), errors(Files.readString(folder.resolve("job.yaml"))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "red-line:|redline:",
                "kind: same|kind: alcohol",
                "provenance: published|provenance: certain",
                "cylinders: 6|cylinders: many",
                "driveline:|drivetrain:",
                "jet-ladder: jets.csv|jet-ladder: jets.txt",
            })
    void a_wrong_name_or_word_does_not_fit(String from, String to) throws IOException {
        assertFalse(errors(good.replaceFirst(from, to)).isEmpty());
    }

    @Test
    void every_value_the_reader_asks_for_stands_in_the_schema() {
        for (String path : Job.load(DemoSheetTest.DEMO).car().origins().keySet()) {
            JsonNode at = schema;
            for (String key : path.replaceAll("\\[\\d+\\]", "").split("\\.", -1)) {
                at = child(at, key);
            }
            assertFalse(at.isMissingNode(), path);
            assertTrue(at.has("description"), path);
        }
    }

    private JsonNode child(JsonNode node, String key) {
        JsonNode named = node.path("properties").path(key);
        JsonNode any = node.path("additionalProperties").path("$ref");
        return named.isMissingNode() && any.isTextual() ? schema.at(any.asText().substring(1)) : named;
    }

    @Test
    void every_required_name_of_the_schema_is_required_by_the_reader() {
        for (JsonNode name : schema.path("required")) {
            String text = good.replaceFirst("(?m)^" + name.asText() + ":", "x" + name.asText() + ":");
            boolean refused;
            try {
                Job.read(text, DemoSheetTest.DEMO.getParent());
                refused = false;
            } catch (IllegalArgumentException e) {
                refused = true;
            }
            assertTrue(refused, name.asText());
        }
    }

    private List<String> errors(String yaml) throws IOException {
        Object plain = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        return validator.validate(JSON.writeValueAsString(plain), InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }
}
