package org.shotledger.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;

/** Studies against the exact outcome of every one of their combinations. */
class StudyTest {
    private static final Space SPACE = DemoSpace.SPACE;
    private static final List<Candidate> EXACT =
            Candidates.of(SPACE, LongStream.range(0, SPACE.size()).boxed().toList());
    private static final Study STUDY = Study.of(DemoSpace.JOB, SPACE, new Study.Exact(6, 10, 8));
    /** Enough draws to meet nearly every combination of the space. */
    private static final int ALL = 400;

    @Test
    void tablesAreAsNearToBruteForceAsStated() {
        Difference stated = STUDY.difference();
        Map<Long, Difference.Sample> table = tables(SPACE);
        List<Difference> each = table.values().stream()
                .map(sample -> Difference.one(sample, EXACT.get((int) sample.index())))
                .toList();
        long power = each.stream().filter(one -> one.power() <= stated.power()).count();
        long margin =
                each.stream().filter(one -> one.margin() <= stated.margin()).count();
        long lambda =
                each.stream().filter(one -> one.lambda() <= stated.lambda()).count();
        assertTrue(table.size() > 0.9 * SPACE.size());
        long least = Math.min(power, Math.min(margin, lambda));
        assertTrue(least >= stated.covered() * table.size(), least + " of " + table.size() + " within " + stated);
        assertTrue(stated.margin() < 0.005 && stated.power() < 0.003, stated.toString());
    }

    /** It is worked out in parts that others share, its plan as a whole. */
    @Test
    void aCandidateIsItsPlan() {
        for (Candidate one : List.of(EXACT.get(0), EXACT.get(17), EXACT.get(35))) {
            Plan plan = Plan.of(DemoSpace.JOB, one.setup());
            assertEquals(Set.copyOf(plan.parts().all()), Set.copyOf(one.limits().all()));
            OperatingPoint peak = plan.stated().strongest().orElseThrow();
            assertEquals(peak.rpm(), one.peak().orElseThrow().rpm());
            assertEquals(peak.wheelPower(), one.wheelPower());
            assertEquals(peak.lambda(), one.lambda());
            assertEquals(peak.nitrous().massFlow(), one.nitrousFlow());
            assertEquals(plan.reached(), one.reached());
            assertEquals(plan.limits(), one.plan().limits());
        }
    }

    @Test
    void countsAreThoseOfBruteForceButForVerdictsWithinTheDifference() {
        double doubt = tables(SPACE).values().stream()
                .mapToDouble(sample ->
                        Difference.one(sample, EXACT.get((int) sample.index())).margin())
                .max()
                .orElseThrow();
        long surely = EXACT.stream().filter(c -> c.margin() > doubt).count();
        long perhaps = EXACT.stream().filter(c -> c.margin() >= -doubt).count();
        assertTrue(surely > 0 && perhaps < SPACE.size(), "the space holds both kinds");
        assertTrue(STUDY.kept() >= surely && STUDY.kept() <= perhaps, surely + " " + STUDY.kept() + " " + perhaps);
        long refused =
                STUDY.refusedBy().values().stream().mapToLong(Long::longValue).sum();
        assertEquals(SPACE.size(), STUDY.kept() + refused);
        assertEquals(
                SPACE.size(),
                STUDY.histogram().all().stream().mapToLong(Long::longValue).sum());
        assertEquals(
                STUDY.kept(),
                STUDY.histogram().kept().stream().mapToLong(Long::longValue).sum());
    }

    @Test
    void noListedMemberOfTheFrontIsBetteredByAnother() {
        assertFalse(STUDY.front().isEmpty());
        for (Candidate member : STUDY.front()) {
            assertTrue(member.margin() >= 0);
            for (Candidate other : STUDY.front()) {
                assertFalse(Rank.dominates(other.ranked(), member.ranked()));
            }
        }
    }

