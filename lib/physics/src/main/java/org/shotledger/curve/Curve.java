package org.shotledger.curve;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;

/**
 * A table y(x) joined by monotone piecewise cubics, so that the curve never overshoots its points.
 *
 * <p>Slopes after F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304 (weighted harmonic mean).
 * Outside the table the value is refused; a caller that wants an end value must ask for {@link #clamped(double)}.
 */
public final class Curve {
    private static final MathContext DIGITS = new MathContext(5);

    private final String name;
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    private Curve(String name, double[] x, double[] y) {
        this.name = name;
        this.x = x;
        this.y = y;
        this.slope = slopes(x, y);
    }

    /**
     * Makes a curve from a table.
     *
     * @param name what the curve is, for messages, for example {@code "volumetric efficiency over rpm"}
     * @param x abscissae, strictly increasing, at least one
     * @param y ordinates, as many as abscissae, finite
     * @return the curve
     * @throws IllegalArgumentException when the table is empty, ragged, not finite, or not increasing
     */
    public static Curve of(String name, double[] x, double[] y) {
        if (x.length == 0 || x.length != y.length) {
            throw new IllegalArgumentException("The table of " + name + " has " + x.length + " abscissae and "
                    + y.length + " values; give as many of one as of the other, at least one.");
        }
        for (int i = 0; i < x.length; i++) {
            if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
                throw new IllegalArgumentException("The table of " + name + ", point " + (i + 1) + ", is (" + x[i]
                        + ", " + y[i] + "); give finite numbers.");
            }
            if (i > 0 && x[i] <= x[i - 1]) {
                throw new IllegalArgumentException("The table of " + name + ", point " + (i + 1) + ", has abscissa "
                        + x[i] + " after " + x[i - 1] + "; the abscissae must increase.");
            }
        }
        return new Curve(name, x.clone(), y.clone());
    }

    /**
     * A curve with one value everywhere.
     *
     * @param name what the curve is
     * @param value its value
     * @return a curve valid for every abscissa
     */
    public static Curve constant(String name, double value) {
        return of(name, new double[] {-Double.MAX_VALUE, Double.MAX_VALUE}, new double[] {value, value});
    }

    /**
     * The value at an abscissa inside the table.
     *
     * @param at the abscissa, from {@link #low()} to {@link #high()}
     * @return the interpolated value
     * @throws IllegalArgumentException outside the table: the curve does not extrapolate
     */
    public double at(double at) {
        return at(at, interval(at));
    }

    /**
     * The interval that holds an abscissa, to be looked up once for several curves over the same abscissae.
     *
     * @param at the abscissa, from {@link #low()} to {@link #high()}
     * @return number of the point at its lower end; of the last point at {@link #high()}
     * @throws IllegalArgumentException outside the table: the curve does not extrapolate
     */
    public int interval(double at) {
        if (!(at >= low() && at <= high())) {
            throw new IllegalArgumentException("The table of " + name + " goes from " + shown(low()) + " to "
                    + shown(high()) + "; " + shown(at)
                    + " lies outside and is not extrapolated. Extend the table or stay inside.");
        }
        int found = Arrays.binarySearch(x, at);
        return found >= 0 ? found : -found - 2;
    }

    /**
     * The value in an interval that is known.
     *
     * @param at the abscissa
     * @param interval what {@link #interval} of a curve over the same abscissae gives for it
     * @return the interpolated value
     */
    public double at(double at, int interval) {
        int i = interval;
        if (at == x[i]) {
            return y[i];
        }
        double h = x[i + 1] - x[i];
        if (Double.isInfinite(h)) {
            return y[i];
        }
        double t = (at - x[i]) / h;
        double u = 1 - t;
        return u * u * ((1 + 2 * t) * y[i] + t * h * slope[i])
                + t * t * ((3 - 2 * t) * y[i + 1] - u * h * slope[i + 1]);
    }

    private static String shown(double value) {
        return Double.isFinite(value)
                ? new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString()
                : Double.toString(value);
    }

    /**
     * The value at an abscissa, held at the end values outside the table.
     *
     * @param at the abscissa
     * @return the interpolated value, or the nearer end value
     */
    public double clamped(double at) {
        return at(Math.min(Math.max(at, low()), high()));
    }

    /**
     * The first abscissa.
     *
     * @return the lower end of the table
     */
    public double low() {
        return x[0];
    }

    /**
     * The last abscissa.
     *
     * @return the upper end of the table
     */
    public double high() {
        return x[x.length - 1];
    }

    /**
     * What the curve is.
     *
     * @return the name given when it was made
     */
    public String name() {
        return name;
    }

    /**
     * The ordinates.
     *
     * @return a copy of the table's second column
     */
    public double[] ordinates() {
        return y.clone();
    }

    private static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] m = new double[n];
        if (n < 2) {
            return m;
        }
        for (int i = 1; i < n - 1; i++) {
            double h0 = x[i] - x[i - 1];
            double h1 = x[i + 1] - x[i];
            double d0 = (y[i] - y[i - 1]) / h0;
            double d1 = (y[i + 1] - y[i]) / h1;
            double alpha = (h0 + 2 * h1) / (3 * (h0 + h1));
            m[i] = d0 * d1 > 0 ? d0 * d1 / (alpha * d1 + (1 - alpha) * d0) : 0;
        }
        m[0] = (y[1] - y[0]) / (x[1] - x[0]);
        m[n - 1] = (y[n - 1] - y[n - 2]) / (x[n - 1] - x[n - 2]);
        return m;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Curve c && name.equals(c.name) && Arrays.equals(x, c.x) && Arrays.equals(y, c.y);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
    }

    @Override
    public String toString() {
        return name + " over " + low() + " to " + high();
    }
}
