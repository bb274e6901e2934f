package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.TIME;

import org.shotledger.evaluate.PassOutcome;
import org.shotledger.limits.Provenance;

/** What one filling gives, and the figure of the trade beside the computed one. */
final class BottleEntries {
    /** 100 mechanical horsepower, W (exact: 550 ft lbf/s). */
    private static final double HUNDRED_HORSEPOWER = 74569.987158227022;

    private static final String EMPTYING =
            "equilibrium emptying; known error after Zimmerman et al., AIAA 2013-4045 (2013)";

    private BottleEntries() {}

    static void write(LedgerPen pen, Subject from) {
        from.outcome().pass().ifPresent(pass -> {
            pen.calculated(
                            "pass-seconds",
                            "time under full nitrous in pass " + pass.number(),
                            "t",
                            TIME,
                            pass.seconds())
                    .by(
                            "dU = -m h_out dt with liquid and vapour in equilibrium, until the pass, the pressure band or the liquid ends",
                            EMPTYING)
                    .on("charge", "start-temperature")
                    .from(x -> pass(from, x).seconds());
            pen.calculated("passes", "passes from one filling", "", RATIO, pass.given())
                    .by("full passes and the share of the one that is cut short", EMPTYING)
                    .on("charge", "start-temperature")
                    .from(x -> pass(from, x).given());
        });
        double perPower = 10 * from.point().nitrous().massFlow() / (from.added() / HUNDRED_HORSEPOWER);
        pen.calculated("trade-nitrous", "nitrous oxide in 10 s for each 100 hp at the wheels", "", MASS, perPower)
                .by(
                        "m_N over the power it adds; the trade speaks of 0.8 to 1.0 lb at the crankshaft",
                        "common practice, no source")
                .provenance(Provenance.COMMON_PRACTICE)
                .on("nitrous-flow", "nitrous-power")
                .from(x -> 10 * x[0] / (x[1] / HUNDRED_HORSEPOWER));
    }

    private static PassOutcome pass(Subject from, double... x) {
        return from.filled(x[0], x[1]).pass().orElseThrow();
    }
}
