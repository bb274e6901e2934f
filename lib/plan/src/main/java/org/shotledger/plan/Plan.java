package org.shotledger.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shotledger.car.Car;
import org.shotledger.evaluate.DayOutcome;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.job.Job;
import org.shotledger.ledger.Entry;
import org.shotledger.ledger.Ledger;
import org.shotledger.ledger.Ledgers;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.limits.Provenance;
import org.shotledger.limits.Side;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.JetSide;
import org.shotledger.setup.Setup;
import org.shotledger.setup.Target;
import org.shotledger.sheet.Problem;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * The answer to a target: a setup, what it does in every case in which it must hold, and what else was weighed.
 *
 * @param job the job
 * @param setup the setup found; it, and nothing else, is what the outcomes were worked out for
 * @param outcomes one for each case of the job, in their order, that of the target first
 * @param limits every limit over all cases, each where it is closest, with the power asked for among them
 * @param alternatives the setups that were weighed, by boost, ascending
 * @param stopped what stops the power asked for, in words; empty where it is reached, and for a setup that was not searched
 * @param moved what the search set otherwise than the sheet, with why; empty for a setup that was not searched
 * @param known what studies around this plan have worked out
 */
public record Plan(
        Job job,
        Setup setup,
        List<Outcome> outcomes,
        Limits limits,
        List<Alternative> alternatives,
        Optional<String> stopped,
        List<String> moved,
        Known known) {

    /** How many unusual figures the verdict names; the first page has them all. */
    private static final int DOUBTS = 3;

    public Plan {
        outcomes = List.copyOf(outcomes);
        alternatives = List.copyOf(alternatives);
        moved = List.copyOf(moved);
    }

    /**
     * A plan around which nothing has been studied yet.
     *
     * @param job the job
     * @param setup the setup
     * @param outcomes one for each case of the job
     * @param limits every limit over all cases
     * @param alternatives the setups that were weighed
     * @param stopped what stops the power asked for; empty where it is reached
     * @param moved what the search set otherwise than the sheet
     */
    public Plan(
            Job job,
            Setup setup,
            List<Outcome> outcomes,
            Limits limits,
            List<Alternative> alternatives,
            Optional<String> stopped,
            List<String> moved) {
        this(job, setup, outcomes, limits, alternatives, stopped, moved, new Known());
    }

    /**
     * Finds the setup for the target of a job.
     *
     * @param job the job
     * @return the plan; where no setup keeps every limit, the one that breaks them least
     */
    public static Plan find(Job job) {
        return PlanSearch.find(job);
    }

    /**
     * What a given setup does in every case, held against the target.
     *
     * @param job the job
     * @param setup what is set
     * @return the plan without alternatives
     */
    public static Plan of(Job job, Setup setup) {
        return of(job, setup, List.of());
    }

    /**
     * The most power this job's car gives inside every limit in every case; searched when asked for.
     *
     * @return the power and what stops more
     */
    public Attainable attainable() {
        return PlanSearch.attainable(job);
    }

    /**
     * Smaller shots at the boost of this plan.
     *
     * @return their sizer
     */
    public Shots shots() {
        return new Shots(this);
    }

    /**
     * Which estimated figures of the sheet move the answer most; the first is what to measure next. Takes about as long as the plan.
     *
     * @return the estimates that have a band, the one that moves power and least margin most first; empty where nothing is estimated
     */
    public List<Estimate> estimates() {
        return Estimate.of(this);
    }

    /**
     * The day with the bottles in the case of the target: waits, refills, second bottle, passes left by weight.
     *
     * @return the day; empty without nitrous
     */
    public Optional<DayOutcome> day() {
        return DayOutcome.of(car(), setup, job.day(), stated().at());
    }

    /**
     * Every pass asked for in the case of the target, over its seconds.
     *
     * @return the passes in order; empty without nitrous
     */
    public List<PassOutcome> passes() {
        return Evaluate.passes(car(), setup, stated().at());
    }

    /**
     * The reasoning of the point of most power in the case of the target.
     *
     * @return every figure with equation, source and inputs
     */
    public Ledger ledger() {
        return Ledgers.of(stated(), target());
    }

    /**
     * Why a figure is what it is.
     *
     * @param key its key in the ledger, for example {@code "nitrous-flow"}
     * @return the figure and those it rests on, down to what was given
     * @throws IllegalArgumentException when there is no such figure; the message lists the keys
     */
    public List<Entry> why(String key) {
        return ledger().why(key);
    }

    static Plan of(Job job, Setup setup, List<Alternative> alternatives) {
        List<Outcome> outcomes = Evaluate.all(job.car(), setup, job.cases());
        List<Limit> all = new ArrayList<>();
        all.add(asked(job.target(), outcomes.get(0)));
        outcomes.forEach(outcome -> all.addAll(outcome.limits().all()));
        return new Plan(job, setup, outcomes, Limits.closest(all), alternatives, Optional.empty(), List.of());
    }

    /** The same with what stops the power asked for, where it is not reached. */
    Plan stoppedBy(String what) {
        return reached() ? this : new Plan(job, setup, outcomes, limits, alternatives, Optional.of(what), moved, known);
    }

    /** The same with what was set otherwise than the sheet has it, beside boost and jets; without nitrous neither is used. */
    Plan comparedWith(Setup sheet) {
        if (setup.jets().isEmpty()) {
            return this;
        }
        List<String> other = new ArrayList<>();
        if (setup.arming().rpmLow() != sheet.arming().rpmLow()) {
            other.add(String.format(
                    Locale.ROOT,
                    "the nitrous opens from %,.0f rpm instead of %,.0f, as the models have no answer for the shot below",
                    setup.arming().rpmLow(),
                    sheet.arming().rpmLow()));
        }
        if (setup.retard() != sheet.retard()) {
            other.add(QuantityKind.CRANK_ANGLE.text(setup.retard(), UnitSystem.US) + " of spark retard instead of "
                    + QuantityKind.CRANK_ANGLE.text(sheet.retard(), UnitSystem.US)
                    + ", so that it knocks no more than the base pull");
        }
        return new Plan(job, setup, outcomes, limits, alternatives, stopped, other, known);
    }

    /** The power asked for is a limit like the others, but for the thousandth by which it may fall short. */
    private static Limit asked(Target target, Outcome stated) {
        double power = stated.power();
        return new Limit(
                "target-power",
                "power asked for",
                QuantityKind.POWER,
                target.reachedBy(power) ? Math.max(power, target.wheelPower()) : power,
                target.wheelPower(),
                Side.AT_LEAST,
                false,
                "the target is not reached",
                Provenance.ASSUMED,
                "what the customer asks for",
                stated.strongest()
                        .map(point -> String.format(Locale.ROOT, "%,.0f rpm", point.rpm()))
                        .orElse("no engine speed"),
                stated.at().name(),
                target.wheelPower());
    }

    /**
     * What of both flows lies outside what was measured, in any case.
     *
     * @return sentences, each once, those of the stated case first; none when everything lies inside
     */
    public List<String> outside() {
        return outcomes.stream()
                .flatMap(outcome -> Arrays.stream(JetSide.values()).flatMap(side -> outcome.outside(side).stream()))
                .distinct()
                .toList();
    }

    /**
     * The car of the job.
     *
     * @return what is built
     */
    public Car car() {
        return job.car();
    }

    /**
     * The target of the job.
     *
     * @return what is asked
     */
    public Target target() {
        return job.target();
    }

    /**
     * The outcome in the case of the target.
     *
     * @return the first outcome
     */
    public Outcome stated() {
        return outcomes.get(0);
    }

    /**
     * The verdict: the worst over all cases.
     *
     * @return broken where a limit is broken in any case or the power asked for is not reached
     */
    public Verdict verdict() {
        Verdict kept = parts().verdict();
        return reached() ? kept : Verdict.BROKEN;
    }

    /**
     * Whether the power asked for is reached in the case of the target.
     *
     * @return true when it is
     */
    public boolean reached() {
        return target().reachedBy(stated().power());
    }

    /**
     * The limits of the parts, without the power asked for.
     *
     * @return every limit over all cases, each where it is closest
     */
    public Limits parts() {
        return new Limits(limits.all().stream()
                .filter(limit -> !limit.key().equals("target-power"))
                .toList());
    }

    /**
     * The limits that decide, closest first.
     *
     * @param most how many
     * @return at most that many
     */
    public List<Limit> closest(int most) {
        return parts().all().stream()
                .sorted(Comparator.comparingDouble(Limit::relativeMargin))
                .limit(most)
                .toList();
    }

    /**
     * The verdict in one line.
     *
     * @return target and what stops it, boost, jets, the limit that is closest, its margin and the case in which it is
     */
    public String verdictLine() {
        Limit first = parts().first().orElseThrow();
        return String.format(
                Locale.ROOT,
                "%s: %s at the wheels under '%s'%s%s from %s of boost%s; every limit in %d cases: %s, the closest is %s"
                        + " (%s, case '%s')%s%s.%s%s An estimate, to be proven in small steps.",
                job.name(),
                QuantityKind.POWER.text(stated().power(), UnitSystem.US),
                target().conditions(),
                reached() ? "" : " of the " + QuantityKind.POWER.text(target().wheelPower(), UnitSystem.US) + " asked",
                stopped.map(what -> " (more is stopped by " + what + ")").orElse(""),
                boost(),
                jets(),
                outcomes.size(),
                (reached() ? verdict() : parts().verdict()).word(),
                first.name(),
                first.place(),
                first.caseName(),
                margin(first),
                passesGiven(),
                moved.isEmpty() ? "" : " Otherwise than the sheet: " + String.join("; ", moved) + ".",
                doubts());
    }

    /** What in the sheet is unusual, beside the verdict until the sheet says that it is meant. */
    private String doubts() {
        List<Problem> unusual = job.unusual();
        return unusual.isEmpty()
                ? ""
                : " Unusual in the sheet: "
                        + unusual.stream().limit(DOUBTS).map(Plan::doubt).collect(Collectors.joining(", "))
                        + (unusual.size() > DOUBTS ? " and " + (unusual.size() - DOUBTS) + " more" : "")
                        + "; see page 1 or ./shotledger check.";
    }

    private static String doubt(Problem problem) {
        return problem.field() + (problem.found().isEmpty() ? "" : " " + problem.found());
    }

    private static String margin(Limit first) {
        double margin = first.relativeMargin();
        if (first.bound() == 0 || Double.isInfinite(margin)) {
            return "";
        }
        String side = margin >= 0 ? "left" : first.side() == Side.AT_MOST ? "too much" : "missing";
        return String.format(Locale.ROOT, " with %.1f %% %s", Math.abs(100 * margin), side);
    }

    private String boost() {
        double gauge = stated().strongest()
                .map(org.shotledger.evaluate.OperatingPoint::gaugePressure)
                .orElse(setup.boost().armed().highest());
        return QuantityKind.GAUGE_PRESSURE.text(gauge, UnitSystem.US) + " ("
                + QuantityKind.GAUGE_PRESSURE.text(gauge, UnitSystem.SI) + ")";
    }

    private String jets() {
        if (setup.jets().isEmpty()) {
            return " alone, without nitrous";
        }
        JetPair pair = setup.jets().get();
        int nozzles = car().nitrous().nozzles();
        return String.format(
                Locale.ROOT,
                " and %d nozzle%s of %s nitrous and %s fuel",
                nozzles,
                nozzles == 1 ? "" : "s",
                QuantityKind.BORE.text(pair.nitrousBore(), UnitSystem.US),
                QuantityKind.BORE.text(pair.fuelBore(), UnitSystem.US));
    }

    private String passesGiven() {
        return stated().pass()
                .map(pass -> String.format(
                        Locale.ROOT,
                        "; one bottle gives %d of the %d passes asked",
                        Math.min(pass.wholePasses(), target().passes()),
                        target().passes()))
                .orElse("");
    }
}
