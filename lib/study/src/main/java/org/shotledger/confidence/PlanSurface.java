package org.shotledger.confidence;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Limit;
import org.shotledger.budget.LimitSheet;

/**
 * A plan as quadratic forms in its unknowns, filled by the exact evaluation: centre, a step to each side of every unknown, and
 * the mixed terms of the unknowns that move the power most. What the forms leave out is measured against exact evaluations at
 * random places and stated.
 */
final class PlanSurface {
    private static final int MIXED = 3;
    private static final int CHECKS = 6;
    private static final double NOTHING = 1e-6;
    static final int POWER = 0;
    static final int LAMBDA = 1;
    static final int MARGINS = 2;

    final List<String> keys;
    final List<String> names;
    final int speeds;
    final int outputs;
    private final Plan plan;
    private final List<Unknown> unknowns;
    private final double[] centre;
    private final double[] step;
    /** By output of all speeds: constant, then for each term its weight. */
    private final double[] constant;

    private final double[][] linear;
    private final double[][] square;
    final int[][] pairs;
    private final double[][] mixed;
    double powerDifference;
    double lambdaDifference;

    PlanSurface(Plan plan, List<Unknown> unknowns, boolean withMixed) {
        this.plan = plan;
        this.unknowns = unknowns;
        int d = unknowns.size();
        centre = new double[d];
        step = new double[d];
        for (int i = 0; i < d; i++) {
            Distribution by = unknowns.get(i).distribution();
            centre[i] = by.quantile(0.5);
            step[i] = 0.5 * (by.quantile(0.95) - by.quantile(0.05));
        }
        List<Limit> limits = LimitSheet.of(plan.build(), plan.points().get(0)).all();
        keys = limits.stream().map(Limit::key).toList();
        names = limits.stream().map(Limit::name).toList();
        speeds = plan.points().size();
        outputs = MARGINS + keys.size();
        constant = exact(centre);
        double[][] up =
                IntStream.range(0, d).parallel().mapToObj(i -> side(i, 1)).toArray(double[][]::new);
        double[][] down =
                IntStream.range(0, d).parallel().mapToObj(i -> side(i, -1)).toArray(double[][]::new);
        linear = new double[d][constant.length];
        square = new double[d][constant.length];
        for (int i = 0; i < d; i++) {
            if (up[i] == null && down[i] == null) {
                throw new IllegalArgumentException("No model answers on either side of \""
                        + unknowns.get(i).range()
                        + "\"; the plan stands at the edge of what is covered, narrow this distribution.");
            }
            for (int k = 0; k < constant.length; k++) {
                double above = up[i] == null ? 2 * constant[k] - down[i][k] : up[i][k];
                double below = down[i] == null ? 2 * constant[k] - up[i][k] : down[i][k];
                linear[i][k] = 0.5 * (above - below);
                square[i][k] = 0.5 * (above + below) - constant[k];
            }
        }
        pairs = withMixed ? strongestPairs() : new int[0][];
        mixed = IntStream.range(0, pairs.length)
                .parallel()
                .mapToObj(this::mixed)
                .toArray(double[][]::new);
        if (withMixed) {
            check();
        }
    }

    /** One step to a side, or null where a model has no answer; the other side then speaks for both. */
    private double[] side(int i, double by) {
        double[] x = centre.clone();
        x[i] += by * step[i];
        return exactIfCovered(x);
    }

    private double[] exactIfCovered(double[] x) {
        try {
            return exact(x);
        } catch (IllegalArgumentException outside) {
            return null;
        }
    }

    /** The exact evaluation as one list of numbers, speed by speed. */
    private double[] exact(double[] x) {
        List<Evaluation> points = plan.at(unknowns, x);
        double[] numbers = new double[speeds * outputs];
        for (int r = 0; r < speeds; r++) {
            numbers[r * outputs + POWER] = points.get(r).wheelPower();
            numbers[r * outputs + LAMBDA] = points.get(r).lambda();
            List<Limit> limits = LimitSheet.of(plan.build(), points.get(r)).all();
            for (int k = 0; k < keys.size(); k++) {
                numbers[r * outputs + MARGINS + k] = limits.get(k).relativeMargin();
            }
        }
        return numbers;
    }