    @Test
    void noCombinationBettersAMemberByMoreThanTheGrain() {
        double grain = STUDY.frontGrain();
        double power = grain * DemoSpace.JOB.target().wheelPower();
        double nitrous = grain
                * DemoSpace.PLAN.stated().strongest().orElseThrow().nitrous().massFlow();
        for (Candidate member : STUDY.front()) {
            for (Candidate other : EXACT) {
                assertFalse(
                        other.margin() > member.margin() + grain
                                && other.wheelPower() > member.wheelPower() + power
                                && other.nitrousFlow() < member.nitrousFlow() - nitrous,
                        member.index() + " by " + other.index());
            }
        }
    }

    @Test
    void theBestIsTheBestOfBruteForce() {
        Candidate best = EXACT.stream()
                .min((a, b) -> Rank.bestFirst(DemoSpace.JOB.target()).compare(a.ranked(), b.ranked()))
                .orElseThrow();
        assertTrue(best.margin() >= 0);
        assertEquals(best.index(), STUDY.best().get(0).index());
    }

    @Test
    void aVerdictDoesNotHangOnTheOtherValuesOfAnAxis() {
        Space one = DemoSpace.around(DemoSpace.unknown(DemoSpace.PLAN)).vary(Axis.BOOST, "1.2 bar gauge");
        Space two =
                DemoSpace.around(DemoSpace.unknown(DemoSpace.PLAN)).vary(Axis.BOOST, "1.2 bar gauge", "1.3 bar gauge");
        Map<Long, Difference.Sample> alone = tables(one);
        Map<Long, Difference.Sample> beside = tables(two);
        int compared = 0;
        for (Difference.Sample sample : alone.values()) {
            Difference.Sample same = beside.get(sample.index());
            if (same != null) {
                assertEquals(one.setup(sample.index()), two.setup(same.index()));
                assertEquals(sample.margin(), same.margin(), 1e-12);
                assertEquals(sample.power(), same.power(), 1e-6);
                compared++;
            }
        }
        assertTrue(compared > one.size() / 2);
    }

    @Test
    void countsAreTheSameOnOneAndTwoThreads() throws Exception {
        Study one = on(1);
        Study two = on(2);
        assertEquals(one.kept(), two.kept());
        assertEquals(one.reached(), two.reached());
        assertEquals(one.refusedBy(), two.refusedBy());
        assertEquals(one.histogram(), two.histogram());
        assertEquals(indices(one.best()), indices(two.best()));
        assertEquals(indices(one.front()), indices(two.front()));
    }

    @Test
    void whereNothingReachesThePowerTheBestThatKeepsTheLimitsIsShown() {
        Job more = DemoSpace.JOB.with(DemoSpace.JOB.target().withWheelPower(900e3));
        Study study = Study.of(more, SPACE, new Study.Exact(4, 0, 0));
        assertEquals(0, study.reached());
        double most = EXACT.stream()
                .filter(c -> c.margin() >= 0)
                .mapToDouble(Candidate::wheelPower)
                .max()
                .orElseThrow();
        assertEquals(most, study.best().get(0).wheelPower(), 1e-6 * most);
        assertTrue(study.best().stream().allMatch(c -> c.margin() >= 0));
    }

    /** What is known of a plan saves work and changes nothing. */
    @Test
    void aStudyIsTheSameWhateverWasStudiedBefore() {
        Plan plan = DemoSpace.unknown(DemoSpace.PLAN);
        Study.of(DemoSpace.JOB, Space.of(plan).vary(Axis.BOOST, "1.1 bar gauge", "1.4 bar gauge"), Study.Exact.USUAL);
        Study.of(DemoSpace.JOB, Space.of(plan).vary(Axis.MIXTURE, 0.78, 0.82).vary(Axis.RETARD, 0, 3, 6));
        Study.of(DemoSpace.JOB, Space.of(plan).ladder(Axis.NITROUS_JET, "30 thou", "42 thou"));
        Space around = DemoSpace.around(plan);
        Study.Exact exact = new Study.Exact(6, 10, 8);
        same(STUDY, Study.of(DemoSpace.JOB, around, exact));
        same(STUDY, Study.of(DemoSpace.JOB, around, exact));
    }

