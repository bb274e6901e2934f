package org.shotledger.bottle;

/**
 * Constants of the delayed boiling in a bottle: {@code m = k_s V^(2/3) dT^1.33} at the surface and {@code m = k_b b m_l dT} in the
 * bulk once bubbles have formed, {@code db/dt = (1 - b) (dT / dT_n)^3 / tau}.
 *
 * @param surfaceRate k_s, kg/(s m2 K^1.33), zero or above
 * @param bulkRate k_b, 1/(s K), zero or above
 * @param nucleationSuperheat dT_n, superheat at which bubbles come within the nucleation time, K, above zero
 * @param nucleationTime tau, s, above zero
 */
public record BoilingLaw(double surfaceRate, double bulkRate, double nucleationSuperheat, double nucleationTime) {
    /**
     * Fitted to the three published histories named at {@link TwoNodeBottle}, together with
     * {@link HeatInput#USUAL_FLUID_COEFFICIENT}; the bulk rate was held, since the fit is flat along it.
     */
    public static final BoilingLaw FITTED = new BoilingLaw(0.120, 0.030, 12.9, 0.604);

    /** Power of the superheat in natural convection over a horizontal face, 4/3 (textbook). */
    private static final double SURFACE_POWER = 1.33;
    /** Power of nucleate boiling over superheat, near 3 (W. M. Rohsenow, Trans. ASME 74 (1952) 969, from memory). */
    private static final double NUCLEATION_POWER = 3;
    /** Bound of the constants, SI; a slip of a unit lies beyond. */
    private static final double LARGEST = 1e3;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public BoilingLaw {
        check("surface rate", surfaceRate, 0);
        check("bulk rate", bulkRate, 0);
        check("nucleation superheat", nucleationSuperheat, 1e-3);
        check("nucleation time", nucleationTime, 1e-3);
    }

    private static void check(String name, double value, double least) {
        if (!(value >= least && value <= LARGEST)) {
            throw new IllegalArgumentException("Boiling law: the " + name + " is " + value + "; allowed are " + least
                    + " to " + LARGEST + " in SI units.");
        }
    }

    /** Evaporation at the surface, kg/s; negative for condensation on colder liquid. */
    double surface(double superheat, double section) {
        return Math.copySign(surfaceRate * section * Math.pow(Math.abs(superheat), SURFACE_POWER), superheat);
    }

    /** Evaporation in the bulk, kg/s. */
    double bulk(double superheat, double bubbles, double liquid) {
        return bulkRate * Math.max(bubbles, 0) * liquid * Math.max(superheat, 0);
    }

    /** Growth of the bubble activity, 1/s. */
    double nucleation(double superheat, double bubbles) {
        return (1 - bubbles)
                * Math.pow(Math.max(superheat, 0) / nucleationSuperheat, NUCLEATION_POWER)
                / nucleationTime;
    }
}
