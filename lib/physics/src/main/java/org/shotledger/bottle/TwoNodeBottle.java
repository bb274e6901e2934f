package org.shotledger.bottle;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.HelmholtzPoint;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.SaturationCurve;
import org.shotledger.fluid.SaturationPoint;
import org.shotledger.fluid.StatePoint;

/**
 * Liquid and vapour as two bodies with their own temperatures, joined by evaporation that starts late.
 *
 * <p>The liquid superheats while the pressure falls. It evaporates at its surface with
 * {@code m = k_s V^(2/3) dT^1.33} and, once bubbles have formed, in its bulk with {@code m = k_b b m_l dT}; the bubble activity
 * b grows from 0 to 1 with {@code db/dt = (1 - b) (dT / dT_n)^3 / tau}, which gives the dip of the first second. The vapour
 * expands as an equilibrium body of its own (it may become wet); both exchange heat with the lumped shell. The
 * work of the liquid's own volume change is neglected (2 % of its heat). Structure after G. Zilliac and M. A. Karabeyoglu, AIAA
 * 2005-3549, and the review of Zimmerman et al., AIAA 2013-4045; the bubble law is this project's own. The four constants (and
 * the shell's 1000 W/(m2 K)) are one set fitted to the three digitised histories of the review, 0.18 to 35 L, 5 to 20 s.
 * Known error: 3 to 5.5 % RMS in pressure on those, first dip included; not proven on others. Charges that are not two-phase, or
 * within 2 K of the critical temperature, are answered by {@link EquilibriumBottle}.
 */
public final class TwoNodeBottle implements BottleModel {
    /** The model as a swappable part. */
    public static final TwoNodeBottle MODEL = new TwoNodeBottle();

    private static final double SURFACE_RATE = 0.192;
    private static final double SURFACE_POWER = 1.33;
    private static final double BULK_RATE = 0.009;
    private static final double NUCLEATION_SUPERHEAT = 10.6;
    private static final double NUCLEATION_POWER = 3;
    private static final double NUCLEATION_TIME = 0.335;
    private static final double LARGEST_HEAT_CAPACITY = 6000;
    private static final double GONE = 2e-3;
    private static final double PUDDLE = 0.02;
    private static final double COLDEST = 190;
    private static final double LARGEST_ENERGY = 4.2e5;
    private static final double NEAR_CRITICAL = NitrousOxide.CRITICAL_TEMPERATURE - 2;

    private TwoNodeBottle() {}

    @Override
    public String title() {
        return "liquid and vapour apart, boiling delayed";
    }

    @Override
    public double expectedError() {
        return 0.06;
    }

    @Override
    public History run(Emptying emptying) {
        Charge charge = emptying.charge();
        if (!charge.state().isTwoPhase() || charge.temperature() > NEAR_CRITICAL) {
            return EquilibriumBottle.MODEL.run(emptying);
        }
        History liquid = new Run(emptying).go(this);
        boolean goesOn = !emptying.stopUncovered()
                && liquid.find(BottleEvent.Kind.LIQUID_UNCOVERED).isPresent();
        return goesOn ? join(liquid, vapour(emptying, liquid)) : liquid;
    }

    /** Once the liquid is gone one body is left. */
    private static History vapour(Emptying emptying, History before) {
        double offset = before.last().time();
        Emptying task = new Emptying(
                before.left(),
                (time, outlet) -> emptying.draw().massFlow(time + offset, outlet),
                emptying.warmth(),
                Math.max(1e-6, emptying.duration() - offset),
                emptying.rows(),
                emptying.pressureLimit(),
                false);
        return EquilibriumBottle.MODEL.run(task);
    }

