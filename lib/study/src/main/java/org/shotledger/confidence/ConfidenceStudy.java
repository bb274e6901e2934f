package org.shotledger.confidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Target;

/** Draws what is not known exactly, many times, and counts. */
public final class ConfidenceStudy {
    /** Rows of the design for the indices: a power of two, as Sobol's points ask. */
    private static final int INDEX_ROWS = 1 << 10;
    /** Fewest draws, so that a chance of 95 % is known within about 1 %: our choice. */
    private static final int FEWEST_DRAWS = 1600;

    private static final int MOST_DRAWS = 1 << 26;

    private ConfidenceStudy() {}

    /**
     * How sure a plan is, with exact checks and the influence of every unknown.
     *
     * @param plan the plan
     * @param unknowns what is not known exactly, independent of each other, at least one; see {@link Unknowns#of}
     * @param draws number of draws, 1600 to 67 million, rounded up to 16 equal replicates of a power of two
     * @param seed seed
     * @return the confidence
     * @throws IllegalArgumentException where the models have no answer around the plan
     */
    public static Confidence of(Plan plan, List<Unknown> unknowns, int draws, long seed) {
        int each = each(unknowns, draws);
        Surface surface = new Surface(plan, unknowns, true);
        SurfaceCheck check = SurfaceCheck.of(surface, unknowns, seed + 1);
        Forms forms = surface.forms().without(check.never()::contains);
        return confidence(plan, unknowns, each, seed, surface, forms, check);
    }

    /**
     * How sure a plan is, without mixed terms, exact checks and influences: for comparing several plans.
     *
     * @param plan the plan
     * @param unknowns what is not known exactly
     * @param draws number of draws
     * @param seed seed
     * @return the confidence, with no influences and a check of no draws
     */
    public static Confidence quick(Plan plan, List<Unknown> unknowns, int draws, long seed) {
        int each = each(unknowns, draws);
        Surface surface = new Surface(plan, unknowns, false);
        SurfaceCheck none = new SurfaceCheck(0, 0, Double.NaN, Double.NaN, 0, Set.of(), 0);
        return confidence(plan, unknowns, each, seed, surface, surface.forms(), none);
    }

    private static int each(List<Unknown> unknowns, int draws) {
        if (unknowns.isEmpty()) {
            throw new IllegalArgumentException(
                    "There is nothing unknown; name at least one figure with a distribution.");
        }
        if (draws < FEWEST_DRAWS || draws > MOST_DRAWS) {
            throw new IllegalArgumentException(
                    "The study asks for " + draws + " draws; allowed are " + FEWEST_DRAWS + " to " + MOST_DRAWS + ".");
        }
        return Integer.highestOneBit(draws / Chance.REPLICATES - 1) * 2;
    }

    private static Confidence confidence(
            Plan plan, List<Unknown> unknowns, int each, long seed, Surface surface, Forms forms, SurfaceCheck check) {
        double wanted = plan.target().wheelPower();
        double reached = -Target.SHORT_BY;
        Draws draws = new Draws(unknowns, surface.outputs, forms, wanted, reached);
        boolean[] all = new boolean[unknowns.size()];
        boolean[] exactModels = new boolean[all.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = true;
            exactModels[i] = unknowns.get(i).kind() != Unknown.Kind.MODEL;
        }
        return new Confidence(
                plan,
                unknowns,
                each * Chance.REPLICATES,
                draws.chances(each, seed, all),
                draws.chances(each, seed, exactModels),
                check.draws() > 0 ? influences(unknowns, forms, wanted, reached, seed) : List.of(),
                check);
    }

    private static List<Influence> influences(
            List<Unknown> unknowns, Forms forms, double wanted, double reached, long seed) {
        List<Distribution> by = unknowns.stream().map(Unknown::distribution).toList();
        ToDoubleFunction<double[]> decisive = x -> {
            double[] values = forms.at(x);
            return Math.min(values[0] - reached, Forms.leastMargin(values));
        };
        SobolIndices power = SobolIndices.of(x -> forms.at(x)[0], by, INDEX_ROWS, seed);
        SobolIndices margin = SobolIndices.of(decisive, by, INDEX_ROWS, seed);
        List<Influence> found = new ArrayList<>();
        for (int i = 0; i < by.size(); i++) {
            double left = 1 - 0.75 * Math.max(0, Math.min(1, margin.first().get(i)));
            found.add(new Influence(
                    unknowns.get(i),
                    (1 + forms.at(at(by, i, 0.05))[0]) * wanted,
                    (1 + forms.at(at(by, i, 0.95))[0]) * wanted,
                    new Influence.Share(power.first().get(i), power.total().get(i)),
                    new Influence.Share(margin.first().get(i), margin.total().get(i)),
                    Math.sqrt(margin.variance()) * (1 - Math.sqrt(left))));
        }
        found.sort(Comparator.comparingDouble((Influence i) -> -i.decisive().total()));
        return found;
    }

    private static double[] at(List<Distribution> by, int moved, double probability) {
        double[] x = new double[by.size()];
        Arrays.setAll(x, i -> by.get(i).quantile(i == moved ? probability : 0.5));
        return x;
    }
}