    private static void same(Study one, Study other) {
        assertEquals(one.kept(), other.kept());
        assertEquals(one.reached(), other.reached());
        assertEquals(one.refusedBy(), other.refusedBy());
        assertEquals(one.histogram(), other.histogram());
        assertEquals(one.difference(), other.difference());
        assertEquals(one.frontGrain(), other.frontGrain());
        assertEquals(figures(one.best()), figures(other.best()));
        assertEquals(figures(one.front()), figures(other.front()));
    }

    private static List<Rank.Ranked> figures(List<Candidate> candidates) {
        return candidates.stream().map(Candidate::ranked).toList();
    }

    @Test
    void anInterruptStopsIt() {
        Thread.currentThread().interrupt();
        try {
            assertThrows(CancellationException.class, () -> Study.of(DemoSpace.JOB, SPACE));
        } finally {
            assertTrue(Thread.interrupted());
        }
    }

    /** One bottle temperature and jet, so many fuel pressures that they are shared among the threads: each counts once. */
    @Test
    void aSingleRowIsCountedWholeThoughItIsCutInParts() {
        Space row = Space.of(DemoSpace.PLAN).range(Axis.FUEL_PRESSURE, "1 bar gauge", "9 bar gauge", 700);
        Tally tally = Sweep.of(row, 20 * 700);
        List<Difference.Sample> all = tally.samples;
        assertEquals(700, all.size(), "each drawn at least once");
        assertEquals(all.stream().filter(one -> one.margin() >= 0).count(), tally.kept);
        assertEquals(700, tally.kept + Arrays.stream(tally.refused).sum());
        assertTrue(tally.kept > 0 && tally.kept < 700, tally.kept + " kept");
        Difference.Sample strongest = all.stream()
                .filter(one -> one.margin() >= 0)
                .max(Comparator.comparingDouble(Difference.Sample::power))
                .orElseThrow();
        Difference.Sample safest = all.stream()
                .max(Comparator.comparingDouble(Difference.Sample::margin))
                .orElseThrow();
        List<Long> members = tally.front.thinned(50).members().stream()
                .map(Rank.Ranked::index)
                .toList();
        assertTrue(members.contains(strongest.index()) && members.contains(safest.index()), members.toString());
        for (Rank.Ranked member : tally.front.thinned(50).members()) {
            assertTrue(
                    all.stream()
                            .noneMatch(other -> other.margin() >= member.margin() + Front.GRAIN
                                    && other.power() >= member.power() * (1 + Front.GRAIN)),
                    member.toString());
        }
    }

    @Test
    void setupsSideBySideHoldTheirPlans() {
        SideBySide beside =
                SideBySide.of(DemoSpace.JOB, Map.of("small", SPACE.setup(0), "large", SPACE.setup(SPACE.size() - 1)));
        assertEquals(EXACT.get(0).plan().limits(), beside.plans().get("small").limits());
        assertEquals(SPACE.setup(0), beside.setups().get("small"));
        assertThrows(
                IllegalArgumentException.class, () -> SideBySide.of(DemoSpace.JOB, Map.of("alone", SPACE.setup(0))));
    }

    private static Study on(int threads) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            Space unknown = DemoSpace.around(DemoSpace.unknown(DemoSpace.PLAN));
            return pool.submit(() -> Study.of(DemoSpace.JOB, unknown, new Study.Exact(2, 2, 0)))
                    .get();
        } finally {
            pool.shutdown();
        }
    }

    private static List<Long> indices(List<Candidate> candidates) {
        return candidates.stream().map(Candidate::index).toList();
    }

    private static Map<Long, Difference.Sample> tables(Space space) {
        Map<Long, Difference.Sample> samples = new HashMap<>();
        Sweep.of(space, ALL).samples.forEach(sample -> samples.put(sample.index(), sample));
        return samples;
    }
}
