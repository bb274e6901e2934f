package org.shotledger.bottle;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.SaturationCurve;
import org.shotledger.fluid.SaturationPoint;
import org.shotledger.fluid.VesselPoint;

/**
 * Liquid and vapour with temperatures of their own. Mass and energy of all contents are carried; the vapour is what the liquid
 * leaves of both, so that no assumption about the liquid can lose any.
 */
final class ApartBody extends Body {
    /** Share of the start's liquid below which the siphon draws vapour. */
    static final double GONE = 2e-3;
    /** Two kelvin below the critical point the phases are too alike to be told apart. */
    static final double NEAR_CRITICAL = NitrousOxide.CRITICAL_TEMPERATURE - 2;

    /** Share of the liquid at the start below which it covers the wall less and less: our choice. */
    private static final double PUDDLE = 0.02;
    /** Bound of the liquid's temperature while the integrator tries a step, K: our choice, above the triple point. */
    private static final double COLDEST = 190;
    /** Heat capacity of the liquid for the time in which it follows its wall, J/(kg K): our choice, rounded down. */
    private static final double LIQUID_CAPACITY = 1500;
    /** Share of the start that stands for nothing, so that no division fails. */
    private static final double LEAST = 1e-9;

    private final BoilingLaw law;
    private final double section;
    private final SaturationPoint liquid = new SaturationPoint();
    private final VesselPoint vapour = new VesselPoint();
    private double startLiquid;

    ApartBody(Emptying task, Exchange exchange, BoilingLaw law) {
        super(task, exchange);
        this.law = law;
        section = Math.cbrt(bottle.waterCapacity() * bottle.waterCapacity());
        startLiquid = task.charge().mass();
    }

    /** Parts contents that are in equilibrium. */
    void part(double[] y, double quality, double temperature) {
        y[Layout.LIQUID] = (1 - quality) * y[Layout.MASS];
        y[Layout.LIQUID_TEMPERATURE] = temperature;
        y[Layout.BUBBLES] = 0;
        startLiquid = y[Layout.LIQUID];
    }

    private double liquid(double[] y) {
        return Math.max(y[Layout.LIQUID], LEAST * startLiquid);
    }

    private double vapourVolume(double[] y) {
        liquid.atTemperature(temperature(y));
        return bottle.waterCapacity() - liquid(y) / liquid.liquidDensity();
    }

    /** Vapour space as a share of the bottle. */
    double room(double[] y) {
        return vapourVolume(y) / bottle.waterCapacity();
    }

    /** Positive while there is liquid at the siphon. */
    double liquidShare(double[] y) {
        return y[Layout.LIQUID] / startLiquid - GONE;
    }

    private VesselPoint vapour(double[] y) {
        double volume = Math.max(vapourVolume(y), LEAST * bottle.waterCapacity());
        double mass = Math.max(y[Layout.MASS] - liquid(y), LEAST * startLiquid);
        double energy = y[Layout.ENERGY] - liquid(y) * liquid.liquidEnergy();
        return vapour.at(Math.min(mass / volume, NitrousOxide.CRITICAL_DENSITY), energy / mass);
    }

    /** Trial steps may squeeze the vapour beyond anything real; they are rejected. */
    private static double bounded(VesselPoint gas) {
        return Math.min(Math.max(gas.pressure(), NitrousOxide.TRIPLE_PRESSURE), NitrousOxide.CRITICAL_PRESSURE);
    }

