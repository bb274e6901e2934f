package org.shotledger.wiring;

import org.shotledger.units.Require;

/**
 * How a controller reads its sensors and takes their tables.
 *
 * @param supplyTolerance half width of the sensor supply, as a share, 0 to 0.2
 * @param sharedReference whether converter and sensors share one reference, so that the supply's error cancels
 * @param bits of the converter, 1 to 32
 * @param range of the converter, V
 * @param points most break points of a sensor table, 2 to 128
 * @param spacing how it lets them be set
 */
public record InputStage(
        double supplyTolerance,
        boolean sharedReference,
        int bits,
        double range,
        int points,
        BreakPoints.Spacing spacing) {
    /** What is taken where nothing is said: common practice, no source. */
    public static final InputStage USUAL = new InputStage(0.02, false, 12, 5, 16, BreakPoints.Spacing.EVEN_OUTPUT);

    public InputStage {
        Require.within("tolerance of the sensor supply", supplyTolerance, 0, 0.2, "");
        Require.within("bits of the converter", bits, 1, 32, "");
        Require.within("range of the converter", range, 0.01, 30, "V");
        Require.within("break points of a sensor table", points, 2, 128, "");
        Require.given("spacing of the break points", spacing);
    }
}
