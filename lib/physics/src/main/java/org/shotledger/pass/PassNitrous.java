package org.shotledger.pass;

import java.util.function.ToDoubleFunction;

/** Nitrous by its arming conditions: whether they are met, since when, and what may change that next. */
final class PassNitrous {
    /** Times closer than this are the same, s. */
    private static final double SAME = 1e-9;

    private final Arming arming;
    private final PassMotion motion;
    private boolean on;
    private double ran;

    PassNitrous(Arming arming, PassMotion motion) {
        this.arming = arming;
        this.motion = motion;
    }

    /** Before a leg: what is met already needs no edge. */
    void look(double time, double[] y) {
        if (!on && mayStart() && startMargin(y) > 0) {
            begin(time);
        }
        motion.flowing = on && time >= motion.nitrousFrom + arming.delay() - SAME;
    }

    /** The next time at which delay or ramp ends. */
    double nextTime(double time) {
        if (!on) {
            return Double.POSITIVE_INFINITY;
        }
        double open = motion.nitrousFrom + arming.delay();
        double full = open + arming.rampTime();
        if (open > time + SAME) {
            return open;
        }
        return full > time + SAME ? full : Double.POSITIVE_INFINITY;
    }

    /** Whether an edge can come in this leg. */
    boolean watched() {
        return on || mayStart();
    }

    /** Rises through zero where nitrous starts or stops. */
    ToDoubleFunction<double[]> edge() {
        return on
                ? y -> -arming.stayMargin(motion.rpm(y[PassMotion.V]), held(), y[PassMotion.TURBO])
                : this::startMargin;
    }

    void turn(double time) {
        if (on) {
            cut(time);
        } else {
            begin(time);
        }
    }

    void cut(double time) {
        if (on) {
            ran = arming.everyTime() ? 0 : time - motion.nitrousFrom;
            on = false;
        }
    }

    private void begin(double time) {
        on = true;
        motion.nitrousFrom = time - ran;
    }

    private boolean mayStart() {
        return motion.phase != PassMotion.Phase.SHIFTING && motion.gear + 1 >= arming.gear();
    }

    private double startMargin(double[] y) {
        double rpm = motion.rpm(y[PassMotion.V]);
        return arming.startMargin(rpm, held(), y[PassMotion.V], y[PassMotion.TURBO]);
    }

    /** While the clutch slips the engine speed stands still. */
    private boolean held() {
        return motion.phase == PassMotion.Phase.SLIPPING;
    }
}
