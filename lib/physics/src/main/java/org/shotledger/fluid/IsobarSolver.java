package org.shotledger.fluid;

/** Temperature from pressure and enthalpy or entropy in one phase; both rise with temperature at constant pressure. */
final class IsobarSolver {

    private static final int MAX_STEPS = 200;
    private static final int POLISH_STEPS = 8;
    // steps of this relative size are left to Newton's method in temperature and density together
    private static final double NEAR = 0.15;
    // relative errors allowed to a state on the saturation line, so that rounding does not put it beyond: next to the
    // critical point the last digit of the temperature moves the density by this much
    private static final double TEMPERATURE_EDGE = 1e-11;
    private static final double DENSITY_EDGE = 1e-8;

    private final HelmholtzPoint point;
    private final TemperatureSearch search = new TemperatureSearch();
    private Branch branch;
    private Given given;
    private double pressure;
    private double wanted;
    private double rounding;
    private double gasLimit;

    /** Works on a point and leaves it at the answer. */
    IsobarSolver(HelmholtzPoint point) {
        this.point = point;
    }

    /** Where the answer is known to lie. */
    enum Branch {
        LIQUID,
        GAS,
        ABOVE_CRITICAL_PRESSURE
    }

    /** What is given beside the pressure. */
    enum Given {
        ENTHALPY("enthalpy", "J/kg", 1e5),
        ENTROPY("entropy", "J/(kg K)", 1e3);

        private final String text;
        private final String unit;
        private final double scale;

        Given(String text, String unit, double scale) {
            this.text = text;
            this.unit = unit;
            this.scale = scale;
        }

        String text() {
            return text;
        }

        String unit() {
            return unit;
        }

        double of(HelmholtzPoint point) {
            return this == ENTHALPY ? point.enthalpy() : point.entropy();
        }

        double alongIsobar(HelmholtzPoint point) {
            return this == ENTHALPY ? point.cp() : point.cp() / point.temperature();
        }

        double byTemperature(HelmholtzPoint point) {
            double t = point.temperature();
            return this == ENTHALPY ? point.cv() + point.pressureByTemperature() / point.density() : point.cv() / t;
        }

        double byDensity(HelmholtzPoint point) {
            double rho = point.density();
            double entropy = -point.pressureByTemperature() / (rho * rho);
            return this == ENTHALPY ? point.temperature() * entropy + point.pressureByDensity() / rho : entropy;
        }

        double start(double from, double difference, double cp) {
            return this == ENTHALPY ? from + difference / cp : from * Math.exp(difference / cp);
        }
    }

    /**
     * Searches in temperature with the density solved at each, then polishes both together.
     *
     * @param pascal pressure, Pa
     * @param value enthalpy, J/kg, or entropy, J/(kg K)
     * @param kind which of the two
     * @param where the branch to search
     * @param boiling boiling temperature, K; not used above the critical pressure
     * @param start first guess of the temperature, K
     */
    void solve(double pascal, double value, Given kind, Branch where, double boiling, double start) {
        branch = where;
        given = kind;
        pressure = pascal;
        wanted = value;
        rounding = 1e-12 * (Math.abs(value) + kind.scale);
        boolean gas = where == Branch.GAS;
        boolean liquid = where == Branch.LIQUID;
        gasLimit = gas ? SaturationCurve.vapourDensity(boiling) : 0;
        boolean boils = pascal >= NitrousOxide.TRIPLE_PRESSURE;
        search.between(
                gas ? boiling : FluidRange.MIN_TEMPERATURE,
                gas && boils,
                liquid ? boiling : FluidRange.MAX_TEMPERATURE,
                liquid);
        double t = search.clamp(start);
        if (startsClose(t, boiling)) {
            return;
        }
        double guess = Double.NaN;
        for (int i = 0; i < MAX_STEPS; i++) {
            point.temperature(t);
            density(guess);
            double next = search.next(t, given.of(point) - wanted, given.alongIsobar(point), rounding);
            if (search.beyond()) {
                throw FluidRange.unreachable(
                        given.text, wanted, given.unit, FluidRange.shown(pressure) + " Pa", given.of(point), t);
            }
            double step = next - t;
            if (Math.abs(step) <= NEAR * t) {
                if (polish(t, point.density())) {
                    return;
                }
                point.temperature(t);
                density(guess);
            }
            if (step == 0) {
                return;
            }
            // along the isobar: a close first guess for the next density
            guess = point.density() - step * point.pressureByTemperature() / point.pressureByDensity();
            t = next;
        }
        throw new IllegalStateException("No temperature of nitrous oxide found at " + pressure + " Pa with "
                + given.text + " " + wanted + " " + given.unit + ".");
    }

    // below the critical pressure the saturated phase is often close enough to polish at once
    private boolean startsClose(double t, double boiling) {
        if (branch == Branch.LIQUID) {
            point.temperature(t).density(SaturationCurve.liquidDensity(t));
            return polish(t, point.density());
        }
        if (branch == Branch.GAS && boiling > FluidRange.MIN_TEMPERATURE) {
            point.temperature(t).density(gasLimit * boiling / t);
            return polish(t, point.density());
        }
        return false;
    }

    /**
     * Newton's method in temperature and density together; near the critical point, where the isobar is flat in
     * temperature, only this pins the density. The point may be left astray when it returns false.
     */
    private boolean polish(double fromT, double fromRho) {
        double t = fromT;
        double rho = fromRho;
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < POLISH_STEPS; i++) {
            double missP = point.pressure() - pressure;
            double miss = given.of(point) - wanted;
            double pT = point.pressureByTemperature();
            double pRho = point.pressureByDensity();
            double gT = given.byTemperature(point);
            double gRho = given.byDensity(point);
            double det = pT * gRho - pRho * gT;
            double stepT = -(missP * gRho - miss * pRho) / det;
            double stepRho = -(miss * pT - missP * gT) / det;
            double size = Math.max(Math.abs(stepT) / t, Math.abs(stepRho) / rho);
            if (!(size < last) || !(size < 0.2)) {
                return last < 1e-9;
            }
            t += stepT;
            rho += stepRho;
            last = size;
            point.temperature(t).density(rho);
            if (size < 1e-9) {
                break;
            }
        }
        return last < 1e-9 && search.inside(t, TEMPERATURE_EDGE) && onBranch(t, rho);
    }

    private boolean onBranch(double t, double rho) {
        if (branch == Branch.GAS) {
            return rho <= gasLimit * (1 + DENSITY_EDGE);
        }
        return t >= NitrousOxide.CRITICAL_TEMPERATURE || rho >= SaturationCurve.liquidDensity(t) * (1 - DENSITY_EDGE);
    }

    private void density(double guess) {
        double t = point.temperature();
        boolean first = Double.isNaN(guess);
        if (branch == Branch.GAS) {
            if (first) {
                DensitySolver.gas(point, pressure, gasLimit);
            } else {
                DensitySolver.solve(point, pressure, 0, gasLimit, guess);
            }
        } else if (t < NitrousOxide.CRITICAL_TEMPERATURE) {
            double low = SaturationCurve.liquidDensity(t);
            if (first) {
                DensitySolver.liquid(point, pressure, low);
            } else {
                DensitySolver.solve(point, pressure, low, NitrousOxide.MAX_DENSITY, guess);
            }
        } else if (first) {
            DensitySolver.supercritical(point, pressure);
        } else {
            DensitySolver.solve(point, pressure, 0, NitrousOxide.MAX_DENSITY, guess);
        }
    }
}
