package org.shotledger.flow;

import org.shotledger.curve.Bracket;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.units.UnitFactors;

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
    private static final double SMALL_HEAD = 2e-3;
    private static final double LARGEST_STEP = 0.03;
    private static final double SHORT_END = 3e-3;
    private static final int MAX_STEPS = 4000;
    /** Share of the critical flux to which it comes back from the pressure of its throat. */
    private static final double ROUNDING = 1e-9;

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
        return new March(inlet.enthalpy(), flux).to(start, false);
    }

    @Override
    public double shortfall(FluidState inlet, double massFlow) {
        double flux = massFlow / area();
        double start = staticPressure(inlet, flux);
        if (Double.isNaN(start)) {
            return HomogeneousEquilibrium.criticalFlux(inlet).massFlux() * area() - massFlow;
        }
        double reached = new March(inlet.enthalpy(), flux).to(start, true) / Math.max(length, 1e-9);
        return Math.min(-1e-6, Math.sqrt(Math.max(0, reached)) - 1) * massFlow;
    }

    /** Static pressure once the stream moves; NaN when the bore chokes at its entry. */
    private static double staticPressure(FluidState inlet, double flux) {
        double head = 0.5 * flux * flux * inlet.specificVolume();
        if (head < SMALL_HEAD * inlet.pressure()) {
            return inlet.pressure() - head;
        }
        Throat throat = HomogeneousEquilibrium.criticalFlux(inlet);
        if (throat.massFlux() <= (1 + ROUNDING) * flux) {
            return Double.NaN;
        }
        Isentrope path = new Isentrope(inlet);
        return Bracket.root(p -> path.fluxAt(p) - flux, throat.pressure(), inlet.pressure(), 1e-7 * inlet.pressure());
    }

    /** One way down the tube at a given flux. */
    private final class March {
        private final double enthalpy;
        private final double flux;
        private final Stream stream = new Stream();

        March(double enthalpy, double flux) {
            this.enthalpy = enthalpy;
            this.flux = flux;
        }

        /** Gives the outlet pressure (NaN when choked), or the length reached before choking. */
        double to(double start, boolean lengthReached) {
            double p = start;
            double v = volume(p, stream.to(p, enthalpy).volume());
            double slope = slope(v);
            double z = 0;
            for (int i = 0; i < MAX_STEPS; i++) {
                double left = length - z;
                if (slope <= 0 || slope * left < SHORT_END * p) {
                    return lengthReached ? length : shortEnd(p, v, slope, left);
                }
                // so short that it never goes beyond the end: as the pressure falls, friction rises
                double step = Math.min(LARGEST_STEP * p, slope * left * 0.35 + 1e-5 * p);
                double p2 = p - step;
                if (p2 < NitrousOxide.TRIPLE_PRESSURE) {
                    break;
                }
                double v2 = volume(p2, v * p / p2);
                double slope2 = slope(v2);
                double dz = (step - flux * flux * (v2 - v)) / (0.5 * (slope + slope2));
                if (!(dz > 0)) {
                    break;
                }
                z += dz;
                p = p2;
                v = v2;
                slope = slope2;
            }
            return lengthReached ? z : Double.NaN;
        }

        /** One trapezium step where little pressure is left to lose. */
        private double shortEnd(double p, double v, double slope, double left) {
            if (left == 0 || slope == 0) {
                return p;
            }
            double guess = p - slope * left;
            double v2 = volume(guess, v);
            return p - 0.5 * (slope + slope(v2)) * left - flux * flux * (v2 - v);
        }

        /** Specific volume of the moving stream; its enthalpy is the stagnation enthalpy less the kinetic energy. */
        private double volume(double pressure, double guess) {
            double v = guess;
            for (int i = 0; i < 2; i++) {
                double before = v;
                double velocity = flux * before;
                v = stream.to(pressure, enthalpy - 0.5 * velocity * velocity).volume();
                if (Math.abs(v - before) * flux * velocity < 1e-6 * enthalpy) {
                    break;
                }
            }
            return v;
        }

        /** Friction and gravity where the stream stands, Pa/m, positive when pressure is lost. */
        private double slope(double v) {
            double gravity = length == 0 ? 0 : UnitFactors.GRAVITY * rise / length / v;
            if (flux == 0) {
                return gravity;
            }
            double factor = Friction.churchill(flux * bore / stream.viscosity(), roughness / bore);
            return 0.5 * factor * flux * flux * v / bore + gravity;
        }
    }
}
