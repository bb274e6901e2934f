package org.shotledger.units;

/**
 * A pressure read on a gauge, with the ambient against which the gauge reads.
 *
 * @param pascals the reading, Pa, may be negative down to vacuum
 * @param ambient the pressure around the gauge
 */
public record GaugePressure(double pascals, AbsolutePressure ambient) {

    /** Refuses readings below vacuum. */
    public GaugePressure {
        if (!(pascals + ambient.pascals() >= 0) || Double.isInfinite(pascals)) {
            throw new IllegalArgumentException("A gauge reads " + pascals + " Pa at an ambient of " + ambient.pascals()
                    + " Pa, which lies below vacuum; check the sign and the ambient.");
        }
    }

    /**
     * The pressure above vacuum.
     *
     * @return reading plus ambient
     */
    public AbsolutePressure absolute() {
        return new AbsolutePressure(pascals + ambient.pascals());
    }

    /**
     * The reading as the same gauge would show it elsewhere, the absolute pressure unchanged.
     *
     * @param other the ambient there
     * @return the reading there
     */
    public GaugePressure at(AbsolutePressure other) {
        return absolute().gauge(other);
    }

    /**
     * The reading as an amount; the ambient is lost.
     *
     * @return the figure
     */
    public Amount amount() {
        return new Amount(QuantityKind.GAUGE_PRESSURE, pascals);
    }

    @Override
    public String toString() {
        return amount() + " at an ambient of " + ambient;
    }
}
