package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.TEMPERATURE;

import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.setup.Factor;

/** The closed cycle of the cylinders and what leaves them. */
final class HeatEntries {
    private static final String CYCLE = LedgerPen.HEYWOOD
            + "chapters 4, 9 and 12; Woschni, SAE 670931 (1967); burn timing: common practice, no source";

    private HeatEntries() {}

    static void write(LedgerPen pen, Subject from) {
        OperatingPoint p = from.point();
        pen.calculated("heat", "heat released", "Q", POWER, p.heat())
                .by("reaction of the trapped charge, dissociation included", CYCLE)
                .on(Subject.RUN)
                .from(x -> from.again(x).heat());
        double factor = from.factor(Factor.PEAK_PRESSURE);
        double peak = p.cylinder().peakPressure();
        pen.calculated("peak-pressure", "peak cylinder pressure", "p_max", ABSOLUTE_PRESSURE, peak)
                .by("closed cycle: slider-crank, Wiebe burning, heat to the walls" + EngineEntries.times(factor), CYCLE)
                .on(Subject.RUN)
                .from(x -> from.again(x).cylinder().peakPressure());
        pen.calculated(
                        "exhaust-temperature",
                        "exhaust temperature before the turbine",
                        "T_e",
                        TEMPERATURE,
                        p.exhaustTemperature())
                .by("mean of what leaves the cylinder, as the probe read it on the base pull", CYCLE)
                .on(Subject.RUN)
                .from(x -> from.again(x).exhaustTemperature());
        double exhaust = p.shaft().exhaustPressure();
        pen.calculated("exhaust-pressure", "pressure before the turbine", "p_e", ABSOLUTE_PRESSURE, exhaust)
                .by(
                        "turbine power equals compressor power",
                        "Watson and Janota, Turbocharging the Internal Combustion Engine (1982)")
                .on(Subject.RUN)
                .from(x -> from.again(x).shaft().exhaustPressure());
    }
}
