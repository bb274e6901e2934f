package org.shotledger.flow;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/** What was measured, and which way a hole or a state outside it tends. */
final class MeasuredRange {
    /** Smallest bore of the sources, m. */
    private static final double LEAST_BORE = 0.79e-3;

    private static final double MOST_BORE = 3.56e-3;
    private static final double MOST_LENGTH = 23.3;
    private static final double MOST_QUALITY = 0.15;
    private static final double LEAST_TEMPERATURE = 0.75 * NitrousOxide.CRITICAL_TEMPERATURE;

    private MeasuredRange() {}

    static String outside(NitrousJet hole, FluidState inlet) {
        if (hole.measured().isPresent()) {
            return "";
        }
        List<String> found = new ArrayList<>();
        if (hole.bore() < LEAST_BORE) {
            found.add(
                    "The bore is below the smallest measured, 0.79 mm (31 thou); smaller holes tend to pass more for their area.");
        } else if (hole.bore() > MOST_BORE) {
            found.add(
                    "The bore is above the largest measured, 3.56 mm (140 thou); larger holes tend to pass less for their area.");
        }
        if (hole.lengthToBore() > MOST_LENGTH) {
            found.add("The hole is longer than any measured, 23 bores; friction makes it pass less.");
        }
        if (inlet.temperature() < LEAST_TEMPERATURE) {
            found.add(
                    "It is colder before the hole than in any measurement; boiling comes later in the cold and more passes.");
        }
        inlet(hole.edge(), inlet, found);
        return String.join(" ", found);
    }

    private static void inlet(Edge edge, FluidState inlet, List<String> found) {
        switch (Inlet.of(inlet)) {
            case TWO_PHASE -> {
                if (inlet.quality() > MOST_QUALITY) {
                    found.add(
                            "No hole was measured between 15 % of vapour and dry vapour; the flow may be off either way.");
                } else if (edge == Edge.ROUNDED) {
                    found.add("No rounded hole was measured with bubbles before it; more may pass rather than less.");
                }
            }
            case VAPOUR -> {
                if (edge != Edge.UNKNOWN) {
                    found.add(
                            "The one hole measured with nitrous oxide vapour passed less than this class; less may pass.");
                }
            }
            case SUBCOOLED, SATURATED, DENSE -> {}
        }
    }
}
