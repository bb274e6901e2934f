package org.shotledger.flow;

import java.util.List;
import org.shotledger.fluid.FluidState;

/**
 * What a feed path passes.
 *
 * @param massFlow total flow, kg/s
 * @param chokingElement name of the part that chokes; empty when none does
 * @param reason one sentence: why nothing flows, or what limits the flow
 * @param nodes the stream from the bottle to the last part before the jets, in order; branches follow the trunk
 * @param jets each jet's flow with its bracket, in the order of the branches
 * @param jetInlet state at rest before the first jet; the bottle's own state when nothing flows
 * @param holdUp mass held in the lines while flowing, kg
 * @param volume inside volume of the lines, m3
 * @param band 90 % band of the total flow relative to it: the low and the high factor of the flow
 */
public record FeedFlow(
        double massFlow,
        String chokingElement,
        String reason,
        List<FeedNode> nodes,
        List<JetFlow> jets,
        FluidState jetInlet,
        double holdUp,
        double volume,
        FlowBand band) {
    /**
     * Copies the lists.
     */
    public FeedFlow {
        nodes = List.copyOf(nodes);
        jets = List.copyOf(jets);
    }

    /**
     * A flow that is given, not estimated.
     *
     * @param massFlow total flow, kg/s
     * @param chokingElement name of the part that chokes; empty when none does
     * @param reason one sentence on what limits the flow
     * @param nodes the stream, in order
     * @param jets each jet's flow
     * @param jetInlet state at rest before the first jet
     * @param holdUp mass held in the lines, kg
     * @param volume inside volume of the lines, m3
     */
    public FeedFlow(
            double massFlow,
            String chokingElement,
            String reason,
            List<FeedNode> nodes,
            List<JetFlow> jets,
            FluidState jetInlet,
            double holdUp,
            double volume) {
        this(massFlow, chokingElement, reason, nodes, jets, jetInlet, holdUp, volume, FlowBand.EXACT);
    }

    /**
     * Tells whether any part chokes.
     *
     * @return true when lowering the downstream pressure would not raise the flow
     */
    public boolean choked() {
        return !chokingElement.isEmpty();
    }

    /**
     * What of the jets and of the state before them lies outside what was measured.
     *
     * @return sentences, each once; none when everything lies inside
     */
    public List<String> outside() {
        return jets.stream()
                .map(JetFlow::outside)
                .filter(sentence -> !sentence.isEmpty())
                .distinct()
                .toList();
    }

    /**
     * Tells whether a flow test of the jets sets the flow.
     *
     * @return true after a test
     */
    public boolean measured() {
        return jets.stream().anyMatch(JetFlow::measured);
    }

    /**
     * Time to fill empty lines at the steady flow; what a purge must bring.
     *
     * @return hold-up over flow, s; infinite when nothing flows
     */
    public double fillTime() {
        return massFlow > 0 ? holdUp / massFlow : Double.POSITIVE_INFINITY;
    }

    /**
     * The same path passing a share of its flow, as when it is pulsed or drawn elsewhere in its band; the states along it are
     * left as they are.
     *
     * @param share 0 or more
     * @return the scaled flow
     */
    public FeedFlow times(double share) {
        return new FeedFlow(share * massFlow, chokingElement, reason, nodes, jets, jetInlet, holdUp, volume, band);
    }
}
