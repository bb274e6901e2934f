package org.shotledger.confidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Bottles;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.plan.Plan;
import org.shotledger.study.Pieces;

/**
 * Power and every margin of a plan as quadratic forms in its unknowns, fitted on exact evaluations: centre, a standard deviation to
 * either side in every unknown, and the corners of those pairs that move the margins most. The power, over that asked for less one, is
 * output 0; then come the relative margins.
 */
final class Surface {
    /**
     * Probability below a node of the fit: one standard deviation of the normal distribution, our choice. Further out boost is lost
     * at some speeds, and a form through such a node is wrong where the verdict is decided.
     */
    private static final double NODE = 0.1587;
    /** Mixed terms are taken among this many unknowns: our choice, ten corners. */
    private static final int MIXED = 5;
    /** A margin with less than this does not change: rounding of the solvers, our choice. */
    private static final double NOTHING = 1e-6;
    /** A margin of this size is as good as broken or kept for good; what has no value is put there. */
    private static final double FAR = 1;
    /** Two powers of the same car differ by less than this share: rounding of the solvers. */
    private static final double SAME = 1e-6;

    final List<Margins.Place> outputs;
    private final Plan plan;
    private final List<Unknown> unknowns;
    /** Most unknowns leave the bottle as it is. */
    private final Bottles bottles = new Bottles();

    private final double[] centre;
    private final double[] step;
    private final int armed;
    private final double[] constant;
    private final double[][] linear;
    private final double[][] square;
    private final int[][] pairs;
    private final double[][] mixed;

    Surface(Plan plan, List<Unknown> unknowns, boolean withMixed) {
        this.plan = plan;
        this.unknowns = unknowns;
        int d = unknowns.size();
        centre = new double[d];
        step = new double[d];
        for (int i = 0; i < d; i++) {
            centre[i] = scale(i, 0.5);
            step[i] = 0.5 * (scale(i, 1 - NODE) - scale(i, NODE));
        }
        requireCarOfTheSheet();
        outputs = Margins.places(plan.outcomes());
        armed = points(plan.outcomes());
        constant = numbers(plan.outcomes());
        List<double[]> sides = Pieces.of(2 * d, n -> exactOrNull(one(n / 2, n % 2 == 0 ? -1 : 1)));
        linear = new double[d][constant.length];
        square = new double[d][constant.length];
        for (int i = 0; i < d; i++) {
            slope(i, sides.get(2 * i), sides.get(2 * i + 1));
        }
        pairs = withMixed ? strongestPairs() : new int[0][];
        mixed = Pieces.of(pairs.length, p -> mixed(pairs[p])).toArray(double[][]::new);
    }

    /** A sheet's figure is drawn by reading the sheet anew; what was changed in the car since would be lost in silence. */
    private void requireCarOfTheSheet() {
        var figure = plan.car().origins().values().stream()
                .filter(origin -> origin.kind() != null && origin.line() > 0)
                .findFirst();
        boolean drawn = unknowns.stream().anyMatch(u -> u.kind() == Unknown.Kind.SHEET);
        var strongest = plan.stated().strongest();
        if (!drawn || figure.isEmpty() || strongest.isEmpty()) {
            return;
        }
        Car read = plan.job().with(figure.get().path(), figure.get().text()).car();
        double power = Evaluate.at(
                        read, plan.setup(), plan.stated().at(), strongest.get().rpm())
                .map(OperatingPoint::wheelPower)
                .orElse(Double.NaN);
        if (!read.limits().equals(plan.car().limits())
                || !(Math.abs(power / strongest.get().wheelPower() - 1) < SAME)) {
            throw new IllegalArgumentException(
                    "The car was changed after its sheet was read, so the bands of the sheet cannot be"
                            + " drawn; write the change into the sheet, or leave the unknowns of the sheet out.");
        }
    }

    /** Where one side has no answer, the other speaks for both. */
    private void slope(int i, double[] down, double[] up) {
        if (up == null && down == null) {
            throw new IllegalArgumentException("No model answers on either side of \""
                    + unknowns.get(i).range()
                    + "\"; the plan stands at the edge of what is covered, narrow this distribution.");
        }
        for (int k = 0; k < constant.length; k++) {
            double above = up == null ? 2 * constant[k] - down[k] : up[k];
            double below = down == null ? 2 * constant[k] - up[k] : down[k];
            linear[i][k] = 0.5 * (above - below);
            square[i][k] = 0.5 * (above + below) - constant[k];
        }
    }

