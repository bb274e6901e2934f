package org.shotledger.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shotledger.car.Car;
import org.shotledger.curve.Bracket;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits.Closest;
import org.shotledger.job.Job;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetLadder;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/**
 * Finds the setup for a target: boost over engine speed, jets of the ladder, all cases at once.
 *
 * <p>Weighed, in this order: the power asked for, every limit kept, the least margin over all cases up to what is called tight, the
 * least nitrous. Beyond that margin less nitrous is worth more than more room.
 */
final class PlanSearch {
    /** Levels of boost that are tried, the least and the most among them: our choice. */
    private static final int LEVELS = 5;

    private static final String NO_SPEED =
            "no engine speed lies both in the range asked for and where the nitrous may be on";

    /** Share of the most boost at which the levels begin: our choice. */
    private static final double LEAST_LEVEL = 0.25;
    /** Engine speeds that a search looks at, both ends of the range among them; a plan itself looks at all: our choice. */
    private static final int SPEEDS = 6;
    /** Step of engine speed at which boost alone is searched, rev/min: our choice; between them it is a straight line. */
    private static final double ALONE_STEP = 500;
    /** Margins that differ by less than this are equal: half of what is printed. */
    private static final double SAME_MARGIN = 0.005;
    /** For how many levels of boost real jets are tried. */
    private static final int LEVELS_WITH_JETS = 2;
    /** How many setups for the power asked for are worked out in full and compared; after them the first that keeps everything will do. */
    private static final int FINALISTS = 3;

    /** Later spark means more nitrous, which may mean later spark again. */
    private static final int SPARK_ROUNDS = 3;
    /** Attainable power is searched up to this many times that of boost alone, in steps of this share. */
    private static final double MOST_TIMES = 3;

    /** Relative step to which the attainable power is found: our choice, what is printed of it. */
    private static final double ATTAINABLE_STEP = 0.01;
    /** How near, as a share, the most power with real jets is searched where the power asked for breaks a limit: our choice. */
    private static final double INSIDE_STEP = 0.02;

    private final Job job;
    private final Car car;
    private final Setup base;
    private final double[] speeds;
    private final List<CaseModel> cases;
    private final BoostCaps caps;

    private PlanSearch(Job job, double[] speeds) {
        this.job = job;
        this.car = job.car();
        this.speeds = speeds;
        this.base = job.setup().withBoost(BoostTarget.constant(car.turbo().boostCeiling()));
        JetPair middle = middle(car.nitrous().ladder());
        this.cases = models(job.cases(), middle);
        this.caps = new BoostCaps(car, cases);
    }

    private List<CaseModel> models(List<Case> at, JetPair jets) {
        CaseModel stated = CaseModel.of(car, base, jets, at.get(0), Double.NaN);
        return Stream.concat(
                        Stream.of(stated),
                        at.stream()
                                .skip(1)
                                .parallel()
                                .map(c -> CaseModel.of(car, base, jets, c, stated.referenceFlow())))
                .toList();
    }

    static Plan find(Job job) {
        double[] speeds = speeds(job);
        if (speeds.length == 0) {
            return Plan.of(job, job.setup().withoutJets()).stoppedBy(NO_SPEED);
        }
        Plan plan = new PlanSearch(job, speeds).plan();
        for (int round = 0; round < SPARK_ROUNDS; round++) {
            double retard = Spark.retard(plan);
            if (retard <= plan.setup().retard()) {
                break;
            }
            plan = new PlanSearch(job.with(job.setup().withRetard(retard)), speeds).plan();
        }
        return plan.comparedWith(job.setup());
    }

    private static JetPair middle(JetLadder ladder) {
        double[] bores = ladder.bores();
        double bore = bores[bores.length / 3];
        return new JetPair(bore, bore / 2);
    }

