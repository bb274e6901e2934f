package org.shotledger.fluid;

import java.math.BigDecimal;
import java.math.MathContext;

/** Range checks of the fluid package: one sentence with the value, the range and its reason. */
final class FluidRange {

    /** Triple-point temperature, K: the lowest of the equation of state. */
    static final double MIN_TEMPERATURE = 182.33;

    /** Highest temperature of the equation of state, K. */
    static final double MAX_TEMPERATURE = 525;

    /** Highest pressure of the equation of state, Pa. */
    static final double MAX_PRESSURE = 50e6;

    private FluidRange() {}

    static void temperature(double t) {
        if (!(t >= MIN_TEMPERATURE && t <= MAX_TEMPERATURE)) {
            throw new IllegalArgumentException("Nitrous oxide temperature " + t
                    + " K is outside 182.33 to 525 K, the range of the equation of state.");
        }
    }

    static void saturationTemperature(double t) {
        if (!(t >= MIN_TEMPERATURE && t <= NitrousOxide.CRITICAL_TEMPERATURE)) {
            throw new IllegalArgumentException("Nitrous oxide temperature " + t
                    + " K is outside 182.33 to " + NitrousOxide.CRITICAL_TEMPERATURE
                    + " K (triple to critical point): there is no saturated state.");
        }
    }

    static void saturationPressure(double p) {
        if (!(p >= NitrousOxide.TRIPLE_PRESSURE && p <= NitrousOxide.CRITICAL_PRESSURE)) {
            throw new IllegalArgumentException("Nitrous oxide pressure " + p
                    + " Pa absolute is outside " + NitrousOxide.TRIPLE_PRESSURE + " to "
                    + NitrousOxide.CRITICAL_PRESSURE
                    + " Pa (triple to critical point): there is no saturated state.");
        }
    }

    static void pressure(double p) {
        if (!(p > 0 && p <= MAX_PRESSURE)) {
            throw new IllegalArgumentException("Nitrous oxide pressure " + p
                    + " Pa absolute is outside 0 (exclusive) to 50 MPa, the range of the equation of state.");
        }
    }

    static void quality(double x) {
        if (!(x >= 0 && x <= 1)) {
            throw new IllegalArgumentException(
                    "Vapour quality " + x + " is outside 0 (saturated liquid) to 1 (saturated vapour).");
        }
    }

    static void density(double rho) {
        if (!(rho > 0 && rho <= NitrousOxide.MAX_DENSITY)) {
            throw new IllegalArgumentException("Nitrous oxide density " + rho
                    + " kg/m3 is outside 0 (exclusive) to " + NitrousOxide.MAX_DENSITY
                    + " kg/m3, the density at 182.33 K and 50 MPa.");
        }
    }

    /** Five significant digits: what a reader can take in. */
    static String shown(double value) {
        return Double.isFinite(value)
                ? Double.toString(
                        new BigDecimal(value).round(new MathContext(5)).doubleValue())
                : Double.toString(value);
    }

    static void number(String name, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "Nitrous oxide " + name + " must be a finite number of " + unit + ", not " + value + ".");
        }
    }

    static IllegalArgumentException unreachable(
            String given, double value, String unit, String at, double bound, double boundTemperature) {
        String side = value < bound ? "below" : "above";
        return new IllegalArgumentException("Nitrous oxide " + given + " " + shown(value) + " " + unit + " at " + at
                + " is " + side + " " + shown(bound) + " " + unit + ", its value at " + shown(boundTemperature)
                + " K, the end of the equation of state (182.33 to 525 K).");
    }
}
