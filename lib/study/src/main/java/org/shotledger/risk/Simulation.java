package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import org.shotledger.car.Injection;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.flow.FeedFlow;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.limits.Verdict;

/**
 * Runs a scenario over the speeds of a boost line.
 *
 * <p>The nitrous flow is solved once against the highest plenum pressure: where it chokes there it is the same at every lower
 * one. Where main pumps or injectors cannot pass what is metered for, the mixture is leaned to what they pass at the
 * regulated pressure, which is the safe side: a sagging rail lets a pump pass a little more.
 */
final class Simulation {
    /** Limits that one bad cylinder breaks although the engine as a whole keeps them. */
    private static final Set<String> OF_A_CYLINDER =
            Set.of("peak-pressure", "knock", "lambda-lean", "lambda-rich", "charge-cold");

    private final Scenario scenario;
    private final FeedFlow feed;
    private final double chokedUpTo;

    private Simulation(Scenario scenario, FeedFlow feed, double highest) {
        this.scenario = scenario;
        this.feed = feed;
        this.chokedUpTo = feed.choked() ? highest : Double.NEGATIVE_INFINITY;
    }

    /**
     * Runs a scenario.
     *
     * @param scenario what to run
     * @param line engine speeds and planned boost
     * @return the outcome; a speed at which a model has no answer is left out and said
     */
    static FaultOutcome run(Scenario scenario, BoostLine line) {
        double highest = line.highest() + scenario.boostShift();
        return run(scenario, line, () -> SystemFlows.nitrous(scenario, highest), highest);
    }

    /** The same with the nitrous flow against the highest plenum pressure from elsewhere. */
    static FaultOutcome run(Scenario scenario, BoostLine line, Supplier<FeedFlow> feed, double highest) {
        stopIfAsked();
        try {
            return new Simulation(scenario, feed.get(), highest).over(line);
        } catch (IllegalArgumentException refused) { // a state of the bottle for which the feed path has no answer
            return FaultOutcome.refused(refused.getMessage());
        }
    }

    private static void stopIfAsked() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("The work was interrupted; nothing of it is kept.");
        }
    }

    /** Whether the outcome of that run is safe; the first limit that is broken ends it. */
    static boolean safe(Scenario scenario, BoostLine line, Supplier<FeedFlow> feed, double highest) {
        stopIfAsked();
        if (BottleBand.limits(scenario).stream().anyMatch(limit -> limit.verdict() == Verdict.BROKEN)) {
            return false;
        }
        try {
            Simulation run = new Simulation(scenario, feed.get(), highest);
            return line.stops().stream().allMatch(run::safe);
        } catch (IllegalArgumentException none) {
            return false;
        }
    }

    private boolean safe(BoostLine.Stop stop) {
        Cylinders at = at(stop.rpm(), stop.plenumPressure() + scenario.boostShift());
        double[] least = PointLimits.margins(scenario.car(), at.engine());
        if (at.groups().size() > 1) {
            List<String> keys = PointLimits.keys();
            for (Cylinders.Group group : at.groups()) {
                double[] own = PointLimits.margins(scenario.car(), group.asIfAll());
                for (int i = 0; i < least.length; i++) {
                    least[i] = OF_A_CYLINDER.contains(keys.get(i)) ? Math.min(least[i], own[i]) : least[i];
                }
            }
        }
        return DoubleStream.of(least).allMatch(margin -> margin >= 0);
    }

    private FaultOutcome over(BoostLine line) {
        List<Cylinders> all = new ArrayList<>();
        String refusal = "";
        for (BoostLine.Stop stop : line.stops()) {
            try {
                all.add(at(stop.rpm(), stop.plenumPressure() + scenario.boostShift()));
            } catch (NoAnswerException none) {
                refusal = none.getMessage();
            }
        }
        return all.isEmpty() ? FaultOutcome.refused(refusal) : outcome(all, refusal);
    }

    private Cylinders at(double rpm, double plenum) {
        FeedFlow passed = plenum <= chokedUpTo ? feed : SystemFlows.nitrous(scenario, plenum);
        Cylinders asked = Cylinders.of(scenario, rpm, plenum, passed);
        double lean = shortage(scenario.car().injection(), rpm, asked.engine());
        return lean <= 1 ? asked : Cylinders.of(scenario.withMainMixture(lean), rpm, plenum, passed);
    }

    /** Main fuel asked for over what pumps and injectors pass; at most 1 when they can follow. */
    private double shortage(Injection injection, double rpm, OperatingPoint e) {
        double byPump = e.main().massFlow() / e.main().pumpCapacity();
        double dead = injection.injector().deadTime().clamped(scenario.at().voltage()) * rpm / 120;
        double byInjector = (e.main().duty() - dead) / (1 - dead);
        return Math.max(byPump, byInjector);
    }

    private FaultOutcome outcome(List<Cylinders> all, String refusal) {
        Cylinders peak = all.get(0);
        double leanest = Double.NEGATIVE_INFINITY;
        double richest = Double.POSITIVE_INFINITY;
        double pressure = 0;
        double torque = 0;
        double knock = 0;
        List<OperatingPoint> engines = new ArrayList<>();
        List<OperatingPoint> single = new ArrayList<>();
        for (Cylinders at : all) {
            peak = at.wheelPower() > peak.wheelPower() ? at : peak;
            torque = Math.max(torque, at.engine().crankTorque());
            engines.add(at.engine());
            for (Cylinders.Group group : at.groups()) {
                OperatingPoint as = group.asIfAll();
                leanest = Math.max(leanest, as.lambda());
                richest = Math.min(richest, as.lambda());
                pressure = Math.max(pressure, as.cylinder().peakPressure());
                knock = Math.max(knock, as.cylinder().knock());
                if (at.groups().size() > 1) {
                    single.add(as);
                }
            }
        }
        List<Limit> limits = new ArrayList<>(BottleBand.limits(scenario));
        limits.addAll(limits(engines));
        limits(single).stream()
                .filter(limit -> OF_A_CYLINDER.contains(limit.key()))
                .forEach(limits::add);
        return new FaultOutcome(
                Optional.of(peak.engine()),
                peak.engine().lambda(),
                leanest,
                richest,
                peak.wheelPower(),
                pressure,
                torque,
                knock,
                Limits.closest(limits),
                refusal);
    }

    private List<Limit> limits(List<OperatingPoint> points) {
        return PointLimits.closest(scenario.car(), points, scenario.at().name());
    }
}
