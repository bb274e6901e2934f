package org.shotledger.wiring;

import org.shotledger.units.Require;

/**
 * What an input really has, over what its table was made for.
 *
 * @param supply voltage of the sensor supply over its nominal, as the converter sees it: 1 where both share one reference, 0.3 to 3
 * @param pullUp pull-up resistor over its nominal, 0.001 to 1000
 */
public record InputConditions(double supply, double pullUp) {
    /** As the table was made for. */
    public static final InputConditions NOMINAL = new InputConditions(1, 1);

    public InputConditions {
        Require.within("supply over its nominal", supply, 0.3, 3, "");
        Require.within("pull-up over its nominal", pullUp, 1e-3, 1e3, "");
    }
}
