package org.shotledger.budget;

import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.shotledger.boost.OutsideMapException;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;

/** The asked band of engine speed under one boost schedule: evaluates jets over it. */
final class Band {
    private static final int POINTS = 9;

    private final Evaluator evaluator;
    private final Conditions at;
    private final Feeds feeds;
    private final BoostSchedule boost;
    private final double[] speeds;

    Band(Evaluator evaluator, Conditions at, Feeds feeds, BoostSchedule boost, double low, double high) {
        this(evaluator, at, feeds, boost, grid(low, high, POINTS));
    }

    Band(Evaluator evaluator, Conditions at, Feeds feeds, BoostSchedule boost, double[] speeds) {
        this.evaluator = evaluator;
        this.at = at;
        this.feeds = feeds;
        this.boost = boost;
        this.speeds = speeds;
    }

    /** The speeds of a wish's band that lie in the window in which the nitrous may be on. */
    static double[] speeds(Wish wish, ActivationWindow window) {
        double low = Math.max(wish.rpmLow(), window.rpmLow());
        double high = Math.min(wish.rpmHigh(), window.rpmHigh());
        if (low > high) {
            throw new WishException("The wish's band from " + wish.rpmLow() + " to " + wish.rpmHigh()
                    + " rpm lies outside the window in which the nitrous may be on, " + window.rpmLow() + " to "
                    + window.rpmHigh() + " rpm. Move the band or the window.");
        }
        return grid(low, high, POINTS);
    }

    static double[] grid(double low, double high, int points) {
        double step = (high - low) / (points - 1);
        return DoubleStream.iterate(low, rpm -> rpm + step)
                .limit(low == high ? 1 : points)
                .map(rpm -> Math.min(rpm, high))
                .toArray();
    }

    /** The points of a pair of jets over the band; speeds at which the map has no answer are left out. */
    List<Evaluation> with(JetPair jets) {
        return points(rpm -> one(rpm, jets));
    }

    /** The same band with the nitrous off. */
    List<Evaluation> without() {
        return points(this::without);
    }

    /** One speed with the nitrous off. */
    Evaluation without(double rpm) {
        return evaluator.at(at, rpm, Demand.boost(boost.plenumPressure(rpm)));
    }

    boolean covers(double rpm) {
        return boost.covers(rpm);
    }

    /** One speed with the nitrous on, boost tapered where it must be. */
    Evaluation one(double rpm, JetPair jets) {
        return Taper.point(
                evaluator.build().limits(),
                boost.plenumPressure(rpm),
                at.air().pressure(),
                plenum -> evaluate(rpm, Demand.boost(plenum).with(jets)));
    }

    private Evaluation evaluate(double rpm, Demand demand) {
        return evaluator.at(at, rpm, demand, feeds.of(demand));
    }

    private List<Evaluation> points(java.util.function.DoubleFunction<Evaluation> evaluate) {
        return DoubleStream.of(speeds)
                .filter(boost::covers)
                .mapToObj(rpm -> tryAt(rpm, evaluate))
                .flatMap(java.util.Optional::stream)
                .toList();
    }

    private static java.util.Optional<Evaluation> tryAt(
            double rpm, java.util.function.DoubleFunction<Evaluation> evaluate) {
        try {
            return java.util.Optional.of(evaluate.apply(rpm));
        } catch (OutsideMapException outside) {
            return java.util.Optional.empty();
        }
    }

    static Evaluation strongest(List<Evaluation> points) {
        return points.stream()
                .max(Comparator.comparingDouble(Evaluation::wheelPower))
                .orElseThrow();
    }
}
