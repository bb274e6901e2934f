package org.shotledger.budget;

import static org.shotledger.units.QuantityKind.COUNT;
import static org.shotledger.units.QuantityKind.LENGTH;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.VOLUME;

import org.shotledger.build.Build;

/** The engine as the sheet gives it. */
final class EngineEntries {
    private EngineEntries() {}

    static void write(LedgerPen pen, LedgerSubject from) {
        Build build = from.build();
        var engine = build.engine();
        pen.sheet("bore", "bore", "B", LENGTH, engine.bore(), "engine.bore");
        pen.sheet("stroke", "stroke", "S", LENGTH, engine.stroke(), "engine.stroke");
        pen.sheet("cylinders", "cylinders", "z", COUNT, engine.cylinders(), "engine.cylinders");
        pen.sheet(
                "compression-ratio",
                "compression ratio",
                "r",
                RATIO,
                engine.compressionRatio(),
                "engine.compression-ratio");
        pen.sheet(
                "volumetric-efficiency",
                "volumetric efficiency at that speed",
                "eta_v",
                RATIO,
                engine.volumetricEfficiency().at(from.peak().rpm()),
                "engine.volumetric-efficiency");
        pen.calculated("displacement", "displacement", "V_d", VOLUME, engine.displacement())
                .by("z pi/4 B^2 S", "definition")
                .on("bore", "stroke", "cylinders");
        pen.sheet(
                "lambda-main",
                "mixture of the main fuel",
                "lambda_0",
                RATIO,
                build.tune().lambda(),
                "tune.lambda");
    }
}
