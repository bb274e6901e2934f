package org.shotledger.flow;

import java.util.List;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * Finds the flow of a path: the largest flow that every part passes and that leaves enough pressure at the end.
 *
 * <p>For a trial flow the path is marched from the bottle. A part that chokes gives a negative margin; at the end the margin
 * is what the last part would pass less the trial flow. The margin falls as the flow rises, so a bracketed search ends at the
 * flow, and the part that gave the negative side is the one that limits.
 */
final class FeedSolver {
    private static final double TOLERANCE = 1e-7;
    private static final int MAX_STEPS = 100;

    /** Part at which the last march ended; the number of parts when it went through. */
    private int stopped;

    private final List<FeedElement> elements;
    private final FluidState start;
    private final double downstreamPressure;

    private FeedSolver(FeedPath path, FluidState start, double downstreamPressure) {
        this.elements = path.elements();
        this.start = start;
        this.downstreamPressure = downstreamPressure;
    }

    /** A solved path. */
    record Solution(double massFlow, int limiting, boolean choked) {}

    static double massFlow(FeedPath path, FluidState start, double downstreamPressure) {
        return solve(path, start, downstreamPressure).massFlow();
    }

    static Solution solve(FeedPath path, FluidState start, double downstreamPressure) {
        if (!blocked(path).isEmpty() || downstreamPressure >= start.pressure()) {
            return new Solution(0, -1, false);
        }
        return new FeedSolver(path, start, downstreamPressure).search();
    }

    static String blocked(FeedPath path) {
        for (FeedElement element : path.elements()) {
            if (!element.blocked().isEmpty()) {
                return element.blocked();
            }
        }
        return "";
    }

    private Solution search() {
        int end = elements.size() - 1;
        double low = 0;
        double atLow = margin(0);
        if (atLow <= 0) {
            return new Solution(0, end, false);
        }
        double high = atLow;
        double atHigh = margin(high);
        while (atHigh > 0) {
            low = high;
            atLow = atHigh;
            high *= 2;
            atHigh = margin(high);
        }
        int limiting = stopped;
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
            if (limiting < end && limiting == farLimiting) {
                double root = high - atHigh * (farHigh - high) / (atFarHigh - atHigh);
                trial = root * (1 + (beyond ? 0.4 : -0.4) * TOLERANCE);
                beyond = !beyond;
            }
            if (i % 8 == 7 || !(trial > low && trial < high)) {
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
        return new Solution(low, limiting, limiting < end || endChokes(low));
    }

    private static double weight(double now, double before) {
        double weight = 1 - now / before;
        return weight > 0 ? weight : 0.5;
    }

    /** Tells whether the last part itself is choked at a flow. */
    private boolean endChokes(double massFlow) {
        FluidState inlet = endInlet(massFlow);
        if (inlet == null) {
            return true;
        }
        FeedElement last = elements.get(elements.size() - 1);
        if (last instanceof NitrousJet jet) {
            return new HoleCurve(jet, inlet).chokingPressure() >= downstreamPressure;
        }
        if (last instanceof Manifold) {
            return false;
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
        int end = elements.size() - 1;
        for (int i = 0; i < end; i++) {
            FeedElement element = elements.get(i);
            FluidState next = behind(element, state, massFlow);
            if (next == null) {
                stopped = i;
                return Math.min(element.shortfall(state, massFlow), -1e-12);
            }
            state = next;
        }
        stopped = end;
        FeedElement last = elements.get(end);
        if (last instanceof NitrousJet jet) {
            return jet.massFlow(state, downstreamPressure) - massFlow;
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
