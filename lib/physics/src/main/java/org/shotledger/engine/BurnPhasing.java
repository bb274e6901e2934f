package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Where in the cycle the base pull burns. Rarely known, so it carries a band: the cost of retard depends on it. The spark is
 * what stays: faster burning from the same spark has its middle earlier.
 *
 * @param centre crank angle at which half is burned with the builder's own spark, deg after top dead centre, -5 to 40
 * @param early earliest it may be, deg
 * @param late latest it may be, deg
 * @param duration nominal duration of burning, crank degrees, 20 to 120
 */
public record BurnPhasing(double centre, double early, double late, double duration) {
    /**
     * Half burned 12 degrees after top dead centre, 8 to 18, 50 degrees long. Best torque is near 8 (Heywood, chapter 9);
     * boosted engines are held back from it by knock; how far is common practice, no source.
     */
    public static final BurnPhasing USUAL = new BurnPhasing(12, 8, 18, 50);

    public BurnPhasing {
        Require.within("crank angle of half burned", centre, -5, 40, "deg");
        Require.within("earliest crank angle of half burned", early, -5, centre, "deg");
        Require.within("latest crank angle of half burned", late, centre, 40, "deg");
        Require.within("duration of burning", duration, 20, 120, "deg");
    }

    /**
     * Mass fraction burned over crank angle.
     *
     * @param retard spark retard from the base pull's timing, crank degrees; negative is advance
     * @param durationFactor on the duration, 0.5 to 2; below 1 burns faster, as nitrous oxide makes it
     * @return burned fraction over crank angle
     */
    public Wiebe burning(double retard, double durationFactor) {
        Wiebe shape = Wiebe.of(0, duration);
        Wiebe base = shape.startingAt(centre - shape.angleOf(0.5));
        return base.scaled(durationFactor).startingAt(base.start() + retard);
    }
}