    private int[][] strongestPairs() {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, centre.length).boxed().toList());
        int last = (speeds - 1) * outputs;
        order.sort(java.util.Comparator.comparingDouble(i -> -Math.abs(linear[i][last])));
        List<int[]> found = new ArrayList<>();
        for (int a = 0; a < Math.min(MIXED, order.size()); a++) {
            for (int b = a + 1; b < Math.min(MIXED, order.size()); b++) {
                found.add(new int[] {order.get(a), order.get(b)});
            }
        }
        return found.toArray(int[][]::new);
    }

    private double[] mixed(int pair) {
        int a = pairs[pair][0];
        int b = pairs[pair][1];
        double[] x = centre.clone();
        x[a] += step[a];
        x[b] += step[b];
        double[] corner = exactIfCovered(x);
        if (corner == null) {
            return new double[constant.length];
        }
        for (int k = 0; k < corner.length; k++) {
            corner[k] -= constant[k] + linear[a][k] + linear[b][k] + square[a][k] + square[b][k];
        }
        return corner;
    }

    private void check() {
        SplittableRandom random = new SplittableRandom(6);
        double[][] places = new double[CHECKS][centre.length];
        for (double[] x : places) {
            for (int i = 0; i < x.length; i++) {
                x[i] = unknowns.get(i).distribution().quantile(random.nextDouble(0.001, 0.999));
            }
        }
        double[][] exact = java.util.Arrays.stream(places)
                .parallel()
                .map(this::exactIfCovered)
                .toArray(double[][]::new);
        for (int n = 0; n < CHECKS; n++) {
            if (exact[n] == null) {
                continue;
            }
            double[] here = at(places[n]);
            for (int r = 0; r < speeds; r++) {
                int power = r * outputs + POWER;
                int lambda = r * outputs + LAMBDA;
                powerDifference = Math.max(powerDifference, Math.abs(here[power] / exact[n][power] - 1));
                lambdaDifference = Math.max(lambdaDifference, Math.abs(here[lambda] / exact[n][lambda] - 1));
            }
        }
    }

    /** Everything at one place. */
    double[] at(double[] x) {
        double[] z = steps(x);
        return IntStream.range(0, constant.length).mapToDouble(k -> value(k, z)).toArray();
    }

    /** Most power over the speeds. */
    double power(double[] x) {
        double[] z = steps(x);
        double most = Double.NEGATIVE_INFINITY;
        for (int r = 0; r < speeds; r++) {
            most = Math.max(most, value(r * outputs + POWER, z));
        }
        return most;
    }

    private double[] steps(double[] x) {
        double[] z = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            z[i] = (x[i] - centre[i]) / step[i];
        }
        return z;
    }

    private double value(int k, double[] z) {
        double sum = constant[k];
        for (int i = 0; i < z.length; i++) {
            sum += z[i] * (linear[i][k] + z[i] * square[i][k]);
        }
        for (int m = 0; m < pairs.length; m++) {
            sum += z[pairs[m][0]] * z[pairs[m][1]] * mixed[m][k];
        }
        return sum;
    }

    double[] centre() {
        return centre.clone();
    }

    /** Where every unknown lies, in steps from the centre, at a probability. */
    double[] coordinates(double probability) {
        return IntStream.range(0, centre.length)
                .mapToDouble(i -> (unknowns.get(i).distribution().quantile(probability) - centre[i]) / step[i])
                .toArray();
    }

    /** Constant, linear terms, squares and mixed terms of an output at a speed. */
    double[] weights(int speed, int output) {
        int k = speed * outputs + output;
        double[] weights = new double[1 + terms()];
        weights[0] = constant[k];
        for (int t = 0; t < terms(); t++) {
            weights[1 + t] = weight(t, k);
        }
        return weights;
    }

    private double weight(int term, int k) {
        int d = centre.length;
        return term < d ? linear[term][k] : term < 2 * d ? square[term - d][k] : mixed[term - 2 * d][k];
    }

    /** Number of terms besides the constant. */
    int terms() {
        return 2 * centre.length + pairs.length;
    }

    /** The terms of some places, term by term. */
    void terms(double[][] x, int n, double[][] to) {
        int d = centre.length;
        for (int i = 0; i < d; i++) {
            double scale = 1 / step[i];
            for (int j = 0; j < n; j++) {
                double z = (x[i][j] - centre[i]) * scale;
                to[i][j] = z;
                to[d + i][j] = z * z;
            }
        }
        for (int m = 0; m < pairs.length; m++) {
            double[] a = to[pairs[m][0]];
            double[] b = to[pairs[m][1]];
            for (int j = 0; j < n; j++) {
                to[2 * d + m][j] = a[j] * b[j];
            }
        }
    }

    /** One output at many places. */
    void output(int k, double[][] terms, int n, double[] to) {
        java.util.Arrays.fill(to, 0, n, constant[k]);
        double least = NOTHING * (k % outputs < MARGINS ? Math.abs(constant[k]) : 1);
        for (int t = 0; t < terms.length; t++) {
            double weight = weight(t, k);
            if (Math.abs(weight) > least) {
                double[] term = terms[t];
                for (int j = 0; j < n; j++) {
                    to[j] += weight * term[j];
                }
            }
        }
    }
}
