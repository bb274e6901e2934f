package org.shotledger.risk;

import java.util.List;
import java.util.Optional;
import org.shotledger.curve.Bracket;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.plan.Plan;
import org.shotledger.risk.Detection.Answer;

/**
 * Where faults are tried: the sound plan, the channels that watch it, and how fast things go.
 *
 * @param sound the sound scenario
 * @param planned its outcome
 * @param line engine speeds and planned boost
 * @param channels the sensors
 * @param cutOff how fast the nitrous ceases
 * @param damage how long the engine bears a broken limit
 */
public record FaultBench(
        Scenario sound,
        FaultOutcome planned,
        BoostLine line,
        List<Channel> channels,
        CutOff cutOff,
        TimeToDamage damage) {
    /** Severity to which an edge is found: our choice. */
    private static final double CLOSE = 1 / 256.0;

    public FaultBench {
        channels = List.copyOf(channels);
    }

    /**
     * The bench of a plan, in the case of its target as the plan itself was worked out.
     *
     * @param plan the plan
     * @param arming the arming conditions that watch
     * @param damage how long the engine bears a broken limit
     * @return the bench
     */
    public static FaultBench of(Plan plan, ArmingConditions arming, TimeToDamage damage) {
        Scenario sound = Scenario.of(plan);
        BoostLine line = BoostLine.of(plan);
        FaultOutcome planned = Simulation.run(sound, line);
        return new FaultBench(sound, planned, line, Channel.of(arming, sound, planned), CutOff.of(plan), damage);
    }

    /**
     * The same bench with other channels, for example with one more sensor.
     *
     * @param others the channels
     * @return the bench
     */
    public FaultBench with(List<Channel> others) {
        return new FaultBench(sound, planned, line, others, cutOff, damage);
    }

    /**
     * Tries a fault.
     *
     * @param fault the fault
     * @return its effect
     */
    public FaultEffect effect(Fault fault) {
        double severity = growing(fault) && !at(fault, 1).known() ? lastKnown(fault) : 1;
        FaultOutcome outcome = at(fault, severity);
        Optional<Limit> broken =
                damage.harmful(outcome).or(() -> outcome.first().filter(l -> l.verdict() == Verdict.BROKEN));
        double knock = outcome.knock() / planned.knock();
        return new FaultEffect(fault, severity, outcome, knock, broken, detection(fault, severity, outcome));
    }

    /**
     * The usual faults that nothing catches: those that damage the engine although every fitted channel watches.
     *
     * @return those not borne, not prevented and not cut in time; a page that promises an engine must list them
     */
    public List<FaultEffect> uncaught() {
        return CommonFaults.of(sound).stream()
                .map(this::effect)
                .filter(e -> !e.detection().answer().saves())
                .toList();
    }

    private Detection detection(Fault fault, double severity, FaultOutcome outcome) {
        double harm = engineTime(fault, severity, outcome);
        double cut = Double.POSITIVE_INFINITY;
        Optional<Channel> first = Optional.empty();
        boolean early = false;
        for (Channel channel : channels) {
            boolean before = keepsClosed(channel, fault);
            if (channel.fitted() && (before || sees(channel, fault, severity))) {
                double time = cutTime(channel, fault, severity);
                if (first.isEmpty() || (before && !early) || (time < cut && before == early)) {
                    first = Optional.of(channel);
                    cut = time;
                    early = before;
                }
            }
        }
        String name = first.map(Channel::name).orElse("");
        List<Detection.Sight> couldSee = channels.stream()
                .filter(c -> !c.fitted() && sees(c, fault, severity))
                .map(c -> new Detection.Sight(c.name(), cutTime(c, fault, severity)))
                .toList();
        double ceased = early ? 0 : fault.closes() ? cut : Double.POSITIVE_INFINITY;
        return new Detection(answer(fault, first, early, harm, cut), name, harm, ceased, couldSee);
    }

    private static Answer answer(Fault fault, Optional<Channel> first, boolean early, double harm, double cut) {
        if (early) {
            return Answer.PREVENTED;
        }
        if (Double.isInfinite(harm)) {
            return Answer.BORNE;
        }
        if (first.isEmpty()) {
            return Answer.UNSEEN;
        }
        if (!fault.closes()) {
            return Answer.UNSTOPPABLE;
        }
        return cut <= harm ? Answer.IN_TIME : Answer.TOO_LATE;
    }

    /** The soonest of: begin of what hurts, and the time the engine bears it. */
    private double engineTime(Fault fault, double severity, FaultOutcome outcome) {
        double soonest = Double.POSITIVE_INFINITY;
        for (double borne : damage.times(outcome)) {
            double begins =
                    growing(fault) ? reached(fault, severity, (s, o) -> damage.hurtsWithin(o, borne)) : severity;
            soonest = Math.min(soonest, begins * fault.growth() + borne);
        }
        return soonest;
    }

    private double cutTime(Channel channel, Fault fault, double severity) {
        double seen = growing(fault) ? reached(fault, severity, channel::trips) : severity;
        return seen * fault.growth() + channel.delay() + cutOff.time();
    }

    private static boolean growing(Fault fault) {
        return fault.growth() > 0;
    }

    private boolean sees(Channel channel, Fault fault, double severity) {
        Scenario now = fault.change().apply(sound, severity);
        return channel.trips(now, Simulation.run(now, line));
    }

    /** Whether a channel sees the fault with nothing flowing yet. */
    private boolean keepsClosed(Channel channel, Fault fault) {
        if (fault.onset() != Fault.Onset.BEFORE || !channel.early()) {
            return false;
        }
        Scenario waiting = fault.change().apply(sound, 1).withOpenJets(0, 0);
        return channel.trips(waiting, Simulation.run(waiting, line));
    }

    /** The largest severity the models cover. */
    private double lastKnown(Fault fault) {
        return Bracket.edge(severity -> at(fault, severity).known(), 0, 1, CLOSE)
                .inside();
    }

    private interface Test {
        boolean passes(Scenario now, FaultOutcome outcome);
    }

    /** The severity at which a test passes first; it passes at the most severe. */
    private double reached(Fault fault, double highest, Test test) {
        return Bracket.edge(
                        severity -> {
                            Scenario now = fault.change().apply(sound, severity);
                            return test.passes(now, Simulation.run(now, line));
                        },
                        highest,
                        0,
                        CLOSE)
                .inside();
    }

    private FaultOutcome at(Fault fault, double severity) {
        return Simulation.run(fault.change().apply(sound, severity), line);
    }
}
