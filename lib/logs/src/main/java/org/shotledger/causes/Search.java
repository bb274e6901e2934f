package org.shotledger.causes;

import java.util.ArrayList;
import java.util.List;

/**
 * Fits sets of hypotheses to what a log differs by. In whitened values, {@code L^-1 (y - f)} with the covariance {@code L L^T} of noise
 * and of all that is not in the set, the least of {@code 1/2 |r - sum d_k(x_k)|^2 + 1/2 sum (x_k / s_k)^2} is found (Gauss-Newton between
 * the sizes that were worked out, begun at the best of them), and its evidence by Laplace's method.
 */
final class Search {
    private static final int STEPS = 30;
    private static final double CLOSE = 1e-6;
    private static final double SQUARED_HALF = 0.5;

    private final List<Response> responses;
    private final double[][] gram;
    private final double[] against;
    private final double own;
    private final double widened;
    private final int[] first;

    /**
     * A set that was fitted.
     *
     * @param members numbers of its responses
     * @param sizes the best sizes
     * @param least half of the least sum of squares
     * @param evidence logarithm of the evidence, less a constant of all sets
     */
    @SuppressWarnings("ArrayRecordComponent") // lives for one fit only
    record Fit(int[] members, double[] sizes, double least, double evidence) {}

    /** Priors are widened by a factor; one makes them those of the hypotheses. */
    Search(List<Response> responses, double[] off, double[][] root, double widened) {
        this.responses = responses;
        this.widened = widened;
        double[] white = Matrices.whitened(root, off);
        this.own = Matrices.dot(white, white);
        List<double[]> nodes = new ArrayList<>();
        this.first = new int[responses.size()];
        for (int k = 0; k < responses.size(); k++) {
            first[k] = nodes.size();
            for (double[] shift : responses.get(k).shifts()) {
                nodes.add(Matrices.whitened(root, shift));
            }
        }
        this.gram = new double[nodes.size()][nodes.size()];
        this.against = new double[nodes.size()];
        for (int a = 0; a < gram.length; a++) {
            against[a] = Matrices.dot(white, nodes.get(a));
            for (int b = 0; b <= a; b++) {
                gram[a][b] = Matrices.dot(nodes.get(a), nodes.get(b));
                gram[b][a] = gram[a][b];
            }
        }
    }

    /** A response at a size as a mixture of two of those worked out. */
    private record Mix(int a, int b, double share, double width) {}

    private Mix mix(int k, double size) {
        Response response = responses.get(k);
        int a = response.below(size);
        double width = response.sizes()[a + 1] - response.sizes()[a];
        return new Mix(first[k] + a, first[k] + a + 1, (size - response.sizes()[a]) / width, width);
    }

    private double dot(Mix p, Mix q) {
        return (1 - p.share) * ((1 - q.share) * gram[p.a][q.a] + q.share * gram[p.a][q.b])
                + p.share * ((1 - q.share) * gram[p.b][q.a] + q.share * gram[p.b][q.b]);
    }

    private double dot(Mix p) {
        return (1 - p.share) * against[p.a] + p.share * against[p.b];
    }

    /** Slope of p times what q is. */
    private double slopeDot(Mix p, Mix q) {
        double high = (1 - q.share) * gram[p.b][q.a] + q.share * gram[p.b][q.b];
        double low = (1 - q.share) * gram[p.a][q.a] + q.share * gram[p.a][q.b];
        return (high - low) / p.width;
    }

    private double slopeSlope(Mix p, Mix q) {
        return (gram[p.b][q.b] - gram[p.b][q.a] - gram[p.a][q.b] + gram[p.a][q.a]) / p.width / q.width;
    }

    private double slopeDot(Mix p) {
        return (against[p.b] - against[p.a]) / p.width;
    }

    private double prior(int k) {
        Hypothesis h = responses.get(k).hypothesis();
        return widened * Math.hypot(h.fault(), h.band());
    }

    private double least(int[] members, double[] sizes) {
        double sum = own;
        Mix[] mixes = new Mix[members.length];
        for (int i = 0; i < members.length; i++) {
            mixes[i] = mix(members[i], sizes[i]);
            double z = sizes[i] / prior(members[i]);
            sum += z * z - 2 * dot(mixes[i]);
        }
        for (Mix p : mixes) {
            for (Mix q : mixes) {
                sum += dot(p, q);
            }
        }
        return SQUARED_HALF * sum;
    }

    /** Nothing wrong. */
    Fit nothing() {
        return new Fit(new int[0], new double[0], SQUARED_HALF * own, -SQUARED_HALF * own);
    }

