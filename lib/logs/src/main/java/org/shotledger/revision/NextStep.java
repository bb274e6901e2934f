package org.shotledger.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.shotledger.causes.Cause;
import org.shotledger.causes.Causes;
import org.shotledger.causes.ChannelTrace;
import org.shotledger.causes.Suspect;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.logs.OnInterval;
import org.shotledger.logs.Series;
import org.shotledger.stepup.Checkpoint;
import org.shotledger.stepup.Checkpoint.Figure;
import org.shotledger.stepup.Shot;
import org.shotledger.units.Excerpt;
import org.shotledger.units.UnitSystem;

/**
 * Whether to go on after a pull: each checkpoint of the step that was run held against the log. Outside a bound is stop, but rich of the
 * mixture and so close to a bound that the log's scatter reaches it are hold; so is a figure that was not logged, and a likely cause that
 * lies beyond its band. What no log can hold is left to be read by hand. The most careful call counts.
 *
 * @param run the setup that was run
 * @param readings the checkpoints
 * @param causes what the log differs by
 * @param call the most careful call of all
 * @param reasons what holds or stops, in words; empty for go
 */
public record NextStep(RunSetup run, List<CheckpointReading> readings, Causes causes, Call call, List<String> reasons) {
    /** Time before the nitrous opens in which the bottle pressure is read, s; our choice. */
    private static final double BEFORE = 0.3;
    /** A cause with at least this share counts in what a reading may truly be: our choice. */
    private static final double POSSIBLE = 0.2;

    public NextStep {
        readings = List.copyOf(readings);
        reasons = List.copyOf(reasons);
    }

    /**
     * Holds a log against the step it names.
     *
     * @param run the setup that was run
     * @param findings the log with its findings
     * @return what to do; hold at least where the setup is no step of the plan, for it has no checkpoints
     * @throws IllegalArgumentException when the log has no pull, or too little that is settled
     */
    public static NextStep of(RunSetup run, LogFindings findings) {
        Causes causes = Causes.of(run.outcome(), findings);
        List<CheckpointReading> readings = new ArrayList<>();
        run.shot()
                .ifPresent(shot -> shot.checkpoints()
                        .forEach(checkpoint -> readings.add(reading(checkpoint, shot, causes, findings))));
        List<String> reasons = new ArrayList<>();
        Call call = Call.GO;
        for (CheckpointReading reading : readings) {
            call = call.and(reading.call());
            if (reading.call() != Call.GO) {
                reasons.add(reading.call().word() + ", " + reading.checkpoint().what() + ": " + reading.reason());
            }
        }
        if (run.shot().isEmpty()) {
            call = call.and(Call.HOLD);
            reasons.add("hold: the setup is no step of the step-up plan, so that it has no checkpoints");
        }
        Optional<Suspect> beyond = causes.first().filter(s -> !s.insideBand());
        if (beyond.isPresent()) {
            call = call.and(Call.HOLD);
            reasons.add(String.format(
                    Locale.ROOT,
                    "hold: %s is off by more than is stated for it (%.0f %% likely what is wrong)",
                    beyond.get().cause().words(),
                    100 * beyond.get().share()));
        }
        if (causes.shown().stream().anyMatch(s -> s.unexplained())) {
            call = Call.STOP;
            reasons.add("stop: no two of the causes asked for explain what this log differs by");
        }
        return new NextStep(run, readings, causes, call, reasons);
    }

    private static CheckpointReading reading(Checkpoint c, Shot shot, Causes causes, LogFindings findings) {
        return switch (c.figure()) {
            case WHEEL_POWER -> judged(c, scaled(shot.point().wheelPower(), causes), "");
            case CRANK_TORQUE -> judged(c, scaled(shot.point().crankTorque(), causes), "");
            case LAMBDA -> lambda(c, causes);
            case NITROUS_FUEL_PRESSURE -> judged(c, fuel(causes), "the least in the pull");
            case BOTTLE_PRESSURE -> judged(c, bottle(findings), "");
            case INJECTOR_DUTY -> judged(c, extreme(causes, LogChannel.INJECTOR_DUTY, true), "the most in the pull");
            case EXHAUST_SPREAD ->
                new CheckpointReading(
                        c,
                        Double.NaN,
                        Double.NaN,
                        Call.GO,
                        "no log holds it: read it by hand; outside: " + c.otherwise());
        };
    }

    /** What was read, and its standard uncertainty; NaN where nothing was. */
    private record Read(double value, double standard) {
        static final Read NONE = new Read(Double.NaN, Double.NaN);
    }

    private static int[] on(ChannelTrace trace) {
        return IntStream.range(0, trace.size())
                .filter(i -> trace.nitrous()[i] > 0)
                .toArray();
    }

    /** The planned figure times logged over planned power with the nitrous on. */
    private static Read scaled(double planned, Causes causes) {
        Optional<ChannelTrace> power =
                causes.trace(LogChannel.WHEEL_POWER).or(() -> causes.trace(LogChannel.CRANK_POWER));
        int[] on = power.map(NextStep::on).orElse(new int[0]);
        if (on.length == 0) {
            return Read.NONE;
        }
        ChannelTrace t = power.orElseThrow();
        double share = IntStream.of(on)
                .mapToDouble(i -> t.logged()[i] / t.planned()[i])
                .average()
                .orElseThrow();
        double scatter = IntStream.of(on)
                .mapToDouble(i -> t.scatter()[i] / t.planned()[i])
                .average()
                .orElseThrow();
        return new Read(share * planned, scatter * planned);
    }

