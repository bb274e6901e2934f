package org.shotledger.trust;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Standards, worked examples and handbook figures of the engine side, each computed by the library. */
final class Published {
    /**
     * Strengths of a row that count as outside the project: read, from memory, given inputs, computed with a general-purpose library.
     * Derived figures and habits of the trade do not.
     */
    private static final Set<String> OUTSIDE = Set.of("A", "B", "C", "L");

    /** What the library says for each row it computes, by the row's id. */
    static final Map<String, Function<Row, double[]>> COMPUTED = computed();

    private Published() {}

    private static Map<String, Function<Row, double[]>> computed() {
        Map<String, Function<Row, double[]>> all = new LinkedHashMap<>();
        all.putAll(AirChecks.all());
        all.putAll(PowerChecks.all());
        all.putAll(BoostChecks.all());
        all.putAll(FuelChecks.all());
        all.putAll(FlowChecks.all());
        all.putAll(SupplyChecks.all());
        all.putAll(CylinderChecks.all());
        return all;
    }

    /** The rows whose id begins so, held against the library. */
    static List<Comparison> family(List<Row> rows, String head) {
        List<Comparison> all = new ArrayList<>();
        for (Row row : rows) {
            if (row.id().startsWith(head) && OUTSIDE.contains(row.strength()) && COMPUTED.containsKey(row.id())) {
                double[] predicted = COMPUTED.get(row.id()).apply(row);
                double[] values = row.values();
                double[] errors = row.errors();
                for (int i = 0; i < values.length; i++) {
                    if (values[i] != 0) {
                        all.add(Comparison.within(
                                row.source(), row.subject(), values[i], predicted[i], errors[i] / Math.abs(values[i])));
                    }
                }
            }
        }
        return all;
    }
}
