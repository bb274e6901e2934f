package org.shotledger.causes;

import java.util.Arrays;
import java.util.List;

/**
 * What a log's values scatter by, channel by channel: white by their own samples, and wandering with a size and a memory that the
 * residuals tell, {@code s_i^2/w_i [i=j] + c^2 exp(-|t_i - t_j|/T)}, averaged over sizes and memories by how well they explain the
 * residuals. The weights w are those of Student's distribution with few degrees of freedom (K. L. Lange, R. J. A. Little and J. M. G.
 * Taylor, J. Am. Stat. Assoc. 84 (1989) 881-896, from memory), so that a piece that fits nowhere counts little.
 */
final class Noise {
    /** Degrees of freedom of Student's distribution: our choice, few enough that outliers count little. */
    private static final double FREEDOM = 5;
    /** Sizes of the wandering that are tried, over the scatter of the samples: our choice. */
    private static final double[] SIZES = {0, 0.25, 0.5, 0.75, 1, 1.5, 2, 3, 4.5, 7};
    /** Memories that are tried, s: our choice, from some samples to a good part of a pull. */
    private static final double[] MEMORIES = {0.1, 0.25, 0.6, 1.5};
    /** Memory of what a channel wanders by at least, s: our choice, a pull's length. */
    private static final double FLOOR_MEMORY = 3;
    /** Before any residual is known: wandering as large as one sample's scatter. */
    private static final double FIRST = 1;

    private final Values values;
    private final List<Bin> bins;
    private final double[][] covariance;

    private Noise(Values values, List<Bin> bins, double[][] covariance) {
        this.values = values;
        this.bins = bins;
        this.covariance = covariance;
    }

    double[][] covariance() {
        return covariance;
    }

    static Noise first(Values values, List<Bin> bins) {
        Noise noise = new Noise(values, bins, new double[values.size()][values.size()]);
        for (Observable what : Observable.values()) {
            int[] of = values.of(what);
            double[] weights = new double[of.length];
            Arrays.fill(weights, 1);
            noise.put(of, noise.channel(of, what, weights, FIRST * noise.sample(of, what), MEMORIES[1]));
        }
        return noise;
    }

    /** The noise that residuals show, beside what the responses of a band each may hold of them. */
    Noise refined(double[] residuals, double[][] slopes) {
        Noise better = new Noise(values, bins, new double[values.size()][values.size()]);
        for (Observable what : Observable.values()) {
            int[] of = values.of(what);
            if (of.length > 0) {
                better.put(of, refined(of, what, pick(residuals, of), slopes));
            }
        }
        return better;
    }

    private double[][] refined(int[] of, Observable what, double[] residual, double[][] slopes) {
        double[] weights = weights(of, residual);
        double[][] bands = new double[of.length][of.length];
        for (double[] slope : slopes) {
            Matrices.addOuter(bands, pick(slope, of), 1);
        }
        double sample = sample(of, what);
        double[][] mean = new double[of.length][of.length];
        double[] logs = new double[SIZES.length * MEMORIES.length];
        double[][][] all = new double[logs.length][][];
        for (int s = 0; s < SIZES.length; s++) {
            for (int m = 0; m < MEMORIES.length; m++) {
                int g = s * MEMORIES.length + m;
                all[g] = channel(of, what, weights, SIZES[s] * sample, MEMORIES[m]);
                double[][] whole = sum(all[g], bands);
                double[][] root = Matrices.root(whole);
                double[] white = Matrices.whitened(root, residual);
                logs[g] = -0.5 * Matrices.dot(white, white) - 0.5 * Matrices.logDeterminant(root);
            }
        }
        double most = Arrays.stream(logs).max().orElseThrow();
        double total = Arrays.stream(logs).map(l -> Math.exp(l - most)).sum();
        for (int g = 0; g < logs.length; g++) {
            double share = Math.exp(logs[g] - most) / total;
            for (int i = 0; i < of.length; i++) {
                for (int j = 0; j < of.length; j++) {
                    mean[i][j] += share * all[g][i][j];
                }
            }
        }
        return mean;
    }

    private double[] weights(int[] of, double[] residual) {
        double[] sorted = Arrays.stream(residual).sorted().toArray();
        double middle = sorted[sorted.length / 2];
        double[] weights = new double[of.length];
        for (int i = 0; i < of.length; i++) {
            double z = (residual[i] - middle) / Math.sqrt(covariance[of[i]][of[i]]);
            weights[i] = Math.min(1, (FREEDOM + 1) / (FREEDOM + z * z));
        }
        return weights;
    }

    /** Scatter of one sample, near enough: the mean's times the root of a usual number of samples in a piece. */
    private double sample(int[] of, Observable what) {
        double sum = 0;
        for (int k : of) {
            sum += values.scatter()[k];
        }
        return of.length == 0 ? what.floor() : Math.max(what.floor(), 3 * sum / of.length);
    }

    private double[][] channel(int[] of, Observable what, double[] weights, double size, double memory) {
        double[][] c = new double[of.length][of.length];
        for (int i = 0; i < of.length; i++) {
            for (int j = 0; j < of.length; j++) {
                double apart = Math.abs(bins.get(values.bin()[of[i]]).middle()
                        - bins.get(values.bin()[of[j]]).middle());
                c[i][j] = size * size * Math.exp(-apart / memory)
                        + what.floor() * what.floor() * Math.exp(-apart / FLOOR_MEMORY);
            }
            double white = values.scatter()[of[i]];
            c[i][i] += white * white / weights[i] + 0.01 * what.floor() * what.floor();
        }
        return c;
    }

    private void put(int[] of, double[][] block) {
        for (int i = 0; i < of.length; i++) {
            for (int j = 0; j < of.length; j++) {
                covariance[of[i]][of[j]] = block[i][j];
            }
        }
    }

    private static double[][] sum(double[][] a, double[][] b) {
        double[][] c = new double[a.length][a.length];
        for (int i = 0; i < c.length; i++) {
            for (int j = 0; j < c.length; j++) {
                c[i][j] = a[i][j] + b[i][j];
            }
        }
        return c;
    }

    private static double[] pick(double[] from, int[] of) {
        return Arrays.stream(of).mapToDouble(k -> from[k]).toArray();
    }
}
