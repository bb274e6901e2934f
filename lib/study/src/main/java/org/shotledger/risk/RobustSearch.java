package org.shotledger.risk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.limits.Limit;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;

/**
 * Searches jets and fuel pressures. Every setting of the ladder around the plan is tried; one that does not bear the best
 * tolerance found so far is dropped after one question, so the search is exhaustive at little more than one evaluation of the
 * box for each setting. Those that win are then worked out as whole plans, in every case.
 */
final class RobustSearch {
    /** Rungs of the ladder that are tried below and above the planned jet: our choice; a larger jet soon breaks a limit. */
    private static final int RUNGS_BELOW = 6;

    private static final int RUNGS_ABOVE = 2;
    /** Relative distance of a fuel jet from the planned one that is tried: our choice. */
    private static final double FUEL_SHARE = 0.3;
    /** Fuel pressures that are tried, Pa, and their step: the range of common regulators, common practice, no source. */
    private static final double LOWEST_PRESSURE = 2e5;

    private static final double HIGHEST_PRESSURE = 6e5;
    private static final double PRESSURE_STEP = 0.25e5;

    private final Plan plan;
    private final Drift drift;
    private final double[] ladder;
    private final double leanest;

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

    /** The settings with one nitrous jet, and the most robust of them. */
    private record Rung(List<Candidate> candidates, Optional<RobustJetting.Choice> best) {}

    RobustSearch(Plan plan, Drift drift) {
        this.plan = plan;
        this.drift = drift;
        this.ladder = plan.car().nitrous().ladder().bores();
        MixtureGoal goal = plan.target().mixture();
        double planned = plan.stated().strongest().orElseThrow().lambda();
        this.leanest = goal.kind() == MixtureGoal.Kind.TOTAL_LAMBDA ? Math.max(goal.value(), planned) : planned;
    }

    RobustJetting search() {
        List<Borne> meeting = new ArrayList<>(List.of(borne(new Candidate(drift, drift.planned()), 0, 0)));
        List<Rung> rungs =
                DoubleStream.of(nitrousBores()).parallel().mapToObj(this::rung).toList();
        for (Rung rung : rungs) {
            improve(
                    meeting,
                    rung.candidates(),
                    c -> plan.target().reachedBy(c.planned().wheelPower()));
        }
        List<RobustJetting.Choice> rows =
                rungs.stream().flatMap(rung -> rung.best().stream()).toList();
        return new RobustJetting(
                plan.target().wheelPower(), choice(meeting.get(0)), choice(proven(meeting)), rows, drift.band());
    }

    private Rung rung(double nitrousBore) {
        List<Candidate> candidates = candidates(nitrousBore);
        List<Borne> own = new ArrayList<>();
        improve(own, candidates, c -> true);
        return new Rung(candidates, own.stream().reduce((a, b) -> b).map(RobustSearch::choice));
    }

    /** The most robust of those found one after the other that, as a whole plan, breaks nothing that the plan itself keeps. */
    private Borne proven(List<Borne> found) {
        for (int i = found.size() - 1; i > 0; i--) {
            Setup setup = found.get(i).candidate().drift().sound().setup();
            if (broken(plan).containsAll(broken(Plan.of(plan.job(), setup)))) {
                return found.get(i);
            }
        }
        return found.get(0);
    }

    private static Set<String> broken(Plan of) {
        return of.limits().broken().stream().map(Limit::key).collect(Collectors.toSet());
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
                    if (fits(other.sound()) && suits(other.atHighestBoost().planned())) {
                        FaultOutcome outcome = other.planned();
                        if (suits(outcome)) {
                            kept.add(new Candidate(other, outcome));
                        }
                    }
                }
            }
        }
        return kept;
    }

    private boolean suits(FaultOutcome outcome) {
        return outcome.safe() && outcome.leanest() <= leanest;
    }

    /** The main rail's pressure is that of the engine's own tune and not searched. */
    private double[] pressures() {
        if (drift.sound().onMainRail()) {
            return new double[] {drift.fuelPressure()};
        }
        int steps = (int) Math.round((HIGHEST_PRESSURE - LOWEST_PRESSURE) / PRESSURE_STEP);
        DoubleStream grid =
                DoubleStream.iterate(LOWEST_PRESSURE, p -> p + PRESSURE_STEP).limit(steps + 1L);
        return DoubleStream.concat(grid, DoubleStream.of(drift.fuelPressure()))
                .distinct()
                .toArray();
    }

    private static boolean fits(Scenario s) {
        return PointLimits.sizes(s.car(), s.setup(), s.jets()).margin() >= 0;
    }

    /** Adds to a list each candidate that is more robust than the last of the list. */
    private static void improve(List<Borne> found, List<Candidate> candidates, Predicate<Candidate> allowed) {
        for (Candidate candidate : candidates) {
            Optional<Borne> best = found.isEmpty() ? Optional.empty() : Optional.of(found.get(found.size() - 1));
            if (allowed.test(candidate) && best.stream().allMatch(b -> mayBeat(candidate.drift(), b))) {
                Borne borne = borne(
                        candidate,
                        best.map(b -> b.all().steps()).orElse(0),
                        best.map(b -> b.boostHeld().steps()).orElse(0));
                if (best.stream().allMatch(borne::betterThan)) {
                    found.add(borne);
                }
            }
        }
    }

    private static boolean mayBeat(Drift drift, Borne best) {
        int same = best.all().steps();
        return Tolerance.holds(drift, true, same)
                && (Tolerance.holds(drift, false, best.boostHeld().steps() + 1)
                        || Tolerance.holds(drift, true, same + 1));
    }

    private static Borne borne(Candidate candidate, int all, int boostHeld) {
        return new Borne(
                candidate,
                Tolerance.near(candidate.drift(), true, all),
                Tolerance.near(candidate.drift(), false, boostHeld));
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
