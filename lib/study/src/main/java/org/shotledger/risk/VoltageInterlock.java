package org.shotledger.risk;

import org.shotledger.curve.Bracket;
import org.shotledger.limits.Provenance;
import org.shotledger.units.QuantityKind;

/** The lowest supply voltage at which pumps and injectors keep every limit. */
final class VoltageInterlock {
    private static final double CLOSE = 0.01;
    private static final double FURTHEST = 5;
    /** Lowest voltage a case may have, V. */
    private static final double LOWEST = 8;

    private static final double HYSTERESIS = 0.3;

    private VoltageInterlock() {}

    static Interlock of(Drift drift) {
        double planned = drift.sound().at().voltage();
        Bracket.Edge edge = Bracket.edge(
                voltage -> at(drift, voltage).safe(), planned, Math.max(LOWEST, planned - FURTHEST), CLOSE);
        double inside = edge.inside();
        return new Interlock(
                "voltage",
                "supply voltage",
                QuantityKind.VOLTAGE,
                inside,
                Double.NaN,
                Math.min(HYSTERESIS, (planned - inside) / 2),
                planned,
                new Interlock.Kept(inside, Double.NaN),
                at(drift, edge.outside()).firstWords() + " breaks: a slower pump passes less, a slower injector opens later",
                "",
                Provenance.CALCULATED);
    }

    private static FaultOutcome at(Drift drift, double voltage) {
        return Simulation.run(drift.sound().withVoltage(voltage), drift.line());
    }
}
