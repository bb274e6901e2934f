package org.shotledger.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.car.Car;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.evaluate.PointLimits.Closest;
import org.shotledger.job.Job;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.PlanSearch.Candidate;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/** What a search finds, held against the models: power and mixture as asked, the rungs beside the exact jets, the boost that is borne. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SearchFiguresTest {
    private static final double PSI = 6894.757293168361;
    private static final double HP = 745.69987158227022;
    private static final double[] SPEEDS = {6000, 6800, 7600};

    private final Job job = Job.load(Path.of("../../data/whimbrel"));
    private final Car car = job.car();
    private final List<CaseModel> cases = models();
    private final BoostCaps caps = new BoostCaps(car, cases);
    private final BoostTable alone = caps.alone(new double[] {4000, 5800, 6000, 6800, 7600, 8000});

    private List<CaseModel> models() {
        Case cold = job.caseNamed("cold");
        Setup base = job.setup().withBoost(BoostTarget.constant(car.turbo().boostCeiling()));
        JetPair pair = new JetPair(1e-3, 0.5e-3);
        CaseModel stated = CaseModel.of(car, base, pair, job.stated(), Double.NaN);
        return List.of(stated, CaseModel.of(car, base, pair, cold, stated.referenceFlow()));
    }

    private Job asking(double horsepower) {
        return job.with(job.target().withWheelPower(horsepower * HP));
    }

    private ShotSearch search(Job asked) {
        return new ShotSearch(asked, car, cases, caps, alone, SPEEDS);
    }

    private Candidate candidate(double horsepower, double level) {
        List<Candidate> found = search(asking(horsepower)).at(DoubleStream.of(level));
        assertEquals(1, found.size());
        return found.get(0);
    }

    private OperatingPoint point(CaseModel at, Candidate c, double rpm) {
        return at.point(rpm, c.setup().boost().armed().at(rpm), c.shot());
    }

    private double most(Candidate c) {
        return DoubleStream.of(SPEEDS)
                .map(rpm -> point(cases.get(0), c, rpm).wheelPower())
                .max()
                .orElseThrow();
    }

    @Test
    void a_shot_gives_the_power_asked_for_at_the_mixture_asked_for() {
        Candidate c = candidate(640, 15 * PSI);
        assertTrue(c.reached() && c.power() < 640.0 * HP * 1.004, "hp: " + c.power() / HP);
        assertEquals(c.power(), most(c), 1e-6 * c.power());
        assertEquals(15 * PSI, c.level());
        double strongest = Stream.of(6000.0, 6800.0, 7600.0)
                .max(Comparator.comparingDouble(
                        rpm -> point(cases.get(0), c, rpm).wheelPower()))
                .orElseThrow();
        OperatingPoint off = cases.get(0)
                .off(strongest, c.setup().boost().armed().at(strongest))
                .orElseThrow();
        assertEquals(c.power() - off.wheelPower(), c.added(), 1e-6 * c.power());
        // at the highest speed, where the mixture is settled to a thousandth
        assertEquals(0.78, point(cases.get(0), c, 7600).lambda(), 0.002);
        JetPair jets = c.setup().jets().orElseThrow();
        assertEquals(c.shot().fuelBore(), jets.fuelBore());
        double flow = cases.get(0).model().nitrousFlow(cases.get(0).ambient() + alone.highest(), jets.nitrousBore());
        assertEquals(c.shot().nitrousFlow(), flow, 0.01 * flow);
        Closest least = cases.stream()
                .flatMap(at -> DoubleStream.of(SPEEDS).mapToObj(rpm -> PointLimits.of(car, point(at, c, rpm))))
                .min(Comparator.comparingDouble(Closest::margin))
                .orElseThrow();
        assertEquals(least, c.closest());
    }

    /** More boost needs less nitrous for the same power; beyond what the jets give the strongest shot is left. */
    @Test
    void levels_trade_boost_for_nitrous() {
        List<Candidate> found = search(asking(640)).at(DoubleStream.of(11 * PSI, 14 * PSI, 16 * PSI));
        assertEquals(3, found.size());
        for (int i = 1; i < 3; i++) {
            assertTrue(found.get(i).shot().nitrousFlow()
                    < 0.97 * found.get(i - 1).shot().nitrousFlow());
        }
        Candidate far = candidate(2000, 14 * PSI);
        assertTrue(!far.reached() && far.power() > 640 * HP, "hp: " + far.power() / HP);
        assertEquals(
                List.of(),
                search(asking(640)).at(DoubleStream.of(60 * PSI)).stream()
                        .filter(c -> c.level() > 60 * PSI)
                        .toList());
    }

    /** Held at the level where it is borne: at most the table alone, on its speeds, in tenths of a psi, less where the heaviest case needs it. */
    @Test
    void the_boost_of_a_level_is_borne_by_the_heaviest_case() {
        ShotSearch search = search(asking(640));
        Shot shot = new Shot(0.13, 0.58e-3);
        double level = 16 * PSI;
        CaseModel[] heaviest = search.heaviest(level, shot);
        assertEquals(3, heaviest.length);
        BoostTarget boost = search.boost(level, shot, heaviest);
        assertEquals(alone, boost.off());
        assertEquals(0.05e5, boost.tolerance());
        BoostTable armed = boost.armed();
        assertEquals(
                List.of(4000.0, 5800.0, 6000.0, 6800.0, 7600.0, 8000.0),
                armed.steps().stream().map(BoostTable.Step::rpm).toList());
        for (BoostTable.Step step : armed.steps()) {
            double tenths = step.gaugePressure() / (0.1 * PSI);
            assertEquals(Math.rint(tenths), tenths, 1e-6, step.toString());
            assertTrue(step.gaugePressure() <= alone.at(step.rpm()) + 1e-6, step.toString());
            assertTrue(step.gaugePressure() <= level, step.toString());
        }
        assertEquals(Math.min(armed.at(5800), alone.at(4000)), armed.at(4000), 1e-6, "below the window as at it");
        assertEquals(Math.min(armed.at(7600), alone.at(8000)), armed.at(8000), 1e-6);
        int taken = 0;
        for (int i = 0; i < SPEEDS.length; i++) {
            double gauge = armed.at(SPEEDS[i]);
            double load =
                    PointLimits.load(car, heaviest[i].on(SPEEDS[i], gauge, shot).orElseThrow());
            assertTrue(load <= 0.945 * 1.001, SPEEDS[i] + ": " + load);
            double held = Math.min(level, alone.at(SPEEDS[i]));
            if (gauge < BoostCaps.roundedDown(held)) {
                taken++;
                double more = PointLimits.load(
                        car, heaviest[i].on(SPEEDS[i], gauge + 0.4 * PSI, shot).orElseThrow());
                assertTrue(more > 0.93, "no more is taken back than must be: " + more);
            }
        }
        assertTrue(taken > 0, "the shot takes boost back somewhere");
        // where the nitrous opens there is room for what the control overshoots
        double opening = PointLimits.load(
                car, heaviest[0].on(5800, armed.at(5800) + 0.05e5, shot).orElseThrow());
        assertTrue(opening <= 0.945 * 1.001, "load " + opening);
        double power = search.power(1, level, shot, heaviest);
        assertEquals(cases.get(0).on(6800, armed.at(6800), shot).orElseThrow().wheelPower(), power, 1e-9 * power);
    }

    /** The rungs on either side of both exact jets, each with the boost, in tenths of a psi, that gives the power and less that does not. */
    @Test
    void rungs_stand_on_either_side_of_the_exact_jets() {
        Candidate exact = candidate(640, 14 * PSI);
        List<Candidate> found = new RungSearch(asking(640), car, cases, caps, alone, SPEEDS).around(exact);
        assertEquals(4, found.size());
        double[] ladder = car.nitrous().ladder().bores();
        double bore = exact.setup().jets().orElseThrow().nitrousBore();
        int above = (int)
                IntStream.range(0, ladder.length).filter(i -> ladder[i] < bore).count();
        for (Candidate c : found) {
            JetPair jets = c.setup().jets().orElseThrow();
            assertTrue(jets.nitrousBore() == ladder[above] || jets.nitrousBore() == ladder[above - 1], jets.toString());
            assertTrue(c.reached() && c.power() >= 640 * HP * 0.999, jets + ": " + c.power() / HP);
            assertTrue(c.power() < 640 * HP * 1.01, jets + ": " + c.power() / HP);
            assertEquals(c.power(), most(c), 1e-6 * c.power());
            double tenths = c.level() / (0.1 * PSI);
            assertEquals(Math.rint(tenths), tenths, 1e-6);
            double flow = cases.get(0).model().nitrousFlow(cases.get(0).ambient() + exact.level(), jets.nitrousBore());
            assertEquals(flow, c.shot().nitrousFlow(), 1e-9 * flow);
            assertEquals(jets.fuelBore(), c.shot().fuelBore());
        }
        // a larger nitrous jet needs less boost
        double[] levels = found.stream()
                .sorted(Comparator.comparingDouble(
                        c -> c.setup().jets().orElseThrow().nitrousBore()))
                .mapToDouble(Candidate::level)
                .toArray();
        assertTrue(Math.min(levels[0], levels[1]) > Math.max(levels[2], levels[3]), java.util.Arrays.toString(levels));
    }

    /** In this order: the power, the limits, the margin up to a twentieth in half per cents, the least nitrous, or the most power. */
    @Test
    void candidates_are_weighed_in_order() {
        Candidate missed = candidate(600, 0.02, false, 0.10);
        Candidate more = candidate(610, 0.02, false, 0.10);
        Candidate broken = candidate(640, -0.01, true, 0.10);
        Candidate tight = candidate(640, 0.021, true, 0.10);
        Candidate same = candidate(640, 0.024, true, 0.09);
        Candidate roomy = candidate(640, 0.06, true, 0.12);
        Candidate wide = candidate(640, 0.20, true, 0.11);
        assertEquals(
                List.of(wide, roomy, same, tight, broken, more, missed),
                Stream.of(missed, broken, roomy, same, tight, wide, more)
                        .sorted(Candidate.BEST_FIRST)
                        .toList());
        assertTrue(tight.kept() && !broken.kept() && !more.kept());
        assertTrue(candidate(640, 0, true, 0.1).kept());
        assertTrue(broken.nearlyKept() && candidate(640, -0.05, true, 0.1).nearlyKept());
        assertTrue(!candidate(640, -0.051, true, 0.1).nearlyKept() && !missed.nearlyKept());
        assertEquals(Verdict.BROKEN, broken.alternative().verdict());
        assertEquals(Verdict.TIGHT, candidate(640, 0, true, 0.1).alternative().verdict());
        assertEquals(
                Verdict.HOLDS, candidate(640, 0.05, true, 0.1).alternative().verdict());
        assertEquals(
                new Alternative(job.setup(), 1e5, 640 * HP, 2e5, 0.10, 0.021, "torque", Verdict.TIGHT),
                tight.alternative());
    }

    private Candidate candidate(double horsepower, double margin, boolean reached, double flow) {
        return new Candidate(
                job.setup(), 1e5, horsepower * HP, 2e5, new Shot(flow, 0.5e-3), new Closest("torque", margin), reached);
    }
}