    private static History join(History first, History second) {
        double offset = first.last().time();
        List<Moment> moments = new ArrayList<>(first.moments());
        for (Moment m : second.moments().subList(1, second.moments().size())) {
            moments.add(new Moment(
                    m.time() + offset,
                    m.temperature(),
                    m.pressure(),
                    m.liquidMass(),
                    m.vapourMass(),
                    m.massFlow(),
                    m.wallTemperature()));
        }
        List<BottleEvent> events = new ArrayList<>(first.events());
        for (BottleEvent event : second.events()) {
            if (event.kind() != BottleEvent.Kind.LIQUID_UNCOVERED) {
                events.add(new BottleEvent(event.kind(), event.time() + offset, event.pressure(), event.mass()));
            }
        }
        return new History(first.model(), first.expectedError(), moments, events, second.left());
    }

    /** One run; y = liquid mass, liquid temperature, vapour mass, vapour energy, bubble activity, shell temperature. */
    private static final class Run extends BottleRun {
        private final StatePoint vapour = new StatePoint();
        private final HelmholtzPoint liquid = new HelmholtzPoint();
        private final SaturationPoint cold = new SaturationPoint().atTemperature(COLDEST);
        private final double scale;
        private final double startLiquid;

        Run(Emptying task) {
            super(task);
            startLiquid = task.charge().liquidMass();
            scale = Math.cbrt(bottle.waterCapacity() * bottle.waterCapacity());
        }

        @Override
        double[] start() {
            Charge charge = task.charge();
            double vapourEnergy =
                    NitrousOxide.saturatedVapour(charge.temperature()).internalEnergy();
            return new double[] {
                charge.liquidMass(),
                charge.temperature(),
                charge.vapourMass(),
                charge.vapourMass() * vapourEnergy,
                0,
                charge.wallTemperature()
            };
        }

        @Override
        public int getDimension() {
            return 6;
        }

        @Override
        double relativeTolerance() {
            return 1e-6;
        }

        @Override
        double[] absoluteTolerance(double[] y) {
            double mass = task.charge().mass();
            return new double[] {1e-7 * mass, 1e-5, 1e-7 * mass, 0.03 * mass, 1e-6, 1e-5};
        }

        private static double liquidTemperature(double[] y) {
            return Math.min(Math.max(y[1], COLDEST), NEAR_CRITICAL + 1);
        }

        /** Moves the vapour to its density and energy. */
        private StatePoint vapour(double[] y) {
            double free = bottle.waterCapacity() - y[0] / SaturationCurve.liquidDensity(liquidTemperature(y));
            double mass = Math.max(y[2], 1e-9);
            double density = Math.min(mass / Math.max(free, 1e-9), NitrousOxide.CRITICAL_DENSITY);
            // trial steps of the integrator may overshoot: keep them inside the equation of state, they are rejected
            // anyway
            double least = cold.energyAtVolume(1 / density);
            return vapour.densityEnergy(density, Math.min(Math.max(y[3] / mass, least), LARGEST_ENERGY));
        }

        @Override
        public double[] computeDerivatives(double time, double[] y) {
            double temperature = liquidTemperature(y);
            double density = SaturationCurve.liquidDensity(temperature);
            StatePoint gas = vapour(y);
            double pressure = gas.pressure();
            double gasTemperature = gas.temperature();
            double flow = task.draw().massFlow(time, liquidOutlet(temperature, pressure));
            double superheat = temperature - boiling(pressure);
            double evaporation = evaporation(superheat, y);
            double vapourEnthalpy = SaturationCurve.vapourEnthalpy(boiling(pressure));
            double latent = vapourEnthalpy - SaturationCurve.liquidEnthalpy(temperature);
            double wetted = y[0] / density / bottle.waterCapacity();
            double toLiquid = wallCapacity == 0
                    ? 0
                    : warmth.fluidCoefficient() * bottle.wallArea() * wetted * (y[5] - temperature);
            double toVapour = wallCapacity == 0
                    ? 0
                    : Warmth.GAS_SHARE
                            * warmth.fluidCoefficient()
                            * bottle.wallArea()
                            * (1 - wetted)
                            * (y[5] - gasTemperature);
            double heat =
                    Math.min(liquid.temperature(temperature).density(density).cp(), LARGEST_HEAT_CAPACITY);
            double cooling = (toLiquid - evaporation * latent) / (Math.max(y[0], GONE * startLiquid) * heat);
            double massChange = -flow - evaporation;
            double slope = (SaturationCurve.liquidDensity(temperature + 0.01) - density) / 0.01;
            double freed = -massChange / density + y[0] * slope * cooling / (density * density);
            double activity = (1 - y[4])
                    * Math.pow(Math.max(superheat, 0) / NUCLEATION_SUPERHEAT, NUCLEATION_POWER)
                    / NUCLEATION_TIME;
            double wall = wallCapacity == 0 ? 0 : (heatFromOutside(y[5]) - toLiquid - toVapour) / wallCapacity;
            return new double[] {
                massChange,
                cooling,
                evaporation,
                evaporation * vapourEnthalpy + toVapour - pressure * freed,
                activity,
                wall
            };
        }

