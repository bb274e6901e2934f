package org.shotledger.evaluate;

import java.util.Comparator;
import java.util.List;
import org.shotledger.car.Car;
import org.shotledger.limits.Limit;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.Setup;

/** How close operating points come to the limits, for searches that look at many points. */
public final class PointLimits {
    private PointLimits() {}

    /**
     * The limit that is closest.
     *
     * @param name the limit in words
     * @param margin its relative margin; negative infinity where there is no value
     */
    public record Closest(String name, double margin) {
        /** No limit at all. */
        public static final Closest NONE = new Closest("", Double.POSITIVE_INFINITY);

        /**
         * The closer of two.
         *
         * @param other another
         * @return whichever has less margin
         */
        public Closest or(Closest other) {
            return other.margin < margin ? other : this;
        }
    }

    /**
     * Which limit a point is closest to.
     *
     * @param car what is built
     * @param point an operating point of it
     * @return the limit
     */
    public static Closest of(Car car, OperatingPoint point) {
        Closest closest = Closest.NONE;
        for (PointRule rule : PointRules.ALL) {
            if (rule.concerns(car, point)) {
                double margin = rule.margin(car, point);
                closest = margin < closest.margin ? new Closest(rule.name(), margin) : closest;
            }
        }
        return closest;
    }

    /**
     * Relative margin of every limit at a point, in the order of the list; positive infinity for those that do not concern it.
     *
     * @param car what is built
     * @param point an operating point of it
     * @return shape (number of limits)
     */
    public static double[] margins(Car car, OperatingPoint point) {
        return PointRules.ALL.stream()
                .mapToDouble(rule -> rule.concerns(car, point) ? rule.margin(car, point) : Double.POSITIVE_INFINITY)
                .toArray();
    }

    /**
     * Every limit that concerns a point.
     *
     * @param car what is built
     * @param point an operating point of it
     * @param caseName what the case of the point is called
     * @return in the order of the list
     */
    public static List<Limit> all(Car car, OperatingPoint point, String caseName) {
        return closest(car, List.of(point), caseName);
    }

    /**
     * Every limit that concerns some of many points, each at the point that is closest to it.
     *
     * @param car what is built
     * @param points operating points of it
     * @param caseName what the case of the points is called
     * @return in the order of the list
     */
    public static List<Limit> closest(Car car, List<OperatingPoint> points, String caseName) {
        return PointRules.ALL.stream()
                .flatMap(rule -> points.stream()
                        .filter(point -> rule.concerns(car, point))
                        .min(Comparator.comparingDouble(point -> rule.margin(car, point)))
                        .map(point -> rule.at(car, point, caseName))
                        .stream())
                .toList();
    }

    /**
     * Which limit on sizes a pair of jets is closest to.
     *
     * @param car what is built
     * @param setup what is set; its jets do not matter
     * @param pair the jets of every nozzle
     * @return the limit
     */
    public static Closest sizes(Car car, Setup setup, JetPair pair) {
        return DayRules.sizes(car, setup, pair).stream()
                .map(limit -> new Closest(limit.name(), limit.relativeMargin()))
                .reduce(Closest.NONE, Closest::or);
    }

    /**
     * Stable names of the limits, as {@link org.shotledger.limits.Limit#key} has them.
     *
     * @return in the order of {@link #margins}
     */
    public static List<String> keys() {
        return PointRules.ALL.stream().map(PointRule::key).toList();
    }

    /**
     * How many limits the list has.
     *
     * @return length of {@link #margins}
     */
    public static int count() {
        return PointRules.ALL.size();
    }

    /**
     * Larger of torque and peak pressure as shares of what is allowed.
     *
     * @param car what is built
     * @param point an operating point of it
     * @return 1 at the limit
     */
    public static double load(Car car, OperatingPoint point) {
        return Math.max(
                point.crankTorque() / car.limits().crankTorque(),
                point.cylinder().peakPressure() / car.limits().peakPressure());
    }
}
