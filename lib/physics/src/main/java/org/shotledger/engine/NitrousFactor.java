package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Share of the work that nitrous oxide adds which arrives, beside the same engine burning its air alone at the same lambda:
 * {@code W = f (W_air + factor (W - W_air))}. The fuel-air cycle already holds the oxygen, the heat of decomposition and
 * the dissociation of the hotter gas; what is left over is the heat that hotter, denser gas loses to the walls. Not measured:
 * no published test of an engine with known nitrous flow was found. A pull with nitrous replaces it.
 *
 * <p>What the trade's "0.8 lb in 10 s for each 100 hp" (common practice, no source) means: by the cycle, all work arriving
 * and no retard, a charge cooled by its nitrous needs 0.77 to 0.83 lb for each 100 crank hp, nearly flat from lambda 0.70 to
 * 1.0, in an engine that reaches 0.77 of the cycle's work, 9.2 hp from each lb/min of air (tested). The rule therefore fits
 * any mixture and a factor of 0.95 to 1.0, not one of 0.8; with 0.95 and 6 degrees of retard it takes near 0.91 lb. An engine
 * that makes a tenth more of its air needs a tenth less.
 *
 * <p>From outside: aero engines of the 1940s gained 120, 240 and 360 metric hp from 60, 100 and 150 g/s of liquid nitrous
 * oxide fed before the supercharger (secondary source, encyclopaedia articles): 1.12 to 0.93 lb in 10 s for each 100 hp, at
 * altitude, with fuel and spark not stated; the same articles name denser charge, cooler charge and more heat as the three
 * causes. "Oxygen Injection as a Means of Increasing Aero-engine Power", Aircraft Engineering 18 (1946) 330, is known by its
 * abstract only.
 *
 * @param value share that arrives, 0.5 to 1.1
 * @param low lower end of its band
 * @param high upper end of its band
 */
public record NitrousFactor(double value, double low, double high) {
    /** 0.95 with a band of 0.88 to 1.0: our choice between no extra heat loss and the weakest outside figure; not measured. */
    public static final NitrousFactor NOT_MEASURED = new NitrousFactor(0.95, 0.88, 1.0);

    public NitrousFactor {
        Require.within("share of the nitrous work that arrives", value, 0.5, 1.1, "");
        Require.within("lower end of the nitrous share", low, 0.5, value, "");
        Require.within("upper end of the nitrous share", high, value, 1.1, "");
    }

    /**
     * Work of a mixture with nitrous oxide before the engine's own factor.
     *
     * @param cycleWork of the whole mixture, W
     * @param airWork of the air in that mixture at the same lambda without nitrous oxide, W
     * @return W
     */
    public double work(double cycleWork, double airWork) {
        return airWork + value * (cycleWork - airWork);
    }
}
