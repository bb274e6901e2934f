package org.shotledger.confidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Draws what is not known exactly, many times, and counts. */
public final class ConfidenceStudy {
    private static final int BATCH = 128;
    private static final int INDEX_ROWS = 1 << 12;
    private static final int MOST_DRAWS = 1 << 26;
    /** A wish is met within half a percent, as in the budget. */
    private static final double MET = 0.995;

    private ConfidenceStudy() {}

    /**
     * How sure a plan is, with the influence of every unknown.
     *
     * @param plan the plan
     * @param unknowns what is not known exactly, independent of each other, at least one
     * @param draws number of draws, 1600 to 67 million, rounded up to 16 equal replicates of a power of two
     * @param seed seed
     * @return the confidence
     */
    public static Confidence of(Plan plan, List<Unknown> unknowns, int draws, long seed) {
        return of(plan, unknowns, draws, seed, true);
    }

    /**
     * How sure a plan is, without the influences and without mixed terms: for comparing several plans.
     *
     * @param plan the plan
     * @param unknowns what is not known exactly
     * @param draws number of draws
     * @param seed seed
     * @return the confidence, with no influences and no stated difference
     */
    public static Confidence quick(Plan plan, List<Unknown> unknowns, int draws, long seed) {
        return of(plan, unknowns, draws, seed, false);
    }

    private static Confidence of(Plan plan, List<Unknown> unknowns, int draws, long seed, boolean whole) {
        if (unknowns.isEmpty()) {
            throw new IllegalArgumentException(
                    "There is nothing unknown; name at least one field with a distribution.");
        }
        if (draws < 1600 || draws > MOST_DRAWS) {
            throw new IllegalArgumentException(
                    "The study asks for " + draws + " draws; allowed are 1600 to " + MOST_DRAWS + ".");
        }
        PlanSurface surface = new PlanSurface(plan, List.copyOf(unknowns), whole);
        DecidingSpeeds deciding = DecidingSpeeds.of(surface);
        int each = Integer.highestOneBit(draws / Chance.REPLICATES - 1) * 2;
        List<Replicate> replicates = IntStream.range(0, Chance.REPLICATES)
                .parallel()
                .mapToObj(n -> new Replicate(
                        surface,
                        deciding,
                        unknowns,
                        each,
                        seed + 7919L * n,
                        MET * plan.wish().wheelPower()))
                .toList();
        double[] power =
                replicates.stream().flatMapToDouble(r -> Arrays.stream(r.power)).toArray();
        double[] kept =
                replicates.stream().flatMapToDouble(r -> Arrays.stream(r.kept)).toArray();
        Arrays.parallelSort(power);
        Arrays.parallelSort(kept);
        Map<String, Chance> limits = new LinkedHashMap<>();
        for (int k = 0; k < surface.keys.size(); k++) {
            int limit = k;
            limits.put(surface.names.get(k), chance(replicates, r -> r.keeps[limit], each));
        }
        Propagation all = new Propagation(power);
        return new Confidence(
                plan,
                unknowns,
                each * Chance.REPLICATES,
                chance(replicates, r -> r.reach, each),
                chance(replicates, r -> r.keepAll, each),
                chance(replicates, r -> r.both, each),
                limits,
                all,
                new Propagation(kept),
                whole ? influences(surface, unknowns, all.deviation(), seed) : List.of(),
                whole ? surface.powerDifference : Double.NaN,
                whole ? surface.lambdaDifference : Double.NaN);
    }

    private static Chance chance(
            List<Replicate> replicates, java.util.function.ToLongFunction<Replicate> hits, int each) {
        double[] shares = replicates.stream()
                .mapToDouble(r -> (double) hits.applyAsLong(r) / each)
                .toArray();
        return Chance.of(shares, each);
    }

