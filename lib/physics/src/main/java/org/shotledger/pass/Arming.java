package org.shotledger.pass;

import org.shotledger.units.Require;

/**
 * When nitrous may flow, with both edges of each condition, and how it comes on.
 *
 * @param rpmOn it may start at this engine speed and above
 * @param rpmOff it stops below this one, at most {@code rpmOn}
 * @param rpmHighOn it may start at this engine speed and below
 * @param rpmHighOff it stops above this one, at least {@code rpmHighOn}
 * @param speedOn it may start at this speed of the car and above, m/s
 * @param turboOn it may start at this state of the turbocharger and above
 * @param turboOff it stops below this one, at most {@code turboOn}
 * @param gear lowest gear in which it may flow, counted from 1
 * @param delay from the conditions being met to the valves opening, s
 * @param startShare share of the shot at opening, 0 to 1
 * @param rampTime from opening to the full shot, s
 * @param everyTime whether delay and ramp begin anew after a shift or another break; else the ramp goes on where it was
 */
public record Arming(
        double rpmOn,
        double rpmOff,
        double rpmHighOn,
        double rpmHighOff,
        double speedOn,
        double turboOn,
        double turboOff,
        int gear,
        double delay,
        double startShare,
        double rampTime,
        boolean everyTime) {
    /** Share of an engine speed to which two are the same: rounding alone. */
    private static final double SAME = 1e-12;

    /** Conditions that are never met. */
    public static final Arming NEVER = new Arming(1e9, 1e9, 1e9, 1e9, 0, 0, 0, 1, 0, 1, 0, false);

    public Arming {
        Require.within("lower engine speed to stop nitrous", rpmOff, 0, rpmOn, "rpm");
        Require.within("upper engine speed to stop nitrous", rpmHighOff, rpmHighOn, 1e9, "rpm");
        Require.within("state of the turbocharger to stop nitrous", turboOff, -1e9, turboOn, "");
        Require.within("lowest gear for nitrous", gear, 1, 20, "");
        Require.within("delay of nitrous", delay, 0, 60, "s");
        Require.within("share of the shot at opening", startShare, 0, 1, "");
        Require.within("ramp of nitrous", rampTime, 0, 60, "s");
    }

    /** Positive when everything allows a start; an engine speed that is held does not cross an edge. */
    double startMargin(double rpm, boolean held, double speed, double turbo) {
        double engine = engineMargin(Math.min(rpm / rpmOn - 1, 1 - rpm / rpmHighOn), held);
        return Math.min(engine, Math.min(speed - speedOn, turbo - turboOn));
    }

    /** Positive while nothing asks for a stop. */
    double stayMargin(double rpm, boolean held, double turbo) {
        double engine = engineMargin(Math.min(rpm / rpmOn - rpmOff / rpmOn, 1 - rpm / rpmHighOff), held);
        return Math.min(engine, turbo - turboOff);
    }

    /** Held at the very edge an engine speed is inside: a margin that stands at zero is a crossing that never ends. */
    private static double engineMargin(double margin, boolean held) {
        return held && Math.abs(margin) < SAME ? 1 : margin;
    }

    /**
     * Share of the shot after it has been on for a time.
     *
     * @param seconds since the conditions were met, s
     * @return 0 to 1
     */
    public double share(double seconds) {
        if (seconds < delay) {
            return 0;
        }
        double ramped = seconds - delay;
        return ramped >= rampTime ? 1 : startShare + (1 - startShare) * ramped / rampTime;
    }
}
