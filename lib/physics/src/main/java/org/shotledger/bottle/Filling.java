package org.shotledger.bottle;

/**
 * A bottle as it is filled and kept, to be checked by {@link FillingCheck}.
 *
 * @param bottle the vessel; its water capacity is the one stamped on it
 * @param mass charge by scale, kg, above 0
 * @param cylinder marking and disc
 * @param startTemperature temperature of bottle and charge at the start of a pass, K, 182.33 to 525
 * @param hottestSoak hottest the full bottle may stand, K, 182.33 to 525
 * @param bandLow lowest working pressure, Pa absolute
 * @param bandHigh highest working pressure, Pa absolute
 * @param heaterOff temperature at which the heater turns off, K; NaN without a heater
 * @param largestDensity largest charge per water capacity asked for, kg/L; above 0 to {@link FillingCheck#LARGEST_DENSITY}
 * @param discShare share of the disc's rating that is kept, above 0 to {@link FillingCheck#DISC_SHARE}
 */
public record Filling(
        Bottle bottle,
        double mass,
        Cylinder cylinder,
        double startTemperature,
        double hottestSoak,
        double bandLow,
        double bandHigh,
        double heaterOff,
        double largestDensity,
        double discShare) {
    private static final double COLDEST = 182.33;
    private static final double HOTTEST = 525;

    /**
     * Checks the values; bounds looser than the limits are refused.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public Filling {
        check("charge", mass, Double.MIN_NORMAL, 1e5, "kg");
        check("start temperature", startTemperature, COLDEST, HOTTEST, "K");
        check("hottest soak", hottestSoak, COLDEST, HOTTEST, "K");
        check("lowest working pressure", bandLow, 0, bandHigh, "Pa absolute");
        check("largest filling", largestDensity, 1e-3, FillingCheck.LARGEST_DENSITY, "kg/L");
        check("share of the disc's rating", discShare, 1e-3, FillingCheck.DISC_SHARE, "");
    }

    private static void check(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException("Filling: the " + name + " is " + value + " " + unit + "; allowed are "
                    + low + " to " + high + ", and stricter is the only way these limits move.");
        }
    }

    /**
     * A filling with the bounds of the regulation and of common discs, without a heater.
     *
     * @param bottle the vessel
     * @param mass charge, kg
     * @param cylinder marking and disc
     * @param startTemperature temperature at the start of a pass, K
     * @param hottestSoak hottest the full bottle may stand, K
     * @param bandLow lowest working pressure, Pa absolute
     * @param bandHigh highest working pressure, Pa absolute
     * @return the filling
     */
    public static Filling of(
            Bottle bottle,
            double mass,
            Cylinder cylinder,
            double startTemperature,
            double hottestSoak,
            double bandLow,
            double bandHigh) {
        return new Filling(
                bottle,
                mass,
                cylinder,
                startTemperature,
                hottestSoak,
                bandLow,
                bandHigh,
                Double.NaN,
                FillingCheck.LARGEST_DENSITY,
                FillingCheck.DISC_SHARE);
    }

    /**
     * The same with a heater.
     *
     * @param temperature temperature at which it turns off, K
     * @return new filling
     */
    public Filling withHeaterOff(double temperature) {
        return new Filling(
                bottle,
                mass,
                cylinder,
                startTemperature,
                hottestSoak,
                bandLow,
                bandHigh,
                temperature,
                largestDensity,
                discShare);
    }

    /**
     * The same with stricter bounds.
     *
     * @param density largest charge per water capacity, kg/L, up to {@link FillingCheck#LARGEST_DENSITY}
     * @param disc share of the disc's rating, up to {@link FillingCheck#DISC_SHARE}
     * @return new filling
     */
    public Filling stricter(double density, double disc) {
        return new Filling(
                bottle, mass, cylinder, startTemperature, hottestSoak, bandLow, bandHigh, heaterOff, density, disc);
    }
}