    @Override
    double[] rates(double time, double[] y) {
        VesselPoint gas = vapour(y);
        double temperature = liquid.temperature();
        double pressure = bounded(gas);
        FluidState outlet = outlet(pressure);
        double flow = flow(time, outlet);
        double shell = exchange.shellTemperature(y, temperature);
        double wetted = 1 - Math.min(1, Math.max(0, vapourVolume(y) / bottle.waterCapacity()));
        double outside = exchange.fromOutside(shell, LIQUID_CAPACITY * liquid(y));
        double toLiquid = outside;
        double toVapour = 0;
        if (exchange.shellCapacity > 0) {
            double vapourMass = Math.max(0, y[Layout.MASS] - liquid(y));
            toLiquid = exchange.toContents(wetted, shell, temperature, LIQUID_CAPACITY * liquid(y));
            toVapour = exchange.toContents(
                    HeatInput.GAS_SHARE * (1 - wetted), shell, gas.temperature(), THIN_GAS_CAPACITY * vapourMass);
        } else if (!exchange.open()) {
            toLiquid = 0;
        }
        double boiling = SaturationCurve.temperature(pressure);
        double superheat = temperature - boiling;
        double evaporation = evaporation(superheat, y);
        double[] rates = rates(flow, outlet.enthalpy(), toLiquid + toVapour, outside);
        double carried = flow * outlet.enthalpy() + evaporation * SaturationCurve.vapourEnthalpy(boiling);
        rates[Layout.LIQUID] = -flow - evaporation;
        rates[Layout.LIQUID_TEMPERATURE] = warming(toLiquid - carried, rates[Layout.LIQUID], pressure, y);
        rates[Layout.BUBBLES] = law.nucleation(superheat, y[Layout.BUBBLES]);
        return rates;
    }

    /**
     * Rate of the liquid's temperature, from {@code dU_l = heat - p dV_l} with {@code U_l = m_l u'(T)} and
     * {@code V_l = m_l / rho'(T)}, solved for dT.
     */
    private double warming(double heat, double massRate, double pressure, double[] y) {
        double density = liquid.liquidDensity();
        double mass = Math.max(liquid(y), GONE * startLiquid);
        double swelling = -liquid.liquidDensitySlope() / (density * density);
        double capacity = liquid.liquidEnergySlope() + pressure * swelling;
        return (heat - massRate * (liquid.liquidEnergy() + pressure / density)) / (mass * capacity);
    }

    private double evaporation(double superheat, double[] y) {
        // the last puddle does not cover the section any more; this also keeps the end of the liquid smooth
        double puddle = Math.min(1, Math.max(y[Layout.LIQUID], 0) / (PUDDLE * startLiquid));
        return puddle * (law.surface(superheat, section) + law.bulk(superheat, y[Layout.BUBBLES], liquid(y)));
    }

    /** The superheated liquid flashes to bottle pressure where it enters the siphon. */
    private FluidState outlet(double pressure) {
        double enthalpy = liquid.liquidEnergy() + pressure / liquid.liquidDensity();
        return NitrousOxide.atPressureEnthalpy(pressure, enthalpy);
    }

    @Override
    FluidState outlet(double[] y) {
        return outlet(bounded(vapour(y)));
    }

    @Override
    double pressure(double[] y) {
        return bounded(vapour(y));
    }

    @Override
    double temperature(double[] y) {
        return Math.min(Math.max(y[Layout.LIQUID_TEMPERATURE], COLDEST), NEAR_CRITICAL + 1);
    }

    @Override
    double liquidMass(double[] y) {
        return liquid(y);
    }

    @Override
    double relativeTolerance() {
        return 0;
    }

    @Override
    double[] absoluteTolerance() {
        double mass = task.charge().mass();
        double[] tolerance = new double[Layout.SIZE];
        java.util.Arrays.fill(tolerance, Double.MAX_VALUE);
        tolerance[Layout.MASS] = 1e-6 * mass;
        tolerance[Layout.ENERGY] = 0.1 * mass;
        tolerance[Layout.SHELL] = 1e-4 * Math.max(1e-6, exchange.shellCapacity);
        tolerance[Layout.LIQUID] = 1e-6 * mass;
        tolerance[Layout.LIQUID_TEMPERATURE] = 1e-4;
        tolerance[Layout.BUBBLES] = 1e-5;
        return tolerance;
    }
}
