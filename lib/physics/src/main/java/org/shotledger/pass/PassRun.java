package org.shotledger.pass;

import static org.shotledger.pass.PassMotion.V;
import static org.shotledger.pass.PassMotion.X;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;

/** One pass: legs of adaptive integration between clutch, shifts, the edges of nitrous and the finish. */
final class PassRun {
    /** A car that has not arrived by then never will, s: our choice. */
    private static final double LONGEST = 300;

    private static final double LONGEST_STEP = 0.25;
    private static final double RELATIVE = 1e-8;
    /** Absolute tolerances of the states, in their units: small beside any figure that is shown. */
    private static final double[] ABSOLUTE = {1e-6, 1e-7, 1e-7, 1e-9, 1e-7, 1e-1, 1e-1, 1e-1, 1e-1, 1e-1};

    private final DrivenPass pass;
    private final PassMotion motion;
    private final PassNitrous nitrous;
    private final List<PassRow> trace = new ArrayList<>();
    private final List<PassMark> marks = new ArrayList<>();
    private final List<Double> shifts = new ArrayList<>();
    private double time;
    private double[] y = new double[PassMotion.SIZE];
    private double clock;
    private double nextRow;
    private double shiftEnd;
    private double shiftLoss;
    private double turningBefore;
    private boolean finished;

    PassRun(DrivenPass pass) {
        this.pass = pass;
        motion = new PassMotion(pass);
        nitrous = new PassNitrous(pass.arming(), motion);
    }

    PassResult go() {
        start();
        double before = motion.kinetic(y[V]);
        while (!finished) {
            leg();
            if (time >= LONGEST || y[V] < 0) {
                throw new IllegalArgumentException("After " + time + " s the car is " + y[X] + " m from its start at "
                        + y[V] + " m/s and does not reach the finish at "
                        + pass.strip().finish()
                        + " m; check torque, gears and resistances.");
            }
        }
        trace.add(motion.row(time, y));
        return new PassResult(
                marks,
                y[PassMotion.SECONDS],
                y[PassMotion.USED],
                shifts,
                trace,
                new PassEnergy(
                        y[PassMotion.ENGINE],
                        y[PassMotion.AIR],
                        y[PassMotion.ROLLING],
                        y[PassMotion.DRIVELINE],
                        y[PassMotion.CLUTCH],
                        shiftLoss,
                        motion.kinetic(y[V]) - before));
    }

    private void start() {
        Transmission transmission = pass.transmission();
        y[V] = pass.startSpeed();
        y[PassMotion.TURBO] = pass.engine().turboAtStart();
        motion.phase = PassMotion.Phase.DRIVING;
        while (motion.gear < transmission.last()
                && motion.rpm(y[V]) >= transmission.shiftRpm().get(motion.gear)) {
            motion.gear++;
        }
        if (motion.inputSpeed(y[V]) < motion.launchSpeed()) {
            motion.phase = PassMotion.Phase.SLIPPING;
        }
        motion.at(0, y);
        if (y[V] == 0 && motion.acceleration <= 0) {
            throw new IllegalArgumentException("The car does not move: the engine gives " + motion.torque + " N m at "
                    + transmission.launchRpm() + " rpm; check torque, first gear and resistances.");
        }
    }

    private void leg() {
        nitrous.look(time, y);
        PassEvent finish = PassEvent.stop(s -> s[X] - pass.strip().finish());
        PassEvent joined = PassEvent.stop(s -> motion.inputSpeed(s[V]) / motion.launchSpeed() - 1);
        double shiftAt = pass.transmission().shiftRpm().get(motion.gear);
        PassEvent shift = PassEvent.stop(s -> motion.rpm(s[V]) / shiftAt - 1);
        PassEvent edge = PassEvent.stop(nitrous.edge());
        double until = Math.min(LONGEST, nitrous.nextTime(time));
        DormandPrince853Integrator integrator = integrator();
        integrator.addEventDetector(finish);
        switch (motion.phase) {
            case SLIPPING -> integrator.addEventDetector(joined);
            case DRIVING -> integrator.addEventDetector(shift);
            case SHIFTING -> until = Math.min(until, shiftEnd);
            default -> {}
        }
        if (nitrous.watched()) {
            integrator.addEventDetector(edge);
        }
        addMarks(integrator);
        ODEStateAndDerivative end = integrator.integrate(motion, new ODEState(time, y), until);
        time = end.getTime();
        y = end.getPrimaryState();
        if (finish.happened) {
            finished = true;
            note(pass.strip().marks().get(pass.strip().marks().size() - 1), end);
        }
        if (edge.happened) {
            nitrous.turn(time);
        } else if (joined.happened) {
            motion.phase = PassMotion.Phase.DRIVING;
        } else if (shift.happened) {
            leaveGear();
        } else if (motion.phase == PassMotion.Phase.SHIFTING && (finished || time >= shiftEnd)) {
            shiftLoss += turningBefore - motion.engineKinetic(motion.inputSpeed(y[V]));
            motion.phase = PassMotion.Phase.DRIVING;
            motion.throttleFrom = time;
        }
    }

    private void leaveGear() {
        if (motion.gear == pass.transmission().last()) {
            motion.phase = PassMotion.Phase.LIMITER;
            return;
        }
        shifts.add(time);
        turningBefore = motion.engineKinetic(motion.inputSpeed(y[V]));
        nitrous.cut(time);
        motion.gear++;
        motion.phase = PassMotion.Phase.SHIFTING;
        shiftEnd = time + pass.transmission().shiftTime();
    }

    private DormandPrince853Integrator integrator() {
        double[] relative = new double[PassMotion.SIZE];
        java.util.Arrays.fill(relative, RELATIVE);
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-13, LONGEST_STEP, ABSOLUTE, relative);
        integrator.addStepHandler(this::rows);
        return integrator;
    }

    private void addMarks(DormandPrince853Integrator integrator) {
        if (clock == 0 && pass.strip().rollOut() > 0) {
            integrator.addEventDetector(
                    PassEvent.note(s -> s[X] - pass.strip().rollOut(), state -> clock = state.getTime()));
        }
        for (double mark : ahead()) {
            double at = pass.strip().rollOut() + mark;
            integrator.addEventDetector(PassEvent.note(s -> s[X] - at, state -> note(mark, state)));
        }
    }

    /** Marks still to come, the finish left out, which has its own event. */
    private List<Double> ahead() {
        List<Double> all = pass.strip().marks();
        return all.subList(Math.min(marks.size(), all.size() - 1), all.size() - 1);
    }

    private void note(double mark, ODEStateAndDerivative state) {
        marks.add(new PassMark(mark, state.getTime() - clock, state.getPrimaryState()[V]));
    }

    private void rows(ODEStateInterpolator step) {
        double end = step.getCurrentState().getTime();
        while (nextRow <= end) {
            trace.add(motion.row(nextRow, step.getInterpolatedState(nextRow).getPrimaryState()));
            nextRow += pass.traceStep();
        }
    }
}
