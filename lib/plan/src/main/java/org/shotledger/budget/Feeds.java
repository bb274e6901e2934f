package org.shotledger.budget;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.shotledger.flow.FeedFlow;

/**
 * Nitrous flows by jet, solved once where they choke: a choked flow is the same at every lower plenum pressure.
 */
final class Feeds {
    private final Evaluator evaluator;
    private final Conditions at;
    private final double highestPlenumPressure;
    private final Map<Double, FeedFlow> solved = new ConcurrentHashMap<>();

    Feeds(Evaluator evaluator, Conditions at, double highestPlenumPressure) {
        this.evaluator = evaluator;
        this.at = at;
        this.highestPlenumPressure = highestPlenumPressure;
    }

    FeedFlow of(Demand demand) {
        double bore = demand.jets().orElseThrow().nitrousBore();
        FeedFlow highest = solved.computeIfAbsent(
                bore, any -> evaluator.feed(at, new Demand(highestPlenumPressure, demand.jets())));
        boolean same = highest.choked() && demand.plenumPressure() <= highestPlenumPressure;
        return same ? highest : evaluator.feed(at, demand);
    }
}
