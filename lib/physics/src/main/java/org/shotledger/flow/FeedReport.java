package org.shotledger.flow;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.curve.Bracket;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/** Walks a solved path once more and writes down every node. */
final class FeedReport {
    private final List<FeedNode> nodes = new ArrayList<>();
    private final List<JetFlow> jets = new ArrayList<>();
    private FluidState jetInlet;
    private double holdUp;
    private double volume;
    private String choking = "";

    private FeedReport() {}

    static FeedFlow of(FeedPath path, FluidState start, double downstreamPressure) {
        FeedReport report = new FeedReport();
        FeedSolver.Solution solution = FeedSolver.solve(path, start, downstreamPressure);
        report.nodes.add(node("bottle", start, solution.massFlow()));
        if (solution.massFlow() == 0) {
            return report.result(0, stillReason(path, start, downstreamPressure), start, FlowBand.EXACT);
        }
        report.walk(path, start, downstreamPressure, solution);
        String reason = report.choking.isEmpty()
                ? "The pressure behind the jets limits the flow; nothing chokes."
                : report.choking + " limits the flow: it chokes.";
        FlowBand band = path.band(start, downstreamPressure, solution.massFlow());
        return report.result(solution.massFlow(), reason, start, band);
    }

    private static String stillReason(FeedPath path, FluidState start, double downstreamPressure) {
        String blocked = FeedSolver.blocked(path);
        if (!blocked.isEmpty()) {
            return "Nothing flows: " + blocked;
        }
        return downstreamPressure >= start.pressure()
                ? "Nothing flows: the pressure behind the jets is not below that of the bottle."
                : "Nothing flows: the end of the path is closed or the liquid column takes the whole pressure.";
    }

    private FeedFlow result(double massFlow, String reason, FluidState start, FlowBand band) {
        FluidState inlet =
                jetInlet == null ? start : NitrousOxide.atPressureEnthalpy(jetInlet.pressure(), jetInlet.enthalpy());
        return new FeedFlow(massFlow, choking, reason, nodes, jets, inlet, holdUp, volume, band);
    }

    private void walk(FeedPath path, FluidState start, double downstreamPressure, FeedSolver.Solution solution) {
        List<FeedElement> elements = path.elements();
        FluidState state = start;
        double flow = solution.massFlow();
        boolean told = false;
        for (int i = 0; i < elements.size(); i++) {
            FeedElement element = elements.get(i);
            boolean limits = solution.choked() && solution.limiting() == i;
            // the first choke limits; what chokes behind it only follows
            if (limits && choking.isEmpty()) {
                choking = element.name();
            }
            if (element instanceof NitrousJet jet) {
                if (!told) {
                    addJet(jet, state, downstreamPressure);
                }
                return;
            }
            if (element instanceof Manifold block) {
                addBranches(block, state, downstreamPressure);
                return;
            }
            if (element instanceof Orifice jet && path.leadsIntoPassage(i)) {
                if (jetInlet == null) {
                    jetInlet = state;
                }
                // of jet and passage the one that chokes is told; the state before the jet is told in either case
                told = !(solution.choked() && solution.limiting() == elements.size() - 1);
                if (told) {
                    double behind = jet.hole().outletPressure(state, flow);
                    jets.add(jet.hole().flow(state, Double.isNaN(behind) ? downstreamPressure : behind));
                }
            }
            boolean inside = limits && i < elements.size() - 1;
            FluidState next = inside
                    ? behindChoke(
                            new FeedPath(elements.subList(i + 1, elements.size())), state, downstreamPressure, flow)
                    : FeedSolver.behind(element, state, flow);
            if (next == null) {
                next = NitrousOxide.atPressureEnthalpy(
                        Math.max(downstreamPressure, NitrousOxide.TRIPLE_PRESSURE), state.enthalpy());
            }
            addLine(element, state, next, flow);
            state = next;
        }
        jetInlet = state;
    }

    /** Behind a choke the pressure settles where the rest of the path passes exactly the choked flow. */
    private static FluidState behindChoke(FeedPath rest, FluidState before, double downstreamPressure, double flow) {
        double low = Math.max(downstreamPressure, NitrousOxide.TRIPLE_PRESSURE);
        double high = before.pressure();
        double enthalpy = before.enthalpy();
        double pressure = Bracket.root(
                p -> {
                    FluidState state = new Stream().to(p, enthalpy).state();
                    return FeedSolver.massFlow(rest, state, downstreamPressure) - flow;
                },
                low,
                -flow,
                high,
                Math.max(1e-9 * flow, FeedSolver.massFlow(rest, before, downstreamPressure) - flow),
                1e-6 * high);
        return NitrousOxide.atPressureEnthalpy(pressure, enthalpy);
    }

    private void addLine(FeedElement element, FluidState before, FluidState after, double flow) {
        nodes.add(node(element.name(), after, flow));
        holdUp += element.volume() * 0.5 * (before.density() + after.density());
        volume += element.volume();
    }

    private void addJet(NitrousJet jet, FluidState inlet, double downstreamPressure) {
        if (jetInlet == null) {
            jetInlet = inlet;
        }
        jets.add(jet.flow(inlet, downstreamPressure));
    }

    private void addBranches(Manifold block, FluidState state, double downstreamPressure) {
        addLine(block, state, state, block.massFlow(state, downstreamPressure));
        FeedPath last = null;
        FeedReport walked = null;
        for (FeedPath branch : block.branches()) {
            if (!branch.equals(last)) {
                walked = new FeedReport();
                walked.choking = choking;
                FeedSolver.Solution solution = FeedSolver.solve(branch, state, downstreamPressure);
                if (solution.massFlow() > 0) {
                    walked.walk(branch, state, downstreamPressure, solution);
                }
                last = branch;
            }
            add(walked);
        }
    }

    private void add(FeedReport branch) {
        nodes.addAll(branch.nodes);
        jets.addAll(branch.jets);
        holdUp += branch.holdUp;
        volume += branch.volume;
        if (jetInlet == null) {
            jetInlet = branch.jetInlet;
        }
        if (choking.isEmpty()) {
            choking = branch.choking;
        }
    }

    private static FeedNode node(String after, FluidState state, double massFlow) {
        double x = state.quality();
        double voidFraction = state.density() > NitrousOxide.CRITICAL_DENSITY ? 0 : 1;
        if (state.isSaturated()) {
            voidFraction = x
                    * state.density()
                    / NitrousOxide.saturatedVapour(state.temperature()).density();
        }
        return new FeedNode(after, massFlow, state.pressure(), state.temperature(), x, state.density(), voidFraction);
    }
}
