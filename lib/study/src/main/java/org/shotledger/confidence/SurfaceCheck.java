package org.shotledger.confidence;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.shotledger.study.Pieces;

/**
 * Draws that were evaluated exactly as well, beside the quadratic forms.
 *
 * @param draws how many
 * @param withoutAnswer those in which some model has no exact answer; the forms answer there beyond what was checked
 * @param powerDifference largest difference of power, as a share of the power asked for
 * @param marginDifference largest difference of the least margin
 * @param otherVerdict draws in which the forms keep every limit and the exact evaluation does not, or the other way round
 * @param never outputs that no exact draw breaks although the forms do: their least place jumps between points; taken as kept
 * @param keptExactly draws that keep every limit, exactly
 */
public record SurfaceCheck(
        int draws,
        int withoutAnswer,
        double powerDifference,
        double marginDifference,
        int otherVerdict,
        Set<Integer> never,
        int keptExactly) {

    /** Draws evaluated exactly for a check: our choice, as long as it may take. */
    private static final int CHECKS = 24;

    static SurfaceCheck of(Surface surface, List<Unknown> unknowns, long seed) {
        double[][] places = places(unknowns, CHECKS, seed);
        double[][] exact =
                Pieces.of(CHECKS, n -> surface.exactOrNull(places[n])).toArray(double[][]::new);
        Forms all = surface.forms();
        Set<Integer> never = never(all, places, exact);
        Forms forms = all.without(never::contains);
        double power = 0;
        double margin = 0;
        int other = 0;
        int kept = 0;
        for (int n = 0; n < CHECKS; n++) {
            if (exact[n] != null) {
                double[] here = forms.at(places[n]);
                double least = Forms.leastMargin(here);
                double exactly = Arrays.stream(exact[n]).skip(1).min().orElse(Double.POSITIVE_INFINITY);
                power = Math.max(power, Math.abs(here[0] - exact[n][0]));
                margin = Math.max(margin, Math.abs(least - exactly));
                other += least >= 0 == exactly >= 0 ? 0 : 1;
                kept += exactly >= 0 ? 1 : 0;
            }
        }
        int answered = (int) Arrays.stream(exact).filter(Objects::nonNull).count();
        return new SurfaceCheck(CHECKS, CHECKS - answered, power, margin, other, never, kept);
    }

    static double[][] places(List<Unknown> unknowns, int count, long seed) {
        ShiftedSobol points = new ShiftedSobol(unknowns.size(), seed);
        double[][] places = new double[count][unknowns.size()];
        for (double[] x : places) {
            points.next(x);
            for (int i = 0; i < x.length; i++) {
                x[i] = unknowns.get(i).distribution().quantile(x[i]);
            }
        }
        return places;
    }

    private static Set<Integer> never(Forms forms, double[][] places, double[][] exact) {
        Set<Integer> wrongly = new TreeSet<>();
        for (int n = 0; n < places.length; n++) {
            if (exact[n] != null) {
                double[] here = forms.at(places[n]);
                IntStream.range(1, here.length).filter(f -> here[f] < 0).forEach(f -> wrongly.add(forms.numbers()[f]));
            }
        }
        wrongly.removeIf(k -> Arrays.stream(exact).anyMatch(e -> e != null && e[k] < 0));
        return wrongly;
    }

    /**
     * The check in one sentence.
     *
     * @return differences, other verdicts and draws without an answer
     */
    public String summary() {
        return String.format(
                Locale.ROOT,
                "%d draws were evaluated exactly as well: the largest difference is %.1f %% of the power and %.1f %% of the least"
                        + " margin, %d have the other verdict, %d have no exact answer.",
                draws,
                100 * powerDifference,
                100 * marginDifference,
                otherVerdict,
                withoutAnswer);
    }
}