    /** Distributions of positive values are curved in the logarithm least. */
    private double scale(int i, double probability) {
        return scaled(i, unknowns.get(i).distribution().quantile(probability));
    }

    private double scaled(int i, double value) {
        return logarithmic(i) ? Math.log(value) : value;
    }

    private boolean logarithmic(int i) {
        return unknowns.get(i).kind() == Unknown.Kind.MODEL
                && unknowns.get(i).distribution().quantile(1e-9) > 0;
    }

    private double[] middle() {
        return unknowns.stream()
                .mapToDouble(u -> u.distribution().quantile(0.5))
                .toArray();
    }

    private double[] one(int i, double by) {
        double[] x = middle();
        double moved = centre[i] + by * step[i];
        x[i] = logarithmic(i) ? Math.exp(moved) : moved;
        return x;
    }

    /** The exact evaluation; null where some speed with nitrous or some limit has none. */
    double[] exactOrNull(double[] x) {
        try {
            World world = World.of(plan);
            for (int i = 0; i < x.length; i++) {
                world = unknowns.get(i).effect().of(world, x[i]);
            }
            List<Outcome> outcomes = world.outcomes(bottles);
            return points(outcomes) < armed ? null : numbers(outcomes);
        } catch (IllegalArgumentException outside) {
            return null; // beyond what a record or the calibration takes; counted by whoever asks
        }
    }

    private static int points(List<Outcome> outcomes) {
        return outcomes.stream().mapToInt(o -> o.withNitrous().size()).sum();
    }

    private double[] numbers(List<Outcome> outcomes) {
        double[] numbers = new double[1 + outputs.size()];
        numbers[0] = outcomes.get(0).power() / plan.target().wheelPower() - 1;
        double[] margins = Margins.of(outcomes);
        for (int k = 0; k < margins.length; k++) {
            numbers[1 + k] = Math.max(-FAR, Math.min(FAR, margins[k]));
        }
        return numbers;
    }

    private int[][] strongestPairs() {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, centre.length).boxed().toList());
        order.sort(Comparator.comparingDouble(i -> -weight(i)));
        int most = Math.min(MIXED, order.size());
        return IntStream.range(0, most)
                .boxed()
                .flatMap(a -> IntStream.range(a + 1, most).mapToObj(b -> new int[] {order.get(a), order.get(b)}))
                .toArray(int[][]::new);
    }

    /** How much an unknown moves the outputs, those near zero first. */
    private double weight(int i) {
        return IntStream.range(0, constant.length)
                .mapToDouble(k -> Math.abs(linear[i][k]) / (0.05 + Math.abs(constant[k])))
                .sum();
    }

    private double[] mixed(int[] pair) {
        double[] x = one(pair[0], 1);
        x[pair[1]] = one(pair[1], 1)[pair[1]];
        double[] corner = exactOrNull(x);
        double[] terms = new double[constant.length];
        for (int k = 0; corner != null && k < corner.length; k++) {
            terms[k] = corner[k] - constant[k];
            for (int i : pair) {
                terms[k] -= linear[i][k] + square[i][k];
            }
        }
        return terms;
    }

    /** All outputs that some unknown moves or that are broken anyway, with their weights side by side for many draws. */
    Forms forms() {
        int d = centre.length;
        int[] moving = IntStream.range(0, constant.length)
                .filter(k -> k == 0 || constant[k] < 0 || moves(k))
                .toArray();
        double[][] weights = Arrays.stream(moving)
                .mapToObj(k -> IntStream.range(0, 1 + 2 * d + pairs.length)
                        .mapToDouble(t -> term(t, k))
                        .toArray())
                .toArray(double[][]::new);
        return new Forms(moving, weights, pairs, this::coordinates);
    }

    private boolean moves(int k) {
        return IntStream.range(0, centre.length)
                .anyMatch(i -> Math.abs(linear[i][k]) + Math.abs(square[i][k]) > NOTHING);
    }

    private double term(int t, int k) {
        int d = centre.length;
        if (t == 0) {
            return constant[k];
        }
        return t <= d ? linear[t - 1][k] : t <= 2 * d ? square[t - 1 - d][k] : mixed[t - 1 - 2 * d][k];
    }

    private double[] coordinates(double[] x) {
        double[] z = new double[x.length];
        for (int i = 0; i < z.length; i++) {
            z[i] = (scaled(i, x[i]) - centre[i]) / step[i];
        }
        return z;
    }
}
