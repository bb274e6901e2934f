package org.shotledger.risk;

import org.shotledger.budget.Standing;
import org.shotledger.units.QuantityKind;

/** The lowest supply voltage at which pumps and injectors keep every limit. */
final class VoltageGate {
    private static final double CLOSE = 0.01;
    private static final double FURTHEST = 5;
    private static final double HYSTERESIS = 0.3;

    private VoltageGate() {}

    static Gate of(Drift drift) {
        double planned = drift.plan().conditions().voltage();
        double inside = planned;
        double outside = planned - FURTHEST;
        while (inside - outside > CLOSE) {
            double middle = (inside + outside) / 2;
            if (at(drift, middle).safe()) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return new Gate(
                "voltage",
                "supply voltage",
                QuantityKind.VOLTAGE,
                inside,
                Double.NaN,
                Math.min(HYSTERESIS, (planned - inside) / 2),
                planned,
                at(drift, outside).firstWords() + " breaks: a slower pump passes less, a slower injector opens later",
                "",
                Standing.CALCULATED);
    }

    private static Outcome at(Drift drift, double voltage) {
        return Trial.run(drift.plan().withVoltage(voltage), drift.line());
    }
}
