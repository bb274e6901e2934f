package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * When and how fast the charge burns.
 *
 * @param centre crank angle at which half is burned with the builder's own spark, deg after top dead centre, -10 to 40
 * @param duration nominal duration of burning, crank degrees, 20 to 120
 * @param nitrousFactor factor on the duration with nitrous on, 0.5 to 1.5; below 1 burns faster
 */
public record BurnTiming(double centre, double duration, double nitrousFactor) {
    /**
     * Half burned 14 degrees after top dead centre, 50 degrees long, a tenth faster with nitrous: common practice for a
     * boosted engine on ethanol, no source. Best torque is near 8 degrees (Heywood, chapter 9), so this holds a reserve.
     */
    public static final BurnTiming USUAL = new BurnTiming(14, 50, 0.9);

    /** Checks the ranges. */
    public BurnTiming {
        Require.within("crank angle of half burned", centre, -10, 40, "deg");
        Require.within("duration of burning", duration, 20, 120, "deg");
        Require.within("factor on the duration of burning with nitrous", nitrousFactor, 0.5, 1.5, "");
    }

    /**
     * The course of burning.
     *
     * @param retard spark retard from the builder's own timing, crank degrees
     * @param nitrousOn whether nitrous flows
     * @return burned fraction over crank angle
     */
    public Wiebe burning(double retard, boolean nitrousOn) {
        Wiebe shape = Wiebe.of(0, nitrousOn ? duration * nitrousFactor : duration);
        return shape.startingAt(centre + retard - shape.angleOf(0.5));
    }
}
