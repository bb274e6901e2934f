package org.shotledger.fluid;

import org.hipparchus.dfp.Dfp;
import org.hipparchus.dfp.DfpField;

/**
 * The equation of Lemmon and Span (2006) in 50 decimal digits, written term by term as published and sharing no code
 * with {@link HelmholtzPoint}: the yardstick of the saturation expansions.
 */
final class ExactEquation {

    static final DfpField FIELD = new DfpField(50);

    private static final Dfp[] N = numbers(
            "0.88045",
            "-2.4235",
            "0.38237",
            "0.068917",
            "0.00020367",
            "0.13122",
            "0.46032",
            "-0.0036985",
            "-0.23263",
            "-0.00042859",
            "-0.04281",
            "-0.023038");
    private static final double[] T = {0.25, 1.25, 1.5, 0.25, 0.875, 2.375, 2, 2.125, 3.5, 6.5, 4.75, 12.5};
    private static final int[] D = {1, 1, 1, 3, 7, 1, 2, 5, 1, 1, 4, 2};
    private static final int[] L = {0, 0, 0, 0, 0, 1, 1, 1, 2, 2, 2, 3};
    private static final Dfp[] VIBRATION_WEIGHT = numbers("2.1769", "1.6145", "0.48393");
    private static final Dfp[] VIBRATION_TEMPERATURE = numbers("879", "2372", "5447");
    private static final Dfp REDUCING_TEMPERATURE = number("309.52");
    private static final Dfp REDUCING_DENSITY = number("10270").multiply(number("0.0440128"));
    private static final Dfp GAS_CONSTANT = number("8.314472").divide(number("0.0440128"));

    private final Dfp temperature;
    private final Dfp tau;
    private final Dfp rt;
    private final Dfp[] a = new Dfp[N.length];

    ExactEquation(Dfp temperature) {
        this.temperature = temperature;
        tau = REDUCING_TEMPERATURE.divide(temperature);
        rt = GAS_CONSTANT.multiply(temperature);
        Dfp eighthRoot = tau.sqrt().sqrt().sqrt();
        for (int k = 0; k < N.length; k++) {
            a[k] = N[k].multiply(eighthRoot.pow((int) (8 * T[k])));
        }
    }

    static Dfp number(String digits) {
        return FIELD.newDfp(digits);
    }

    static Dfp number(double value) {
        return FIELD.newDfp(value);
    }

    private static Dfp[] numbers(String... digits) {
        Dfp[] all = new Dfp[digits.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = number(digits[i]);
        }
        return all;
    }

    Dfp temperature() {
        return temperature;
    }

    /** R T, J/kg. */
    Dfp rt() {
        return rt;
    }

    /** Everything at one density. */
    final class Phase {
        final Dfp density;
        private final Dfp delta;
        private Dfp ar = FIELD.getZero();
        private Dfp arD = FIELD.getZero();
        private Dfp arDD = FIELD.getZero();
        private Dfp arT = FIELD.getZero();

        Phase(Dfp density) {
            this.density = density;
            delta = density.divide(REDUCING_DENSITY);
            Dfp[] power = {
                FIELD.getZero(),
                delta,
                delta.multiply(delta),
                delta.multiply(delta).multiply(delta)
            };
            Dfp[] damping = {
                FIELD.getOne(),
                power[1].negate().exp(),
                power[2].negate().exp(),
                power[3].negate().exp()
            };
            for (int k = 0; k < N.length; k++) {
                Dfp value = a[k].multiply(delta.pow(D[k])).multiply(damping[L[k]]);
                Dfp g = power[L[k]].multiply(L[k]);
                Dfp b = number(D[k]).subtract(g);
                ar = ar.add(value);
                arD = arD.add(value.multiply(b));
                arDD = arDD.add(value.multiply(b.multiply(b.subtract(1)).subtract(g.multiply(L[k]))));
                arT = arT.add(value.multiply(number(T[k])));
            }
        }

        Dfp pressure() {
            return density.multiply(rt).multiply(arD.add(1));
        }

        /** (dp/drho)/(RT). */
        Dfp slope() {
            return arD.multiply(2).add(arDD).add(1);
        }

        /** Gibbs energy over RT without its temperature-only part. */
        Dfp potential() {
            return delta.log().add(ar).add(arD);
        }

        Dfp enthalpy() {
            return rt.multiply(idealT().add(arT).add(arD).add(1));
        }

        Dfp entropy() {
            return GAS_CONSTANT.multiply(
                    idealT().add(arT).subtract(ideal()).subtract(delta.log()).subtract(ar));
        }
    }

    private Dfp ideal() {
        Dfp sum = number("-4.4262736272")
                .add(number("4.3120475243").multiply(tau))
                .add(tau.log().multiply(number("2.5")));
        for (int i = 0; i < VIBRATION_WEIGHT.length; i++) {
            Dfp e = VIBRATION_TEMPERATURE[i].divide(temperature).negate().exp();
            sum = sum.add(VIBRATION_WEIGHT[i].multiply(e.negate().add(1).log()));
        }
        return sum;
    }

    private Dfp idealT() {
        Dfp sum = number("4.3120475243").multiply(tau).add(number("2.5"));
        for (int i = 0; i < VIBRATION_WEIGHT.length; i++) {
            Dfp x = VIBRATION_TEMPERATURE[i].divide(temperature);
            Dfp e = x.negate().exp();
            sum = sum.add(VIBRATION_WEIGHT[i]
                    .multiply(x)
                    .multiply(e)
                    .divide(e.negate().add(1)));
        }
        return sum;
    }
}
