package org.shotledger.logs;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Smoothing by least-squares polynomials through a moving window of equal steps (A. Savitzky and M. J. E. Golay, Anal. Chem. 36
 * (1964) 1627-1639; table errors mended by J. Steinier, Y. Termonia and J. Deltour, Anal. Chem. 44 (1972) 1906-1909).
 *
 * <p>At the ends the window stops moving and its polynomial is read off centre. A window that holds a value which is none gives none:
 * nothing is bridged.
 */
public final class SavitzkyGolay {
    private final int half;
    private final int degree;
    private final double[][] smooth;
    private final double[][] slope;

    private SavitzkyGolay(int half, int degree) {
        this.half = half;
        this.degree = degree;
        int width = 2 * half + 1;
        RealMatrix powers = new Array2DRowRealMatrix(width, degree + 1);
        for (int i = 0; i < width; i++) {
            for (int j = 0; j <= degree; j++) {
                powers.setEntry(i, j, Math.pow(i - half, j));
            }
        }
        RealMatrix fit = new QRDecomposition(powers).getSolver().getInverse();
        this.smooth = new double[width][];
        this.slope = new double[width][];
        for (int at = 0; at < width; at++) {
            smooth[at] = weights(fit, at - half, 0);
            slope[at] = weights(fit, at - half, 1);
        }
    }

    /**
     * A filter.
     *
     * @param width number of samples in the window, odd, 3 to 101
     * @param degree degree of the polynomial, 0 to 6, below the width
     * @return the filter
     */
    public static SavitzkyGolay of(int width, int degree) {
        if (width < 3 || width > 101 || width % 2 == 0 || degree < 0 || degree > 6 || degree >= width) {
            throw new IllegalArgumentException("A smoothing window of " + width + " samples and degree " + degree
                    + " cannot be used; take an odd width from 3 to 101 and a degree from 0 to 6 below it.");
        }
        return new SavitzkyGolay(width / 2, degree);
    }

    /**
     * A filter whose window lasts about as long as asked.
     *
     * @param seconds the window, s; 5 to 101 samples are taken
     * @param step the step of the samples, s, above zero
     * @param degree degree of the polynomial, 0 to 4
     * @return the filter
     */
    public static SavitzkyGolay lasting(double seconds, double step, int degree) {
        return of((int) Math.max(5, Math.min(101, 2 * Math.round(seconds / step / 2) + 1)), degree);
    }

    private double[] weights(RealMatrix fit, int at, int derivative) {
        double[] weights = new double[2 * half + 1];
        for (int i = 0; i < weights.length; i++) {
            double sum = 0;
            for (int j = derivative; j <= degree; j++) {
                double power = derivative == 0 ? Math.pow(at, j) : j * Math.pow(at, j - 1.0);
                sum += power * fit.getEntry(j, i);
            }
            weights[i] = sum;
        }
        return weights;
    }

    /**
     * The weights of the window about its middle.
     *
     * @return one weight a sample
     */
    public double[] weights() {
        return smooth[half].clone();
    }

    /**
     * The weights that give the slope in the middle.
     *
     * @return one weight a sample, for a step of one
     */
    public double[] slopeWeights() {
        return slope[half].clone();
    }

    /**
     * Smooths.
     *
     * @param values values at equal steps; NaN where there is none
     * @return as many; all NaN when there are fewer than the window holds
     */
    public double[] smooth(double[] values) {
        return slide(values, smooth, 1);
    }

    /**
     * The slope of the smoothed values.
     *
     * @param values values at equal steps
     * @param step the step, s
     * @return slope per second
     */
    public double[] slope(double[] values, double step) {
        return slide(values, slope, 1 / step);
    }

    private double[] slide(double[] values, double[][] weights, double factor) {
        int width = 2 * half + 1;
        double[] out = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            int first = Math.max(0, Math.min(i - half, values.length - width));
            out[i] = values.length < width ? Double.NaN : factor * dot(values, first, weights[i - first]);
        }
        return out;
    }

    private static double dot(double[] values, int first, double[] weights) {
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            sum += weights[k] * values[first + k];
        }
        return sum;
    }

    /**
     * Variance of a smoothed value over that of the samples, when these scatter independently.
     *
     * @return the sum of the squared weights, below 1
     */
    public double noise() {
        return java.util.Arrays.stream(smooth[half]).map(w -> w * w).sum();
    }
}
