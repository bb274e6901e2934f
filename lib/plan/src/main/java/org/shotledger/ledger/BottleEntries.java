package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.TIME;

import org.shotledger.bottle.BottleModel;
import org.shotledger.engine.CommonPractice;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.PassOutcome;

/** What one filling gives, and the figure of the trade beside the computed one. */
final class BottleEntries {
    /** 100 mechanical horsepower, W (exact: 550 ft lbf/s). */
    private static final double HUNDRED_HORSEPOWER = 74569.987158227022;

    private BottleEntries() {}

    static void write(LedgerPen pen, Subject from) {
        BottleModel model = BottleModel.of(from.car().bottle().vessel());
        String source = model.standing();
        from.outcome().pass().ifPresent(pass -> {
            pen.calculated(
                            "pass-seconds",
                            "time under full nitrous in pass " + pass.number(),
                            "t",
                            TIME,
                            pass.seconds())
                    .by(
                            "dU = Q dt - m h_out dt, " + model.title()
                                    + ", until the pass, the pressure band or the liquid ends",
                            source)
                    .on("charge", "start-temperature")
                    .from(x -> pass(from, x).seconds());
            pen.calculated("passes", "passes from one filling", "", RATIO, pass.given())
                    .by("full passes and the share of the one that is cut short", source)
                    .on("charge", "start-temperature")
                    .from(x -> pass(from, x).given());
        });
        trade(pen, from);
    }

    private static void trade(LedgerPen pen, Subject from) {
        double off = from.model()
                .at(from.point().rpm(), from.point().plenumPressure(), Mode.ARMED)
                .power()
                .brake();
        double added = from.point().power().brake() - off;
        pen.calculated("off-brake", "power at the crankshaft with the nitrous closed", "", POWER, off)
                .by("the same models at the same speed and boost", "as the power at the crankshaft")
                .on("engine-speed", "plenum-pressure")
                .from(x -> from.model().at(x[0], x[1], Mode.ARMED).power().brake());
        double flow = from.point().nitrous().massFlow();
        boolean usual = CommonPractice.NITROUS_FOR_POWER.contains(flow / added);
        pen.calculated(
                        "trade-nitrous",
                        "nitrous oxide in 10 s for each 100 hp it adds at the crankshaft",
                        "",
                        MASS,
                        10 * flow / (added / HUNDRED_HORSEPOWER))
                .uncertain(10
                        * flow
                        / (added / HUNDRED_HORSEPOWER)
                        * PowerUncertainty.nitrousShare(from.car())
                        / from.car().model().nitrous().value())
                .by(
                        "m_N over the power it adds; by the fuel-air cycle 0.77 to 0.83 lb when all work arrives, near"
                                + " 0.9 lb with the usual loss"
                                + " and retard;"
                                + " " + (usual ? "inside" : "OUTSIDE: look for what is wrong,")
                                + " the band of 0.75 to 1.12 lb",
                        "0.8 lb: common practice, no source; 0.93 to 1.12 lb: aero engines of the 1940s, encyclopaedia"
                                + " articles, secondary")
                .on("nitrous-flow", "brake", "off-brake")
                .from(x -> 10 * x[0] / ((x[1] - x[2]) / HUNDRED_HORSEPOWER));
    }

    private static PassOutcome pass(Subject from, double... x) {
        return from.filled(x[0], x[1]).pass().orElseThrow();
    }
}
