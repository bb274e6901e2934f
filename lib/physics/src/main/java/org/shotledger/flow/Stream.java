package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.SaturationPoint;
import org.shotledger.fluid.StatePoint;

/** State of the stream at a pressure and enthalpy, with only what a march needs. A scratch pad of one thread. */
final class Stream {
    private final SaturationPoint line = new SaturationPoint();
    private StatePoint single;

    private double pressure;
    private double enthalpy;
    private double volume;
    private double temperature;
    private double quality;
    private double entropy;

    /** Moves to a pressure, Pa, and a specific enthalpy, J/kg. */
    Stream to(double p, double h) {
        pressure = p;
        enthalpy = h;
        if (p < NitrousOxide.CRITICAL_PRESSURE && p >= NitrousOxide.TRIPLE_PRESSURE) {
            line.atPressure(p);
            double x = (h - line.liquidEnthalpy()) / line.heatOfVaporisation();
            if (x >= 0 && x <= 1) {
                mixture(x);
                return this;
            }
        }
        if (single == null) {
            single = new StatePoint();
        }
        single.pressureEnthalpy(p, h);
        volume = 1 / single.density();
        temperature = single.temperature();
        quality = single.quality();
        entropy = single.entropy();
        return this;
    }

    private void mixture(double x) {
        double liquid = 1 / line.liquidDensity();
        volume = liquid + x * (1 / line.vapourDensity() - liquid);
        temperature = line.temperature();
        quality = x;
        entropy = line.liquidEntropy() + x * (line.vapourEntropy() - line.liquidEntropy());
    }

    /** Specific volume, m3/kg. */
    double volume() {
        return volume;
    }

    /** Mixture viscosity, Pa s (McAdams). */
    double viscosity() {
        double x = Double.isNaN(quality) ? (1 / volume > NitrousOxide.CRITICAL_DENSITY ? 0 : 1) : quality;
        return Friction.mcAdams(x, Viscosity.liquid(temperature), Viscosity.vapour(temperature));
    }

    /** The state without heat capacities and speed of sound (NaN), which no part of a path asks for. */
    FluidState state() {
        double energy = enthalpy - pressure * volume;
        return new FluidState(
                temperature,
                pressure,
                1 / volume,
                enthalpy,
                entropy,
                energy,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                quality);
    }
}
