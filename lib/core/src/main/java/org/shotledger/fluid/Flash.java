package org.shotledger.fluid;

/** The flashes behind {@link NitrousOxide}: each a monotone search in temperature between guaranteed ends. */
final class Flash {

    private static final int MAX_STEPS = 200;

    private Flash() {}

    static FluidState temperaturePressure(double temperature, double pressure) {
        FluidRange.temperature(temperature);
        FluidRange.pressure(pressure);
        if (temperature >= NitrousOxide.CRITICAL_TEMPERATURE) {
            return single(temperature, pressure, 0, NitrousOxide.MAX_DENSITY);
        }
        Saturation line = Saturation.at(temperature);
        if (pressure == line.pressure()) {
            return line.liquid();
        }
        return pressure > line.pressure()
                ? single(temperature, pressure, line.liquid().density(), NitrousOxide.MAX_DENSITY)
                : single(temperature, pressure, 0, line.vapour().density());
    }

    private static FluidState single(double temperature, double pressure, double low, double high) {
        HelmholtzPoint point = new HelmholtzPoint().temperature(temperature);
        double gas = pressure / (HelmholtzPoint.GAS_CONSTANT * temperature);
        DensitySolver.solve(point, pressure, low, high, low > 0 ? low : gas);
        return point.state(Double.NaN);
    }

    static FluidState pressureEnthalpy(double pressure, double enthalpy) {
        return atPressure(pressure, enthalpy, "enthalpy", "J/kg", FluidState::enthalpy, FluidState::cp);
    }

    static FluidState pressureEntropy(double pressure, double entropy) {
        return atPressure(
                pressure,
                entropy,
                "entropy",
                "J/(kg K)",
                FluidState::entropy,
                state -> state.cp() / state.temperature());
    }

    private interface Property {
        double of(FluidState state);
    }

    private static FluidState atPressure(
            double pressure, double wanted, String name, String unit, Property value, Property slope) {
        FluidRange.pressure(pressure);
        double lo = FluidRange.MIN_TEMPERATURE;
        double hi = FluidRange.MAX_TEMPERATURE;
        double least = value.of(temperaturePressure(lo, pressure));
        double most = value.of(temperaturePressure(hi, pressure));
        if (!(wanted >= least && wanted <= most)) {
            throw FluidRange.unreachable(name, wanted, unit, pressure + " Pa", least, most);
        }
        double t = lo + (hi - lo) * (wanted - least) / (most - least);
        if (pressure >= NitrousOxide.TRIPLE_PRESSURE && pressure < NitrousOxide.CRITICAL_PRESSURE) {
            Saturation line = Saturation.at(Saturation.temperature(pressure));
            double liquid = value.of(line.liquid());
            double vapour = value.of(line.vapour());
            if (wanted >= liquid && wanted <= vapour) {
                return line.mixture((wanted - liquid) / (vapour - liquid));
            }
            double boiling = line.liquid().temperature();
            if (wanted < liquid) {
                hi = Math.nextDown(boiling);
            } else {
                lo = Math.nextUp(boiling);
            }
            t = Math.min(Math.max(t, lo), hi);
        }
        for (int i = 0; i < MAX_STEPS; i++) {
            FluidState state = temperaturePressure(t, pressure);
            double miss = value.of(state) - wanted;
            if (miss > 0) {
                hi = t;
            } else {
                lo = t;
            }
            double next = t - miss / slope.of(state);
            if (!(next >= lo && next <= hi)) {
                next = 0.5 * (lo + hi);
            }
            if (Math.abs(next - t) <= 1e-14 * t || miss == 0) {
                return state;
            }
            t = next;
        }
        throw new IllegalStateException("No state of nitrous oxide found at " + pressure + " Pa with " + name + " "
                + wanted + " " + unit + ".");
    }

    static FluidState temperatureDensity(double temperature, double density) {
        FluidRange.temperature(temperature);
        FluidRange.density(density);
        if (temperature < NitrousOxide.CRITICAL_TEMPERATURE) {
            Saturation line = Saturation.at(temperature);
            double vl = line.liquid().specificVolume();
            double vv = line.vapour().specificVolume();
            double v = 1 / density;
            if (v >= vl && v <= vv && vv > vl) {
                return line.mixture((v - vl) / (vv - vl));
            }
        }
        FluidState state =
                new HelmholtzPoint().temperature(temperature).density(density).state(Double.NaN);
        FluidRange.pressure(state.pressure());
        return state;
    }

    static FluidState densityEnergy(double density, double energy) {
        FluidRange.density(density);
        double lo = FluidRange.MIN_TEMPERATURE;
        double hi = FluidRange.MAX_TEMPERATURE;
        double least = any(lo, density).internalEnergy();
        double most = any(hi, density).internalEnergy();
        if (!(energy >= least && energy <= most)) {
            throw FluidRange.unreachable("internal energy", energy, "J/kg", density + " kg/m3", least, most);
        }
        double t = lo + (hi - lo) * (energy - least) / (most - least);
        for (int i = 0; i < MAX_STEPS; i++) {
            FluidState state = any(t, density);
            double miss = state.internalEnergy() - energy;
            if (miss > 0) {
                hi = t;
            } else {
                lo = t;
            }
            double next = t - miss / state.cv();
            if (!(next >= lo && next <= hi)) {
                next = 0.5 * (lo + hi);
            }
            if (Math.abs(next - t) <= 1e-14 * t || miss == 0) {
                return temperatureDensity(t, density);
            }
            t = next;
        }
        throw new IllegalStateException(
                "No state of nitrous oxide found at " + density + " kg/m3 with internal energy " + energy + " J/kg.");
    }

    // as temperatureDensity, without the pressure limit, for the ends of the search
    private static FluidState any(double temperature, double density) {
        if (temperature < NitrousOxide.CRITICAL_TEMPERATURE) {
            Saturation line = Saturation.at(temperature);
            double vl = line.liquid().specificVolume();
            double vv = line.vapour().specificVolume();
            double v = 1 / density;
            if (v >= vl && v <= vv && vv > vl) {
                return line.mixture((v - vl) / (vv - vl));
            }
        }
        return new HelmholtzPoint().temperature(temperature).density(density).state(Double.NaN);
    }
}
