package org.shotledger.cars;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.shotledger.bottle.PassEnd;
import org.shotledger.engine.MoistAir;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Check;
import org.shotledger.job.Job;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.JetLadder;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Alternative;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Setup;
import org.shotledger.supply.Regulator;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** What must be true of any answer. Each broken law is a sentence that names the car. */
final class Laws {
    /** Digits no gauge has, and words no reader understands. */
    private static final Pattern RAW =
            Pattern.compile("\\d\\.\\d{7,}|\\.\\.( |$)|NaN|Infinity|null|Exception|E-?\\d{1,2}\\b");

    /** How many of a plan's own options are tried on the ladder. */
    private static final int OPTIONS = 3;

    private final Job job;
    private final String which;
    private final List<String> broken = new ArrayList<>();

    private Laws(Job job, String which) {
        this.job = job;
        this.which = which;
    }

    /** A changed sheet; empty where it is refused, with a sentence, or where the check says why it cannot be planned. */
    static Optional<Job> mutant(Job good, List<CarLot.Change> changes, List<String> broken) {
        try {
            Job job = good;
            for (CarLot.Change change : changes) {
                job = job.with(change.path(), change.text());
            }
            return Check.plannable(job).isEmpty() ? Optional.of(job) : Optional.empty();
        } catch (IllegalArgumentException refused) {
            if (!isSentence(refused.getMessage())) {
                broken.add(changes + " is refused by no sentence: " + refused);
            }
        } catch (RuntimeException raw) {
            broken.add(changes + " ends in " + raw + " at " + raw.getStackTrace()[0]);
        }
        return Optional.empty();
    }

    /** How a plan can end. */
    enum End {
        /** The power asked for, every limit kept. */
        ASKED,
        /** Every limit kept, less power than asked for. */
        LESS,
        /** Some limit broken. */
        BROKEN,
        /** No plan, but a sentence. */
        SENTENCE
    }

    /** How the plan of a job ended, and the laws it breaks. */
    record Answer(End end, List<String> broken) {}

    static Answer of(Job job, String which) {
        Laws laws = new Laws(job, which);
        End end = End.SENTENCE;
        try {
            Plan plan = Plan.find(job);
            end = plan.parts().verdict() == Verdict.BROKEN ? End.BROKEN : plan.reached() ? End.ASKED : End.LESS;
            laws.answer(plan);
        } catch (IllegalArgumentException e) {
            laws.hold(isSentence(e.getMessage()), "the plan ends in no sentence: " + e.getMessage());
        } catch (RuntimeException raw) {
            laws.hold(false, "the plan ends in " + raw + " at " + raw.getStackTrace()[0]);
        }
        if (!laws.broken.isEmpty()) {
            job.save(Path.of("target", "cars", Integer.toHexString(which.hashCode()), "job.yaml"));
        }
        return new Answer(end, laws.broken);
    }

    /** What must be true of an evaluation, whoever chose the setup; of the laws that need a second one, one each turn. */
    static List<String> of(Job job, Setup setup, int turn, String which) {
        Laws laws = new Laws(job, which);
        try {
            Outcome outcome = Evaluate.of(job.car(), setup, job.stated());
            outcome.limits().all().forEach(laws::limit);
            laws.supply(outcome);
            if (!outcome.withNitrous().isEmpty()) {
                switch (turn % 4) {
                    case 0 -> laws.leaner(setup, outcome);
                    case 1 -> laws.lessCharge(setup, outcome);
                    case 2 -> laws.hotter(setup, outcome);
                    default ->
                        laws.hold(
                                outcome.limits()
                                        .equals(Evaluate.of(job.car(), setup, job.stated())
                                                .limits()),
                                "the same setup again gets other limits");
                }
            }
        } catch (IllegalArgumentException e) {
            laws.hold(isSentence(e.getMessage()), "the evaluation ends in no sentence: " + e.getMessage());
        } catch (RuntimeException raw) {
            laws.hold(false, "the evaluation ends in " + raw + " at " + raw.getStackTrace()[0]);
        }
        return laws.broken;
    }

    static boolean isSentence(String message) {
        return message != null && message.length() > 20 && !RAW.matcher(message).find();
    }

