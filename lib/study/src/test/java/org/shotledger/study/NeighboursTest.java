package org.shotledger.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.evaluate.PointModel;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;

/** What tables say of a combination hangs on nothing but that combination, also where maps and ranges end. */
class NeighboursTest {
    /** Cars with a fuel cell and with the nitrous fuel from the main rail, on petrol and on methanol. */
    private static final List<String> CARS = List.of("large V8", "methanol six");
    /** Enough draws to meet every combination of a few. */
    private static final int DRAWS = 200;
    /** Rounding of places on a lattice that begins elsewhere. */
    private static final double ROUNDING = 1e-9;

    @TempDir
    private static Path folder;

    private static List<Plan> plans;

    @BeforeAll
    static void find() throws IOException {
        plans = DrawnSpaces.plans(folder).stream()
                .filter(plan -> CARS.contains(plan.job().name()))
                .toList();
    }

    @Test
    void aVerdictIsTheSameAloneAndBesideOtherValues() {
        for (Plan plan : plans) {
            Map<Axis, double[]> beside = beside(plan.setup());
            beside.forEach((axis, values) -> {
                Map<Setup, Difference.Sample> together =
                        tables(Space.of(DemoSpace.unknown(plan)).vary(axis, values));
                assertEquals(values.length, together.size());
                for (double value : values) {
                    same(axis, tables(Space.of(DemoSpace.unknown(plan)).vary(axis, value)), together);
                }
            });
        }
    }

    /** Three values of each axis that a setup has. */
    private static Map<Axis, double[]> beside(Setup setup) {
        Map<Axis, double[]> values = new HashMap<>();
        for (Axis axis : Axis.values()) {
            boolean own = axis != Axis.FUEL_PRESSURE && axis != Axis.BOOST_REFERENCE;
            if (own || setup.ownRegulator().isPresent()) {
                double is = axis.of(setup);
                values.put(
                        axis,
                        switch (axis) {
                            case RETARD -> new double[] {0, 1.7, 6};
                            case BOTTLE_TEMPERATURE -> new double[] {is - 6, is, is + 2};
                            case BOOST_REFERENCE -> new double[] {0, 1, 0.5};
                            default -> new double[] {0.7 * is, is, 1.1 * is};
                        });
            }
        }
        return values;
    }

    private static void same(Axis axis, Map<Setup, Difference.Sample> alone, Map<Setup, Difference.Sample> together) {
        assertEquals(1, alone.size());
        alone.forEach((setup, one) -> {
            Difference.Sample other = together.get(setup);
            assertEquals(one.margin(), other.margin(), ROUNDING, axis.words());
            assertEquals(1, one.power() / other.power(), ROUNDING, axis.words());
            assertEquals(one.lambda(), other.lambda(), ROUNDING, axis.words());
        });
    }

    private static Map<Setup, Difference.Sample> tables(Space space) {
        Map<Setup, Difference.Sample> samples = new HashMap<>();
        Sweep.of(space, DRAWS).samples.forEach(sample -> samples.put(space.setup(sample.index()), sample));
        return samples;
    }

    /** From hardly any boost to twice the plan's; only a margin within a grain of none leaves a verdict open. */
    @Test
    void theVerdictIsThatOfTheExactOutcomeUpToBothEndsOfTheMap() {
        boolean lowEnd = false;
        boolean highEnd = false;
        for (Plan plan : plans) {
            double[] factors =
                    IntStream.rangeClosed(1, 20).mapToDouble(i -> 0.1 * i).toArray();
            Space space = Space.of(plan).vary(Axis.BOOST_FACTOR, factors);
            Map<Setup, Difference.Sample> tables = tables(space);
            List<Long> indices =
                    tables.values().stream().map(Difference.Sample::index).toList();
            List<Boosted> all = Candidates.of(space, indices).stream()
                    .map(exact -> new Boosted(
                            space.values(exact.index()).get(Axis.BOOST_FACTOR),
                            tables.get(exact.setup()).margin(),
                            exact.margin()))
                    .toList();
            for (Boosted one : all) {
                boolean open = Math.abs(one.exact) < Front.GRAIN;
                assertTrue(open || one.table >= 0 == one.exact >= 0, one.toString());
            }
            DoubleSummaryStatistics answered = factors(all, false);
            DoubleSummaryStatistics unanswered = factors(all, true);
            lowEnd |= unanswered.getMin() < answered.getMin();
            highEnd |= unanswered.getMax() > answered.getMax();
        }
        assertTrue(lowEnd && highEnd, "both ends of a map are met");
    }

    /** A boost and the least margin by table and exactly. */
    private record Boosted(double factor, double table, double exact) {}

    private static DoubleSummaryStatistics factors(List<Boosted> all, boolean unanswered) {
        return all.stream()
                .filter(one -> unanswered == (one.table == Double.NEGATIVE_INFINITY))
                .mapToDouble(Boosted::factor)
                .summaryStatistics();
    }

    /** A regulator can be set from 0.5 to 10 bar; what {@link FuelSide} says of its nodes holds at both ends too. */
    @Test
    void fuelFlowsAreExactAtBothEndsOfTheRegulator() {
        Plan plan = plans.get(1);
        double[] bases = {0.5e5, 0.6e5, 9.9e5, 10e5};
        Space space = Space.of(plan).vary(Axis.FUEL_PRESSURE, bases);
        Sweep sweep = Sweep.first(space);
        Circuits circuits = sweep.circuits(0, bases.length);
        List<Site> sites = Site.of(plan);
        for (int k = 0; k < bases.length; k++) {
            Setup setup = space.setup(circuits.number()[k]);
            for (int s = 0; s < sites.size(); s++) {
                double plenum = sites.get(s).plenum(setup);
                double exact = PointModel.of(plan.car(), setup, sites.get(s).at(), NitrousOxide.saturatedLiquid(290))
                        .nitrousFuel(plenum, setup.jets().orElseThrow().fuelBore())
                        .massFlow();
                double place = circuits.place()[sweep.fuel.mouth()[s]][k];
                double flow = (place + sweep.engine.fuel().first())
                        * sweep.engine.fuel().step();
                assertEquals(exact, flow, 1e-6 * exact, "base " + bases[k] + " site " + sites.get(s));
            }
        }
    }
}
