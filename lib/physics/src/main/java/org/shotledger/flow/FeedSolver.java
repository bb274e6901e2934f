package org.shotledger.flow;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * Finds the flow of a path: the largest flow that every part passes and that leaves enough pressure at the end.
 *
 * <p>For a trial flow the path is marched from the bottle. A part that chokes gives a negative margin; at the end the margin
 * is what the last part would pass less the trial flow. The margin falls as the flow rises, so a bracketed search ends at the
 * flow, and the part that gave the negative side is the one that limits.
 *
 * <p>Equal branches that end in jets are marched as one, each at its share of the flow, so that no search runs inside the
 * search. Their parts count as parts of their own: a margin that comes from a choked line tells the side, not how near the
 * answer is, and only the margin of the jet may end the search early.
 */
final class FeedSolver {
    private static final double TOLERANCE = 1e-7;
    private static final int MAX_STEPS = 100;
    /** Halved once in so many steps, should the margins mislead. */
    private static final int HALVE_EVERY = 12;
    /** After so many steps only halving is left, which ends in time whatever the margins look like. */
    private static final int HALVE_FROM = 60;
    /** How far a guess of the flow is trusted: neighbours in a table extrapolate better than this. */
    private static final double NEAR = 0.01;

    /** Part at which the last march ended; the number of parts when it went through. */
    private int stopped;

    /** Part that limited the last search; a part of a marched branch counts here as well. */
    private int limiting;

    private final List<FeedElement> elements;
    /** The parts marched: the path's own, with one of equal branches in place of their block. */
    private final List<FeedElement> chain;
    /** Where the marched branch starts in the chain; its length when no branch is marched. */
    private final int split;
    /** How many branches share the flow. */
    private final int count;

    private final FluidState start;
    private final double downstreamPressure;

    private FeedSolver(FeedPath path, FluidState start, double downstreamPressure) {
        this.elements = path.elements();
        FeedPath branch = path.last() instanceof Manifold block ? block.commonBranch() : null;
        if (branch == null) {
            chain = elements;
            split = elements.size();
            count = 1;
        } else {
            split = elements.size() - 1;
            chain = new ArrayList<>(elements.subList(0, split));
            chain.addAll(branch.elements());
            count = ((Manifold) path.last()).branches().size();
        }
        this.start = start;
        this.downstreamPressure = downstreamPressure;
    }

    /** A solved path. */
    record Solution(double massFlow, int limiting, boolean choked) {}

    static double massFlow(FeedPath path, FluidState start, double downstreamPressure) {
        return massFlow(path, start, downstreamPressure, 0);
    }

    /** The flow; a good guess, such as that of a neighbouring state, saves half of the marches. */
    static double massFlow(FeedPath path, FluidState start, double downstreamPressure, double near) {
        return still(path, start, downstreamPressure)
                ? 0
                : new FeedSolver(path, start, downstreamPressure).search(near);
    }

    static Solution solve(FeedPath path, FluidState start, double downstreamPressure) {
        if (still(path, start, downstreamPressure)) {
            return new Solution(0, -1, false);
        }
        FeedSolver solver = new FeedSolver(path, start, downstreamPressure);
        double flow = solver.search(0);
        int end = path.elements().size() - 1;
        int part = Math.min(solver.limiting, end);
        return new Solution(flow, part, flow > 0 && (part < end || solver.endChokes(flow)));
    }

    private static boolean still(FeedPath path, FluidState start, double downstreamPressure) {
        return !blocked(path).isEmpty() || downstreamPressure >= start.pressure();
    }

    static String blocked(FeedPath path) {
        for (FeedElement element : path.elements()) {
            if (!element.blocked().isEmpty()) {
                return element.blocked();
            }
        }
        return "";
    }