    private void hold(boolean law, String sentence) {
        if (!law) {
            broken.add(which + ": " + sentence);
        }
    }

    private void answer(Plan plan) {
        boolean kept = plan.outcomes().stream()
                .flatMap(outcome -> outcome.limits().all().stream())
                .allMatch(limit -> limit.verdict() != Verdict.BROKEN);
        hold(
                (plan.verdict() != Verdict.BROKEN) == (kept && plan.reached()),
                "the verdict is " + plan.verdict() + " where every limit is " + (kept ? "" : "not ")
                        + "kept and the power is " + (plan.reached() ? "" : "not ") + "reached");
        if (plan.verdict() == Verdict.BROKEN) {
            options(plan);
        }
        if (plan.parts().verdict() == Verdict.BROKEN) {
            boostAlone(plan);
        }
        hold(
                plan.reached() == plan.stopped().isEmpty(),
                "the power is " + (plan.reached() ? "" : "not ") + "reached; what stops it is said to be "
                        + plan.stopped());
        plan.limits().all().forEach(this::limit);
        String line = plan.verdictLine();
        hold(
                line.contains(QuantityKind.POWER.text(plan.stated().power(), UnitSystem.US))
                        && !RAW.matcher(line).find(),
                "the verdict does not say the power, or says it raw: " + line);
        hold(Plan.of(job, plan.setup()).limits().equals(plan.limits()), "the same setup again gets other limits");
        if (plan.setup().jets().isPresent() && !plan.stated().withNitrous().isEmpty()) {
            directions(plan.setup(), plan.stated());
        }
        plan.outcomes().forEach(this::supply);
    }

    private void limit(Limit limit) {
        hold(Double.isFinite(limit.bound()) && limit.scale() >= 0, limit.key() + " has the bound " + limit.bound());
        hold(
                Double.isFinite(limit.value()) || limit.verdict() == Verdict.BROKEN,
                limit.key() + " is kept without a value");
    }

    /** One pressure and one pump limit where both fuels come from one rail; two of each where not. */
    private void supply(Outcome outcome) {
        boolean rail = job.car().nitrous().fuel().onMainRail();
        for (String own : List.of("kit-pump", "fuel-cell")) {
            boolean held = outcome.limits().find(own).isPresent();
            hold(!rail || !held, own + " is held where the fuel comes from the main rail");
            hold(
                    rail || held || outcome.withNitrous().isEmpty(),
                    own + " is not held where the fuel comes from a cell");
        }
        for (OperatingPoint p : outcome.withNitrous()) {
            double both = p.main().massFlow() + (rail ? p.nitrousFuel().massFlow() : 0);
            hold(
                    Math.abs(p.main().pumped() - both) < 1e-12,
                    "the main pumps give " + p.main().pumped() + " kg/s where " + both + " are drawn");
            hold(
                    !rail || p.main().railPressure() == p.nitrousFuel().railPressure(),
                    "injectors and nozzles have one rail but two pressures");
        }
        Regulator set = outcome.setup().mainRegulator();
        if (rail && set.basePressure() > 1e5 && !outcome.withNitrous().isEmpty()) {
            Setup less = outcome.setup()
                    .withMainRegulator(new Regulator(set.name(), 0.9 * set.basePressure(), set.boostReference()));
            double rpm = outcome.setup().arming().rpmHigh();
            fuel(outcome, outcome.setup(), rpm)
                    .ifPresent(before -> hold(
                            fuel(outcome, less, rpm).orElse(Double.POSITIVE_INFINITY) < before,
                            "less pressure in the main rail gives the nozzles no less fuel"));
        }
    }

    private Optional<Double> fuel(Outcome outcome, Setup setup, double rpm) {
        return Evaluate.at(job.car(), setup, outcome.at(), rpm)
                .filter(p -> p.mode().nitrousFlows())
                .map(p -> p.nitrousFuel().massFlow());
    }

    /** Where the plan is broken, no jets of the ladder beside the exact ones of a setup that it calls kept keep everything. */
    private void options(Plan plan) {
        plan.alternatives().stream()
                .filter(option ->
                        option.verdict() != Verdict.BROKEN && job.target().reachedBy(option.wheelPower()))
                .sorted(Comparator.comparingDouble(Alternative::nitrousFlow))
                .limit(OPTIONS)
                .forEach(this::option);
    }

