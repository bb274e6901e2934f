package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * A hose, hard line or siphon tube.
 *
 * <p>Homogeneous momentum balance {@code dp/dz = -f G^2 v / (2 D) - G^2 dv/dz - g sin(theta) / v} with
 * {@code h + (G v)^2 / 2 = h0}, marched in pressure so that the choking point (Fanno limit) is met without a singularity;
 * {@link Friction} gives f and the viscosity. The velocity head is lost at the outlet.
 *
 * @param name name in reports
 * @param length length, m
 * @param bore inner diameter, m
 * @param roughness wall roughness, m; drawn tube 1.5e-6, smooth hose 5e-6 (handbook values)
 * @param rise height of the outlet above the inlet, m; negative when it runs down
 */
public record Tube(String name, double length, double bore, double roughness, double rise) implements FeedElement {
    private static final double GRAVITY = 9.80665;
    private static final double SMALL_HEAD = 2e-3;
    private static final double LARGEST_STEP = 0.03;
    private static final int MAX_STEPS = 4000;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public Tube {
        Checks.notNegative("Tube " + name, "length", length, "m");
        Checks.positive("Tube " + name, "bore", bore, "m");
        Checks.notNegative("Tube " + name, "roughness", roughness, "m");
        Checks.within("Tube " + name, "rise", rise, -length, length, "m");
    }

    /**
     * A level tube of usual smoothness.
     *
     * @param name name in reports
     * @param length length, m
     * @param bore inner diameter, m
     * @return the part
     */
    public static Tube level(String name, double length, double bore) {
        return new Tube(name, length, bore, 5e-6, 0);
    }

    private double area() {
        return Math.PI / 4 * bore * bore;
    }

    @Override
    public double volume() {
        return area() * length;
    }

    @Override
    public double outletPressure(FluidState inlet, double massFlow) {
        double flux = massFlow / area();
        double start = staticPressure(inlet, flux);
        if (Double.isNaN(start)) {
            return Double.NaN;
        }
        return march(inlet.enthalpy(), flux, start, false);
    }

    @Override
    public double shortfall(FluidState inlet, double massFlow) {
        double flux = massFlow / area();
        double start = staticPressure(inlet, flux);
        if (Double.isNaN(start)) {
            return HomogeneousEquilibrium.criticalFlux(inlet).massFlux() * area() - massFlow;
        }
        double reached = march(inlet.enthalpy(), flux, start, true) / Math.max(length, 1e-9);
        return Math.min(-1e-6, Math.sqrt(Math.max(0, reached)) - 1) * massFlow;
    }

    /** Static pressure once the stream moves; NaN when the bore chokes at its entry. */
    private static double staticPressure(FluidState inlet, double flux) {
        double head = 0.5 * flux * flux * inlet.specificVolume();
        if (head < SMALL_HEAD * inlet.pressure()) {
            return inlet.pressure() - head;
        }
        Throat throat = HomogeneousEquilibrium.criticalFlux(inlet);
        if (throat.massFlux() <= flux) {
            return Double.NaN;
        }
        return Roots.find(
                p -> HomogeneousEquilibrium.massFlux(inlet, p) - flux,
                throat.pressure(),
                inlet.pressure(),
                1e-7 * inlet.pressure());
    }

    /** Marches down the tube; gives the outlet pressure (NaN when choked), or the length reached before choking. */
    private double march(double enthalpy, double flux, double start, boolean lengthReached) {
        double p = start;
        double v = volume(
                p, enthalpy, flux, NitrousOxide.atPressureEnthalpy(p, enthalpy).specificVolume());
        double slope = slope(p, enthalpy, flux, v);
        double z = 0;
        for (int i = 0; i < MAX_STEPS; i++) {
            double left = length - z;
            double step = Math.min(LARGEST_STEP * p, Math.abs(slope) * left * 0.35 + 1e-5 * p);
            if (slope <= 0 || Math.abs(slope) * left < 1e-3 * p) {
                return lengthReached ? length : shortEnd(p, v, slope, left, enthalpy, flux);
            }
            double p2 = p - step;
            if (p2 < NitrousOxide.TRIPLE_PRESSURE) {
                return lengthReached ? z : Double.NaN;
            }
            double v2 = volume(p2, enthalpy, flux, v * p / p2);
            double slope2 = slope(p2, enthalpy, flux, v2);
            double dz = (step - flux * flux * (v2 - v)) / (0.5 * (slope + slope2));
            if (!(dz > 0)) {
                return lengthReached ? z : Double.NaN;
            }
            if (dz >= left) {
                return lengthReached ? length : p - step * left / dz;
            }
            z += dz;
            p = p2;
            v = v2;
            slope = slope2;
        }
        return lengthReached ? z : Double.NaN;
    }

    /** One midpoint step where little pressure is left to lose. */
    private double shortEnd(double p, double v, double slope, double left, double enthalpy, double flux) {
        if (left == 0 || slope == 0) {
            return p;
        }
        double guess = p - slope * left;
        double v2 = volume(guess, enthalpy, flux, v);
        return p - 0.5 * (slope + slope(guess, enthalpy, flux, v2)) * left - flux * flux * (v2 - v);
    }

    /** Specific volume of the moving stream; its enthalpy is the stagnation enthalpy less the kinetic energy. */
    private static double volume(double pressure, double enthalpy, double flux, double guess) {
        double velocity = flux * guess;
        double v = NitrousOxide.atPressureEnthalpy(pressure, enthalpy - 0.5 * velocity * velocity)
                .specificVolume();
        if (Math.abs(v - guess) * flux * velocity > 1e-6 * enthalpy) {
            velocity = flux * v;
            v = NitrousOxide.atPressureEnthalpy(pressure, enthalpy - 0.5 * velocity * velocity)
                    .specificVolume();
        }
        return v;
    }

    /** Friction and gravity, Pa/m, positive when pressure is lost. */
    private double slope(double pressure, double enthalpy, double flux, double v) {
        if (flux == 0) {
            return gravity(v);
        }
        double velocity = flux * v;
        FluidState state = NitrousOxide.atPressureEnthalpy(pressure, enthalpy - 0.5 * velocity * velocity);
        double x = state.isSaturated() ? state.quality() : state.density() > NitrousOxide.CRITICAL_DENSITY ? 0 : 1;
        double mu = Friction.mcAdams(x, Viscosity.liquid(state.temperature()), Viscosity.vapour(state.temperature()));
        double factor = Friction.churchill(flux * bore / mu, roughness / bore);
        return 0.5 * factor * flux * flux * v / bore + gravity(v);
    }

    private double gravity(double v) {
        return length == 0 ? 0 : GRAVITY * rise / length / v;
    }
}
