package org.shotledger.units;

/**
 * A pressure above vacuum.
 *
 * @param pascals the pressure, Pa, not negative
 */
public record AbsolutePressure(double pascals) {
    /** Standard atmosphere, ISO 2533:1975. */
    public static final AbsolutePressure STANDARD_ATMOSPHERE = new AbsolutePressure(UnitFactors.ATMOSPHERE);

    /** Refuses pressures below vacuum. */
    public AbsolutePressure {
        if (!(pascals >= 0) || Double.isInfinite(pascals)) {
            throw new IllegalArgumentException("An absolute pressure is " + pascals
                    + " Pa; give a finite one, not below 0, or a gauge pressure with its ambient.");
        }
    }

    /**
     * The same pressure seen on a gauge.
     *
     * @param ambient the ambient at the gauge
     * @return the gauge pressure
     */
    public GaugePressure gauge(AbsolutePressure ambient) {
        return new GaugePressure(pascals - ambient.pascals, ambient);
    }

    /**
     * The pressure as an amount.
     *
     * @return the figure
     */
    public Amount amount() {
        return new Amount(QuantityKind.ABSOLUTE_PRESSURE, pascals);
    }

    @Override
    public String toString() {
        return amount().toString();
    }
}
