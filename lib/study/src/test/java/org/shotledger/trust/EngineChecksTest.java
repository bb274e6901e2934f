package org.shotledger.trust;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each row of {@code engine-checks.csv} is either computed here and held to the tolerance stated in the row, or listed in
 * {@link NotCovered} with the reason. The source stands in the row.
 */
class EngineChecksTest {
    private static final List<Row> ROWS = Row.all(Path.of("../../data/published/engine-checks.csv"));
    private static final Map<String, Function<Row, double[]>> COMPUTED = Published.COMPUTED;

    static List<Row> rows() {
        return ROWS.stream().filter(r -> COMPUTED.containsKey(r.id())).toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void a_published_value_is_met_within_its_stated_tolerance(Row row) {
        double[] found = COMPUTED.get(row.id()).apply(row);
        double[] values = row.values();
        double[] errors = row.errors();
        assertEquals(values.length, found.length, "numbers in " + row.expected());
        for (int i = 0; i < values.length; i++) {
            assertEquals(values[i], found[i], errors[i], row.id() + " value " + (i + 1) + " of " + row.source());
        }
    }

    @Test
    void every_row_is_computed_or_listed_with_a_reason() {
        List<String> open = new ArrayList<>();
        for (Row row : ROWS) {
            boolean here = COMPUTED.containsKey(row.id());
            boolean reason = NotCovered.reason(row.id()).isPresent();
            if (!here && !reason) {
                open.add(row.id() + " has neither: " + row.subject());
            }
        }
        assertTrue(open.isEmpty(), String.join("\n", open));
        Set<String> ids = ROWS.stream().map(Row::id).collect(Collectors.toSet());
        COMPUTED.keySet().forEach(id -> assertTrue(ids.contains(id), id + " is not in the table"));
    }
}