    /** The best fit of a set of one or two responses. */
    Fit fit(int... members) {
        double[] sizes = begin(members);
        double value = least(members, sizes);
        for (int step = 0; step < STEPS; step++) {
            double[] next = step(members, sizes);
            double share = 1;
            double[] tried = sizes;
            double there = value;
            for (int half = 0; half < 8; half++, share /= 2) {
                tried = between(members, sizes, next, share);
                there = least(members, tried);
                if (there < value) {
                    break;
                }
            }
            if (!(there < value - CLOSE)) {
                break;
            }
            sizes = tried;
            value = there;
        }
        return new Fit(members, sizes, value, evidence(members, sizes, value));
    }

    private double[] between(int[] members, double[] from, double[] to, double share) {
        double[] at = new double[from.length];
        for (int i = 0; i < at.length; i++) {
            Response r = responses.get(members[i]);
            at[i] = Math.max(r.low(), Math.min(r.high(), from[i] + share * (to[i] - from[i])));
        }
        return at;
    }

    /** The best of the sizes that were worked out. */
    private double[] begin(int[] members) {
        double[] best = new double[members.length];
        double least = Double.POSITIVE_INFINITY;
        double[] a = responses.get(members[0]).sizes();
        double[] b = members.length > 1 ? responses.get(members[1]).sizes() : new double[] {0};
        for (double x : a) {
            for (double y : b) {
                double[] sizes = members.length > 1 ? new double[] {x, y} : new double[] {x};
                double value = least(members, sizes);
                if (value < least) {
                    least = value;
                    best = sizes;
                }
            }
        }
        return best;
    }

    private double[][] curvature(int[] members, double[] sizes) {
        double[][] h = new double[members.length][members.length];
        for (int i = 0; i < members.length; i++) {
            for (int j = 0; j < members.length; j++) {
                h[i][j] = slopeSlope(mix(members[i], sizes[i]), mix(members[j], sizes[j]));
            }
            h[i][i] += 1 / (prior(members[i]) * prior(members[i]));
        }
        return h;
    }

    private double[] step(int[] members, double[] sizes) {
        double[][] h = curvature(members, sizes);
        double[] g = new double[members.length];
        for (int i = 0; i < members.length; i++) {
            Mix p = mix(members[i], sizes[i]);
            g[i] = slopeDot(p) - sizes[i] / (prior(members[i]) * prior(members[i]));
            for (int j = 0; j < members.length; j++) {
                g[i] -= slopeDot(p, mix(members[j], sizes[j]));
            }
        }
        double[] next = sizes.clone();
        if (members.length == 1) {
            next[0] += g[0] / h[0][0];
            return next;
        }
        double det = h[0][0] * h[1][1] - h[0][1] * h[1][0];
        next[0] += (h[1][1] * g[0] - h[0][1] * g[1]) / det;
        next[1] += (h[0][0] * g[1] - h[1][0] * g[0]) / det;
        return next;
    }

    private double evidence(int[] members, double[] sizes, double value) {
        double[][] h = curvature(members, sizes);
        double det = members.length == 1 ? h[0][0] : h[0][0] * h[1][1] - h[0][1] * h[1][0];
        double log = -value - SQUARED_HALF * Math.log(det);
        for (int i = 0; i < members.length; i++) {
            log -= Math.log(prior(members[i]));
            if (responses.get(members[i]).hypothesis().oneSided()) {
                double deviation = 1 / Math.sqrt(h[i][i]);
                double beyond = Math.abs(sizes[i]) / deviation;
                log += Math.log(2 * normal(beyond));
            }
        }
        return log;
    }

    private static double normal(double z) {
        return new org.hipparchus.distribution.continuous.NormalDistribution().cumulativeProbability(z);
    }

    /** How much of each member's slope goes into a member's size: a row of the inverse of the curvature. */
    double[] gain(Fit fit, int place) {
        double[][] h = curvature(fit.members(), fit.sizes());
        if (fit.members().length == 1) {
            return new double[] {1 / h[0][0]};
        }
        double det = h[0][0] * h[1][1] - h[0][1] * h[1][0];
        double across = -h[0][1] / det;
        return place == 0 ? new double[] {h[1][1] / det, across} : new double[] {across, h[0][0] / det};
    }

    /** One standard deviation of a member's size in a fit, everything else of the covariance included. */
    double deviation(Fit fit, int place) {
        double[][] h = curvature(fit.members(), fit.sizes());
        if (fit.members().length == 1) {
            return 1 / Math.sqrt(h[0][0]);
        }
        double det = h[0][0] * h[1][1] - h[0][1] * h[1][0];
        return Math.sqrt(h[1 - place][1 - place] / det);
    }
}
