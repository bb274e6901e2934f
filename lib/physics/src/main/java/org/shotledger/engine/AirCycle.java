package org.shotledger.engine;

import org.shotledger.gas.DryAir;
import org.shotledger.gas.Gas;
import org.shotledger.units.Require;

/**
 * Ideal cycles: what no engine can pass, and what a cap on peak pressure costs even an ideal one.
 *
 * @param efficiency work over heat
 * @param work J per kg of charge
 * @param meanEffectivePressure Pa
 * @param peakPressure Pa
 * @param peakTemperature K
 */
public record AirCycle(
        double efficiency, double work, double meanEffectivePressure, double peakPressure, double peakTemperature) {
    /**
     * The cycle with heat at constant volume up to a pressure cap and the rest at constant pressure; constant heat
     * capacities.
     *
     * @param compressionRatio 2 to 30
     * @param temperature at the start of compression, K
     * @param pressure at the start of compression, Pa
     * @param heat J per kg of charge, above zero
     * @param pressureCap Pa; infinite for the constant-volume (Otto) cycle
     * @param gasConstant J/(kg K)
     * @param gamma ratio of heat capacities
     * @return the cycle
     * @throws IllegalArgumentException when the compression alone passes the cap
     */
    public static AirCycle limitedPressure(
            double compressionRatio,
            double temperature,
            double pressure,
            double heat,
            double pressureCap,
            double gasConstant,
            double gamma) {
        Require.within("compression ratio", compressionRatio, 2, 30, "");
        Require.positive("heat", heat, "J/kg");
        double cv = gasConstant / (gamma - 1);
        double t2 = temperature * Math.pow(compressionRatio, gamma - 1);
        double p2 = pressure * Math.pow(compressionRatio, gamma);
        if (pressureCap < p2) {
            throw new IllegalArgumentException(
                    "The pressure cap is " + pressureCap + " Pa, but compression alone reaches " + p2
                            + " Pa; raise the cap or lower the compression ratio.");
        }
        double atVolume = Math.min(heat, cv * t2 * (pressureCap / p2 - 1));
        double t3 = t2 + atVolume / cv;
        double p3 = p2 * t3 / t2;
        double t4 = t3 + (heat - atVolume) / (cv * gamma);
        double expansion = compressionRatio * t3 / t4;
        double t5 = t4 * Math.pow(expansion, 1 - gamma);
        double work = heat - cv * (t5 - temperature);
        double volume = gasConstant * temperature / pressure;
        return new AirCycle(work / heat, work, work / (volume * (1 - 1 / compressionRatio)), p3, t4);
    }

    /**
     * The constant-volume cycle of dry air with heat capacities from the NASA polynomials.
     *
     * @param compressionRatio 2 to 30
     * @param temperature at the start of compression, K
     * @param pressure at the start of compression, Pa
     * @param heat J per kg of charge
     * @return the cycle
     */
    public static AirCycle constantVolume(double compressionRatio, double temperature, double pressure, double heat) {
        Require.within("compression ratio", compressionRatio, 2, 30, "");
        double t2 = isentropic(temperature, 1 / compressionRatio);
        double t3 = heated(t2, heat);
        double t4 = isentropic(t3, compressionRatio);
        double work = heat - (energy(t4) - energy(temperature));
        double volume = Gas.MOLAR_CONSTANT / DryAir.MOLAR_MASS * temperature / pressure;
        return new AirCycle(
                work / heat,
                work,
                work / (volume * (1 - 1 / compressionRatio)),
                pressure * compressionRatio * t3 / temperature,
                t3);
    }

    /** Temperature after a change of volume at constant entropy, {@code s(T2) - s(T1) = R ln(p2/p1)}. */
    private static double isentropic(double t, double volumeRatio) {
        double target = DryAir.entropy(t) - Gas.MOLAR_CONSTANT * Math.log(t * volumeRatio);
        double next = t * Math.pow(volumeRatio, -0.35);
        for (int i = 0; i < 50; i++) {
            double miss = DryAir.entropy(next) - Gas.MOLAR_CONSTANT * Math.log(next) - target;
            next -= miss * next / (DryAir.heatCapacity(next) - Gas.MOLAR_CONSTANT);
        }
        return next;
    }

    private static double heated(double t, double heat) {
        double target = energy(t) + heat;
        double next = t + heat / 900;
        for (int i = 0; i < 50; i++) {
            next -= (energy(next) - target) / (DryAir.specificHeat(next) - Gas.MOLAR_CONSTANT / DryAir.MOLAR_MASS);
        }
        return next;
    }

    private static double energy(double t) {
        return (DryAir.enthalpy(t) - Gas.MOLAR_CONSTANT * t) / DryAir.MOLAR_MASS;
    }
}
