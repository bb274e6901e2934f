package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.COUNT;
import static org.shotledger.units.QuantityKind.LENGTH;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.VOLUME;
import static org.shotledger.units.QuantityKind.VOLUME_FLOW;

import org.shotledger.car.SheetPaths;
import org.shotledger.engine.Engine;
import org.shotledger.setup.Factor;

/** The engine as the sheet gives it, and the volume it breathes. */
final class EngineEntries {
    private EngineEntries() {}

    static void write(LedgerPen pen, Subject from) {
        Engine engine = from.car().engine();
        double rpm = from.point().rpm();
        pen.sheet("bore", "bore", "B", LENGTH, engine.bore(), SheetPaths.BORE);
        pen.sheet("stroke", "stroke", "S", LENGTH, engine.stroke(), SheetPaths.STROKE);
        pen.sheet("cylinders", "cylinders", "z", COUNT, engine.cylinders(), SheetPaths.CYLINDERS);
        double ratio = engine.compressionRatio();
        pen.sheet("compression-ratio", "compression ratio", "r", RATIO, ratio, SheetPaths.COMPRESSION_RATIO);
        pen.calculated("displacement", "displacement", "V_d", VOLUME, engine.displacement())
                .by("z pi/4 B^2 S", "definition")
                .on("bore", "stroke", "cylinders")
                .from(x -> x[2] * Math.PI / 4 * x[0] * x[0] * x[1]);
        double filling = engine.volumetricEfficiency().at(rpm);
        pen.given(
                        "volumetric-efficiency",
                        "volumetric efficiency at that speed",
                        "eta_v",
                        RATIO,
                        filling,
                        SheetPaths.VOLUMETRIC_EFFICIENCY,
                        "the car")
                .on("engine-speed")
                .from(x -> engine.volumetricEfficiency().at(x[0]));
        double factor = from.factor(Factor.BREATHING);
        double volume = engine.breathedVolume(rpm) * factor;
        pen.calculated("breathed-volume", "charge breathed at plenum conditions", "V", VOLUME_FLOW, volume)
                .by("eta_v V_d N/2" + times(factor), LedgerPen.HEYWOOD + "section 2.10")
                .on("volumetric-efficiency", "displacement", "engine-speed")
                .from(x -> x[0] * x[1] * x[2] / 120 * factor);
    }

    /** The words for a factor of the case, none for 1. */
    static String times(double factor) {
        return factor == 1 ? "" : ", times the case's factor of " + factor;
    }
}