        private static double boiling(double pressure) {
            return SaturationCurve.temperature(
                    Math.min(Math.max(pressure, NitrousOxide.TRIPLE_PRESSURE), NitrousOxide.CRITICAL_PRESSURE));
        }

        /** Evaporation, kg/s; negative for condensation on a colder surface. */
        private double evaporation(double superheat, double[] y) {
            double surface = SURFACE_RATE * scale * Math.pow(Math.abs(superheat), SURFACE_POWER);
            double bulk = BULK_RATE * Math.max(y[4], 0) * Math.max(y[0], 0) * Math.max(superheat, 0);
            // the last puddle does not cover the section any more; this also keeps the end of the liquid smooth
            double puddle = Math.min(1, Math.max(y[0], 0) / (PUDDLE * startLiquid));
            return puddle * (Math.copySign(surface, superheat) + bulk);
        }

        /** The superheated liquid flashes to bottle pressure where it enters the siphon. */
        private static FluidState liquidOutlet(double temperature, double pressure) {
            double p = Math.min(Math.max(pressure, NitrousOxide.TRIPLE_PRESSURE), NitrousOxide.CRITICAL_PRESSURE);
            return NitrousOxide.atPressureEnthalpy(p, SaturationCurve.liquidEnthalpy(temperature));
        }

        @Override
        FluidState outlet(double[] y) {
            return liquidOutlet(liquidTemperature(y), pressure(y));
        }

        @Override
        double pressure(double[] y) {
            return vapour(y).pressure();
        }

        @Override
        double mass(double[] y) {
            return y[0] + y[2];
        }

        @Override
        double liquidShare(double[] y) {
            return y[0] / startLiquid - GONE;
        }

        @Override
        boolean ends(BottleEvent.Kind kind) {
            boolean ends = super.ends(kind);
            return ends || kind == BottleEvent.Kind.LIQUID_UNCOVERED;
        }

        @Override
        Charge left(double[] y) {
            double temperature = liquidTemperature(y);
            double liquidEnergy = SaturationCurve.liquidEnthalpy(temperature)
                    - SaturationCurve.pressure(temperature) / SaturationCurve.liquidDensity(temperature);
            double mass = mass(y);
            double energy = (y[0] * liquidEnergy + y[3]) / mass;
            FluidState state = NitrousOxide.atDensityEnergy(mass / bottle.waterCapacity(), energy);
            return new Charge(bottle, mass, state, wallCapacity == 0 ? state.temperature() : y[5]);
        }

        @Override
        Moment moment(double time, double[] y) {
            double temperature = liquidTemperature(y);
            double pressure = pressure(y);
            return new Moment(
                    time,
                    temperature,
                    pressure,
                    y[0],
                    y[2],
                    task.draw().massFlow(time, liquidOutlet(temperature, pressure)),
                    wallCapacity == 0 ? temperature : y[5]);
        }
    }
}
