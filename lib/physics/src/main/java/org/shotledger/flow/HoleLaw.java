package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * The default law for a hole that passes nitrous oxide, with one set of constants.
 *
 * <p>Liquid inlet: {@link HenryFauske} form with an equilibrium quality that falls with length,
 * {@code x_N = 0.14 exp(-(L/d)/12)}: 0.14 is the published value for short nozzles, the length scale is fitted so that the nine
 * choked plateaux of AIAA 2013-3636 fig. 13 (rounded hole, L/d 12.3) are met; the discharge coefficients are measured
 * single-phase values of the same paper (rounded 0.77; square edge from fig. 15). Already flashing inlet: the stream carries its
 * bubbles, so homogeneous equilibrium with 0.80 (common practice, no source; API 520 uses 0.85 for two-phase inlets). Between
 * the two the weight is {@code exp(-x/0.01)} (assumed: no measured data for inlets of 0 to 3 % quality). Vapour: homogeneous
 * equilibrium.
 */
final class HoleLaw {
    static final double FLASHING_COEFFICIENT = 0.80;
    static final double ROUNDED_COEFFICIENT = 0.77;

    private static final double SHORT_QUALITY = 0.14;
    private static final double LENGTH_SCALE = 12;
    private static final double NUCLEI_QUALITY = 0.01;
    private static final double NEAR_CRITICAL_SPAN = 5;
    private static final double MEASURED_ERROR = 0.05;
    private static final double ASSUMED_ERROR = 0.10;

    private HoleLaw() {}

    /** x_N of a hole, see the class. */
    static HenryFauske delayed(double lengthToBore) {
        return new HenryFauske(Math.max(1e-3, SHORT_QUALITY * Math.exp(-lengthToBore / LENGTH_SCALE)));
    }

    /**
     * Coefficient of a hole filled with liquid: rounded 0.77; square edge 0.605 + 0.005 L/d up to 0.73, a straight line
     * through fig. 15 of AIAA 2013-3636 (three holes, 9.5 to 23 bores long, deviation 2 %) that meets the sharp orifice's
     * 0.61 at zero length.
     */
    static double liquidCoefficient(Edge edge, double lengthToBore) {
        return edge == Edge.ROUNDED ? ROUNDED_COEFFICIENT : Math.min(0.73, 0.605 + 0.005 * lengthToBore);
    }

    /** Share of the late-boiling law: 1 for liquid, falling with inlet quality, 0 for gas and at the critical point. */
    static double liquidShare(FluidState inlet) {
        double below = NitrousOxide.CRITICAL_TEMPERATURE - inlet.temperature();
        if (below <= 0) {
            return 0;
        }
        double fade = Math.min(1, below / NEAR_CRITICAL_SPAN);
        if (inlet.isSaturated()) {
            return fade * Math.exp(-inlet.quality() / NUCLEI_QUALITY);
        }
        return inlet.density() > NitrousOxide.CRITICAL_DENSITY ? fade : 0;
    }

    /** Where the law comes from that carries most of the flow. */
    static String source(double liquidShare) {
        return fluxSource(liquidShare)
                + (liquidShare > 0.5
                        ? "; length of delay and discharge coefficient after AIAA 2013-3636 (2013)"
                        : "; discharge coefficient " + FLASHING_COEFFICIENT + ": common practice, no source");
    }

    /** Where its flux comes from, for a hole whose coefficient was measured. */
    static String fluxSource(double liquidShare) {
        return liquidShare > 0.5
                ? "Henry and Fauske, J. Heat Transfer 93, 179-187 (1971)"
                : "Wallis, One-dimensional Two-phase Flow (1969), chapter 2";
    }

    static double expectedError(double liquidShare, double lengthToBore) {
        boolean measuredLength = lengthToBore > 8 && lengthToBore < 25;
        double liquid = measuredLength ? MEASURED_ERROR : ASSUMED_ERROR;
        return liquidShare * liquid + (1 - liquidShare) * ASSUMED_ERROR;
    }
}
