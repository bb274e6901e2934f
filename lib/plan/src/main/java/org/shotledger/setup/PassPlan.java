package org.shotledger.setup;

import org.shotledger.units.Require;

/**
 * What is run on one filling of the bottle.
 *
 * @param count full passes, 1 to 50
 * @param seconds time under full nitrous in each, s, 0.5 to 300
 */
public record PassPlan(int count, double seconds) {
    public PassPlan {
        Require.within("number of passes", count, 1, 50, "");
        Require.within("time under nitrous in a pass", seconds, 0.5, 300, "s");
    }
}