    private double search(double near) {
        int end = chain.size() - 1;
        limiting = end;
        double low = 0;
        // without flow about all of it is to spare
        double atLow = near > 0 ? near : margin(0);
        if (atLow <= 0) {
            return 0;
        }
        double high = near > 0 ? (1 - NEAR) * near : atLow;
        double atHigh = margin(high);
        while (atHigh > 0) {
            low = high;
            atLow = atHigh;
            high = low < near ? (1 + NEAR) * near : 2 * low;
            atHigh = margin(high);
        }
        limiting = stopped;
        if (atHigh == 0 && limiting == end) {
            return high;
        }
        double farHigh = Double.NaN;
        double atFarHigh = Double.NaN;
        int farLimiting = -1;
        int side = 0;
        boolean beyond = false;
        // false position after Anderson and Bjorck; towards a choke inside the path, where the margin jumps, the secant
        // of
        // the negative side, aimed closely at either side of the choke
        for (int i = 0; i < MAX_STEPS && high - low > TOLERANCE * high; i++) {
            double trial = low + atLow * (high - low) / (atLow - atHigh);
            if (low == 0 && limiting < end && limiting != farLimiting) {
                // what that part passes of the stream that it sees; whether another limits still more shows there
                trial = high + atHigh;
            } else if (limiting < end && limiting == farLimiting) {
                double root = high - atHigh * (farHigh - high) / (atFarHigh - atHigh);
                trial = root * (1 + (beyond ? 0.4 : -0.4) * TOLERANCE);
                beyond = !beyond;
            }
            if (i % HALVE_EVERY == HALVE_EVERY - 1 || i >= HALVE_FROM || !(trial > low && trial < high)) {
                trial = 0.5 * (low + high);
            }
            trial = Math.min(Math.max(trial, low + 0.1 * TOLERANCE * high), high - 0.1 * TOLERANCE * high);
            double margin = margin(trial);
            if (margin > 0) {
                atHigh *= side > 0 ? weight(margin, atLow) : 1;
                low = trial;
                atLow = margin;
                side = 1;
            } else {
                atLow *= side < 0 ? weight(margin, atHigh) : 1;
                farHigh = high;
                atFarHigh = atHigh;
                farLimiting = limiting;
                high = trial;
                atHigh = margin;
                limiting = stopped;
                side = -1;
            }
            if (Math.abs(margin) <= TOLERANCE * trial && limiting == end) {
                low = trial;
                break;
            }
        }
        return low;
    }

    private static double weight(double now, double before) {
        double weight = 1 - now / before;
        return weight > 0 ? weight : 0.5;
    }

    /** Tells whether the last part itself is choked at a flow. */
    private boolean endChokes(double massFlow) {
        FeedElement last = elements.get(elements.size() - 1);
        if (last instanceof Manifold) {
            return false;
        }
        FluidState inlet = endInlet(massFlow);
        if (inlet == null) {
            return true;
        }
        if (last instanceof NitrousJet jet) {
            return jet.curve(inlet).chokingPressure() >= downstreamPressure;
        }
        double outlet = last.outletPressure(inlet, massFlow);
        return Double.isNaN(outlet) || outlet > downstreamPressure * (1 + 1e-3) + 1;
    }

    private FluidState endInlet(double massFlow) {
        FluidState state = start;
        for (FeedElement element : elements.subList(0, elements.size() - 1)) {
            state = behind(element, state, massFlow);
            if (state == null) {
                return null;
            }
        }
        return state;
    }

    /** Flow to spare, kg/s; negative when the trial flow cannot be had. Monotone falling. */
    private double margin(double massFlow) {
        FluidState state = start;
        int end = chain.size() - 1;
        for (int i = 0; i < end; i++) {
            if (i == split && state.pressure() <= downstreamPressure) {
                stopped = end;
                return -massFlow;
            }
            int sharing = i < split ? 1 : count;
            FeedElement element = chain.get(i);
            FluidState next = behind(element, state, massFlow / sharing);
            if (next == null) {
                stopped = i;
                return Math.min(sharing * element.shortfall(state, massFlow / sharing), -1e-12);
            }
            state = next;
        }
        stopped = end;
        FeedElement last = chain.get(end);
        if (last instanceof NitrousJet jet) {
            return count * jet.massFlow(state, downstreamPressure) - massFlow;
        }
        if (last instanceof Manifold block) {
            return block.massFlow(state, downstreamPressure) - massFlow;
        }
        return openEnd(last, state, massFlow);
    }

    private double openEnd(FeedElement last, FluidState state, double massFlow) {
        double outlet = last.outletPressure(state, massFlow);
        if (Double.isNaN(outlet)) {
            return Math.min(last.shortfall(state, massFlow), -1e-12);
        }
        double scale = massFlow == 0 ? 0.1 : massFlow;
        return scale * (outlet - downstreamPressure) / start.pressure();
    }

    /** State behind a part, or null when it chokes or falls below the downstream pressure. */
    static FluidState behind(FeedElement element, FluidState inlet, double massFlow) {
        double pressure = element.outletPressure(inlet, massFlow);
        if (Double.isNaN(pressure) || pressure < NitrousOxide.TRIPLE_PRESSURE) {
            return null;
        }
        return new Stream().to(pressure, inlet.enthalpy()).state();
    }
}
