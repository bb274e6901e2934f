package org.shotledger.risk;

import java.util.List;
import java.util.stream.DoubleStream;
import org.shotledger.boost.OutsideMapException;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Evaluation;

/**
 * The engine speeds at which a plan is examined, and the plenum pressure its boost control holds at each. A disturbance does
 * not change the table in the controller, so this line stays as planned.
 *
 * @param stops the speeds, ascending
 */
public record BoostLine(List<Stop> stops) {
    /** Ends and steps between them; limits bend little from one to the next, and the ends are where torque and flow bite. */
    private static final int POINTS = 5;

    /**
     * One speed.
     *
     * @param rpm engine speed, rev/min
     * @param plenumPressure plenum pressure held, Pa absolute
     */
    public record Stop(double rpm, double plenumPressure) {}

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException when there is no speed
     */
    public BoostLine {
        stops = List.copyOf(stops);
        if (stops.isEmpty()) {
            throw new IllegalArgumentException("A boost line has no engine speed; give at least one.");
        }
    }

    /**
     * The line of a budget over the part of the asked band in which the nitrous may be on: five equal steps and the speed of
     * most power.
     *
     * @param budget the budget
     * @return the line
     */
    public static BoostLine of(Budget budget) {
        var window = budget.build().wetKit().window();
        double low = Math.max(budget.wish().rpmLow(), window.rpmLow());
        double high = Math.min(budget.wish().rpmHigh(), window.rpmHigh());
        double step = (high - low) / (POINTS - 1);
        DoubleStream speeds = DoubleStream.iterate(low, rpm -> rpm + step).limit(low == high ? 1 : POINTS);
        return new BoostLine(DoubleStream.concat(
                        speeds.map(rpm -> Math.min(rpm, high)),
                        DoubleStream.of(budget.peak().rpm()))
                .sorted()
                .distinct()
                .boxed()
                .flatMap(rpm -> stop(budget, rpm).stream())
                .toList());
    }

    private static List<Stop> stop(Budget budget, double rpm) {
        try {
            Evaluation planned = budget.planned(rpm);
            return List.of(new Stop(rpm, planned.demand().plenumPressure()));
        } catch (OutsideMapException outside) {
            return List.of(); // the plan itself leaves such a speed out
        }
    }

    /**
     * One speed of the line alone.
     *
     * @param rpm engine speed, rev/min
     * @param plenumPressure plenum pressure held, Pa absolute
     * @return the line
     */
    public static BoostLine at(double rpm, double plenumPressure) {
        return new BoostLine(List.of(new Stop(rpm, plenumPressure)));
    }

    /**
     * The highest plenum pressure of the line.
     *
     * @return Pa absolute
     */
    public double highest() {
        return stops.stream().mapToDouble(Stop::plenumPressure).max().orElseThrow();
    }
}
