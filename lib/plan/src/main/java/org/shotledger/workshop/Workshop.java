package org.shotledger.workshop;

import org.shotledger.units.Require;

/**
 * What the workshop writes down besides car, target and setup.
 *
 * @param track the line on which passes are run
 * @param readings of the sensors in known states
 * @param parts prices and progress
 */
public record Workshop(Track track, Readings readings, Parts parts) {
    public Workshop {
        Require.given("track", track);
        Require.given("readings", readings);
        Require.given("parts", parts);
    }
}
