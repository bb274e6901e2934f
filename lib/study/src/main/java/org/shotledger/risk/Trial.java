package org.shotledger.risk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.shotledger.boost.OutsideMapException;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Limit;
import org.shotledger.budget.LimitSheet;
import org.shotledger.budget.Limits;
import org.shotledger.build.Injection;
import org.shotledger.flow.FeedFlow;

/**
 * Runs a situation over the speeds of a boost line.
 *
 * <p>The nitrous flow is solved once against the highest plenum pressure: where it chokes there it is the same at every lower
 * one. Where main pumps or injectors cannot pass what the tune asks for, the mixture is leaned to what they pass at the
 * regulated pressure, which is the safe side: a sagging rail lets a pump pass a little more.
 */
final class Trial {
    /** Limits that one bad cylinder breaks although the engine as a whole keeps them. */
    private static final Set<String> OF_A_CYLINDER =
            Set.of("peak-pressure", "lambda-lean", "lambda-rich", "charge-cold");

    private final Situation situation;
    private final FeedFlow feed;
    private final double chokedUpTo;

    private Trial(Situation situation, FeedFlow feed, double highest) {
        this.situation = situation;
        this.feed = feed;
        this.chokedUpTo = feed.choked() ? highest : Double.NEGATIVE_INFINITY;
    }

    /**
     * Runs a situation.
     *
     * @param situation what to run
     * @param line engine speeds and planned boost
     * @return the outcome; a speed at which a model has no answer is left out and said
     */
    static Outcome run(Situation situation, BoostLine line) {
        double highest = line.highest() + situation.boostShift();
        return run(situation, line, feed(situation, highest), highest);
    }

    /** The same with the nitrous flow against the highest plenum pressure already known. */
    static Outcome run(Situation situation, BoostLine line, FeedFlow feed, double highest) {
        Trial trial = new Trial(situation, feed, highest);
        List<Cylinders> all = new ArrayList<>();
        String refusal = "";
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("The work was interrupted; nothing of it is kept.");
        }
        for (BoostLine.Stop stop : line.stops()) {
            try {
                all.add(trial.at(stop.rpm(), stop.plenumPressure() + situation.boostShift()));
            } catch (OutsideMapException outside) {
                refusal = "the compressor map ends";
            } catch (IllegalArgumentException refused) { // for example a charge too cold to balance
                refusal = refused.getMessage();
            }
        }
        return all.isEmpty() ? Outcome.refused(refusal) : trial.outcome(all, refusal);
    }

    /** The nitrous flow of a situation against a plenum pressure; none when no jet is open. */
    static FeedFlow feed(Situation s, double plenumPressure) {
        if (s.nitrousOpen() == 0) {
            return s.evaluator().feed(s.conditions(), Demand.boost(plenumPressure));
        }
        return s.build()
                .wetKit()
                .nitrous()
                .path(s.nitrousOpen(), s.jets().nitrousBore())
                .flow(s.conditions().bottleLiquid(), plenumPressure);
    }

    private Cylinders at(double rpm, double plenum) {
        Cylinders asked = Cylinders.of(situation, rpm, plenum, feedAt(plenum));
        double lean = shortage(situation.build().injection(), rpm, asked.engine());
        if (lean <= 1) {
            return asked;
        }
        Situation starved = situation.withMainMixture(lean);
        return Cylinders.of(starved, rpm, plenum, feedAt(plenum));
    }

    private FeedFlow feedAt(double plenum) {
        return plenum <= chokedUpTo ? feed : feed(situation, plenum);
    }

    /** Main fuel asked for over what pumps and injectors pass; at most 1 when they can follow. */
    private double shortage(Injection injection, double rpm, Evaluation e) {
        double byPump = e.main().massFlow() / e.main().pumpCapacity();
        double dead = injection.injector().deadTime().clamped(e.conditions().voltage()) * rpm / 120;
        double byInjector = (e.main().duty() - dead) / (1 - dead);
        return Math.max(byPump, byInjector);
    }

    private Outcome outcome(List<Cylinders> all, String refusal) {
        Cylinders peak = all.get(0);
        double leanest = Double.NEGATIVE_INFINITY;
        double richest = Double.POSITIVE_INFINITY;
        double pressure = 0;
        double torque = 0;
        double knock = 0;
        Map<String, Limit> closest = new LinkedHashMap<>();
        for (Cylinders at : all) {
            peak = at.wheelPower() > peak.wheelPower() ? at : peak;
            torque = Math.max(torque, at.engine().crankTorque());
            keep(closest, LimitSheet.of(situation.build(), at.engine()).all(), false);
            for (Cylinders.Group group : at.groups()) {
                Evaluation as = group.asIfAll();
                leanest = Math.max(leanest, as.lambda());
                richest = Math.min(richest, as.lambda());
                pressure = Math.max(pressure, as.cylinder().peakPressure());
                knock = Math.max(knock, as.cylinder().knockIntegral());
                if (at.groups().size() > 1) {
                    keep(closest, LimitSheet.of(situation.build(), as).all(), true);
                }
            }
        }
        return new Outcome(
                Optional.of(peak.engine()),
                peak.engine().lambda(),
                leanest,
                richest,
                peak.wheelPower(),
                pressure,
                torque,
                knock,
                new Limits(new ArrayList<>(closest.values())),
                refusal);
    }

    private static void keep(Map<String, Limit> closest, List<Limit> limits, boolean ofACylinder) {
        for (Limit limit : limits) {
            if (!ofACylinder || OF_A_CYLINDER.contains(limit.key())) {
                closest.merge(limit.key(), limit, (a, b) -> b.relativeMargin() < a.relativeMargin() ? b : a);
            }
        }
    }
}
