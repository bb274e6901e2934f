package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;

/**
 * A thermistor with a negative temperature coefficient below a pull-up resistor, {@code U = U_s R/(R + R_p)}.
 *
 * <p>Its resistance after Steinhart and Hart, Deep-Sea Research 15 (1968) 497: {@code 1/T = A + B ln R + C (ln R)^3}. The law
 * with one constant, {@code 1/T = 1/T_0 + ln(R/R_0)/beta}, is the same with {@code C = 0}.
 *
 * @param name what it is called
 * @param low least temperature of use, K
 * @param high greatest temperature of use, K
 * @param a constant A, 1/K
 * @param b constant B, 1/K
 * @param c constant C, 1/K; zero for the law with one constant
 * @param pullUp pull-up resistor, ohm
 * @param supply voltage above the resistor, V
 */
public record ThermistorSensor(
        String name, double low, double high, double a, double b, double c, double pullUp, double supply)
        implements PulledUpSensor {
    private static final double HAND_WARM = 313.15;

    public ThermistorSensor {
        Require.named("sensor", name);
        Require.within("upper temperature of " + name, high, Math.nextUp(low), 600, "K");
        Require.within("pull-up of " + name, pullUp, 10, 1e6, "ohm");
        Require.within("supply of " + name, supply, 1, 30, "V");
        if (!(b > 0) || c < 0) {
            throw new IllegalArgumentException("The points of the thermistor " + name
                    + " do not lie on the curve of one: its resistance must fall as it warms, ever more slowly; check"
                    + " temperatures and resistances.");
        }
    }

    /**
     * A resistance at a temperature.
     *
     * @param temperature K
     * @param resistance ohm
     */
    public record Known(double temperature, double resistance) {}

    /**
     * Constants from three points.
     *
     * @param points three points at different temperatures
     * @return A, B, C
     */
    public static double[] constants(List<Known> points) {
        double[] x = new double[3];
        double[] y = new double[3];
        for (int i = 0; i < 3; i++) {
            x[i] = Math.log(points.get(i).resistance());
            y[i] = 1 / points.get(i).temperature();
        }
        double g2 = (y[1] - y[0]) / (x[1] - x[0]);
        double g3 = (y[2] - y[0]) / (x[2] - x[0]);
        double c = (g3 - g2) / (x[2] - x[1]) / (x[0] + x[1] + x[2]);
        double b = g2 - c * (x[0] * x[0] + x[0] * x[1] + x[1] * x[1]);
        return new double[] {y[0] - (b + x[0] * x[0] * c) * x[0], b, c};
    }

    /**
     * Constants from one point and beta.
     *
     * @param point the point
     * @param beta K
     * @return A, B and zero
     */
    public static double[] constants(Known point, double beta) {
        return new double[] {1 / point.temperature() - Math.log(point.resistance()) / beta, 1 / beta, 0};
    }

    /**
     * Temperature at a resistance.
     *
     * @param resistance ohm, above zero
     * @return K
     */
    public double temperature(double resistance) {
        double x = Math.log(resistance);
        return 1 / (a + b * x + c * x * x * x);
    }

    /**
     * Resistance at a temperature: the one real root of the cubic, which rises without end because B is positive and C not negative.
     *
     * @param temperature K
     * @return ohm
     */
    @Override
    public double resistance(double temperature) {
        double x = (1 / temperature - a) / b;
        for (int i = 0; i < 60; i++) {
            double step = (a + b * x + c * x * x * x - 1 / temperature) / (b + 3 * c * x * x);
            x -= step;
            if (Math.abs(step) < 1e-14 * Math.abs(x)) {
                break;
            }
        }
        return Math.exp(x);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.TEMPERATURE;
    }

    @Override
    public String law() {
        return c == 0
                ? "1/T = 1/T0 + ln(R/R0)/beta, one constant: some tenths of a kelvin off far from its point (Steinhart and Hart,"
                        + " Deep-Sea Research 15 (1968) 497)"
                : "1/T = A + B ln R + C (ln R)^3 through three points (Steinhart and Hart, Deep-Sea Research 15 (1968) 497)";
    }

    @Override
    public String faults() {
        return "A broken wire reads the full supply, as if it were very cold; a short circuit reads zero, as if it were very hot.";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                new Check("in water with melting ice", UnitFactors.ICE_POINT, output(UnitFactors.ICE_POINT)),
                new Check("in stirred warm water, by a thermometer", HAND_WARM, output(HAND_WARM)));
    }
}
