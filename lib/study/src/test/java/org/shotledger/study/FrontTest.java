package org.shotledger.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.study.Rank.Ranked;

/**
 * The front that a study lists against all of its 11,000 combinations. Those that may better a listed one, by tables that err by no more
 * than a grain, are worked out exactly; with {@code -Dshotledger.brute=true} all are (some 15 minutes of one processor).
 */
class FrontTest {
    private static final boolean BRUTE = Boolean.getBoolean("shotledger.brute");
    /** How far the figures of those that are not worked out exactly may be off. */
    private static final double SLACK = BRUTE ? 0 : Front.GRAIN;
    /** Draws that meet each of the combinations but for one in e^12. */
    private static final int DRAWS = 12;

    @TempDir
    private static Path folder;

    private static Study study;
    /** The front and all combinations, in figures that can be compared. */
    private static List<Ranked> listed;

    private static List<Ranked> all;

    @BeforeAll
    static void workOut() throws IOException {
        Space space = space(DrawnSpaces.plans(folder).stream()
                .filter(plan -> plan.job().name().equals("methanol six"))
                .findFirst()
                .orElseThrow());
        study = Study.of(space.plan().job(), space);
        listed = study.front().stream().map(Candidate::ranked).toList();
        Map<Boolean, List<Ranked>> tables =
                tables(space).stream().collect(Collectors.partitioningBy(one -> BRUTE || mayBetter(one)));
        List<Long> asked = tables.get(true).stream().map(Ranked::index).toList();
        all = Stream.concat(
                        tables.get(false).stream(),
                        Candidates.of(space, asked).stream().map(Candidate::ranked))
                .toList();
        assertTrue(all.size() > 10_990, all.size() + " combinations only");
    }

    private static Space space(Plan plan) {
        Setup setup = plan.setup();
        return Space.of(plan)
                .vary(Axis.RETARD, 2, 5)
                .vary(Axis.BOOST_FACTOR, 0.9, 0.95, 1, 1.05, 1.1)
                .vary(Axis.NITROUS_JET, even(setup.jets().orElseThrow().nitrousBore(), 0.2, 11))
                .vary(Axis.FUEL_JET, even(setup.jets().orElseThrow().fuelBore(), 0.2, 10))
                .vary(Axis.FUEL_PRESSURE, even(setup.nitrousRegulator().basePressure(), 0.15, 10));
    }

    private static double[] even(double middle, double share, int count) {
        return IntStream.range(0, count)
                .mapToDouble(i -> middle * (1 - share + 2 * share * i / (count - 1)))
                .toArray();
    }

    private static List<Ranked> tables(Space space) {
        long row = Circuits.of(space);
        List<BottleSide.Row> rows = Sweep.first(space).rows();
        return Sweep.of(space, DRAWS * (int) space.size()).samples.stream()
                .map(s -> new Ranked(
                        s.index(),
                        s.margin(),
                        s.power(),
                        rows.get((int) (s.index() / row % rows.size())).flow()[0]))
                .toList();
    }

    private static boolean mayBetter(Ranked one) {
        return listed.stream()
                .anyMatch(member -> one.margin() >= member.margin() - Front.GRAIN
                        && one.power() >= member.power() * (1 - Front.GRAIN)
                        && one.nitrous() <= member.nitrous() * (1 + Front.GRAIN));
    }

    @Test
    void noCombinationBettersAListedMember() {
        assertFalse(listed.isEmpty());
        for (Ranked member : listed) {
            all.stream()
                    .filter(other -> other.margin() >= 0 && Rank.dominates(other, member))
                    .forEach(other -> assertEquals(member, other));
        }
    }

    @Test
    void theEndsOfEveryObjectiveAreListed() {
        Ranked most = kept().max(Comparator.comparingDouble(Ranked::power)).orElseThrow();
        Ranked safest = kept().max(Comparator.comparingDouble(Ranked::margin)).orElseThrow();
        Ranked leanest = kept().min(Comparator.comparingDouble(Ranked::nitrous)).orElseThrow();
        assertTrue(listed.stream().anyMatch(one -> one.power() >= most.power() * (1 - SLACK)), "power");
        assertTrue(listed.stream().anyMatch(one -> one.margin() >= safest.margin() - SLACK), "margin");
        assertTrue(listed.stream().anyMatch(one -> one.nitrous() <= leanest.nitrous() * (1 + SLACK)), "nitrous");
    }

    @Test
    void everyCombinationThatKeepsTheLimitsHasAListedOneWithinTheStatedGrain() {
        double grain = study.frontGrain() + SLACK;
        Plan plan = study.space().plan();
        double power = grain * plan.target().wheelPower();
        double nitrous =
                grain * plan.stated().strongest().orElseThrow().nitrous().massFlow();
        List<Ranked> alone = kept().filter(one -> listed.stream()
                        .noneMatch(member -> member.margin() >= one.margin() - grain
                                && member.power() >= one.power() - power
                                && member.nitrous() <= one.nitrous() + nitrous))
                .toList();
        assertEquals(List.of(), alone);
    }

    private static Stream<Ranked> kept() {
        return all.stream().filter(one -> one.margin() >= 0);
    }
}
