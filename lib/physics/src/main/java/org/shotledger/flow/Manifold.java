package org.shotledger.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.shotledger.fluid.FluidState;

/**
 * A distribution block: its branches start from the same state and end at the same downstream pressure.
 *
 * @param name name in reports
 * @param volume inside volume, m3
 * @param branches the branches, each with its own jet; equal branches are solved once
 */
public record Manifold(String name, double volume, List<FeedPath> branches) implements FeedElement {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when there is no branch
     */
    public Manifold {
        Checks.notNegative("Manifold " + name, "volume", volume, "m3");
        branches = List.copyOf(branches);
        if (branches.isEmpty()) {
            throw new IllegalArgumentException("Manifold " + name + " has no branch; give it at least one.");
        }
    }

    /**
     * A block with equal branches.
     *
     * @param name name in reports
     * @param count number of branches, 1 or more
     * @param branch parts of one branch, ending in a jet
     * @return the part
     */
    public static Manifold equal(String name, int count, FeedElement... branch) {
        return new Manifold(name, 0, java.util.Collections.nCopies(count, FeedPath.of(branch)));
    }

    /** The same block with the holes of its branches changed; equal branches stay equal. */
    Manifold with(UnaryOperator<NitrousJet> change) {
        List<FeedPath> changed = new ArrayList<>();
        for (FeedPath branch : branches) {
            int same = branches.indexOf(branch);
            changed.add(same < changed.size() ? changed.get(same) : branch.with(change));
        }
        return new Manifold(name, volume, changed);
    }

    /** The branch that all branches equal, when it is open and ends in a jet; otherwise null. */
    FeedPath commonBranch() {
        FeedPath first = branches.get(0);
        boolean jets =
                first.last() instanceof NitrousJet && FeedSolver.blocked(first).isEmpty();
        return jets && branches.stream().allMatch(first::equals) ? first : null;
    }

    /** Total flow of the branches from a state before them, kg/s. */
    double massFlow(FluidState inlet, double downstreamPressure) {
        double total = 0;
        FeedPath last = null;
        double flow = 0;
        for (FeedPath branch : branches) {
            if (!branch.equals(last)) {
                last = branch;
                flow = FeedSolver.massFlow(branch, inlet, downstreamPressure);
            }
            total += flow;
        }
        return total;
    }

    /** {@inheritDoc} A block ends the trunk: its branches lead on from the same pressure. */
    @Override
    public double outletPressure(FluidState inlet, double massFlow) {
        return inlet.pressure();
    }

    @Override
    public double shortfall(FluidState inlet, double massFlow) {
        return Math.min(0, massFlow(inlet, 0) - massFlow);
    }
}
