package org.shotledger.wiring;

import org.shotledger.units.Require;

/**
 * A copper wire by its American wire gauge.
 *
 * <p>Diameter after ASTM B258: {@code d = 0.127 mm * 92^((36 - n)/39)}. Resistance of annealed copper after IEC 60028:
 * {@code rho = 1.7241e-8 ohm m (1 + 0.00393 (T - 293.15 K))}.
 *
 * @param gauge gauge number, 0 to 30; a larger number is a thinner wire
 */
public record Wire(int gauge) {
    private static final double RESISTIVITY = 1.7241e-8;
    private static final double TEMPERATURE_COEFFICIENT = 0.00393;
    private static final double REFERENCE_TEMPERATURE = 293.15;

    /** Stranded wire is this much longer than solid wire of the same area because it is twisted: common practice, no source. */
    private static final double STRANDING = 1.02;

    public Wire {
        Require.within("wire gauge", gauge, 0, 30, "");
    }

    /**
     * Diameter of the solid wire.
     *
     * @return m
     */
    public double diameter() {
        return 0.127e-3 * Math.pow(92, (36.0 - gauge) / 39);
    }

    /**
     * Area of the copper.
     *
     * @return m2
     */
    public double area() {
        return Math.PI / 4 * diameter() * diameter();
    }

    /**
     * Resistance of the solid wire.
     *
     * @param length m, zero or above
     * @param temperature of the copper, K, 230 to 480
     * @return ohm
     */
    public double solidResistance(double length, double temperature) {
        Require.notNegative("length of a wire", length, "m");
        Require.within("temperature of a wire", temperature, 230, 480, "K");
        double warm = 1 + TEMPERATURE_COEFFICIENT * (temperature - REFERENCE_TEMPERATURE);
        return RESISTIVITY * warm * length / area();
    }

    /**
     * Resistance of a stranded wire of the same area.
     *
     * @param length m, zero or above
     * @param temperature of the copper, K, 230 to 480
     * @return ohm
     */
    public double resistance(double length, double temperature) {
        return STRANDING * solidResistance(length, temperature);
    }

    /**
     * The wire in words.
     *
     * @return for example {@code "14 AWG"}
     */
    public String words() {
        return gauge + " AWG";
    }
}
