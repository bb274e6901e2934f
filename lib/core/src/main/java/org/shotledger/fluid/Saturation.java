package org.shotledger.fluid;

/** Both saturated phases at one temperature. */
record Saturation(FluidState liquid, FluidState vapour) {

    static Saturation at(double temperature) {
        FluidRange.saturationTemperature(temperature);
        if (temperature > NitrousOxide.CRITICAL_TEMPERATURE - 1e-7) {
            HelmholtzPoint point = new HelmholtzPoint().temperature(temperature).density(NitrousOxide.CRITICAL_DENSITY);
            return new Saturation(point.state(0), point.state(1));
        }
        PhaseEquilibrium both = new PhaseEquilibrium().solve(temperature);
        return new Saturation(both.liquid().state(0), both.vapour().state(1));
    }

    static double temperature(double pressure) {
        FluidRange.saturationPressure(pressure);
        double lo = NitrousOxide.TRIPLE_TEMPERATURE;
        double hi = NitrousOxide.CRITICAL_TEMPERATURE;
        // ln p is almost a straight line in 1/T
        double slope = Math.log(NitrousOxide.CRITICAL_PRESSURE / NitrousOxide.TRIPLE_PRESSURE) / (1 / lo - 1 / hi);
        double t = 1 / (1 / hi + Math.log(NitrousOxide.CRITICAL_PRESSURE / pressure) / slope);
        for (int i = 0; i < 100; i++) {
            Saturation now = at(t);
            double miss = Math.log(now.pressure() / pressure);
            if (miss > 0) {
                hi = t;
            } else {
                lo = t;
            }
            double next = t - miss * now.pressure() / now.pressureSlope();
            if (!(next >= lo && next <= hi)) {
                next = 0.5 * (lo + hi);
            }
            double change = Math.abs(next - t);
            t = next;
            if (change <= 1e-14 * t) {
                break;
            }
        }
        return t;
    }

    double pressure() {
        return vapour.pressure();
    }

    /** Clapeyron: dp/dT = (s'' - s')/(v'' - v'), Pa/K; at the critical point dp/dT of the isochore. */
    double pressureSlope() {
        double dv = vapour.specificVolume() - liquid.specificVolume();
        if (dv < 1e-7) {
            return new HelmholtzPoint()
                    .temperature(liquid.temperature())
                    .density(NitrousOxide.CRITICAL_DENSITY)
                    .pressureByTemperature();
        }
        return (vapour.entropy() - liquid.entropy()) / dv;
    }

    FluidState mixture(double x) {
        if (x == 0) {
            return liquid;
        }
        if (x == 1) {
            return vapour;
        }
        double t = liquid.temperature();
        double v = mix(x, liquid.specificVolume(), vapour.specificVolume());
        double slope = pressureSlope();
        double cv = mix(x, phaseCv(liquid, slope), phaseCv(vapour, slope));
        return new FluidState(
                t,
                pressure(),
                1 / v,
                mix(x, liquid.enthalpy(), vapour.enthalpy()),
                mix(x, liquid.entropy(), vapour.entropy()),
                mix(x, liquid.internalEnergy(), vapour.internalEnergy()),
                Double.NaN,
                cv,
                v * slope * Math.sqrt(t / cv),
                x);
    }

    private static double mix(double x, double liquid, double vapour) {
        return liquid + x * (vapour - liquid);
    }

    // a phase's share of the mixture's cv: its own, and T (dp/dT_sat - dp/dT_v)^2 / (-dp/dv) for evaporation
    private static double phaseCv(FluidState phase, double slope) {
        HelmholtzPoint point =
                new HelmholtzPoint().temperature(phase.temperature()).density(phase.density());
        double gap = slope - point.pressureByTemperature();
        double rho = phase.density();
        return point.cv() + phase.temperature() * gap * gap / (rho * rho * point.pressureByDensity());
    }
}