    private static Read extreme(Causes causes, LogChannel channel, boolean most) {
        Optional<ChannelTrace> trace = causes.trace(channel);
        int[] on = trace.map(NextStep::on).orElse(new int[0]);
        if (on.length == 0) {
            return Read.NONE;
        }
        ChannelTrace t = trace.orElseThrow();
        int best = on[0];
        for (int i : on) {
            best = (t.logged()[i] > t.logged()[best]) == most ? i : best;
        }
        return new Read(t.logged()[best], t.scatter()[best]);
    }

    /** The leanest reading counts; and where the sensor itself may be what is off, also what the mixture would truly be. */
    private static CheckpointReading lambda(Checkpoint c, Causes causes) {
        Read lean = extreme(causes, LogChannel.LAMBDA, true);
        CheckpointReading read = judged(c, lean, "the leanest in the pull");
        CheckpointReading rich = judged(c, extreme(causes, LogChannel.LAMBDA, false), "the richest in the pull");
        CheckpointReading worse = rich.call().compareTo(read.call()) > 0 ? rich : read;
        double truth = causes.suspect(Cause.LAMBDA_SENSOR)
                .filter(s -> s.share() >= POSSIBLE)
                .map(s -> lean.value() / (1 + s.size()))
                .orElse(lean.value());
        if (truth > c.high() && worse.call() != Call.STOP) {
            return new CheckpointReading(
                    c,
                    lean.value(),
                    lean.standard(),
                    Call.STOP,
                    String.format(
                            Locale.ROOT,
                            "the sensor may read rich, and the mixture then is %.3f; read it in free air first",
                            truth));
        }
        return worse;
    }

    private static Read fuel(Causes causes) {
        Optional<ChannelTrace> fuel = causes.trace(LogChannel.NITROUS_FUEL_PRESSURE);
        Optional<ChannelTrace> plenum = causes.trace(LogChannel.MANIFOLD_PRESSURE);
        if (fuel.isEmpty() || plenum.isEmpty()) {
            return Read.NONE;
        }
        Read least = Read.NONE;
        for (int i = 0; i < fuel.get().size(); i++) {
            for (int j = 0; j < plenum.get().size(); j++) {
                if (fuel.get().time()[i] == plenum.get().time()[j] && fuel.get().nitrous()[i] > 0) {
                    double drop = fuel.get().logged()[i] - plenum.get().logged()[j];
                    double standard =
                            Math.hypot(fuel.get().scatter()[i], plenum.get().scatter()[j]);
                    least = Double.isNaN(least.value()) || drop < least.value() ? new Read(drop, standard) : least;
                }
            }
        }
        return least;
    }

    private static Read bottle(LogFindings findings) {
        List<OnInterval> on = OnInterval.in(findings);
        if (on.isEmpty() || !findings.log().has(LogChannel.BOTTLE_PRESSURE)) {
            return Read.NONE;
        }
        double opens = on.get(0).from();
        Series before = findings.series(LogChannel.BOTTLE_PRESSURE).between(opens - BEFORE, opens - 1e-9);
        double[] good = java.util.Arrays.stream(before.values())
                .filter(v -> !Double.isNaN(v))
                .toArray();
        if (good.length < 3) {
            return Read.NONE;
        }
        double mean = java.util.Arrays.stream(good).average().orElseThrow();
        double square =
                java.util.Arrays.stream(good).map(v -> (v - mean) * (v - mean)).sum();
        return new Read(mean, Math.sqrt(square / (good.length - 1) / good.length));
    }

    private static CheckpointReading judged(Checkpoint c, Read read, String which) {
        if (Double.isNaN(read.value())) {
            return new CheckpointReading(
                    c, read.value(), read.standard(), Call.HOLD, "not logged; read it before the next step");
        }
        String said = which.isEmpty() ? "" : which + ", ";
        if (!c.go(read.value())) {
            boolean rich = c.figure() == Figure.LAMBDA && read.value() < c.low();
            return new CheckpointReading(
                    c, read.value(), read.standard(), rich ? Call.HOLD : Call.STOP, said + "outside; " + c.otherwise());
        }
        double room = Math.min(read.value() - c.low(), c.high() - read.value());
        return room < 2 * read.standard()
                ? new CheckpointReading(
                        c,
                        read.value(),
                        read.standard(),
                        Call.HOLD,
                        said + "inside, but the scatter of the log reaches the bound; pull again")
                : new CheckpointReading(c, read.value(), read.standard(), Call.GO, said + "inside");
    }

    /**
     * The call in one sentence.
     *
     * @param system the units
     * @return go, hold or stop, for which setup, and why
     */
    public String sentence(UnitSystem system) {
        String begin = call.word().toUpperCase(Locale.ROOT) + " after " + run.name() + ". ";
        if (call == Call.GO) {
            return begin
                    + "Every logged checkpoint lies inside; go on only when those to be read by hand do too. The next"
                    + " step stays an estimate to be proven in small steps.";
        }
        return begin + reasons.stream().map(r -> Excerpt.beginning(r) + ".").collect(Collectors.joining(" "));
    }
}
