package org.shotledger.risk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import org.shotledger.plan.Plan;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;

/**
 * Searches jets and fuel pressures. Every setting of the ladder around the plan is tried; one that does not bear the best
 * tolerance found so far is dropped after one question, so the search is exhaustive at little more than one evaluation of the
 * box for each setting. One that would win is first worked out as a plan, in every case.
 */
final class RobustSearch {
    private static final int RUNGS_BELOW = 6;
    private static final int RUNGS_ABOVE = 2;
    private static final double FUEL_SHARE = 0.3;
    private static final double LOWEST_PRESSURE = 2e5;
    private static final double HIGHEST_PRESSURE = 6e5;
    private static final double PRESSURE_STEP = 0.25e5;

    private final Plan plan;
    private final Drift drift;
    private final double[] ladder;
    private final double leanest;
    private final Map<Setup, Boolean> held = new HashMap<>();

    /** A setting that keeps every limit as planned. */
    private record Candidate(Drift drift, FaultOutcome planned) {}

    /** A candidate with what it bears, in steps. */
    private record Borne(Candidate candidate, Tolerance all, Tolerance boostHeld) {
        boolean betterThan(Borne other) {
            if (all.steps() != other.all.steps()) {
                return all.steps() > other.all.steps();
            }
            return boostHeld.steps() > other.boostHeld.steps();
        }
    }

    RobustSearch(Plan plan, Drift drift) {
        this.plan = plan;
        this.drift = drift;
        this.ladder = plan.car().nitrous().ladder().bores();
        MixtureGoal goal = plan.target().mixture();
        double planned = plan.stated().strongest().orElseThrow().lambda();
        this.leanest = goal.kind() == MixtureGoal.Kind.TOTAL_LAMBDA ? Math.max(goal.value(), planned) : planned;
    }

    RobustJetting search() {
        Borne plain = borne(new Candidate(drift, drift.planned()));
        Borne meeting = plain;
        List<RobustJetting.Choice> rows = new ArrayList<>();
        for (double bore : nitrousBores()) {
            List<Candidate> candidates = candidates(bore);
            best(candidates, Optional.empty(), c -> true).ifPresent(b -> rows.add(choice(b)));
            meeting = best(
                            candidates,
                            Optional.of(meeting),
                            c -> plan.target().reachedBy(c.planned().wheelPower()))
                    .orElse(meeting);
        }
        return new RobustJetting(plan.target().wheelPower(), choice(plain), choice(meeting), rows, drift.band());
    }

    /** Whether the whole plan with a candidate's jets and fuel pressure breaks no limit of a part in any case. */
    private boolean holdsInEveryCase(Candidate candidate) {
        Setup setup = candidate.drift().sound().setup();
        return held.computeIfAbsent(
                setup, s -> Plan.of(plan.job(), s).parts().verdict() != Verdict.BROKEN);
    }

    private double[] nitrousBores() {
        int at = Math.abs(Arrays.binarySearch(ladder, drift.sound().jets().nitrousBore()));
        return Arrays.copyOfRange(ladder, Math.max(0, at - RUNGS_BELOW), Math.min(ladder.length, at + RUNGS_ABOVE + 1));
    }

    private List<Candidate> candidates(double nitrousBore) {
        double planned = drift.sound().jets().fuelBore();
        List<Candidate> kept = new ArrayList<>();
        for (double fuelBore : ladder) {
            if (Math.abs(fuelBore / planned - 1) <= FUEL_SHARE) {
                JetPair pair = new JetPair(nitrousBore, fuelBore);
                for (double pressure : pressures()) {
                    Drift other = drift.with(drift.sound().withJets(pair).withFuelPressure(pressure));
                    FaultOutcome outcome = other.planned();
                    if (outcome.safe() && outcome.leanest() <= leanest) {
                        kept.add(new Candidate(other, outcome));
                    }
                }
            }
        }
        return kept;
    }

    private double[] pressures() {
        int steps = (int) Math.round((HIGHEST_PRESSURE - LOWEST_PRESSURE) / PRESSURE_STEP);
        DoubleStream grid =
                DoubleStream.iterate(LOWEST_PRESSURE, p -> p + PRESSURE_STEP).limit(steps + 1L);
        return DoubleStream.concat(grid, DoubleStream.of(drift.fuelPressure()))
                .distinct()
                .toArray();
    }

    private Optional<Borne> best(
            List<Candidate> candidates, Optional<Borne> from, Predicate<Candidate> allowed) {
        Optional<Borne> best = from;
        for (Candidate candidate : candidates) {
            if (allowed.test(candidate)
                    && best.map(b -> mayBeat(candidate.drift(), b)).orElse(true)) {
                Borne borne = borne(candidate);
                if ((best.isEmpty() || borne.betterThan(best.get())) && holdsInEveryCase(candidate)) {
                    best = Optional.of(borne);
                }
            }
        }
        return best;
    }

    private static boolean mayBeat(Drift drift, Borne best) {
        int same = best.all().steps();
        return Tolerance.holds(drift, true, same)
                && (Tolerance.holds(drift, false, best.boostHeld().steps() + 1)
                        || Tolerance.holds(drift, true, same + 1));
    }

    private static Borne borne(Candidate candidate) {
        return new Borne(candidate, Tolerance.of(candidate.drift()), Tolerance.withBoostHeld(candidate.drift()));
    }

    private static RobustJetting.Choice choice(Borne b) {
        FaultOutcome planned = b.candidate().planned();
        Scenario setting = b.candidate().drift().sound();
        return new RobustJetting.Choice(
                setting.jets(),
                setting.fuelPressure(),
                planned.lambda(),
                planned.wheelPower(),
                planned.minMargin(),
                b.all().size(),
                b.boostHeld().size(),
                b.all().stoppedBy(),
                b.boostHeld().stoppedBy());
    }
}
