package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/** Equal branches are marched as one; the same flow must come out as when every branch is solved by itself. */
class EqualBranchesTest {
    private static final int CASES = 300;

    private final SplittableRandom random = new SplittableRandom(20260118);

    @Test
    void marchedBranchesFlowWhatBranchesSolvedOneByOneFlow() {
        int flowing = 0;
        int choked = 0;
        for (int k = 0; k < CASES; k++) {
            FeedPath path = path(k);
            FluidState start = start(k);
            double behind = k % 5 == 0 ? between(1e5, 1.1 * start.pressure()) : between(1e5, 1e6);
            double flow = path.massFlow(start, behind);
            assertReference(flow, path, start, behind, "case " + k + " " + path);
            if (k % 10 == 0) {
                assertEquals(flow, path.flow(start, behind).massFlow(), 1e-12, "case " + k);
            }
            flowing += flow > 0 ? 1 : 0;
            choked += flow > 0 && lineChokes(path, start, behind, flow) ? 1 : 0;
        }
        assertTrue(flowing > 200, "cases that flow: " + flowing);
        assertTrue(choked > 40, "cases whose branch line chokes: " + choked);
    }

    /** Each branch solved by itself, in full, must pass a millionth less and must not pass a millionth more. */
    private static void assertReference(double flow, FeedPath path, FluidState start, double behind, String name) {
        if (!FeedSolver.blocked(path).isEmpty() || behind >= start.pressure()) {
            assertEquals(0, flow, name);
            return;
        }
        if (flow > 0) {
            assertTrue(passes(path, start, behind, flow * (1 - 1e-6)), name + " flows more than its branches pass");
        }
        assertFalse(passes(path, start, behind, flow * (1 + 1e-6)), name + " flows less than its branches pass");
    }

    private static boolean passes(FeedPath path, FluidState start, double behind, double flow) {
        FluidState state = trunkEnd(path, start, flow);
        return state != null && ((Manifold) path.last()).massFlow(state, behind) > flow;
    }

    private static FluidState trunkEnd(FeedPath path, FluidState start, double flow) {
        FluidState state = start;
        for (FeedElement element : path.elements().subList(0, path.elements().size() - 1)) {
            state = state == null ? null : FeedSolver.behind(element, state, flow);
        }
        return state;
    }

    private static boolean lineChokes(FeedPath path, FluidState start, double behind, double flow) {
        FluidState state = trunkEnd(path, start, flow);
        FeedPath branch = ((Manifold) path.last()).branches().get(0);
        if (state == null) {
            return false;
        }
        FeedSolver.Solution solution = FeedSolver.solve(branch, state, behind);
        return solution.choked() && solution.limiting() < branch.elements().size() - 1;
    }

    private FluidState start(int k) {
        double t = between(255, 305);
        double boiling = NitrousOxide.saturationPressure(t);
        return switch (k % 4) {
            case 0 -> NitrousOxide.atTemperaturePressure(t, boiling + between(1e4, 3e6));
            case 1 -> NitrousOxide.mixture(t, between(0.001, 0.999));
            default -> NitrousOxide.saturatedLiquid(t);
        };
    }

    private FeedPath path(int k) {
        boolean absurd = k % 7 == 0;
        double lineBore = absurd ? about(0.3e-3, 30e-3) : about(1.5e-3, 5e-3);
        // half of the jets are larger than their line, so that many a line chokes
        double jetBore = random.nextBoolean() ? lineBore * between(1, 4) : about(0.4e-3, 2e-3);
        double length = absurd ? about(1e-4, 30) : about(0.05, 1.5);
        Tube line = new Tube("line", length, lineBore, 5e-6, length * between(-1, 1));
        FlowValve valve = new FlowValve("valve", 0.5, k % 23 == 0 ? 0 : between(0.1, 1), 0);
        NitrousJet jet = NitrousJet.of(k % 29 == 0 ? 0 : jetBore);
        int count = random.nextInt(1, 9);
        Manifold block = switch (k % 6) {
            case 0 -> Manifold.equal("block", count, jet);
            case 1 -> Manifold.equal("block", count, valve, line, jet);
            case 2 -> Manifold.equal("block", count, line, Orifice.solenoid("seat", 0.8 * lineBore, lineBore), jet);
            default -> Manifold.equal("block", count, line, jet);
        };
        double seat = absurd ? about(0.2e-3, 8e-3) : about(2e-3, 6e-3);
        Tube hose = Tube.level("hose", between(0.3, 5), about(4e-3, 12e-3));
        Orifice solenoid = Orifice.solenoid("solenoid", seat, hose.bore());
        FlowValve bottle = new FlowValve("bottle valve", 1.2, k % 31 == 0 ? 0 : 1, 0);
        return FeedPath.of(bottle, hose, solenoid, block);
    }

    private double between(double low, double high) {
        return random.nextDouble(low, high);
    }

    /** Even on a logarithmic scale. */
    private double about(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }
}