    private static List<Influence> influences(
            PlanSurface surface, List<Unknown> unknowns, double deviation, long seed) {
        SobolIndices indices = SobolIndices.of(
                surface::power, unknowns.stream().map(Unknown::distribution).toList(), INDEX_ROWS, seed);
        List<Influence> found = new ArrayList<>();
        for (int i = 0; i < unknowns.size(); i++) {
            double[] x = surface.centre();
            x[i] = unknowns.get(i).distribution().quantile(0.05);
            double low = surface.power(x);
            x[i] = unknowns.get(i).distribution().quantile(0.95);
            double high = surface.power(x);
            double first = Math.max(0, indices.first().get(i));
            double left = 1 - 0.75 * Math.min(1, first);
            found.add(new Influence(
                    unknowns.get(i), low, high, first, indices.total().get(i), deviation * (1 - Math.sqrt(left))));
        }
        found.sort(Comparator.comparingDouble((Influence i) -> -Math.abs(i.powerAtHigh() - i.powerAtLow())));
        return found;
    }

    /** One independent set of shifted points. */
    private static final class Replicate {
        final double[] power;
        final double[] kept;
        final long[] keeps;
        long reach;
        long keepAll;
        long both;

        Replicate(PlanSurface surface, DecidingSpeeds in, List<Unknown> unknowns, int draws, long seed, double wanted) {
            power = new double[draws];
            keeps = new long[surface.keys.size()];
            double[] keptPower = new double[draws];
            int found = 0;
            ShiftedSobol points = new ShiftedSobol(unknowns.size(), seed);
            double[] u = new double[unknowns.size()];
            double[][] x = new double[u.length][BATCH];
            double[][] terms = new double[surface.terms()][BATCH];
            double[] most = new double[BATCH];
            double[] work = new double[BATCH];
            double[][] least = new double[keeps.length][BATCH];
            boolean[] broken = new boolean[BATCH];
            DecidingSpeeds anywhere = DecidingSpeeds.all(surface);
            for (int from = 0; from < draws; from += BATCH) {
                int n = Math.min(BATCH, draws - from);
                for (int j = 0; j < n; j++) {
                    points.next(u);
                    for (int i = 0; i < u.length; i++) {
                        x[i][j] = unknowns.get(i).distribution().quantile(u[i]);
                    }
                }
                surface.terms(x, n, terms);
                evaluate(surface, in.holds(terms, n) ? in : anywhere, terms, n, most, work, least);
                Arrays.fill(broken, 0, n, false);
                for (int k = 0; k < keeps.length; k++) {
                    for (int j = 0; j < n; j++) {
                        boolean keptHere = least[k][j] >= 0;
                        keeps[k] += keptHere ? 1 : 0;
                        broken[j] |= !keptHere;
                    }
                }
                for (int j = 0; j < n; j++) {
                    boolean all = !broken[j];
                    boolean reached = most[j] >= wanted;
                    power[from + j] = most[j];
                    if (all) {
                        keptPower[found++] = most[j];
                    }
                    reach += reached ? 1 : 0;
                    keepAll += all ? 1 : 0;
                    both += all && reached ? 1 : 0;
                }
            }
            kept = DoubleStream.of(keptPower).limit(found).toArray();
        }

        private static void evaluate(
                PlanSurface surface,
                DecidingSpeeds in,
                double[][] terms,
                int n,
                double[] most,
                double[] work,
                double[][] least) {
            Arrays.fill(most, Double.NEGATIVE_INFINITY);
            for (int r : in.power) {
                surface.output(r * surface.outputs + PlanSurface.POWER, terms, n, work);
                for (int j = 0; j < n; j++) {
                    most[j] = Math.max(most[j], work[j]);
                }
            }
            for (int k = 0; k < least.length; k++) {
                double[] margin = least[k];
                Arrays.fill(margin, Double.POSITIVE_INFINITY);
                for (int r : in.margins[k]) {
                    surface.output(r * surface.outputs + PlanSurface.MARGINS + k, terms, n, work);
                    for (int j = 0; j < n; j++) {
                        margin[j] = Math.min(margin[j], work[j]);
                    }
                }
            }
        }
    }
}
