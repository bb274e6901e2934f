package org.shotledger.spread;

import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.fuel.Mixture;

/**
 * The oxygen balance of one cylinder whose two nitrous streams are off nominal:
 * {@code lambda = (A + N n) / (M + F f)} with relative flows n and f.
 *
 * @param air oxygen from air over the whole demand at nominal
 * @param nitrous oxygen from nitrous oxide over the same
 * @param main oxygen the main fuel demands over the same
 * @param fuel oxygen the nitrous fuel demands over the same; main and fuel together are 1
 */
record OxygenShares(double air, double nitrous, double main, double fuel) {

    static OxygenShares of(OperatingPoint point) {
        Mixture m = point.charge().mixture();
        double demanded = m.oxygenDemanded();
        double main = m.mainFlow() * m.mainFuel().oxygenDemand() / demanded;
        double nitrous = m.nitrousLambda() * (1 - main);
        return new OxygenShares(m.oxygenSupplied() / demanded - nitrous, nitrous, main, 1 - main);
    }

    double lambda(double nitrousFlow, double fuelFlow) {
        return (air + nitrous * nitrousFlow) / (main + fuel * fuelFlow);
    }

    /** The nitrous flow that gives a lambda at a fuel flow. */
    double nitrousFlow(double lambda, double fuelFlow) {
        return (lambda * (main + fuel * fuelFlow) - air) / nitrous;
    }
}
