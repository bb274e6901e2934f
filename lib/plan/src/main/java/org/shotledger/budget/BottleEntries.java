package org.shotledger.budget;

import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.TIME;

/** What one bottle gives, and the figure of the trade beside the computed one. */
final class BottleEntries {
    /** 100 mechanical horsepower, W (exact: 550 ft lbf/s). */
    private static final double HUNDRED_HORSEPOWER = 74569.987158227022;

    private BottleEntries() {}

    static void write(LedgerPen pen, LedgerSubject from) {
        Evaluation peak = from.peak();
        pen.sheet(
                "charge",
                "nitrous oxide in the full bottle",
                "M",
                MASS,
                from.bottle().charge(),
                "bottle.charge");
        pen.calculated(
                        "bottle-seconds",
                        "time under full nitrous from one bottle",
                        "t",
                        TIME,
                        from.bottle().seconds())
                .by(
                        "dU = -m h_out dt with liquid and vapour in equilibrium, until the pressure band or the liquid ends",
                        "equilibrium emptying; known error after Zimmerman et al., AIAA 2013-4045 (2013)")
                .on("charge", "bottle-temperature", "nitrous-flow");

        double perSecond = peak.nitrous().massFlow() / (from.added() / HUNDRED_HORSEPOWER);
        pen.calculated("trade-nitrous", "nitrous oxide in 10 s for each 100 hp at the wheels", "", MASS, 10 * perSecond)
                .by(
                        "m_N over the power it adds; the trade speaks of 0.8 to 1.0 lb at the crankshaft",
                        "common practice, no source")
                .standing(Standing.COMMON_PRACTICE)
                .on("nitrous-flow", "nitrous-power");
    }
}
