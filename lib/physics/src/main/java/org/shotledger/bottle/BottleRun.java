package org.shotledger.bottle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;

/** One run of a bottle: legs of adaptive integration between events, and the change from one set of equations to the other. */
final class BottleRun implements OrdinaryDifferentialEquation {
    private static final double LARGEST_STEP_SHARE = 0.05;
    private static final double FIRST_STEP = 1e-3;
    private static final double SHORTEST_STEP = 1e-10;

    private final Emptying task;
    private final Watch watch;
    private final double[] start;

    private final List<Sample> samples = new ArrayList<>();
    private double time;
    private double[] y;
    private double nextRow;

    /** A run; without a boiling law liquid and vapour are never parted. */
    BottleRun(Emptying task, BoilingLaw law) {
        this.task = task;
        Exchange exchange = new Exchange(task);
        Charge charge = task.charge();
        y = new double[Layout.SIZE];
        y[Layout.MASS] = charge.mass();
        y[Layout.ENERGY] = charge.mass() * charge.state().internalEnergy();
        y[Layout.SHELL] = exchange.shellCapacity * charge.wallTemperature();
        y[Layout.LIQUID_TEMPERATURE] = charge.temperature();
        start = y.clone();
        watch = new Watch(task, exchange, law);
    }

    History go(BottleModel model) {
        nextRow = task.rows();
        watch.begin(y);
        boolean first = true;
        while (!watch.ended && time < task.duration()) {
            List<Crossing> crossings = watch.crossings(time, y);
            if (first) {
                samples.add(watch.body().sample(time, y));
                first = false;
            }
            Crossing passed = firstPassed(crossings);
            if (passed == null) {
                passed = leg(crossings);
            }
            watch.moveTo(time, y);
            if (passed != null) {
                passed.act();
            }
        }
        if (!watch.ended) {
            watch.note(BottleEvent.Kind.TIME_UP, time, y);
        }
        if (samples.isEmpty() || samples.get(samples.size() - 1).time() < time) {
            samples.add(watch.body().sample(time, y));
        }
        return new History(model.title(), model.expectedError(), samples, watch.events, watch.atRest(y), balance());
    }

    private Crossing firstPassed(List<Crossing> crossings) {
        for (Crossing crossing : crossings) {
            if (crossing.beyond(y)) {
                return crossing;
            }
        }
        return null;
    }

    private Balance balance() {
        return new Balance(
                start[Layout.MASS],
                y[Layout.MASS],
                y[Layout.OUT],
                start[Layout.ENERGY] + start[Layout.SHELL],
                y[Layout.ENERGY] + y[Layout.SHELL],
                y[Layout.OUT_ENTHALPY],
                y[Layout.HEAT]);
    }

    /** Integrates to the next crossing or to the end of the time. */
    private Crossing leg(List<Crossing> crossings) {
        Body body = watch.body();
        double flow = body.flow(time, body.outlet(y));
        double largest = Math.min(task.duration() / 10, LARGEST_STEP_SHARE * y[Layout.MASS] / flow);
        largest = Math.max(Math.max(1e-6, 4 * Math.ulp(task.duration())), largest);
        double[] relative = new double[Layout.SIZE];
        Arrays.fill(relative, body.relativeTolerance());
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(
                Math.max(SHORTEST_STEP, Math.ulp(task.duration())), largest, body.absoluteTolerance(), relative);
        integrator.setInitialStepSize(Math.min(FIRST_STEP, largest));
        crossings.forEach(integrator::addEventDetector);
        integrator.addStepHandler(this::rows);
        try {
            ODEStateAndDerivative end = integrator.integrate(this, new ODEState(time, y), task.duration());
            time = end.getTime();
            y = end.getPrimaryState();
        } catch (MathRuntimeException | IllegalArgumentException e) {
            // time and state stand at the last step that was good
            watch.stuck(e);
        }
        for (Crossing crossing : crossings) {
            if (crossing.happened) {
                return crossing;
            }
        }
        return null;
    }

    @Override
    public int getDimension() {
        return Layout.SIZE;
    }

    @Override
    public double[] computeDerivatives(double t, double[] state) {
        return watch.body().rates(t, state);
    }

    private void rows(ODEStateInterpolator step) {
        ODEStateAndDerivative end = step.getCurrentState();
        time = end.getTime();
        y = end.getPrimaryState();
        if (task.rows() == 0) {
            samples.add(watch.body().sample(time, y));
            return;
        }
        while (nextRow <= time) {
            samples.add(watch.body()
                    .sample(nextRow, step.getInterpolatedState(nextRow).getPrimaryState()));
            nextRow += task.rows();
        }
    }
}
