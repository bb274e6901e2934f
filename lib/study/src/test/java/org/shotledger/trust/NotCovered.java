package org.shotledger.trust;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Rows that this test does not compute, by id or by the head of the table (its first four characters), and why. */
final class NotCovered {
    private static final Map<String, String> REASONS = new LinkedHashMap<>();

    static {
        put("compression ignition: not an engine this library is made for", "H01-12 H01-13 H01-15 H01-16 H01-17");
        put("a definition of units, held by the tests of the units", "H01-05 H03-13 H05-22 H09-11");
        put("orifices, pipes and hole sizes are held by the tests of the flow package", "H05-");
        put("wires, coils, fuses and the alternator belong to the wiring package", "H06-");
        put("sensors belong to the logs and wiring packages", "H07-");
        put("head bolts are outside the subject", "H08-16");
        put("arithmetic between columns of one published table, no model", "H04-11 H04-13 H04-14 H04-17 H04-31");
        put("static and stagnation states are not told apart at these speeds", "H03-19");
        put("uses the book's own linear heat capacity", "H10-07");
        put("a published band, held in PeakPressureBandTest", "H08-14");
        put("a definition", "H08-15");
        put("limits of a standard: no model states them", "H04-29");
        put("a band of common practice without a formula", "H08-11 H08-12");
        put("vehicle motion belongs to the pass", "H09-");
        put("uncertainty belongs to the study", "H11-");
        put("the table contradicts itself: its own figures give 2618 Btu/gal", "H04-16");
    }

    private NotCovered() {}

    private static void put(String reason, String ids) {
        for (String id : ids.split(" ", -1)) {
            REASONS.put(id, reason);
        }
    }

    static Optional<String> reason(String id) {
        String exact = REASONS.get(id);
        return Optional.ofNullable(exact != null ? exact : REASONS.get(id.substring(0, 4)));
    }
}
