package org.shotledger.workshop;

import java.util.List;
import org.shotledger.pass.Strip;
import org.shotledger.units.Require;

/**
 * The line on which passes are run, and how the nitrous comes on there.
 *
 * @param marks distances from the clock's start at which time and speed are wanted, m, rising; the last is the finish
 * @param rollOut distance that the car moves before the clock starts, m
 * @param headWind against the car positive, m/s
 * @param grip greatest traction over load of the driven tyres on this surface
 * @param startSpeed at the start, m/s; zero for a standing start
 * @param arming how the nitrous comes on
 */
public record Track(
        List<Double> marks, double rollOut, double headWind, double grip, double startSpeed, Coming arming) {
    /** A quarter of a mile from a standing start with the usual marks. */
    public static final Track USUAL =
            new Track(Strip.quarterMile(1.2).marks(), Strip.quarterMile(1.2).rollOut(), 0, 1.1, 0, Coming.USUAL);

    public Track {
        marks = List.copyOf(marks);
        Require.given("coming-on of the nitrous", arming);
    }

    /**
     * How the nitrous comes on besides the engine speeds of the setup.
     *
     * @param gear lowest gear in which it may flow, counted from 1
     * @param delay from the conditions being met to the valves opening, s
     * @param ramp from opening to the full shot, s
     * @param startShare share of the shot at opening, 0 to 1
     * @param hysteresis engine speed by which it must come back inside before it opens anew, rev/min
     */
    public record Coming(int gear, double delay, double ramp, double startShare, double hysteresis) {
        /** From second gear on, at once and whole: common practice, no source. */
        public static final Coming USUAL = new Coming(2, 0.1, 0, 1, 100);
    }

    /**
     * The same with another coming-on of the nitrous, to compare.
     *
     * @param other how it comes on
     * @return the changed track
     */
    public Track with(Coming other) {
        return new Track(marks, rollOut, headWind, grip, startSpeed, other);
    }

    /**
     * The strip with the air of a day.
     *
     * @param airDensity kg/m3
     * @return the strip
     */
    public Strip strip(double airDensity) {
        return new Strip(airDensity, headWind, rollOut, marks);
    }
}
