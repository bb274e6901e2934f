package org.shotledger.wiring;

import org.shotledger.units.Require;

/**
 * How well an input measures.
 *
 * @param supply half width of the sensor supply, as a share, 0 to 0.2
 * @param sharedReference whether converter and sensor share one reference, so that the supply's error cancels
 * @param pullUp half width of the pull-up resistor, as a share, 0 to 0.5
 * @param fullScale range of the converter, V, or of a timer, Hz or s
 * @param bits of the converter, 1 to 32
 * @param classWidth half width of the sensor by its class, in the value's SI unit
 */
public record InputAccuracy(
        double supply, boolean sharedReference, double pullUp, double fullScale, int bits, double classWidth) {
    public InputAccuracy {
        Require.within("tolerance of the sensor supply", supply, 0, 0.2, "");
        Require.within("tolerance of the pull-up", pullUp, 0, 0.5, "");
        Require.positive("range of the converter", fullScale, "V, Hz or s");
        Require.within("bits of the converter", bits, 1, 32, "");
        Require.notNegative("class of the sensor", classWidth, "");
    }

    /** Half a step of the converter, V, Hz or s. */
    double halfStep() {
        return 0.5 * fullScale / Math.scalb(1.0, bits);
    }
}
