package org.shotledger.ipynb;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shape of a notebook: the nbformat 4.5 description of cells, outputs and their fields. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class NotebookTest {
    private static final String REPAIR = " Restore or mend it.";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "{`cells`: []}|f is not a notebook of format 4 (nbformat is null). Open it in Jupyter and save it again.",
                "{`nbformat`: `4`, `cells`: []}|f is not a notebook of format 4 (nbformat is `4`). Open it in Jupyter and save it again.",
                "{`nbformat`: 3, `cells`: []}|f is not a notebook of format 4 (nbformat is 3). Open it in Jupyter and save it again.",
            })
    void another_format_is_refused(String json, String message) {
        assertEquals(message.replace('`', '"'), refusal(json.replace('`', '"')));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "`cells`: 1|cells|a list",
                "`metadata`: 1, `cells`: []|metadata|an object",
                "`nbformat_minor`: 4.5, `cells`: []|nbformat_minor|a whole number",
                "`cells`: [1]|cells[0]|an object",
                "`cells`: [{}]|cells[0].cell_type|a text",
                "`cells`: [{`cell_type`: `raw`, `id`: 1}]|cells[0].id|a text",
                "`cells`: [{`cell_type`: `raw`, `source`: [1]}]|cells[0].source|a text or a list of texts",
                "`cells`: [{`cell_type`: `raw`, `metadata`: []}]|cells[0].metadata|an object",
                "`cells`: [{`cell_type`: `raw`, `metadata`: {`tags`: [1]}}]|cells[0].metadata.tags|a list of texts",
                "`cells`: [{`cell_type`: `code`, `execution_count`: -1}]|cells[0].execution_count|a whole number or null",
                "`cells`: [{`cell_type`: `code`, `outputs`: {}}]|cells[0].outputs|a list",
                "`cells`: [{`cell_type`: `code`, `outputs`: [1]}]|cells[0].outputs[0]|an object",
                "`cells`: [{`cell_type`: `code`, `outputs`: [{}]}]|cells[0].outputs[0].output_type|a text",
                "`cells`: [{`cell_type`: `code`, `outputs`: [{`output_type`: `x`, `data`: 1}]}]|cells[0].outputs[0].data|an object",
                "`cells`: [{`cell_type`: `code`, `outputs`: [{`output_type`: `error`}]}]|cells[0].outputs[0].traceback|a list of texts",
            })
    void a_part_of_another_shape_is_named(String body, String where, String wanted) {
        assertEquals(
                "f is not a notebook: \"" + where + "\" must be " + wanted + "." + REPAIR,
                refusal("{\"nbformat\": 4, " + body.replace('`', '"') + "}"));
    }

    @Test
    void what_is_no_json_object_is_refused() {
        String message =
                "f is not a notebook: it is not a JSON object. Open it in Jupyter and save it again, or restore it.";
        assertEquals(message, refusal("[1]"));
        assertEquals(message, refusal("{"));
        assertEquals(message, refusal("[".repeat(100_000)));
    }

    private static String refusal(String json) {
        return assertThrows(NotebookException.class, () -> Notebook.parse(json, "f"))
                .getMessage();
    }
}
