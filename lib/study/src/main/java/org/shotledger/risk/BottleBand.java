package org.shotledger.risk;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;

import java.util.List;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Side;

/** The working band of the bottle pressure, as the car's sheet states it, held against a scenario in which nitrous flows. */
final class BottleBand {
    private BottleBand() {}

    static List<Limit> limits(Scenario s) {
        if (!s.flows()) {
            return List.of();
        }
        return List.of(
                limit(
                        s,
                        "bottle-low",
                        Side.AT_LEAST,
                        s.car().limits().bottlePressureLow(),
                        "limits.bottle-pressure-low",
                        "too little nitrous oxide: rich and weak"),
                limit(
                        s,
                        "bottle-high",
                        Side.AT_MOST,
                        s.car().limits().bottlePressureHigh(),
                        "limits.bottle-pressure-high",
                        "more nitrous oxide than the fuel jets are chosen for: lean, and nearer to the relief disc"));
    }

    private static Limit limit(Scenario s, String key, Side side, double bound, String path, String consequence) {
        return new Limit(
                key,
                "bottle pressure, " + (side == Side.AT_LEAST ? "low" : "high") + " side",
                ABSOLUTE_PRESSURE,
                s.bottle().pressure(),
                bound,
                side,
                false,
                consequence,
                s.car().provenance(path),
                s.car().reason(path),
                "nitrous on",
                s.at().name());
    }
}
