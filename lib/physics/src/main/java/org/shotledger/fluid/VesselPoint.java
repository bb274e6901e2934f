package org.shotledger.fluid;

/**
 * Contents of a rigid vessel by density and internal energy, for integrators: it never throws.
 *
 * <p>Within the equation of state it gives what {@link StatePoint#densityEnergy} gives. Trial steps of an integrator may ask
 * for more: an energy beyond the range of 182.33 to 525 K gives the nearer end, a density outside 0 to 1292.5 kg/m3 likewise,
 * and a pressure above 50 MPa is the equation's extrapolation; {@link #inside()} tells. The result depends on nothing but the pair
 * given, to the last bit: event searches rely on that. A scratch pad for one thread.
 */
public final class VesselPoint {
    private static final double LEAST_DENSITY = 1e-6;
    /** Middling heat capacities of a boiling mixture and of gas at constant volume, J/(kg K): for the first guess only. */
    private static final double MIXED_CAPACITY = 2200;

    private static final double GAS_CAPACITY = 800;
    private static final SaturationPoint MIDDLE = new SaturationPoint().atTemperature(IsochoreSolver.START);

    private final HelmholtzPoint point = new HelmholtzPoint();
    private final SaturationPoint line = new SaturationPoint();
    private final TemperatureSearch search = new TemperatureSearch();
    private double temperature;
    private double density = Double.NaN;
    private double energy = Double.NaN;
    private double quality;
    private boolean inside;

    /** Makes a point without a state; move it before reading it. */
    public VesselPoint() {}

    /**
     * Moves to a state.
     *
     * @param kilogramPerCubicMetre density, kg/m3
     * @param jouleByKilogram specific internal energy, J/kg
     * @return this point
     */
    public VesselPoint at(double kilogramPerCubicMetre, double jouleByKilogram) {
        if (kilogramPerCubicMetre == density && jouleByKilogram == energy) {
            return this;
        }
        density = kilogramPerCubicMetre;
        energy = jouleByKilogram;
        double rho = density();
        temperature = IsochoreSolver.temperature(point, line, search, rho, energy, guess(1 / rho, energy));
        inside = !search.beyond() && rho == density;
        boolean dome = temperature < NitrousOxide.CRITICAL_TEMPERATURE
                && rho <= line.atTemperature(temperature).liquidDensity()
                && rho >= line.vapourDensity();
        quality = dome ? line.qualityAtVolume(1 / rho) : Double.NaN;
        if (!dome) {
            point.temperature(temperature).density(rho);
        }
        return this;
    }

    private static double guess(double volume, double energy) {
        double above = energy - MIDDLE.energyAtVolume(volume);
        boolean gas = volume * MIDDLE.vapourDensity() > 1;
        return IsochoreSolver.START + above / (gas ? GAS_CAPACITY : MIXED_CAPACITY);
    }

    /**
     * Whether the state lies within the equation of state.
     *
     * @return false where the nearer end was taken or the pressure is above 50 MPa
     */
    public boolean inside() {
        return inside && pressure() <= FluidRange.MAX_PRESSURE;
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
     * Density.
     *
     * @return density, kg/m3
     */
    public double density() {
        return Math.min(Math.max(density, LEAST_DENSITY), NitrousOxide.MAX_DENSITY);
    }

    /**
     * Pressure.
     *
     * @return absolute pressure, Pa
     */
    public double pressure() {
        return Double.isNaN(quality) ? point.pressure() : line.pressure();
    }

    /**
     * Vapour mass fraction.
     *
     * @return quality, 0 to 1; NaN in a single-phase state
     */
    public double quality() {
        return quality;
    }

    /**
     * Density of the saturated liquid at this temperature, of the critical point above the critical temperature.
     *
     * @return density, kg/m3
     */
    public double liquidDensity() {
        return line.atTemperature(temperature).liquidDensity();
    }

    /**
     * Density of the saturated vapour at this temperature, of the critical point above the critical temperature.
     *
     * @return density, kg/m3
     */
    public double vapourDensity() {
        return line.atTemperature(temperature).vapourDensity();
    }

    /**
     * The state as a record.
     *
     * @return a new record with all properties
     */
    public FluidState state() {
        return Double.isNaN(quality) ? point.state(Double.NaN) : NitrousOxide.mixture(temperature, quality);
    }
}
