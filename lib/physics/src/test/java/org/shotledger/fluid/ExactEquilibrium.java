package org.shotledger.fluid;

import org.hipparchus.dfp.Dfp;

/** Phase equilibrium and critical point of {@link ExactEquation}, to about 25 digits. */
final class ExactEquilibrium {

    private static final Dfp CONVERGED = ExactEquation.number("1e-26");
    private static final Dfp[] CRITICAL = critical();

    /** Critical temperature, K, and density, kg/m3. */
    static final Dfp CRITICAL_TEMPERATURE = CRITICAL[0];

    static final Dfp CRITICAL_DENSITY = CRITICAL[1];

    /** Critical pressure, Pa. */
    static final Dfp CRITICAL_PRESSURE = new ExactEquation(CRITICAL[0]).new Phase(CRITICAL[1]).pressure();

    private final ExactEquation.Phase liquid;
    private final ExactEquation.Phase vapour;

    private ExactEquilibrium(ExactEquation.Phase liquid, ExactEquation.Phase vapour) {
        this.liquid = liquid;
        this.vapour = vapour;
    }

    /** Solves at T = Tc (1 - theta^2). */
    static ExactEquilibrium atTheta(Dfp theta) {
        Dfp t = CRITICAL_TEMPERATURE.multiply(theta.multiply(theta).negate().add(1));
        double th = theta.toDouble();
        double start = 6.6 * th / (1 + 7 * th);
        double mean = 1 + 1.2 * th * th;
        double rhoL = CRITICAL_DENSITY.toDouble() * (mean + start);
        double rhoV = CRITICAL_DENSITY.toDouble() * (mean - start);
        if (th > 0.1) {
            PhaseEquilibrium rough = new PhaseEquilibrium().solve(Math.max(t.toDouble(), 182.33));
            rhoL = rough.liquid().density();
            rhoV = rough.vapour().density();
        }
        return solve(new ExactEquation(t), ExactEquation.number(rhoL), ExactEquation.number(rhoV));
    }

    static ExactEquilibrium atTemperature(double kelvin) {
        Dfp t = ExactEquation.number(kelvin);
        return atTheta(t.divide(CRITICAL_TEMPERATURE).negate().add(1).sqrt());
    }

    private static ExactEquilibrium solve(ExactEquation equation, Dfp startL, Dfp startV) {
        Dfp rhoL = startL;
        Dfp rhoV = startV;
        for (int i = 0; i < 40; i++) {
            ExactEquation.Phase l = equation.new Phase(rhoL);
            ExactEquation.Phase v = equation.new Phase(rhoV);
            Dfp dp = v.pressure().subtract(l.pressure()).divide(equation.rt());
            Dfp dg = v.potential().subtract(l.potential());
            Dfp gap = rhoL.subtract(rhoV);
            Dfp stepL = rhoL.multiply(dp.subtract(rhoV.multiply(dg)))
                    .divide(l.slope().multiply(gap));
            Dfp stepV = rhoV.multiply(dp.subtract(rhoL.multiply(dg)))
                    .divide(v.slope().multiply(gap));
            rhoL = rhoL.add(stepL);
            rhoV = rhoV.add(stepV);
            if (stepL.abs().add(stepV.abs()).lessThan(CONVERGED.multiply(rhoV))) {
                return new ExactEquilibrium(equation.new Phase(rhoL), equation.new Phase(rhoV));
            }
        }
        throw new IllegalStateException("No equilibrium at " + equation.temperature() + " K");
    }

    /** p, rho', rho'', h', h'', s', s'' in SI. */
    Dfp[] properties() {
        return new Dfp[] {
            vapour.pressure(),
            liquid.density,
            vapour.density,
            liquid.enthalpy(),
            vapour.enthalpy(),
            liquid.entropy(),
            vapour.entropy()
        };
    }

    // dp/drho and its slope vanish: Newton with differences far below the precision wanted
    private static Dfp[] critical() {
        Dfp t = ExactEquation.number("309.52067823");
        Dfp rho = ExactEquation.number("452.9314776");
        Dfp e = ExactEquation.number("1e-14");
        for (int i = 0; i < 8; i++) {
            Dfp[] f = flatness(t, rho, e);
            Dfp[] ft = flatness(t.add(e), rho, e);
            Dfp[] fr = flatness(t, rho.add(e), e);
            Dfp a = ft[0].subtract(f[0]).divide(e);
            Dfp b = fr[0].subtract(f[0]).divide(e);
            Dfp c = ft[1].subtract(f[1]).divide(e);
            Dfp d = fr[1].subtract(f[1]).divide(e);
            Dfp det = a.multiply(d).subtract(b.multiply(c));
            t = t.subtract(f[0].multiply(d).subtract(f[1].multiply(b)).divide(det));
            rho = rho.subtract(f[1].multiply(a).subtract(f[0].multiply(c)).divide(det));
        }
        return new Dfp[] {t, rho};
    }

    private static Dfp[] flatness(Dfp t, Dfp rho, Dfp e) {
        ExactEquation equation = new ExactEquation(t);
        Dfp up = equation.new Phase(rho.add(e)).slope();
        Dfp down = equation.new Phase(rho.subtract(e)).slope();
        return new Dfp[] {equation.new Phase(rho).slope(), up.subtract(down).divide(e.multiply(2))};
    }
}
