package org.shotledger.fluid;

import org.shotledger.fluid.IsobarSolver.Branch;
import org.shotledger.fluid.IsobarSolver.Given;

/**
 * A state of nitrous oxide by any of the usual pairs, for inner loops: one of the moving methods, then plain doubles.
 *
 * <p>The same flashes as {@link NitrousOxide}, which wraps this class, without making a record for each. A scratch pad
 * that allocates only when made (and when {@link #state()} is asked for); one thread at a time. Properties not asked
 * for are not computed. The result never depends on what the point held before.
 */
public final class StatePoint {

    // start values for Newton only: middling heat capacities of liquid and gas, J/(kg K)
    private static final double LIQUID_CP = 2000;
    private static final double GAS_CP = 1000;

    private final HelmholtzPoint point = new HelmholtzPoint();
    private final HelmholtzPoint other = new HelmholtzPoint();
    private final SaturationPoint line = new SaturationPoint();

    private final IsobarSolver isobar = new IsobarSolver(point);
    private final TemperatureSearch search = new TemperatureSearch();

    private double temperature;
    private double pressure;
    private double density;
    private double quality;

    /** Makes a point without a state; move it before reading it. */
    public StatePoint() {}

    /**
     * Moves to a saturated state.
     *
     * @param kelvin temperature, K, triple to critical
     * @param vapourFraction vapour mass fraction, 0 to 1
     * @return this point
     * @throws IllegalArgumentException outside the ranges
     */
    public StatePoint mixture(double kelvin, double vapourFraction) {
        FluidRange.saturationTemperature(kelvin);
        FluidRange.quality(vapourFraction);
        line.atTemperature(kelvin);
        return onLine(vapourFraction);
    }

    private StatePoint onLine(double x) {
        temperature = line.temperature();
        pressure = line.pressure();
        quality = x;
        if (x == 0 || x == 1) {
            density = x == 0 ? line.liquidDensity() : line.vapourDensity();
            point.temperature(temperature).density(density);
        } else {
            density = 1 / mix(1 / line.liquidDensity(), 1 / line.vapourDensity());
        }
        return this;
    }

    private StatePoint onePhase(double pascal) {
        temperature = point.temperature();
        density = point.density();
        pressure = pascal;
        quality = Double.NaN;
        return this;
    }

    /**
     * Moves to a temperature and pressure; exactly on the saturation line to the saturated liquid.
     *
     * @param kelvin temperature, K, 182.33 to 525
     * @param pascal absolute pressure, Pa, above 0 to 50 MPa
     * @return this point
     * @throws IllegalArgumentException outside the ranges
     */
    public StatePoint temperaturePressure(double kelvin, double pascal) {
        FluidRange.temperature(kelvin);
        FluidRange.pressure(pascal);
        point.temperature(kelvin);
        if (kelvin >= NitrousOxide.CRITICAL_TEMPERATURE) {
            DensitySolver.supercritical(point, pascal);
            return onePhase(pascal);
        }
        double boiling = SaturationCurve.pressure(kelvin);
        if (pascal == boiling) {
            return mixture(kelvin, 0);
        }
        if (pascal > boiling) {
            DensitySolver.liquid(point, pascal, SaturationCurve.liquidDensity(kelvin));
        } else {
            DensitySolver.gas(point, pascal, SaturationCurve.vapourDensity(kelvin));
        }
        return onePhase(pascal);
    }

    /**
     * Moves to a pressure and enthalpy.
     *
     * @param pascal absolute pressure, Pa, above 0 to 50 MPa
     * @param enthalpy specific enthalpy, J/kg
     * @return this point
     * @throws IllegalArgumentException when no temperature from 182.33 to 525 K has it
     */
    public StatePoint pressureEnthalpy(double pascal, double enthalpy) {
        FluidRange.pressure(pascal);
        FluidRange.number("enthalpy", enthalpy, "J/kg");
        if (!boils(pascal)) {
            return isobar(pascal, enthalpy, Given.ENTHALPY);
        }
        line.atPressure(pascal);
        return underDome(pascal, enthalpy, Given.ENTHALPY, line.liquidEnthalpy(), line.vapourEnthalpy());
    }

    /**
     * Moves to a pressure and entropy.
     *
     * @param pascal absolute pressure, Pa, above 0 to 50 MPa
     * @param entropy specific entropy, J/(kg K)
     * @return this point
     * @throws IllegalArgumentException when no temperature from 182.33 to 525 K has it
     */
    public StatePoint pressureEntropy(double pascal, double entropy) {
        FluidRange.pressure(pascal);
        FluidRange.number("entropy", entropy, "J/(kg K)");
        if (!boils(pascal)) {
            return isobar(pascal, entropy, Given.ENTROPY);
        }
        line.atPressure(pascal);
        return underDome(pascal, entropy, Given.ENTROPY, line.liquidEntropy(), line.vapourEntropy());
    }

    private static boolean boils(double pascal) {
        return pascal >= NitrousOxide.TRIPLE_PRESSURE && pascal < NitrousOxide.CRITICAL_PRESSURE;
    }

    private StatePoint underDome(double pascal, double wanted, Given given, double liquid, double vapour) {
        if (wanted >= liquid && wanted <= vapour) {
            return onLine(liquid == vapour ? 0 : (wanted - liquid) / (vapour - liquid));
        }
        boolean wet = wanted < liquid;
        double boiling = line.temperature();
        double start =
                wet ? given.start(boiling, wanted - liquid, LIQUID_CP) : given.start(boiling, wanted - vapour, GAS_CP);
        isobar.solve(pascal, wanted, given, wet ? Branch.LIQUID : Branch.GAS, boiling, start);
        return onePhase(pascal);
    }

