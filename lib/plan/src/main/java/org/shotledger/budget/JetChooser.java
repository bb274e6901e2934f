package org.shotledger.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shotledger.build.Build;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;

/** Holds the pairs of the ladder around an exact pair against a wanted power and mixture. */
final class JetChooser {
    private final Build build;
    private final Band band;
    private final MixtureGoal goal;
    private final double wheelPower;

    JetChooser(Build build, Band band, MixtureGoal goal, double wheelPower) {
        this.build = build;
        this.band = band;
        this.goal = goal;
        this.wheelPower = wheelPower;
    }

    /** The pairs around the exact one: those that meet the power first, then those inside the limits, then the nearest. */
    JetChoice around(JetPair exact) {
        List<Weighed> weighed = new ArrayList<>();
        for (JetPair pair : new Sizing(build, band, goal).around(exact)) {
            evaluated(band, pair).ifPresent(points -> weighed.add(weigh(pair, points)));
        }
        weighed.sort(Comparator.comparing((Weighed w) -> !Wish.met(w.option.wheelPower(), wheelPower))
                .thenComparing(w -> w.option.leastMargin() < 0)
                .thenComparingDouble(Weighed::distance));
        return new JetChoice(
                build.wetKit().nozzles(),
                exact,
                weighed.stream().map(Weighed::option).toList());
    }

    /** The nearest pair, whether it gives a little more or a little less. */
    JetChoice.Option nearest(JetPair exact) {
        return around(exact).options().stream()
                .min(Comparator.comparingDouble(o -> Math.abs(o.wheelPower() / wheelPower - 1)))
                .orElseThrow();
    }

    /** The points of a pair, or nothing where a model refuses it, for example a charge too cold to balance. */
    static Optional<List<Evaluation>> evaluated(Band band, JetPair pair) {
        try {
            List<Evaluation> points = band.with(pair);
            return points.isEmpty() ? Optional.empty() : Optional.of(points);
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    private record Weighed(JetChoice.Option option, double distance) {}

    /** How far a pair is from the wish: power above it costs nitrous, a mixture leaner than wanted counts double. */
    private Weighed weigh(JetPair pair, List<Evaluation> points) {
        Evaluation peak = Band.strongest(points);
        Limits limits = BandLimits.of(build, points);
        JetChoice.Option option = new JetChoice.Option(
                pair,
                peak.nitrous().massFlow(),
                peak.nitrousFuel().massFlow(),
                peak.charge().mixture().nitrousOxidiserFuel(),
                peak.lambda(),
                peak.wheelPower(),
                limits.leastMargin(),
                limits.first().orElseThrow().name());
        double lean = goal.leanness(peak.charge().mixture());
        double power = Math.abs(option.wheelPower() / wheelPower - 1);
        return new Weighed(option, power + (lean > 0 ? 2 * lean : -lean));
    }
}
