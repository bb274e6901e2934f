package org.shotledger.setup;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.shotledger.units.Require;

/**
 * Factors on the models' results.
 *
 * @param values those that are not 1
 */
public record Factors(Map<Factor, Double> values) {
    /** The models as they stand. */
    public static final Factors NONE = new Factors(Map.of());

    public Factors {
        EnumMap<Factor, Double> copy = new EnumMap<>(Factor.class);
        values.forEach((factor, value) -> {
            Require.within("factor on the " + factor.words(), value, 0, 10, "");
            if (value != 1) {
                copy.put(factor, value);
            }
        });
        values = Collections.unmodifiableMap(copy);
    }

    /**
     * One of them.
     *
     * @param factor which
     * @return the factor, 1 where none is set
     */
    public double of(Factor factor) {
        return values.getOrDefault(factor, 1.0);
    }

    /**
     * The same with one changed.
     *
     * @param factor which
     * @param value 0 to 10
     * @return the changed factors
     */
    public Factors with(Factor factor, double value) {
        EnumMap<Factor, Double> changed = new EnumMap<>(Factor.class);
        changed.putAll(values);
        changed.put(factor, value);
        return new Factors(changed);
    }
}