    private void option(Alternative option) {
        JetPair exact = option.setup().jets().orElseThrow();
        for (double nitrous : rungs(exact.nitrousBore())) {
            for (double fuel : rungs(exact.fuelBore())) {
                Plan other = Plan.of(job, option.setup().withJets(new JetPair(nitrous, fuel)));
                hold(
                        other.verdict() == Verdict.BROKEN,
                        "the plan is broken where its own option keeps everything: " + other.verdictLine());
            }
        }
    }

    private Set<Double> rungs(double bore) {
        double[] bores = job.car().nitrous().ladder().bores();
        double held = Math.min(Math.max(bore, bores[0]), bores[bores.length - 1]);
        JetLadder ladder = job.car().nitrous().ladder();
        return new TreeSet<>(List.of(ladder.below(held), ladder.above(held)));
    }

    /** Where a limit is broken, it is with the nitrous closed as well: else that would be the plan. */
    private void boostAlone(Plan plan) {
        BoostTarget boost = plan.setup().boost();
        Plan alone = Plan.of(
                job,
                plan.setup()
                        .withBoost(new BoostTarget(boost.off(), boost.off(), boost.tolerance()))
                        .withoutJets());
        hold(
                alone.parts().verdict() == Verdict.BROKEN,
                "the plan breaks a limit where boost alone keeps all: " + alone.verdictLine());
    }

    /** What must make things worse does. */
    private void directions(Setup setup, Outcome outcome) {
        leaner(setup, outcome);
        lessCharge(setup, outcome);
        hotter(setup, outcome);
        outcome.pass()
                .ifPresent(pass -> hold(
                        pass.wholePasses() == 0 || pass.moments().stream().allMatch(m -> m.liquid() > 0),
                        "a pass is counted without liquid"));
    }

    private void leaner(Setup setup, Outcome outcome) {
        JetPair jets = setup.jets().orElseThrow();
        Outcome lean = Evaluate.of(
                job.car(), setup.withJets(new JetPair(jets.nitrousBore(), 0.93 * jets.fuelBore())), outcome.at());
        worse("leaner jets", outcome, lean, "lambda-lean");
    }

    /** A fuller bottle has less vapour, whose pressure dips further at opening: only where that ends a pass may less charge give more. */
    private void lessCharge(Setup setup, Outcome outcome) {
        if (outcome.pass().filter(pass -> pass.end() == PassEnd.BAND_LOW).isPresent()) {
            return;
        }
        Setup less = setup.withBottle(
                new BottleFill(0.9 * setup.bottle().charge(), setup.bottle().startTemperature()));
        worse("a smaller charge", outcome, Evaluate.of(job.car(), less, outcome.at()), "passes");
    }

    private void hotter(Setup setup, Outcome outcome) {
        var air = outcome.at().air();
        // with the water it had: more of it damps knock
        double damp = air.vapourPressure() / new MoistAir(air.pressure(), air.temperature() + 8, 1).vapourPressure();
        var hotter = outcome.at().withAir(new MoistAir(air.pressure(), air.temperature() + 8, damp));
        Outcome hot = Evaluate.of(job.car(), setup, hotter);
        if (hot.withNitrous().size() == outcome.withNitrous().size()) {
            hold(
                    knock(hot) >= knock(outcome) - 1e-6,
                    "hotter air makes knock with nitrous less: " + knock(outcome) + " to " + knock(hot));
        }
    }

    private static double knock(Outcome outcome) {
        return outcome.withNitrous().stream()
                .mapToDouble(point -> point.cylinder().knock())
                .max()
                .orElseThrow();
    }

    private void worse(String what, Outcome before, Outcome after, String key) {
        Optional<Limit> a = before.limits().find(key);
        Optional<Limit> b = after.limits().find(key);
        if (a.isPresent() && b.isPresent()) {
            hold(
                    b.get().relativeMargin() <= a.get().relativeMargin() + 1e-6,
                    what + " make " + key + " better: " + a.get().relativeMargin() + " to "
                            + b.get().relativeMargin());
        }
    }
}
