package org.shotledger.reconcile;

import static java.lang.Double.NaN;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.reconcile.Overlay.Judgement;
import org.shotledger.reconcile.Overlay.Part;

/** Works out how far a log lies off a plan, and whether the plan's own uncertainty explains it. */
final class Differences {
    /** Values from which a mean is told: our choice. */
    private static final int FEWEST = 3;

    private Differences() {}

    static Overlay overlay(
            Outcome outcome,
            RunGrid grid,
            Expectation expectation,
            List<Optional<OperatingPoint>> points,
            ComparedChannel what,
            double[] measured) {
        double[] expected = new double[measured.length];
        for (int i = 0; i < expected.length; i++) {
            double seconds =
                    grid.on(i).isPresent() ? grid.time()[i] - grid.on(i).get().from() : Double.NaN;
            expected[i] =
                    points.get(i).map(p -> expectation.value(what, p, seconds)).orElse(Double.NaN);
        }
        List<Part> parts = new ArrayList<>();
        for (boolean on : new boolean[] {false, true}) {
            part(expectation, outcome, grid, points, what, measured, expected, on)
                    .ifPresent(parts::add);
        }
        return new Overlay(what, grid.rpm(), grid.time(), measured, expected, parts);
    }

    /** The differences in one state of the nitrous; empty when the pull has none of it. */
    private static Optional<Part> part(
            Expectation expectation,
            Outcome outcome,
            RunGrid grid,
            List<Optional<OperatingPoint>> points,
            ComparedChannel what,
            double[] measured,
            double[] expected,
            boolean on) {
        int[] state = IntStream.range(0, measured.length)
                .filter(i -> grid.on(i).isPresent() == on && grid.settled(i) && !Double.isNaN(expected[i]))
                .toArray();
        int[] told =
                Arrays.stream(state).filter(i -> !Double.isNaN(measured[i])).toArray();
        int left = state.length - told.length;
        if (state.length == 0) {
            return Optional.empty();
        }
        if (told.length < FEWEST) {
            return Optional.of(
                    new Part(on, NaN, NaN, told.length, left, NaN, NaN, NaN, Uncertainty.NONE, Judgement.NOT_COMPARED));
        }
        int worst = told[0];
        double sum = 0;
        for (int i : told) {
            double off = measured[i] - expected[i];
            sum += off;
            worst = Math.abs(off) > Math.abs(measured[worst] - expected[worst]) ? i : worst;
        }
        Uncertainty uncertainty =
                Uncertainty.of(expectation, outcome, what, points.get(worst).orElseThrow());
        double mean = sum / told.length;
        return Optional.of(new Part(
                on,
                grid.rpm()[told[0]],
                grid.rpm()[told[told.length - 1]],
                told.length,
                left,
                mean,
                measured[worst] - expected[worst],
                grid.rpm()[worst],
                uncertainty,
                judge(mean, uncertainty)));
    }

    private static Judgement judge(double mean, Uncertainty uncertainty) {
        double size = Math.abs(mean);
        if (Double.isNaN(uncertainty.all())) {
            return Judgement.UNSTATED;
        }
        if (size > 2 * uncertainty.all()) {
            return Judgement.BEYOND;
        }
        return size > 2 * uncertainty.tolerance() ? Judgement.BEYOND_TOLERANCE : Judgement.WITHIN;
    }
}
