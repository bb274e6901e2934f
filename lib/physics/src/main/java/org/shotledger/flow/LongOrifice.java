package org.shotledger.flow;

/**
 * Discharge coefficient of a square-edged hole that is long enough to run full, without cavitation or flashing.
 *
 * <p>{@code 1/Cd = 1/Cdu + 20/Re (1 + 2.25 l/d) - 0.005 (l/d) / (1 + 7.5 (lg 0.00015 Re)^2)} with
 * {@code Cdu = 0.827 - 0.0085 l/d}. Source: A. Lichtarowicz, R. K. Duggins, E. Markland, J. Mech. Eng. Sci. 7 (1965) 210-219
 * (formula from memory). For a fuel jet or a cold liquid hole; a nitrous jet flashes and is answered by {@link NitrousJet}.
 */
public final class LongOrifice {
    private static final double LEAST_REYNOLDS = 10;
    private static final double MOST_REYNOLDS = 2e4;

    private LongOrifice() {}

    /**
     * Coefficient at a Reynolds number.
     *
     * @param reynolds Reynolds number of the ideal velocity and the bore, 10 to 20 000
     * @param lengthToBore length over diameter, 2 to 10
     * @return discharge coefficient on the incompressible flux
     * @throws IllegalArgumentException outside the ranges
     */
    public static double coefficient(double reynolds, double lengthToBore) {
        Checks.within("Long orifice", "Reynolds number", reynolds, LEAST_REYNOLDS, MOST_REYNOLDS, "");
        double log = Math.log10(0.00015 * reynolds);
        double resistance = 1 / ultimateCoefficient(lengthToBore)
                + 20 / reynolds * (1 + 2.25 * lengthToBore)
                - 0.005 * lengthToBore / (1 + 7.5 * log * log);
        return 1 / resistance;
    }

    /**
     * Coefficient that the hole tends to at high Reynolds numbers, above about 20 000.
     *
     * @param lengthToBore length over diameter, 2 to 10
     * @return discharge coefficient
     * @throws IllegalArgumentException outside the range
     */
    public static double ultimateCoefficient(double lengthToBore) {
        Checks.within("Long orifice", "length over bore", lengthToBore, 2, 10, "");
        return 0.827 - 0.0085 * lengthToBore;
    }
}
