package org.shotledger.bottle;

import java.util.Locale;
import org.shotledger.units.UnitFactors;

/** How figures are written in the sentences of this package. */
public interface Figures {
    /** Plain SI: bar absolute, degC, kg. */
    Figures SI = new Figures() {
        @Override
        public String pressure(double pascal) {
            return String.format(Locale.ROOT, "%.1f bar absolute", pascal / 1e5);
        }

        @Override
        public String temperature(double kelvin) {
            return String.format(Locale.ROOT, "%.1f degC", kelvin - UnitFactors.ICE_POINT);
        }

        @Override
        public String mass(double kilogram) {
            return String.format(Locale.ROOT, "%.2f kg", kilogram);
        }
    };

    /**
     * Writes a pressure.
     *
     * @param pascal absolute pressure, Pa
     * @return number and unit
     */
    String pressure(double pascal);

    /**
     * Writes a temperature.
     *
     * @param kelvin temperature, K
     * @return number and unit
     */
    String temperature(double kelvin);

    /**
     * Writes a mass.
     *
     * @param kilogram mass, kg
     * @return number and unit
     */
    String mass(double kilogram);
}
