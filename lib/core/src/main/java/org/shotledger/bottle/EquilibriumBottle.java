package org.shotledger.bottle;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * Liquid and vapour at one temperature: {@code dU/dt = -m h_out + Q}, {@code dM/dt = -m}, with a lumped shell.
 *
 * <p>Source: first law; the equilibrium model reviewed by Zimmerman et al., AIAA 2013-4045. Known error there: about 15 % in
 * pressure; it has no boiling delay, so the dip of the first second (8 to 25 %) is missing and late pressures are often too
 * high.
 */
public final class EquilibriumBottle implements BottleModel {
    /** The model as a swappable part. */
    public static final EquilibriumBottle MODEL = new EquilibriumBottle();

    private static final double RELATIVE_TOLERANCE = 1e-9;

    private EquilibriumBottle() {}

    @Override
    public String title() {
        return "liquid and vapour in equilibrium";
    }

    @Override
    public double expectedError() {
        return 0.15;
    }

    @Override
    public History run(Emptying emptying) {
        return new Run(emptying).go();
    }

    /** One run; y = mass, internal energy, shell temperature. */
    private static final class Run implements OrdinaryDifferentialEquation {
        private static final double SMALLEST_SHARE = 1e-3;
        private static final double LOWEST_PRESSURE = 2e5;
        private static final double LARGEST_STEP_SHARE = 0.05;

        private final Emptying task;
        private final Bottle bottle;
        private final Warmth warmth;
        private final double wallCapacity;
        private final List<Moment> moments = new ArrayList<>();
        private final List<BottleEvent> events = new ArrayList<>();
        private boolean uncovered;
        private boolean heating;
        private boolean belowLimit;
        private double nextRow;

        Run(Emptying task) {
            this.task = task;
            bottle = task.charge().bottle();
            warmth = task.warmth();
            wallCapacity = bottle.wallMass() * bottle.wallSpecificHeat();
        }

        History go() {
            Charge charge = task.charge();
            uncovered = charge.liquidMass() <= 0;
            heating = warmth.heaterPower() > 0 && charge.pressure() < warmth.heaterOff();
            double[] y = {charge.mass(), charge.mass() * charge.state().internalEnergy(), charge.wallTemperature()};
            double time = 0;
            moments.add(moment(0, y));
            nextRow = task.rows();
            while (time < task.duration()) {
                List<Crossing> crossings = crossings(y);
                ODEStateAndDerivative end = leg(time, y, crossings);
                time = end.getTime();
                y = end.getPrimaryState();
                Crossing hit = hit(crossings);
                if (hit == null) {
                    note(BottleEvent.Kind.TIME_UP, time, y);
                    break;
                }
                note(hit.kind, time, y);
                if (ends(hit.kind)) {
                    break;
                }
            }
            if (moments.get(moments.size() - 1).time() < time) {
                moments.add(moment(time, y));
            }
            return new History(MODEL.title(), MODEL.expectedError(), moments, events);
        }

        private static Crossing hit(List<Crossing> crossings) {
            for (Crossing crossing : crossings) {
                if (crossing.happened) {
                    return crossing;
                }
            }
            return null;
        }

        private boolean ends(BottleEvent.Kind kind) {
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
            if (limit > 0 && !belowLimit && state(y).pressure() > limit) {
                list.add(new Crossing(BottleEvent.Kind.PRESSURE_BELOW, true, s -> state(s).pressure() / limit - 1));
            }
            if (warmth.heaterPower() > 0) {
                double level = heating ? warmth.heaterOff() : warmth.heaterOn();
                list.add(new Crossing(BottleEvent.Kind.THERMOSTAT, !heating, s -> state(s).pressure() / level - 1));
            }
            double smallest = SMALLEST_SHARE * task.charge().mass();
            list.add(new Crossing(
                    BottleEvent.Kind.EMPTY,
                    true,
                    s -> Math.min(s[0] / smallest - 1, state(s).pressure() / LOWEST_PRESSURE - 1)));
            return list;
        }

        private ODEStateAndDerivative leg(double time, double[] y, List<Crossing> crossings) {
            double flow = task.draw().massFlow(time, outlet(state(y)));
            double largest = Math.max(1e-6, Math.min(task.duration() / 10, LARGEST_STEP_SHARE * y[0] / flow));
            double[] absolute = {1e-10 * y[0], 1e-10 * y[0] * 1e5, 1e-8};
            double[] relative = {RELATIVE_TOLERANCE, RELATIVE_TOLERANCE, RELATIVE_TOLERANCE};
            DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-9, largest, absolute, relative);
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

        @Override
        public int getDimension() {
            return 3;
        }

        @Override
        public double[] computeDerivatives(double time, double[] y) {
            FluidState state = state(y);
            FluidState outlet = outlet(state);
            double flow = task.draw().massFlow(time, outlet);
            double heater = heating ? warmth.heaterPower() : 0;
            double outside =
                    heater + warmth.ambientCoefficient() * bottle.outerArea() * (warmth.ambientTemperature() - y[2]);
            if (wallCapacity == 0) {
                // a shell without mass hands everything on
                double toFluid = warmth.fluidCoefficient() > 0 ? outside : 0;
                return new double[] {-flow, toFluid - flow * outlet.enthalpy(), 0};
            }
            double toFluid = warmth.fluidCoefficient() * bottle.wallArea() * (y[2] - state.temperature());
            return new double[] {-flow, toFluid - flow * outlet.enthalpy(), (outside - toFluid) / wallCapacity};
        }

        private FluidState state(double[] y) {
            double mass = Math.max(y[0], 1e-6 * task.charge().mass());
            return NitrousOxide.atDensityEnergy(mass / bottle.waterCapacity(), y[1] / mass);
        }

        /**
         * What the siphon takes. Until the event is found the liquid's law is continued past the dew line, so that the
         * derivatives have no jump inside a step.
         */
        private FluidState outlet(FluidState state) {
            boolean dense = !state.isSaturated() && state.density() > NitrousOxide.CRITICAL_DENSITY;
            if (dense || (uncovered && !state.isTwoPhase())) {
                return state;
            }
            if (uncovered) {
                return NitrousOxide.saturatedVapour(state.temperature());
            }
            double temperature = Math.min(state.temperature(), NitrousOxide.CRITICAL_TEMPERATURE);
            return NitrousOxide.saturatedLiquid(temperature);
        }

        /** Positive while there is liquid or the contents are denser than critical; falls through zero at the dew line. */
        private double liquidShare(double[] y) {
            FluidState state = state(y);
            if (state.isSaturated()) {
                return 1 - state.quality();
            }
            if (state.density() > NitrousOxide.CRITICAL_DENSITY) {
                return 1;
            }
            double top = Math.min(state.pressure(), NitrousOxide.CRITICAL_PRESSURE);
            return Math.min(-1e-12, NitrousOxide.saturationTemperature(top) / state.temperature() - 1);
        }

        private Moment moment(double time, double[] y) {
            FluidState state = state(y);
            Charge now = new Charge(bottle, y[0], state, y[2]);
            return new Moment(
                    time,
                    state.temperature(),
                    state.pressure(),
                    now.liquidMass(),
                    now.vapourMass(),
                    task.draw().massFlow(time, outlet(state)),
                    wallCapacity == 0 ? state.temperature() : y[2]);
        }

        private void note(BottleEvent.Kind kind, double time, double[] y) {
            events.add(new BottleEvent(kind, time, state(y).pressure(), y[0]));
        }
    }
}
