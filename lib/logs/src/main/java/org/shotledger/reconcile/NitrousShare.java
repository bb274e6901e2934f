package org.shotledger.reconcile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * What the nitrous adds, from one pull with it and one without: the difference of wheel power at the same engine speeds, beside what the
 * plan expects. Between the pulls nothing but the nitrous may change; what did change is said.
 *
 * @param points engine speed by engine speed, rising
 * @param moreBoost mean manifold pressure of the pull with nitrous less that without, Pa; NaN when it is not known
 */
public record NitrousShare(List<Point> points, double moreBoost) {
    /** Difference of boost, Pa, that changes the power by less than the nitrous is known to: our choice. */
    private static final double SAME_BOOST = 0.05e5;

    public NitrousShare {
        points = List.copyOf(points);
    }

    /**
     * One engine speed.
     *
     * @param rpm engine speed, rev/min
     * @param measured wheel power with nitrous less without, W
     * @param uncertainty standard uncertainty of that from the scatter of both logs, W; errors both pulls share are not in it
     * @param expected what the plan expects the nitrous to add, W
     */
    public record Point(double rpm, double measured, double uncertainty, double expected) {}

    /**
     * Separates the nitrous from the boost.
     *
     * @param outcome what the setup that was run is expected to do
     * @param with log of a pull with nitrous
     * @param without log of a pull without
     * @return the share at the engine speeds that both pulls have and at which the nitrous is on and settled
     * @throws IllegalArgumentException when a log has no wheel power or no pull, when the second has nitrous, or no speed is common
     */
    public static NitrousShare of(Outcome outcome, LogFindings with, LogFindings without) {
        RunGrid on = new RunGrid(with, Reconciliation.pull(with), Reconciliation.edges(outcome));
        RunGrid off = new RunGrid(without, Reconciliation.pull(without), Reconciliation.edges(outcome));
        double[] powerOn = on.at(LogChannel.WHEEL_POWER, 0);
        double[] powerOff = off.at(LogChannel.WHEEL_POWER, 0);
        double uncertainty = Math.hypot(on.noise(LogChannel.WHEEL_POWER), off.noise(LogChannel.WHEEL_POWER));
        Expectation expectation = new Expectation(outcome);
        List<Point> points = new ArrayList<>();
        double boost = 0;
        int boosts = 0;
        double[] pressureOn = pressure(on, with);
        double[] pressureOff = pressure(off, without);
        for (int i = 0; i < on.rpm().length; i++) {
            int j = java.util.Arrays.binarySearch(off.rpm(), on.rpm()[i]);
            if (j < 0 || on.on(i).isEmpty() || !on.settled(i) || !off.settled(j)) {
                continue;
            }
            if (off.on(j).isPresent()) {
                throw new IllegalArgumentException("The log " + without.log().file() + " has the nitrous on at "
                        + Math.round(off.rpm()[j]) + " rpm; give a pull without it.");
            }
            double seconds = on.time()[i] - on.on(i).get().from();
            Optional<OperatingPoint> expected = expectation.on(on.rpm()[i], seconds);
            double added = expected.flatMap(expectation::without)
                    .map(e -> expected.get().wheelPower() - e.wheelPower())
                    .orElse(Double.NaN);
            double measured = powerOn[i] - powerOff[j];
            if (!Double.isNaN(measured)) {
                points.add(new Point(on.rpm()[i], measured, uncertainty, added));
            }
            double more = pressureOn[i] - pressureOff[j];
            if (!Double.isNaN(more)) {
                boost += more;
                boosts++;
            }
        }
        if (points.isEmpty()) {
            throw new IllegalArgumentException("The pulls of " + with.log().file() + " and "
                    + without.log().file() + " have no engine speed in common at which the nitrous is on and settled;"
                    + " log both over the same speeds.");
        }
        return new NitrousShare(points, boosts == 0 ? Double.NaN : boost / boosts);
    }

    private static double[] pressure(RunGrid grid, LogFindings findings) {
        if (findings.log().has(LogChannel.MANIFOLD_PRESSURE)) {
            return grid.at(LogChannel.MANIFOLD_PRESSURE, 0);
        }
        double[] none = new double[grid.rpm().length];
        java.util.Arrays.fill(none, Double.NaN);
        return none;
    }

    /**
     * The mean of what was measured.
     *
     * @return W
     */
    public double measured() {
        return points.stream().mapToDouble(Point::measured).average().orElseThrow();
    }

    /**
     * The mean of what the plan expected at the same speeds.
     *
     * @return W; NaN where the plan has no answer at one of them
     */
    public double expected() {
        return points.stream().mapToDouble(Point::expected).average().orElseThrow();
    }

    /**
     * The share in one or two sentences.
     *
     * @param system the units
     * @return measured and expected means, and what else changed between the pulls
     */
    public String summary(UnitSystem system) {
        String added = String.format(
                Locale.ROOT,
                "From %.0f to %.0f rpm the nitrous added %s on average (each engine speed +/- %s, two standard uncertainties from the"
                        + " scatter of both logs), the plan expected %s.",
                points.get(0).rpm(),
                points.get(points.size() - 1).rpm(),
                QuantityKind.POWER.text(measured(), system),
                QuantityKind.POWER.text(2 * points.get(0).uncertainty(), system),
                QuantityKind.POWER.text(expected(), system));
        if (Double.isNaN(moreBoost)) {
            return added + " Whether the boost was the same is not known.";
        }
        String size = QuantityKind.PRESSURE_DIFFERENCE.text(Math.abs(moreBoost), system);
        return Math.abs(moreBoost) > SAME_BOOST
                ? added + " But the boost with nitrous was " + size + (moreBoost > 0 ? " higher" : " lower")
                        + ", so that the difference is not the nitrous alone."
                : added + " The boost of both pulls was the same within " + size + ".";
    }
}
