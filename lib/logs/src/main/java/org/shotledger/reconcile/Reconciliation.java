package org.shotledger.reconcile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.PowerCorrection;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.Lag;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.logs.Pull;
import org.shotledger.logs.PullRule;
import org.shotledger.logs.Pulls;
import org.shotledger.logs.Series;
import org.shotledger.units.UnitSystem;

/**
 * A log laid over a plan.
 *
 * @param file the log
 * @param pull the pull compared
 * @param lambdaLag how much later the log's lambda comes than the plan's, or than the nitrous switches; what is clear is taken out before comparing
 * @param power how power is compared, in one sentence
 * @param overlays figure by figure
 * @param expected the plan's operating points at the engine speeds of the overlays; empty where the plan has none
 */
public record Reconciliation(
        String file,
        Pull pull,
        Lag lambdaLag,
        String power,
        List<Overlay> overlays,
        List<Optional<OperatingPoint>> expected) {
    /** Longest lag looked for, s: our choice, several times the way from valve to probe. */
    private static final double MOST_LAG = 0.5;

    public Reconciliation {
        overlays = List.copyOf(overlays);
        expected = List.copyOf(expected);
    }

    /**
     * Lays the widest pull of a log over a plan; power as logged.
     *
     * @param outcome what the setup that was run is expected to do
     * @param findings the log with its findings
     * @return the comparison
     * @throws IllegalArgumentException when the log has no engine speed or no pull
     */
    public static Reconciliation of(Outcome outcome, LogFindings findings) {
        return of(
                outcome,
                findings,
                1,
                "Power is compared as logged, without correction: the plan holds for its own air.");
    }

    /**
     * The same with the logged power brought to the air of the plan by a standard.
     *
     * @param outcome what the setup that was run is expected to do
     * @param findings the log with its findings
     * @param standard the standard
     * @param air the air of the log
     * @return the comparison
     * @throws IllegalArgumentException when the standard does not allow a correction that large, or as above
     */
    public static Reconciliation of(Outcome outcome, LogFindings findings, PowerCorrection standard, MoistAir air) {
        MoistAir planned = outcome.at().air();
        if (!standard.holds(air) || !standard.holds(planned)) {
            throw new IllegalArgumentException("The factor of " + standard.words() + " is " + standard.factor(air)
                    + " for the air of the log and " + standard.factor(planned)
                    + " for that of the plan; the standard does not allow one that large. Evaluate the setup in the air of the log"
                    + " instead.");
        }
        double factor = standard.factor(air) / standard.factor(planned);
        return of(
                outcome,
                findings,
                factor,
                String.format(
                        Locale.ROOT,
                        "Logged power is multiplied by %.4f, the quotient of the factors of %s for the air of the log and of the"
                                + " plan; the part from nitrous oxide does not follow the weather.",
                        factor,
                        standard.words()));
    }

    private static Reconciliation of(Outcome outcome, LogFindings findings, double factor, String power) {
        EngineLog log = findings.log();
        Pull pull = pull(findings);
        RunGrid grid = new RunGrid(findings, pull, edges(outcome));
        Expectation expectation = new Expectation(outcome);
        List<Optional<OperatingPoint>> points = points(grid, expectation);
        Lag lag = lambdaLag(findings, grid, points);
        List<Overlay> overlays = new ArrayList<>();
        for (ComparedChannel what : ComparedChannel.values()) {
            measured(findings, grid, what, lag.clear() ? lag.seconds() : 0, factor)
                    .ifPresent(values ->
                            overlays.add(Differences.overlay(outcome, grid, expectation, points, what, values)));
        }
        return new Reconciliation(log.file(), pull, lag, power, overlays, points);
    }

    /**
     * How late the logged lambda comes, without comparing anything else.
     *
     * @param outcome what the setup that was run is expected to do
     * @param findings the log with its findings
     * @return the lag; not clear where the log has no lambda
     */
    public static Lag lambdaLag(Outcome outcome, LogFindings findings) {
        RunGrid grid = new RunGrid(findings, pull(findings), edges(outcome));
        return lambdaLag(findings, grid, points(grid, new Expectation(outcome)));
    }

    private static Lag lambdaLag(LogFindings findings, RunGrid grid, List<Optional<OperatingPoint>> points) {
        return findings.log().has(LogChannel.LAMBDA)
                ? lag(findings, grid, points)
                : new Lag(Double.NaN, Double.NaN, "");
    }

    static double[] edges(Outcome outcome) {
        return new double[] {
            outcome.setup().arming().rpmLow(), outcome.setup().arming().rpmHigh()
        };
    }

    static Pull pull(LogFindings findings) {
        return Pulls.in(findings, PullRule.USUAL).widest();
    }

    private static List<Optional<OperatingPoint>> points(RunGrid grid, Expectation expectation) {
        List<Optional<OperatingPoint>> points = new ArrayList<>();
        for (int i = 0; i < grid.rpm().length; i++) {
            double rpm = grid.rpm()[i];
            double time = grid.time()[i];
            points.add(
                    grid.on(i).map(on -> expectation.on(rpm, time - on.from())).orElseGet(() -> expectation.off(rpm)));
        }
        return points;
    }

    /**
     * Expected lambda over the time of the pull against the logged one, both at the log's own step. A plan that keeps lambda where it is
     * when the nitrous comes in has no step to align by; then it is the switching of the nitrous, whichever way lambda steps there.
     */
    private static Lag lag(LogFindings findings, RunGrid grid, List<Optional<OperatingPoint>> points) {
        double[] times = grid.time();
        double[] lambda = points.stream()
                .mapToDouble(p -> p.map(OperatingPoint::lambda).orElse(Double.NaN))
                .toArray();
        if (times.length < 3) {
            return new Lag(Double.NaN, Double.NaN, "The pull is too short to align lambda.");
        }
        Series logged = findings.series(LogChannel.LAMBDA)
                .every(grid.step(), findings.longestStep(LogChannel.LAMBDA))
                .between(times[0], times[times.length - 1]);
        double[] expected = Arrays.stream(logged.time())
                .map(t -> LagBase.at(times, lambda, t, grid))
                .toArray();
        Lag byPlan = Lag.of(expected, logged.values(), grid.step(), MOST_LAG);
        if (byPlan.clear()) {
            return words(byPlan, "the expected one");
        }
        double[] switched =
                Arrays.stream(logged.time()).map(t -> grid.onAt(t) ? 1 : 0).toArray();
        Lag leaner = Lag.of(switched, logged.values(), grid.step(), MOST_LAG);
        Lag richer = Lag.of(switched, scaled(logged.values(), -1), grid.step(), MOST_LAG);
        Lag bySwitch = leaner.correlation() > richer.correlation() ? leaner : richer;
        return bySwitch.clear() ? words(bySwitch, "the switching of the nitrous") : byPlan;
    }

    private static Lag words(Lag lag, String after) {
        return new Lag(
                lag.seconds(),
                lag.correlation(),
                String.format(
                        Locale.ROOT,
                        "The logged lambda comes %.0f ms after %s (cross-correlation %.3f); that is taken out before comparing.",
                        1e3 * lag.seconds(),
                        after,
                        lag.correlation()));
    }

    private static Optional<double[]> measured(
            LogFindings findings, RunGrid grid, ComparedChannel what, double lambdaLag, double factor) {
        EngineLog log = findings.log();
        if (log.has(what.channel())) {
            double[] values = grid.at(what.channel(), what == ComparedChannel.LAMBDA ? lambdaLag : 0);
            boolean power = what == ComparedChannel.WHEEL_POWER || what == ComparedChannel.CRANK_POWER;
            return Optional.of(power ? scaled(values, factor) : values);
        }
        LogChannel torque = switch (what) {
            case WHEEL_POWER -> LogChannel.WHEEL_TORQUE;
            case CRANK_POWER -> LogChannel.CRANK_TORQUE;
            default -> null;
        };
        if (torque == null || !log.has(torque)) {
            return Optional.empty();
        }
        double[] values = grid.at(torque, 0);
        for (int i = 0; i < values.length; i++) {
            values[i] *= factor * 2 * Math.PI / 60 * grid.rpm()[i];
        }
        return Optional.of(values);
    }

    private static double[] scaled(double[] values, double factor) {
        return Arrays.stream(values).map(v -> v * factor).toArray();
    }

    /**
     * The overlay of one figure.
     *
     * @param what the figure
     * @return the overlay
     * @throws IllegalArgumentException when the log has no such channel
     */
    public Overlay overlay(ComparedChannel what) {
        return overlays.stream()
                .filter(o -> o.what() == what)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The log " + file + " has no " + what.words()
                        + " to be compared; it has "
                        + String.join(
                                ", ",
                                overlays.stream().map(o -> o.what().words()).toList())
                        + "."));
    }

    /**
     * Everything in sentences.
     *
     * @param system the units
     * @return how the pull was found, the lag, how power is compared, then each figure
     */
    public List<String> sentences(UnitSystem system) {
        List<String> all = new ArrayList<>();
        all.add(pull.why());
        if (lambdaLag.clear()) {
            all.add(lambdaLag.sentence());
        } else if (!lambdaLag.sentence().isEmpty()) {
            all.add("Lambda is compared as it stands in time: " + lambdaLag.sentence());
        }
        all.add(power);
        for (Overlay overlay : overlays) {
            overlay.parts().forEach(part -> all.add(overlay.sentence(part, system)));
        }
        return all;
    }
}
