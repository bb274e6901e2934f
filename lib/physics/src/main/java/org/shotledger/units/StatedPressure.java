package org.shotledger.units;

/**
 * A pressure whose zero has not been said yet: the caller must choose.
 *
 * @param pascals the number in Pa
 */
public record StatedPressure(double pascals) {

    /**
     * Reads it as gauge pressure at the standard atmosphere.
     *
     * @return the gauge pressure
     */
    public GaugePressure gauge() {
        return gauge(AbsolutePressure.STANDARD_ATMOSPHERE);
    }

    /**
     * Reads it as gauge pressure.
     *
     * @param ambient the ambient at the gauge
     * @return the gauge pressure
     */
    public GaugePressure gauge(AbsolutePressure ambient) {
        return new GaugePressure(pascals, ambient);
    }

    /**
     * Reads it as absolute pressure.
     *
     * @return the absolute pressure
     */
    public AbsolutePressure abs() {
        return new AbsolutePressure(pascals);
    }

    /**
     * Reads it as a difference of two pressures.
     *
     * @return the figure
     */
    public Amount difference() {
        return new Amount(QuantityKind.PRESSURE_DIFFERENCE, pascals);
    }

    @Override
    public String toString() {
        return difference() + ", not said to be gauge or absolute: add .gauge(), .abs() or .difference()";
    }
}
