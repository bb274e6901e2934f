package org.shotledger.nitrous;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.shotledger.flow.FeedFlow;
import org.shotledger.flow.FeedPath;
import org.shotledger.flow.FlowBand;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * Questions to the nitrous side as a whole: what limits the flow with each jet, and what moves it.
 *
 * @param circuit the nitrous side
 * @param nozzles number of nozzles open, at least 1
 * @param passage diameter of the passage behind each jet, m; empty when it is not known
 * @param bottleLiquid the bottle's liquid
 * @param downstreamPressure pressure behind the nozzles, Pa
 */
public record FeedStudy(
        NitrousCircuit circuit,
        int nozzles,
        OptionalDouble passage,
        FluidState bottleLiquid,
        double downstreamPressure) {

    /**
     * What one jet size gives.
     *
     * @param bore hole diameter of each jet, m
     * @param limit name of the part that chokes; empty when none does
     * @param limitLow the same with every hole at the lower end of its band
     * @param limitHigh the same at the upper end
     * @param flow flow of all nozzles with its band, kg/s
     */
    public record Rung(double bore, String limit, String limitLow, String limitHigh, FlowBand flow) {}

    /**
     * What a change of the kit does.
     *
     * @param name the change, in words
     * @param feed the flow after it
     * @param ratio flow after over flow before
     * @param seconds how long it lasts, s; infinite for what stays
     * @param withinBand true when the change is smaller than what is not known of the flow before it
     */
    public record Change(String name, FeedFlow feed, double ratio, double seconds, boolean withinBand) {}

    /**
     * The part that limits the flow with each jet.
     *
     * @param bores hole diameters, m, positive
     * @return one entry a jet, in the same order
     */
    public List<Rung> rungs(double... bores) {
        return Arrays.stream(bores).mapToObj(this::rung).toList();
    }

    private Rung rung(double bore) {
        FeedPath path = circuit.path(nozzles, bore, passage);
        FeedFlow feed = path.flow(bottleLiquid, downstreamPressure);
        return new Rung(
                bore,
                feed.chokingElement(),
                path.at(-1).flow(bottleLiquid, downstreamPressure).chokingElement(),
                path.at(1).flow(bottleLiquid, downstreamPressure).chokingElement(),
                feed.band().times(feed.massFlow()));
    }

    /**
     * How far a blocked filter, a long hose and a hose that was not purged move the flow. A hose full of vapour gives its flow only
     * until liquid has come through, about {@link FeedFlow#fillTime()} of the path full of liquid.
     *
     * @param bore hole diameter of each jet, m
     * @return one entry a change
     */
    public List<Change> changes(double bore) {
        FeedFlow before = feed(circuit, bore, bottleLiquid);
        FluidState vapour = NitrousOxide.saturatedVapour(bottleLiquid.temperature());
        double stays = Double.POSITIVE_INFINITY;
        return List.of(
                change("filter half blocked", before, feed(circuit.withFilterBlocked(0.5), bore, bottleLiquid), stays),
                change(
                        "hose twice as long",
                        before,
                        feed(circuit.withHoseLength(2 * circuit.hoseLength()), bore, bottleLiquid),
                        stays),
                change("hose full of vapour, not purged", before, feed(circuit, bore, vapour), before.fillTime()));
    }

    private static Change change(String name, FeedFlow before, FeedFlow after, double seconds) {
        double ratio = after.massFlow() / before.massFlow();
        return new Change(name, after, ratio, seconds, before.band().holds(ratio));
    }

    private FeedFlow feed(NitrousCircuit with, double bore, FluidState inlet) {
        return with.path(nozzles, bore, passage).flow(inlet, downstreamPressure);
    }
}
