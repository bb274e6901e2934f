package org.shotledger.engine;

import org.shotledger.units.UnitFactors;

/**
 * Correction of measured power to a standard's reference air.
 *
 * <p>All of them were made for engines whose air flow follows the weather. A turbocharger whose wastegate holds a set
 * pressure makes up for most of it, so that the factor then promises power that is not there; with a fixed nitrous shot
 * the part from nitrous oxide does not follow the weather at all.
 */
public enum PowerCorrection {
    /** SAE J1349, June 1990: 99 kPa dry, 25 C, {@code 1.18 r - 0.18} (mechanical efficiency 0.8475); holds from 0.93 to 1.07. */
    SAE_J1349_1990("SAE J1349 JUN90", 0.93, 1.07) {
        @Override
        public double factor(MoistAir air) {
            return 1.18 * ratio(air) - 0.18;
        }
    },
    /** SAE J1349, August 2004: 99 kPa dry, 25 C, mechanical efficiency 0.85; holds from 0.93 to 1.07. */
    SAE_J1349_2004("SAE J1349 AUG2004", 0.93, 1.07) {
        @Override
        public double factor(MoistAir air) {
            return (ratio(air) - 0.15) / 0.85;
        }
    },
    /** ISO 1585 (UN R85) for spark ignition: {@code (99/p_dry)^1.2 (T/298)^0.6}; holds from 0.93 to 1.07. */
    ISO_1585("ISO 1585", 0.93, 1.07) {
        @Override
        public double factor(MoistAir air) {
            return AtmosphericFactor.SPARK_IGNITION.of(DRY_REFERENCE, 298, air.dryPressure(), air.temperature());
        }
    },
    /** DIN 70020: {@code (101300/p) sqrt(T/293)} with the total pressure; holds from 0.9 to 1.1. */
    DIN_70020("DIN 70020", 0.9, 1.1) {
        @Override
        public double factor(MoistAir air) {
            return 101.3e3 / air.pressure() * Math.sqrt(air.temperature() / 293);
        }
    },
    /** Old sea-level standard (SAE J607): 29.92 inHg dry, 60 F; no stated limits. */
    STP("STP (60 degF, 29.92 inHg dry)", 0, Double.POSITIVE_INFINITY) {
        @Override
        public double factor(MoistAir air) {
            return 29.92
                    * UnitFactors.INCH_OF_MERCURY
                    / air.dryPressure()
                    * Math.sqrt(air.temperature() / (519.67 / 1.8));
        }
    };

    /** Pressure of the dry air at the reference, Pa (SAE J1349, ISO 1585). */
    private static final double DRY_REFERENCE = 99e3;

    private final String words;
    private final double low;
    private final double high;

    PowerCorrection(String words, double low, double high) {
        this.words = words;
        this.low = low;
        this.high = high;
    }

    /**
     * The factor by which observed power is multiplied.
     *
     * @param air the air of the test
     * @return a pure number near one
     */
    public abstract double factor(MoistAir air);

    /**
     * Tells whether the standard allows a correction this large.
     *
     * @param air the air of the test
     * @return true inside the stated limits
     */
    public boolean holds(MoistAir air) {
        double factor = factor(air);
        return factor >= low && factor <= high;
    }

    /**
     * The name a reader knows.
     *
     * @return for example {@code "ISO 1585"}
     */
    public String words() {
        return words;
    }

    private static double ratio(MoistAir air) {
        return DRY_REFERENCE / air.dryPressure() * Math.sqrt(air.temperature() / 298);
    }
}
