package org.shotledger.risk;

import java.util.List;
import java.util.Optional;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Limit;
import org.shotledger.budget.Verdict;
import org.shotledger.risk.Catch.Answer;

/**
 * Where faults are tried: the sound plan, the channels that watch it, and how fast things go.
 *
 * @param plan the sound situation
 * @param planned its outcome
 * @param line engine speeds and planned boost
 * @param channels the sensors
 * @param cutOff how fast the nitrous ceases
 * @param endurance how long the engine bears a broken limit
 */
public record FaultBench(
        Situation plan, Outcome planned, BoostLine line, List<Channel> channels, CutOff cutOff, Endurance endurance) {
    private static final double CLOSE = 1 / 256.0;

    /** Copies the list. */
    public FaultBench {
        channels = List.copyOf(channels);
    }

    /**
     * The bench of a budget's plan.
     *
     * @param budget the budget
     * @param window the gates that watch
     * @param endurance how long the engine bears a broken limit
     * @return the bench
     */
    public static FaultBench of(Budget budget, NitrousWindow window, Endurance endurance) {
        Situation plan = Situation.of(budget);
        BoostLine line = BoostLine.of(budget);
        Outcome planned = Trial.run(plan, line);
        return new FaultBench(plan, planned, line, Channel.of(window, plan, planned), CutOff.of(budget), endurance);
    }

    /**
     * The same bench with other channels, for example with one more sensor.
     *
     * @param others the channels
     * @return the bench
     */
    public FaultBench with(List<Channel> others) {
        return new FaultBench(plan, planned, line, others, cutOff, endurance);
    }

    /**
     * Tries a fault.
     *
     * @param fault the fault
     * @return its effect
     */
    public FaultEffect effect(Fault fault) {
        double severity = growing(fault) && !at(fault, 1).known() ? lastKnown(fault) : 1;
        Outcome outcome = at(fault, severity);
        Optional<Limit> broken =
                endurance.harmful(outcome).or(() -> outcome.first().filter(l -> l.verdict() == Verdict.BROKEN));
        double knock = outcome.knockIntegral() / planned.knockIntegral();
        return new FaultEffect(fault, severity, outcome, knock, broken, caught(fault, severity, outcome));
    }

    private Catch caught(Fault fault, double severity, Outcome outcome) {
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
        List<Catch.Sight> couldSee = channels.stream()
                .filter(c -> !c.fitted() && sees(c, fault, severity))
                .map(c -> new Catch.Sight(c.name(), cutTime(c, fault, severity)))
                .toList();
        double ceased = early ? 0 : fault.closes() ? cut : Double.POSITIVE_INFINITY;
        return new Catch(answer(fault, first, early, harm, cut), name, harm, ceased, couldSee);
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
    private double engineTime(Fault fault, double severity, Outcome outcome) {
        double soonest = Double.POSITIVE_INFINITY;
        for (double borne : endurance.times(outcome)) {
            double begins =
                    growing(fault) ? reached(fault, severity, (s, o) -> endurance.hurtsWithin(o, borne)) : severity;
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
        Situation now = fault.change().apply(plan, severity);
        return channel.trips(now, Trial.run(now, line));
    }

    /** Whether a channel sees the fault with nothing flowing yet. */
    private boolean keepsClosed(Channel channel, Fault fault) {
        if (fault.onset() != Fault.Onset.BEFORE || !channel.early()) {
            return false;
        }
        Situation waiting = fault.change().apply(plan, 1).withOpenJets(0, 0);
        return channel.trips(waiting, Trial.run(waiting, line));
    }

    /** The largest severity the models cover. */
    private double lastKnown(Fault fault) {
        double known = 0;
        double unknown = 1;
        while (unknown - known > CLOSE) {
            double middle = (known + unknown) / 2;
            if (at(fault, middle).known()) {
                known = middle;
            } else {
                unknown = middle;
            }
        }
        return known;
    }

    private interface Test {
        boolean passes(Situation now, Outcome outcome);
    }

    /** The severity at which a test passes first; it passes at the most severe. */
    private double reached(Fault fault, double most, Test test) {
        double low = 0;
        double high = most;
        while (high - low > CLOSE) {
            double middle = (low + high) / 2;
            Situation now = fault.change().apply(plan, middle);
            if (test.passes(now, Trial.run(now, line))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private Outcome at(Fault fault, double severity) {
        return Trial.run(fault.change().apply(plan, severity), line);
    }
}
