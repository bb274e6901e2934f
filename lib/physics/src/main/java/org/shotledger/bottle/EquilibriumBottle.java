package org.shotledger.bottle;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.StatePoint;

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
    private static final double LARGEST_ENERGY = 4.8e5;

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
        return new Run(emptying).go(this);
    }

    /** One run; y = mass, internal energy, shell temperature. */
    private static final class Run extends BottleRun {
        private final StatePoint point = new StatePoint();

        Run(Emptying task) {
            super(task);
            uncovered = task.charge().liquidMass() <= 0;
        }

        @Override
        double[] start() {
            Charge charge = task.charge();
            return new double[] {
                charge.mass(), charge.mass() * charge.state().internalEnergy(), charge.wallTemperature()
            };
        }

        @Override
        public int getDimension() {
            return 3;
        }

        @Override
        double relativeTolerance() {
            return RELATIVE_TOLERANCE;
        }

        @Override
        double[] absoluteTolerance(double[] y) {
            return new double[] {1e-10 * y[0], 1e-5 * y[0], 1e-8};
        }

        @Override
        public double[] computeDerivatives(double time, double[] y) {
            StatePoint state = at(y);
            double temperature = state.temperature();
            FluidState outlet = outlet(state);
            double flow = task.draw().massFlow(time, outlet);
            double outside = heatFromOutside(y[2]);
            if (wallCapacity == 0) {
                // a shell without mass hands everything on
                double toFluid = warmth.fluidCoefficient() > 0 ? outside : 0;
                return new double[] {-flow, toFluid - flow * outlet.enthalpy(), 0};
            }
            // gas alone takes heat far more slowly than boiling liquid
            double share = uncovered ? Warmth.GAS_SHARE : 1;
            double toFluid = share * warmth.fluidCoefficient() * bottle.wallArea() * (y[2] - temperature);
            return new double[] {-flow, toFluid - flow * outlet.enthalpy(), (outside - toFluid) / wallCapacity};
        }

        private StatePoint at(double[] y) {
            double mass = Math.max(y[0], 1e-6 * task.charge().mass());
            // a trial step past the end of the liquid may overshoot; it is cut back to the event anyway
            return point.densityEnergy(mass / bottle.waterCapacity(), Math.min(y[1] / mass, LARGEST_ENERGY));
        }

        @Override
        FluidState outlet(double[] y) {
            return outlet(at(y));
        }

        /**
         * What the siphon takes. Until the event is found the liquid's law is continued past the dew line, so that the
         * derivatives have no jump inside a step.
         */
        private FluidState outlet(StatePoint state) {
            boolean single = Double.isNaN(state.quality());
            boolean dense = single && state.density() > NitrousOxide.CRITICAL_DENSITY;
            if (dense || (uncovered && single)) {
                return state.state();
            }
            double temperature = Math.min(state.temperature(), NitrousOxide.CRITICAL_TEMPERATURE);
            return uncovered ? NitrousOxide.saturatedVapour(temperature) : NitrousOxide.saturatedLiquid(temperature);
        }

        @Override
        double pressure(double[] y) {
            return at(y).pressure();
        }

        @Override
        double mass(double[] y) {
            return y[0];
        }

        @Override
        double liquidShare(double[] y) {
            StatePoint state = at(y);
            if (!Double.isNaN(state.quality())) {
                return 1 - state.quality();
            }
            if (state.density() > NitrousOxide.CRITICAL_DENSITY) {
                return 1;
            }
            double top = Math.min(state.pressure(), NitrousOxide.CRITICAL_PRESSURE);
            return Math.min(-1e-12, NitrousOxide.saturationTemperature(top) / state.temperature() - 1);
        }

        @Override
        Charge left(double[] y) {
            return new Charge(bottle, y[0], at(y).state(), wallCapacity == 0 ? at(y).temperature() : y[2]);
        }

        @Override
        Moment moment(double time, double[] y) {
            FluidState state = at(y).state();
            Charge now = new Charge(bottle, y[0], state, y[2]);
            return new Moment(
                    time,
                    state.temperature(),
                    state.pressure(),
                    now.liquidMass(),
                    now.vapourMass(),
                    task.draw().massFlow(time, outlet(y)),
                    wallCapacity == 0 ? state.temperature() : y[2]);
        }
    }
}
