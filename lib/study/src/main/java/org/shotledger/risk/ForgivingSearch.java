package org.shotledger.risk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Wish;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;

/**
 * Searches jets and fuel pressures. Every setting of the ladder around the plan is tried; one that does not bear the best
 * excursion found so far is dropped after one question, so the search is exhaustive at little more than one evaluation of the
 * box for each setting.
 */
final class ForgivingSearch {
    private static final int RUNGS_BELOW = 6;
    private static final int RUNGS_ABOVE = 2;
    private static final double FUEL_REACH = 0.3;
    private static final double LOWEST_PRESSURE = 2e5;
    private static final double HIGHEST_PRESSURE = 6e5;
    private static final double PRESSURE_STEP = 0.25e5;

    private final Drift plan;
    private final Wish wish;
    private final double[] ladder;
    private final double leanest;

    /** A setting that keeps every limit as planned. */
    private record Candidate(Drift drift, Outcome planned) {}

    /** A candidate with what it bears, in steps. */
    private record Borne(Candidate candidate, Excursion all, Excursion boostHeld) {
        boolean betterThan(Borne other) {
            if (all.steps() != other.all.steps()) {
                return all.steps() > other.all.steps();
            }
            return boostHeld.steps() > other.boostHeld.steps();
        }
    }

    ForgivingSearch(Budget budget, Drift plan) {
        this.plan = plan;
        this.wish = budget.wish();
        this.ladder = budget.build().wetKit().ladder().bores();
        MixtureGoal goal = budget.mixtureGoal();
        double planned = budget.peak().lambda();
        this.leanest = goal.kind() == MixtureGoal.Kind.TOTAL_LAMBDA ? Math.max(goal.value(), planned) : planned;
    }

    Forgiving search() {
        Candidate planned = new Candidate(plan, plan.planned());
        Borne plain = borne(planned);
        Borne meeting = plain;
        List<Forgiving.Choice> rows = new ArrayList<>();
        for (double bore : nitrousBores()) {
            List<Candidate> candidates = candidates(bore);
            best(candidates, Optional.empty(), c -> true).ifPresent(b -> rows.add(choice(b)));
            meeting = best(
                            candidates,
                            Optional.of(meeting),
                            c -> wish.metBy(c.planned().wheelPower()))
                    .orElse(meeting);
        }
        return new Forgiving(wish.wheelPower(), choice(plain), choice(meeting), rows, plan.band());
    }

    private double[] nitrousBores() {
        int at = Math.abs(Arrays.binarySearch(ladder, plan.plan().jets().nitrousBore()));
        return Arrays.copyOfRange(ladder, Math.max(0, at - RUNGS_BELOW), Math.min(ladder.length, at + RUNGS_ABOVE + 1));
    }

    private List<Candidate> candidates(double nitrousBore) {
        double planned = plan.plan().jets().fuelBore();
        List<Candidate> kept = new ArrayList<>();
        for (double fuelBore : ladder) {
            if (Math.abs(fuelBore / planned - 1) <= FUEL_REACH) {
                JetPair pair = new JetPair(nitrousBore, fuelBore);
                for (double pressure : pressures()) {
                    Drift drift = plan.with(plan.plan().withJets(pair).withFuelPressure(pressure));
                    Outcome outcome = drift.planned();
                    if (outcome.safe() && outcome.leanest() <= leanest) {
                        kept.add(new Candidate(drift, outcome));
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
        return DoubleStream.concat(grid, DoubleStream.of(plan.fuelPressure()))
                .distinct()
                .toArray();
    }

    private static Optional<Borne> best(
            List<Candidate> candidates, Optional<Borne> from, Predicate<Candidate> allowed) {
        Optional<Borne> best = from;
        for (Candidate candidate : candidates) {
            if (allowed.test(candidate)
                    && best.map(b -> mayBeat(candidate.drift(), b)).orElse(true)) {
                Borne borne = borne(candidate);
                if (best.isEmpty() || borne.betterThan(best.get())) {
                    best = Optional.of(borne);
                }
            }
        }
        return best;
    }

    private static boolean mayBeat(Drift drift, Borne best) {
        int same = best.all().steps();
        return Excursion.holds(drift, true, same)
                && (Excursion.holds(drift, false, best.boostHeld().steps() + 1)
                        || Excursion.holds(drift, true, same + 1));
    }

    private static Borne borne(Candidate candidate) {
        return new Borne(candidate, Excursion.of(candidate.drift()), Excursion.withBoostHeld(candidate.drift()));
    }

    private static Forgiving.Choice choice(Borne b) {
        Outcome planned = b.candidate().planned();
        Situation setting = b.candidate().drift().plan();
        return new Forgiving.Choice(
                setting.jets(),
                setting.fuelPressure(),
                planned.lambda(),
                planned.wheelPower(),
                planned.leastMargin(),
                b.all().size(),
                b.boostHeld().size(),
                b.all().stoppedBy(),
                b.boostHeld().stoppedBy());
    }
}