    private StatePoint isobar(double pascal, double wanted, Given given) {
        boolean gas = pascal < NitrousOxide.TRIPLE_PRESSURE;
        Branch branch = gas ? Branch.GAS : Branch.ABOVE_CRITICAL_PRESSURE;
        isobar.solve(pascal, wanted, given, branch, FluidRange.MIN_TEMPERATURE, 300);
        return onePhase(pascal);
    }

    /**
     * Moves to a temperature and density.
     *
     * @param kelvin temperature, K, 182.33 to 525
     * @param kilogramPerCubicMetre density, kg/m3
     * @return this point
     * @throws IllegalArgumentException outside the ranges, 50 MPa included
     */
    public StatePoint temperatureDensity(double kelvin, double kilogramPerCubicMetre) {
        FluidRange.temperature(kelvin);
        FluidRange.density(kilogramPerCubicMetre);
        if (kelvin < NitrousOxide.CRITICAL_TEMPERATURE) {
            line.atTemperature(kelvin);
            if (kilogramPerCubicMetre <= line.liquidDensity() && kilogramPerCubicMetre >= line.vapourDensity()) {
                return onLine(line.qualityAtVolume(1 / kilogramPerCubicMetre));
            }
        }
        point.temperature(kelvin).density(kilogramPerCubicMetre);
        double pascal = point.pressure();
        // the rounding of a state made at the limit must not put it beyond
        double limit = FluidRange.MAX_PRESSURE;
        double inside = pascal > limit && pascal < limit * (1 + 1e-12) ? limit : pascal;
        FluidRange.pressure(inside);
        return onePhase(inside);
    }

    /**
     * Moves to a density and internal energy, as in a closed rigid vessel.
     *
     * @param kilogramPerCubicMetre density, kg/m3
     * @param energy specific internal energy, J/kg
     * @return this point
     * @throws IllegalArgumentException when no temperature from 182.33 to 525 K has it, or above 50 MPa
     */
    public StatePoint densityEnergy(double kilogramPerCubicMetre, double energy) {
        FluidRange.density(kilogramPerCubicMetre);
        FluidRange.number("internal energy", energy, "J/kg");
        double t = IsochoreSolver.temperature(point, line, search, kilogramPerCubicMetre, energy, IsochoreSolver.START);
        if (search.beyond()) {
            double end = IsochoreSolver.energy(point, line, t, kilogramPerCubicMetre);
            throw FluidRange.unreachable("internal energy", energy, "J/kg", kilogramPerCubicMetre + " kg/m3", end, t);
        }
        return temperatureDensity(t, kilogramPerCubicMetre);
    }

    private double mix(double liquid, double vapour) {
        return liquid + quality * (vapour - liquid);
    }

    private boolean mixed() {
        return quality > 0 && quality < 1;
    }

    /**
     * Temperature.
     *
     * @return temperature, K
     */
    public double temperature() {
        return temperature;
    }

    /**
     * Pressure.
     *
     * @return absolute pressure, Pa
     */
    public double pressure() {
        return pressure;
    }

    /**
     * Density.
     *
     * @return density, kg/m3
     */
    public double density() {
        return density;
    }

    /**
     * Vapour mass fraction.
     *
     * @return quality, 0 to 1, or NaN in a single-phase state
     */
    public double quality() {
        return quality;
    }

    /**
     * Enthalpy.
     *
     * @return specific enthalpy, J/kg
     */
    public double enthalpy() {
        return mixed() ? mix(line.liquidEnthalpy(), line.vapourEnthalpy()) : point.enthalpy();
    }

    /**
     * Entropy.
     *
     * @return specific entropy, J/(kg K)
     */
    public double entropy() {
        return mixed() ? mix(line.liquidEntropy(), line.vapourEntropy()) : point.entropy();
    }

    /**
     * Internal energy.
     *
     * @return specific internal energy, J/kg
     */
    public double internalEnergy() {
        return mixed() ? enthalpy() - pressure / density : point.internalEnergy();
    }

    /**
     * Isobaric heat capacity.
     *
     * @return cp, J/(kg K); NaN inside the dome
     */
    public double cp() {
        return mixed() ? Double.NaN : point.cp();
    }

    /**
     * Isochoric heat capacity; inside the dome that of the mixture in equilibrium.
     *
     * @return cv, J/(kg K)
     */
    public double cv() {
        if (!mixed()) {
            return point.cv();
        }
        point.temperature(temperature).density(line.liquidDensity());
        other.temperature(temperature).density(line.vapourDensity());
        return mix(phaseCv(point), phaseCv(other));
    }

    // a phase's share of the mixture's cv: its own, and T (dp/dT_sat - dp/dT_v)^2 / (-dp/dv) for evaporation
    private double phaseCv(HelmholtzPoint phase) {
        double gap = line.pressureSlope() - phase.pressureByTemperature();
        double rho = phase.density();
        return phase.cv() + temperature * gap * gap / (rho * rho * phase.pressureByDensity());
    }

    /**
     * Speed of sound; inside the dome with both phases in equilibrium, {@code w = v (dp/dT)_sat sqrt(T/cv)}.
     *
     * @return speed of sound, m/s
     */
    public double soundSpeed() {
        return mixed()
                ? line.pressureSlope() / density * Math.sqrt(temperature / cv())
                : Math.sqrt(point.soundSpeedSquared());
    }

    /**
     * The state as a record.
     *
     * @return a new record with all properties
     */
    public FluidState state() {
        return new FluidState(
                temperature,
                pressure,
                density,
                enthalpy(),
                entropy(),
                internalEnergy(),
                cp(),
                cv(),
                soundSpeed(),
                quality);
    }
}
