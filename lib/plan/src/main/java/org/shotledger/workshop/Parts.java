package org.shotledger.workshop;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Prices and progress as the sheet states them.
 *
 * @param currency the sheet's money, for example {@code "EUR"}; empty where none is named
 * @param hour price of an hour of work; NaN where none is given
 * @param nitrous price of a kilogram of nitrous oxide; NaN where none is given
 * @param fuel price of a cubic metre of fuel; NaN where none is given
 * @param items parts and jobs by name
 */
public record Parts(String currency, double hour, double nitrous, double fuel, Map<String, ListedPart> items) {
    /** Nothing stated. */
    public static final Parts NONE = new Parts("", Double.NaN, Double.NaN, Double.NaN, Map.of());

    public Parts {
        items = Collections.unmodifiableMap(new LinkedHashMap<>(items));
    }
}
