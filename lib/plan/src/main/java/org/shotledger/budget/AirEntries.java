package org.shotledger.budget;

import static org.shotledger.units.QuantityKind.TEMPERATURE;

/** Air from the compressor to the plenum. */
final class AirEntries {
    private AirEntries() {}

    static void write(LedgerPen pen, LedgerSubject from) {
        Evaluation peak = from.peak();
        pen.calculated(
                        "compressor-outlet",
                        "temperature after the compressor",
                        "T_2",
                        TEMPERATURE,
                        peak.compressor().outletTemperature())
                .by(
                        "T_1 (1 + (PR^((g-1)/g) - 1) / eta), efficiency from the map",
                        "first law; the build's compressor map")
                .on("ambient-temperature", "ambient-pressure", "plenum-pressure");
        pen.calculated("air-temperature", "air temperature after the cooler", "T_3", TEMPERATURE, peak.airAfterCooler())
                .by("T_2 - eps (T_2 - T_a)", "definition of effectiveness")
                .on("compressor-outlet", "ambient-temperature");
    }
}
