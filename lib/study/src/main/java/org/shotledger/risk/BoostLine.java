package org.shotledger.risk;

import java.util.List;
import java.util.TreeMap;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.plan.Plan;

/**
 * The engine speeds at which a plan is examined, and the plenum pressure its boost control holds at each with the nitrous on. A
 * disturbance does not change the table in the controller, so this line stays as planned.
 *
 * @param stops the speeds, ascending
 */
public record BoostLine(List<Stop> stops) {
    /** Ends and steps between them; limits bend little from one to the next, and torque and flow are highest at the ends. */
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
     * The line of a plan over the speeds at which its nitrous is on: five equal steps and the speed of most power, as the plan itself
     * has them in the case of its target.
     *
     * @param plan the plan
     * @return the line
     */
    public static BoostLine of(Plan plan) {
        List<OperatingPoint> on = plan.stated().withNitrous();
        TreeMap<Double, Stop> stops = new TreeMap<>();
        for (int i = 0; i < POINTS && !on.isEmpty(); i++) {
            add(stops, on.get(Math.round((on.size() - 1) * i / (POINTS - 1f))));
        }
        plan.stated().strongest().ifPresent(point -> add(stops, point));
        return new BoostLine(List.copyOf(stops.values()));
    }

    private static void add(TreeMap<Double, Stop> stops, OperatingPoint point) {
        stops.put(point.rpm(), new Stop(point.rpm(), point.plenumPressure()));
    }

    /**
     * One speed of a plan, with the boost that is set there while the nitrous is armed.
     *
     * @param plan the plan
     * @param rpm engine speed, rev/min
     * @return the line
     */
    public static BoostLine armed(Plan plan, double rpm) {
        double ambient = plan.stated().at().air().pressure();
        return at(rpm, ambient + plan.setup().boost().armed().at(rpm));
    }

    /**
     * One speed alone.
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