    /** Some speeds of the range in which the power is asked for and the nitrous may be on, ends included. */
    private static double[] speeds(Job job) {
        ActivationWindow window = job.setup().arming();
        var breathing = job.car().engine().volumetricEfficiency();
        double low =
                Math.max(breathing.low(), Math.max(window.rpmLow(), job.target().rpmLow()));
        double high = Math.min(
                job.car().engine().highestRpm(),
                Math.min(window.rpmHigh(), job.target().rpmHigh()));
        if (low > high) {
            return new double[0];
        }
        TreeSet<Double> speeds = new TreeSet<>();
        for (int i = 0; i < SPEEDS; i++) {
            speeds.add(low + (high - low) * i / (SPEEDS - 1));
        }
        return speeds.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private Plan plan() {
        BoostTable alone = caps.alone(aloneSpeeds());
        Optional<Setup> withoutNitrous = boostAlone(alone);
        if (withoutNitrous.isPresent()) {
            return Plan.of(job, withoutNitrous.get());
        }
        List<Candidate> found = candidates(alone, job);
        List<Alternative> weighed = found.stream().map(Candidate::alternative).toList();
        Optional<Plan> best = onRungs(found, alone, job, weighed);
        if (best.filter(PlanSearch::kept).isPresent()) {
            return best.get();
        }
        Optional<Plan> later = best.flatMap(this::openingLater);
        if (later.isPresent()) {
            return later.get();
        }
        Attainable most = most(alone, alonePower(alone, 1));
        String stop = best.filter(Plan::reached)
                .flatMap(plan -> plan.parts().first())
                .map(PlanSearch::stopper)
                .orElse(most.limit());
        return insideLimits(alone, most, weighed)
                .or(() -> best)
                .orElseGet(() -> Plan.of(job, onBoost(alone), weighed))
                .stoppedBy(stop);
    }

    /** The plan whose nitrous opens at the first speed for which there is an answer, where one is missing and that plan keeps every limit. */
    private Optional<Plan> openingLater(Plan plan) {
        OptionalDouble from = Opening.answered(plan);
        if (from.isEmpty()) {
            return Optional.empty();
        }
        ActivationWindow later =
                new ActivationWindow(from.getAsDouble(), job.setup().arming().rpmHigh());
        Job late = job.with(job.setup().withArming(later));
        double[] left = speeds(late);
        return left.length == 0
                ? Optional.empty()
                : Optional.of(new PlanSearch(late, left).plan())
                        .filter(found -> kept(found) && found.setup().jets().isPresent());
    }

    private static String stopper(Limit limit) {
        String where = limit.name() + ", " + limit.place() + ", case '" + limit.caseName() + "'";
        return limit.key().equals("answered") ? where + ", " + limit.reason() : where;
    }

    /**
     * The best plan with real jets in place of the exact ones: from the best levels, and where those do not keep every limit from the
     * others that would with exact jets, as a ladder that is coarse or begins late fits one level and not the next.
     */
    private Optional<Plan> onRungs(List<Candidate> found, BoostTable alone, Job asked, List<Alternative> weighed) {
        List<Candidate> levels = found.stream().sorted(Candidate.BEST_FIRST).toList();
        Optional<Plan> best = Optional.empty();
        for (int from = 0; from < levels.size(); from += LEVELS_WITH_JETS) {
            boolean worth = from == 0 || levels.get(from).kept();
            if (!worth || best.filter(plan -> answers(plan, asked)).isPresent()) {
                break;
            }
            List<Candidate> some = levels.subList(from, Math.min(from + LEVELS_WITH_JETS, levels.size()));
            Optional<Plan> next = best(withJets(some, alone, asked), asked, weighed);
            best = best.filter(b -> next.isEmpty() || better(asked).compare(b, next.get()) >= 0)
                    .or(() -> next);
        }
        return best;
    }

    private List<Candidate> withJets(List<Candidate> levels, BoostTable alone, Job asked) {
        return levels.stream()
                .flatMap(candidate -> new RungSearch(asked, car, cases, caps, alone, speeds).around(candidate).stream())
                .sorted(Candidate.BEST_FIRST)
                .toList();
    }

    private static boolean answers(Plan plan, Job asked) {
        return kept(plan) && asked.target().reachedBy(plan.stated().power());
    }

    private static boolean kept(Plan plan) {
        return plan.parts().verdict() != Verdict.BROKEN;
    }

    /** Where the power asked for would break a limit: the most power with every limit kept. Empty where nothing keeps them. */
    private Optional<Plan> insideLimits(BoostTable alone, Attainable most, List<Alternative> weighed) {
        double low = alonePower(alone, 1);
        double high = Math.min(most.wheelPower(), job.target().wheelPower());
        Optional<Plan> kept = Optional.of(Plan.of(job, onBoost(alone), weighed)).filter(PlanSearch::kept);
        for (double power = high; high - low > INSIDE_STEP * low; power = (low + high) / 2) {
            Job less = job.with(job.target().withWheelPower(power));
            Optional<Plan> plan =
                    onRungs(candidates(alone, less), alone, less, weighed).filter(found -> answers(found, less));
            if (plan.isPresent()) {
                kept = plan;
                low = power;
            } else {
                high = power;
            }
        }
        return kept;
    }

    private Setup onBoost(BoostTable table) {
        return base.withBoost(new BoostTarget(table, table, BoostTarget.USUAL_TOLERANCE))
                .withoutJets();
    }

    /**
     * The best by its full outcome. The first that keeps everything ends the work, as the next ones came out closer to some limit already,
     * unless the whole day, its passes above all, comes closer to a limit than the points that were searched.
     */
    private Optional<Plan> best(List<Candidate> withJets, Job asked, List<Alternative> weighed) {
        Optional<Plan> best = Optional.empty();
        for (int i = 0; i < withJets.size(); i++) {
            Candidate candidate = withJets.get(i);
            boolean compared = asked.equals(job) && i < FINALISTS;
            if (!compared && best.filter(b -> answers(b, asked)).isPresent()) {
                break;
            }
            if (!compared && !(candidate.nearlyKept() && keeps(candidate.setup()))) {
                continue;
            }
            Plan plan = Plan.of(job, candidate.setup(), weighed);
            best = Optional.of(
                    best.filter(b -> better(asked).compare(b, plan) >= 0).orElse(plan));
            double seen = Math.min(candidate.closest().margin(), Limit.CAUTION) - SAME_MARGIN;
            if (answers(plan, asked) && plan.parts().leastMargin() >= seen) {
                break;
            }
        }
        return best;
    }

    /** Whether a setup keeps every limit in every case; ends with the first case in which it does not. */
    private boolean keeps(Setup setup) {
        return job.cases().stream()
                .allMatch(at -> Evaluate.of(car, setup, at).limits().verdict() != Verdict.BROKEN);
    }

    /** Some levels of boost, then those beside the best of them. */
    private List<Candidate> candidates(BoostTable alone, Job asked) {
        double most = 0;
        for (int i = speeds.length / 2; i < speeds.length; i++) {
            most = Math.max(most, alone.at(speeds[i]));
        }
        ShotSearch search = new ShotSearch(asked, car, cases, caps, alone, speeds);
        double step = most * (1 - LEAST_LEVEL) / (LEVELS - 1);
        double highest = most;
        List<Candidate> some = search.at(IntStream.range(0, LEVELS).mapToDouble(i -> highest - i * step));
        DoubleStream beside = some.stream()
                .min(Candidate.BEST_FIRST)
                .map(best -> DoubleStream.of(best.level() - 0.5 * step, best.level() + 0.5 * step))
                .orElseGet(DoubleStream::empty);
        return Stream.concat(some.stream(), search.at(beside.filter(level -> level <= highest && level > 0)).stream())
                .sorted(Comparator.comparingDouble(Candidate::level))
                .toList();
    }

    /** The most power inside every limit, with exact jets and at the speeds a search looks at. */
    static Attainable attainable(Job job) {
        double[] speeds = speeds(job);
        if (speeds.length == 0) {
            return new Attainable(0, NO_SPEED);
        }
        PlanSearch search = new PlanSearch(job, speeds);
        BoostTable alone = search.caps.alone(search.aloneSpeeds());
        return search.most(alone, search.alonePower(alone, 1));
    }

    /** The most power inside every limit, from that of boost alone upwards, and what stops more; the power asked for does not matter. */
    private Attainable most(BoostTable alone, double least) {
        double low = least;
        double high = MOST_TIMES * least;
        String stopper = "the nitrous jets: none of the ladder gives more";
        while (high - low > ATTAINABLE_STEP * low) {
            double middle = (low + high) / 2;
            Optional<Candidate> best = candidates(alone, job.with(job.target().withWheelPower(middle))).stream()
                    .min(Candidate.BEST_FIRST);
            if (best.filter(Candidate::kept).isPresent()) {
                low = middle;
            } else {
                high = middle;
                stopper = best.filter(Candidate::reached)
                        .map(c -> c.closest().name())
                        .orElse(stopper);
            }
        }
        return new Attainable(low, stopper);
    }

    private static Comparator<Plan> better(Job asked) {
        return Comparator.comparing(
                        (Plan plan) -> asked.target().reachedBy(plan.stated().power()))
                .thenComparing(PlanSearch::kept)
                .thenComparing(plan -> Math.floor(Math.min(plan.parts().leastMargin(), Limit.CAUTION) / SAME_MARGIN))
                .thenComparing(plan -> -plan.stated()
                        .strongest()
                        .map(point -> point.nitrous().massFlow())
                        .orElse(0.0));
    }

    private double[] aloneSpeeds() {
        TreeSet<Double> all = new TreeSet<>();
        for (double rpm : speeds) {
            all.add(rpm);
        }
        var breathing = car.engine().volumetricEfficiency();
        double high = car.engine().highestRpm();
        double opens = Math.max(breathing.low(), base.arming().rpmLow());
        double low = Math.max(breathing.low(), Math.min(opens, Math.min(0.6 * speeds[0], 0.5 * high)));
        all.add(opens);
        for (double rpm = ALONE_STEP * Math.ceil(low / ALONE_STEP); rpm < high; rpm += ALONE_STEP) {
            all.add(rpm);
        }
        all.add(high);
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The least boost that gives the power asked for without nitrous, where some does inside every limit. */
    private Optional<Setup> boostAlone(BoostTable alone) {
        if (alonePower(alone, 1) < job.target().wheelPower()) {
            return Optional.empty();
        }
        double share = Bracket.edge(
                        some -> alonePower(alone, some) >= job.target().wheelPower(), 1, 0, 1e-4)
                .inside();
        BoostTable table = alone.map(gauge -> Math.min(gauge, BoostCaps.roundedUp(gauge * share)));
        return Optional.of(onBoost(table));
    }

    private double alonePower(BoostTable alone, double share) {
        double most = 0;
        for (double rpm : speeds) {
            most = Math.max(
                    most,
                    cases.get(0)
                            .off(rpm, share * alone.at(rpm))
                            .map(OperatingPoint::wheelPower)
                            .orElse(0.0));
        }
        return most;
    }

    /**
     * A setup that is weighed.
     *
     * @param setup the setup
     * @param level boost held where nothing takes it back, Pa above ambient
     * @param power in the case of the target, W
     * @param added what the nitrous adds of that, W
     * @param shot the nitrous flow and the fuel jet
     * @param closest the closest limit at the speeds looked at, over all cases
     * @param reached whether the power is what is asked for
     */
    record Candidate(
            Setup setup, double level, double power, double added, Shot shot, Closest closest, boolean reached) {
        static final Comparator<Candidate> BEST_FIRST = Comparator.comparing(Candidate::reached)
                .thenComparing(c -> c.closest.margin() >= 0)
                .thenComparing(c -> Math.floor(Math.min(c.closest.margin(), Limit.CAUTION) / SAME_MARGIN))
                .thenComparing(c -> c.reached ? -c.shot.nitrousFlow() : c.power)
                .reversed();

        boolean kept() {
            return reached && closest.margin() >= 0;
        }

        /** The flow of a shot is scaled while it is searched: a margin a little below zero may turn out above it. */
        boolean nearlyKept() {
            return reached && closest.margin() >= -Limit.CAUTION;
        }

        Alternative alternative() {
            Verdict verdict = closest.margin() < 0
                    ? Verdict.BROKEN
                    : closest.margin() < Limit.CAUTION ? Verdict.TIGHT : Verdict.HOLDS;
            return new Alternative(
                    setup, level, power, added, shot.nitrousFlow(), closest.margin(), closest.name(), verdict);
        }
    }
}
