package org.shotledger.evaluate;

import org.shotledger.bottle.Figures;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Figures in sentences in both unit systems, as everywhere outside a table. */
public final class BothUnits {
    /** For the sentences of the bottle. */
    public static final Figures FIGURES = new Figures() {
        @Override
        public String pressure(double pascal) {
            return text(QuantityKind.ABSOLUTE_PRESSURE, pascal);
        }

        @Override
        public String temperature(double kelvin) {
            return text(QuantityKind.TEMPERATURE, kelvin);
        }

        @Override
        public String mass(double kilogram) {
            return text(QuantityKind.MASS, kilogram);
        }
    };

    private BothUnits() {}

    /**
     * A figure in both systems.
     *
     * @param kind what it measures
     * @param value SI
     * @return for example {@code "899.0 psi abs (62.0 bar abs)"}
     */
    public static String text(QuantityKind kind, double value) {
        return kind.text(value, UnitSystem.US) + " (" + kind.text(value, UnitSystem.SI) + ")";
    }
}
