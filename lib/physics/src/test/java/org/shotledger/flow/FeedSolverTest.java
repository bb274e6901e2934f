package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * The flow of a path against plain halving, where the flow is tried by hand: part by part, each leaving a pressure or choking. The search
 * may stop a ten-millionth before the flow; a hundred marches would find it by halving alone, so how many it takes is held too.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class FeedSolverTest {
    private static final FluidState BOTTLE = NitrousOxide.saturatedLiquid(293.15);
    private static final double BEHIND = 2.5e5;
    private static final double CLOSE = 3e-7;
    private static final Tube HOSE = Tube.level("hose", 3.2, 0.0087);
    private static final Tube LINE = Tube.level("line", 0.35, 0.004);

    /** The largest flow that a trial lets through, by fifty halvings. */
    private static double halved(DoublePredicate passes) {
        double low = 0;
        double high = 2;
        assertFalse(passes.test(high), "nothing here passes 2 kg/s");
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            if (passes.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** State behind the parts at a flow; null where one of them chokes. */
    private static FluidState behind(FluidState inlet, double flow, FeedElement... parts) {
        FluidState state = inlet;
        for (FeedElement part : parts) {
            double pressure = part.outletPressure(state, flow);
            if (Double.isNaN(pressure) || pressure < NitrousOxide.TRIPLE_PRESSURE) {
                return null;
            }
            state = NitrousOxide.atPressureEnthalpy(pressure, inlet.enthalpy());
        }
        return state;
    }

    private static FeedElement solenoid(String name, double bore) {
        return Orifice.solenoid(name, bore, 0.0087);
    }

    private static void assertSolved(double expected, int limiting, boolean choked, FeedPath path, double downstream) {
        FeedSolver.Solution found = FeedSolver.solve(path, BOTTLE, downstream);
        assertEquals(expected, found.massFlow(), CLOSE * expected);
        assertEquals(limiting, found.limiting());
        assertEquals(choked, found.choked());
        assertEquals(expected, path.massFlow(BOTTLE, downstream), CLOSE * expected);
    }

    /** The jet takes what the hose leaves it, at the pressure it leaves. */
    @Test
    void a_jet_behind_a_hose_passes_what_reaches_it() {
        NitrousJet jet = NitrousJet.of(1.6e-3);
        double flow = halved(m -> {
            FluidState inlet = behind(BOTTLE, m, HOSE);
            return inlet != null && jet.massFlow(inlet, BEHIND) > m;
        });
        assertSolved(flow, 1, true, FeedPath.of(HOSE, jet), BEHIND);
    }

    /** With nearly the bottle's pressure behind it the jet passes less than it could, and does not choke. */
    @Test
    void a_jet_against_pressure_does_not_choke() {
        NitrousJet jet = NitrousJet.of(1.6e-3);
        double against = 0.97 * BOTTLE.pressure();
        double flow = halved(m -> {
            FluidState inlet = behind(BOTTLE, m, HOSE);
            return inlet != null && jet.massFlow(inlet, against) > m;
        });
        assertSolved(flow, 1, false, FeedPath.of(HOSE, jet), against);
    }

    /** The jet is far larger than the solenoid, whose hole decides: the largest flow that leaves it a pressure. */
    @Test
    void a_choke_inside_the_path_is_the_flow() {
        FeedElement seat = solenoid("seat", 2e-3);
        double flow = halved(m -> behind(BOTTLE, m, HOSE, seat) != null);
        assertSolved(flow, 1, true, FeedPath.of(HOSE, seat, LINE, NitrousJet.of(6e-3)), BEHIND);
    }

    /** Two holes in a row, either the narrower: the second sees what the first leaves, so it limits though it is a little wider. */
    @Test
    void of_two_chokes_the_one_that_takes_less_limits() {
        for (double second : new double[] {1.6e-3, 1.95e-3, 2.05e-3, 2.4e-3, 4e-3}) {
            FeedElement[] parts = {HOSE, solenoid("first", 2e-3), LINE, solenoid("second", second)};
            double both = halved(m -> behind(BOTTLE, m, parts) != null);
            double firstAlone = halved(m -> behind(BOTTLE, m, parts[0], parts[1]) != null);
            int limiting = both < firstAlone * (1 - 1e-6) ? 3 : 1;
            assertSolved(
                    both,
                    limiting,
                    true,
                    FeedPath.of(parts[0], parts[1], parts[2], parts[3], NitrousJet.of(8e-3)),
                    BEHIND);
        }
    }

    /** An open end stands at the pressure behind it, or chokes above that. */
    @Test
    void an_open_end_passes_what_leaves_it_the_pressure_behind() {
        double against = 0.95 * BOTTLE.pressure();
        double slow = halved(m -> {
            FluidState end = behind(BOTTLE, m, HOSE);
            return end != null && end.pressure() > against;
        });
        assertSolved(slow, 0, false, FeedPath.of(HOSE), against);
        double choked = halved(m -> behind(BOTTLE, m, HOSE, LINE) != null);
        assertSolved(choked, 1, true, FeedPath.of(HOSE, LINE), 1e5);
    }

    /** Five equal branches: each its line and its jet at a fifth of the flow. */
    @Test
    void equal_branches_take_a_fifth_each() {
        NitrousJet jet = NitrousJet.of(0.7e-3);
        double flow = halved(m -> {
            FluidState block = behind(BOTTLE, m, HOSE);
            FluidState inlet = block == null ? null : behind(block, m / 5, LINE);
            return inlet != null && 5 * jet.massFlow(inlet, BEHIND) > m;
        });
        assertSolved(flow, 1, false, FeedPath.of(HOSE, Manifold.equal("block", 5, LINE, jet)), BEHIND);
    }

    /** Against pressure a large flow would leave the block less than stands behind the jets, and none could flow: the flow lies below. */
    @Test
    void equal_branches_against_pressure_flow_by_what_the_trunk_leaves() {
        NitrousJet jet = NitrousJet.of(3e-3);
        for (double share : new double[] {0.8, 0.95, 0.99}) {
            double against = share * BOTTLE.pressure();
            for (FeedElement[] branch : new FeedElement[][] {{jet}, {LINE, jet}}) {
                double flow = halved(m -> {
                    FluidState block = behind(BOTTLE, m, HOSE);
                    FluidState inlet = block == null || branch.length == 1 ? block : behind(block, m / 5, LINE);
                    return inlet != null && 5 * jet.massFlow(inlet, against) > m;
                });
                assertSolved(flow, 1, false, FeedPath.of(HOSE, Manifold.equal("block", 5, branch)), against);
            }
        }
    }

    /** A riser whose liquid weighs more than what is between bottle and jet lets nothing through; one that weighs less, something. */
    @Test
    void a_column_that_takes_the_pressure_lets_nothing_flow() {
        FluidState cold = NitrousOxide.atTemperaturePressure(250, 6e6);
        // 40 m of about 1000 kg/m3 weigh near 4 bar
        FeedPath path = FeedPath.of(new Tube("riser", 40, 0.01, 5e-6, 40), NitrousJet.of(1e-3));
        double weight = cold.density() * 9.80665 * 40;
        assertEquals(0, FeedSolver.massFlow(path, cold, cold.pressure() - 0.98 * weight));
        assertTrue(FeedSolver.massFlow(path, cold, cold.pressure() - 1.02 * weight) > 0);
        assertEquals(0, FeedSolver.massFlow(path, cold, cold.pressure()));
    }

    /** A valve at an open end: choked it stands above the pressure behind it, and otherwise at it. */
    @Test
    void a_valve_at_the_end_chokes_above_the_pressure_behind() {
        FlowValve valve = FlowValve.open("valve", 0.05);
        double most = halved(m -> behind(BOTTLE, m, HOSE, valve) != null);
        assertSolved(most, 1, true, FeedPath.of(HOSE, valve), 1e5);
        double against = 0.9 * BOTTLE.pressure();
        double slow = halved(m -> {
            FluidState end = behind(BOTTLE, m, HOSE, valve);
            return end != null && end.pressure() > against;
        });
        assertSolved(slow, 1, false, FeedPath.of(HOSE, valve), against);
    }

    /** A guess of the flow, far or near, on either side of a choke or of a jet's flow, leads to the same flow. */
    @Test
    void a_guess_leads_to_the_same_flow() {
        FeedElement seat = solenoid("seat", 2e-3);
        double flow = halved(m -> behind(BOTTLE, m, HOSE, seat) != null);
        FeedPath path = FeedPath.of(HOSE, seat, NitrousJet.of(6e-3));
        for (double share : new double[] {0.01, 0.5, 0.98, 0.995, 1, 1.005, 1.02, 3}) {
            assertEquals(flow, FeedSolver.massFlow(path, BOTTLE, BEHIND, share * flow), CLOSE * flow, "from " + share);
        }
    }

    /** Lines narrower than their jets choke: five times what one of them passes. */
    @Test
    void equal_branches_whose_lines_choke_pass_five_lines() {
        Tube narrow = Tube.level("narrow", 0.35, 0.0015);
        double flow = halved(m -> {
            FluidState block = behind(BOTTLE, m, HOSE);
            return block != null && behind(block, m / 5, narrow) != null;
        });
        FeedPath path = FeedPath.of(HOSE, Manifold.equal("block", 5, narrow, NitrousJet.of(5e-3)));
        assertEquals(flow, path.massFlow(BOTTLE, BEHIND), CLOSE * flow);
    }

    /** Two kinds of branches: the trunk carries what each takes alone from the pressure at the block. */
    @Test
    void unequal_branches_add_up() {
        NitrousJet small = NitrousJet.of(0.6e-3);
        NitrousJet large = NitrousJet.of(1.1e-3);
        double flow = halved(m -> {
            FluidState block = behind(BOTTLE, m, HOSE);
            return block != null && 2 * small.massFlow(block, BEHIND) + large.massFlow(block, BEHIND) > m;
        });
        FeedPath a = FeedPath.of(small);
        FeedPath b = FeedPath.of(large);
        assertSolved(flow, 1, false, FeedPath.of(HOSE, new Manifold("block", 0, List.of(a, b, a))), BEHIND);
    }

    /** What a march asks of the jet at its end is counted by its law. */
    private static final class Counting implements OrificeLaw {
        private int asked;

        @Override
        public String name() {
            return CLASS.name();
        }

        @Override
        public OrificeLaw acting(FluidState inlet) {
            return CLASS.acting(inlet);
        }

        @Override
        public String source(NitrousJet hole, FluidState inlet) {
            return CLASS.source(hole, inlet);
        }

        @Override
        public OrificeCurve curve(NitrousJet hole, FluidState inlet) {
            asked++;
            return CLASS.curve(hole, inlet);
        }

        @Override
        public FlowBand band(NitrousJet hole, FluidState inlet) {
            return CLASS.band(hole, inlet);
        }
    }

    private static int marches(double near, FeedPath path, Counting count) {
        count.asked = 0;
        path.massFlow(BOTTLE, BEHIND, near);
        return count.asked;
    }

    /** Halving from the whole flow to a ten-millionth takes 24 marches, as 2^24 is 1.7e7; the secant a third of it, a guess fewer. */
    @Test
    void the_search_takes_few_marches_and_a_guess_fewer() {
        Counting count = new Counting();
        FeedPath path = FeedPath.of(HOSE, NitrousJet.of(1.6e-3).withLaw(count));
        double flow = path.massFlow(BOTTLE, BEHIND);
        int plain = marches(0, path, count);
        int guessed = marches(flow * 1.002, path, count);
        assertTrue(plain <= 8, "marches: " + plain);
        assertTrue(guessed < plain, "marches with a guess: " + guessed);
        for (double share : new double[] {0.5, 0.9, 0.995, 1.005, 1.2, 2}) {
            int off = marches(share * flow, path, count);
            assertTrue(off <= 12, "marches from " + share + " of the flow: " + off);
        }
    }
}
