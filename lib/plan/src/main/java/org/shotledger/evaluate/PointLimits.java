package org.shotledger.evaluate;

import java.util.List;
import org.shotledger.car.Car;
import org.shotledger.limits.Limit;

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
        return PointRules.ALL.stream()
                .filter(rule -> rule.concerns(point))
                .map(rule -> rule.at(car, point, caseName))
                .toList();
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
