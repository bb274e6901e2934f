package org.shotledger.bottle;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.shotledger.fluid.FluidState;

/** One run of a bottle model: legs of adaptive integration between events, rows, thermostat and shell. */
abstract class BottleRun implements OrdinaryDifferentialEquation {
    private static final double SMALLEST_SHARE = 1e-3;
    private static final double LOWEST_PRESSURE = 2e5;
    private static final double LARGEST_STEP_SHARE = 0.05;
    private static final double FIRST_STEP = 1e-3;

    final Emptying task;
    final Bottle bottle;
    final Warmth warmth;
    final double wallCapacity;
    boolean uncovered;

    private final List<Moment> moments = new ArrayList<>();
    private final List<BottleEvent> events = new ArrayList<>();
    private boolean heating;
    private boolean belowLimit;
    private double nextRow;

    BottleRun(Emptying task) {
        this.task = task;
        bottle = task.charge().bottle();
        warmth = task.warmth();
        wallCapacity = bottle.wallMass() * bottle.wallSpecificHeat();
    }

    abstract double[] start();

    abstract double pressure(double[] y);

    abstract double mass(double[] y);

    abstract FluidState outlet(double[] y);

    /** Positive while there is liquid at the siphon, falls through zero when it uncovers. */
    abstract double liquidShare(double[] y);

    abstract Moment moment(double time, double[] y);

    /** Bottle and contents come to rest. */
    abstract Charge left(double[] y);

    abstract double relativeTolerance();

    abstract double[] absoluteTolerance(double[] y);

    History go(BottleModel model) {
        heating = warmth.heaterPower() > 0 && task.charge().pressure() < warmth.heaterOff();
        double[] y = start();
        double time = 0;
        moments.add(moment(0, y));
        nextRow = task.rows();
        while (time < task.duration()) {
            List<Crossing> crossings = crossings(y);
            ODEStateAndDerivative end = leg(time, y, crossings);
            time = end.getTime();
            y = end.getPrimaryState();
            Crossing hit = hit(crossings);
            BottleEvent.Kind kind = hit == null ? BottleEvent.Kind.TIME_UP : hit.kind;
            events.add(new BottleEvent(kind, time, pressure(y), mass(y)));
            if (ends(kind)) {
                break;
            }
        }
        if (moments.get(moments.size() - 1).time() < time) {
            moments.add(moment(time, y));
        }
        return new History(model.title(), model.expectedError(), moments, events, left(y));
    }

    private static Crossing hit(List<Crossing> crossings) {
        for (Crossing crossing : crossings) {
            if (crossing.happened) {
                return crossing;
            }
        }
        return null;
    }

    /** Takes note of an event; true when it ends the run. */
    boolean ends(BottleEvent.Kind kind) {
        switch (kind) {
            case LIQUID_UNCOVERED -> uncovered = true;
            case PRESSURE_BELOW -> belowLimit = true;
            case THERMOSTAT -> heating = !heating;
            default -> {
                return true;
            }
        }
        return kind == BottleEvent.Kind.LIQUID_UNCOVERED && task.stopUncovered();
    }

    private List<Crossing> crossings(double[] y) {
        List<Crossing> list = new ArrayList<>();
        if (!uncovered) {
            list.add(new Crossing(BottleEvent.Kind.LIQUID_UNCOVERED, true, this::liquidShare));
        }
        double limit = task.pressureLimit();
        if (limit > 0 && !belowLimit && pressure(y) > limit) {
            list.add(new Crossing(BottleEvent.Kind.PRESSURE_BELOW, true, s -> pressure(s) / limit - 1));
        }
        if (warmth.heaterPower() > 0) {
            double level = heating ? warmth.heaterOff() : warmth.heaterOn();
            list.add(new Crossing(BottleEvent.Kind.THERMOSTAT, !heating, s -> pressure(s) / level - 1));
        }
        double smallest = SMALLEST_SHARE * task.charge().mass();
        list.add(new Crossing(
                BottleEvent.Kind.EMPTY,
                true,
                s -> Math.min(mass(s) / smallest - 1, pressure(s) / LOWEST_PRESSURE - 1)));
        return list;
    }

    private ODEStateAndDerivative leg(double time, double[] y, List<Crossing> crossings) {
        double flow = task.draw().massFlow(time, outlet(y));
        double largest = Math.max(1e-6, Math.min(task.duration() / 10, LARGEST_STEP_SHARE * mass(y) / flow));
        double[] relative = new double[y.length];
        java.util.Arrays.fill(relative, relativeTolerance());
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(1e-10, largest, absoluteTolerance(y), relative);
        integrator.setInitialStepSize(Math.min(FIRST_STEP, largest));
        crossings.forEach(integrator::addEventDetector);
        integrator.addStepHandler(this::rows);
        return integrator.integrate(this, new ODEState(time, y), task.duration());
    }

    private void rows(ODEStateInterpolator step) {
        double end = step.getCurrentState().getTime();
        if (task.rows() == 0) {
            moments.add(moment(end, step.getCurrentState().getPrimaryState()));
            return;
        }
        while (nextRow <= end) {
            moments.add(moment(nextRow, step.getInterpolatedState(nextRow).getPrimaryState()));
            nextRow += task.rows();
        }
    }

    /** Heat into the shell from air and heater, W. */
    final double heatFromOutside(double wallTemperature) {
        double heater = heating ? warmth.heaterPower() : 0;
        return heater
                + warmth.ambientCoefficient() * bottle.outerArea() * (warmth.ambientTemperature() - wallTemperature);
    }
}
