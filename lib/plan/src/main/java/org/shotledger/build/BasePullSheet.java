package org.shotledger.build;

/**
 * A measured pull without nitrous.
 *
 * @param conditions name of the conditions under which it was measured
 * @param rpm engine speed of the figure, rev/min
 * @param gaugePressure plenum pressure above ambient, Pa
 * @param wheelPower measured wheel power, not corrected, W
 * @param uncertainty standard uncertainty of the wheel power, W
 * @param lambda mixture measured
 */
public record BasePullSheet(
        String conditions, double rpm, double gaugePressure, double wheelPower, double uncertainty, double lambda) {}
