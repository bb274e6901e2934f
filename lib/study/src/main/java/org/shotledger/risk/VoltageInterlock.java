package org.shotledger.risk;

import org.shotledger.curve.Bracket;
import org.shotledger.limits.Provenance;
import org.shotledger.units.QuantityKind;

/** The lowest supply voltage at which pumps and injectors keep every limit. */
final class VoltageInterlock {
    /** V: our choice, what a controller reads. */
    private static final double CLOSE = 0.01;
    /** V below the planned voltage: our choice; an engine that has lost more does not run. */
    private static final double FURTHEST = 5;
    /** Lowest voltage a case may have, V. */
    private static final double LOWEST = 8;

    /** V: our choice, above the ripple of an alternator. */
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
                at(drift, edge.outside()).firstWords()
                        + " breaks: a slower pump passes less, a slower injector opens later",
                "",
                Provenance.CALCULATED);
    }

    private static FaultOutcome at(Drift drift, double voltage) {
        return Simulation.run(drift.sound().withVoltage(voltage), drift.line());
    }
}
