package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.AIR_VOLUME_FLOW;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TEMPERATURE;

import org.shotledger.boost.Compressor;
import org.shotledger.boost.CompressorPoint;
import org.shotledger.car.SheetPaths;
import org.shotledger.car.Turbo;
import org.shotledger.engine.Charge;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.gas.Gas;
import org.shotledger.setup.Factor;

/** Air from the compressor to the plenum. */
final class AirEntries {
    private static final String[] INPUTS = {
        "compressor-flow", "plenum-pressure", "ambient-pressure", "ambient-temperature", "ambient-density"
    };

    private AirEntries() {}

    static void write(LedgerPen pen, Subject from) {
        OperatingPoint p = from.point();
        CompressorPoint compressor = p.compressor();
        pen.calculated("compressor-flow", "moist air through the compressor", "m_C", MASS_FLOW, compressor.flow())
                .by(
                        "solved so that compressor, cooler, mixed charge, back pressure and what the engine breathes agree",
                        LedgerPen.HEYWOOD + "section 6.2; the car's compressor map")
                .on(Subject.RUN)
                .from(x -> from.again(x).compressor().flow());
        breathing(pen, from);
        compressor(pen, from, compressor);
        double effectiveness = from.car().turbo().cooler().effectiveness();
        pen.sheet(
                "cooler-effectiveness",
                "effectiveness of the charge cooler",
                "eps",
                FRACTION,
                effectiveness,
                SheetPaths.COOLER);
        pen.calculated("air-temperature", "air temperature after the cooler", "T_3", TEMPERATURE, p.airAfterCooler())
                .by("T_2 - eps (T_2 - T_a)", "definition of effectiveness")
                .on("compressor-outlet", "ambient-temperature", "cooler-effectiveness")
                .from(x -> x[0] - x[2] * (x[0] - x[1]));
    }

    private static void compressor(LedgerPen pen, Subject from, CompressorPoint compressor) {
        pen.calculated(
                        "compressor-outlet",
                        "temperature after the compressor",
                        "T_2",
                        TEMPERATURE,
                        compressor.outletTemperature())
                .by(
                        "T_a (1 + (PR^((g-1)/g) - 1) / eta), efficiency from the map",
                        "first law; the car's compressor map")
                .on(INPUTS)
                .from(x -> compressed(from, x).outletTemperature());
        pen.calculated("turbo-speed", "speed of the turbocharger", "", ROTATION, compressor.rpm())
                .by("speed line of the map through the point", "the car's compressor map")
                .on(INPUTS)
                .from(x -> compressed(from, x).rpm());
        pen.calculated("compressor-power", "power the compressor takes", "P_C", POWER, compressor.power())
                .by("m_C cp (T_2 - T_a)", "first law")
                .on(INPUTS)
                .from(x -> compressed(from, x).power());
    }

    /** The table holds at the back pressure of the base pull; another one changes what is breathed. */
    private static void breathing(LedgerPen pen, Subject from) {
        double factor = from.factor(Factor.BREATHING);
        double tabled = from.car().engine().breathedVolume(from.point().rpm()) * factor;
        double volume = volume(from.point());
        pen.calculated(
                        "back-pressure-factor",
                        "what the back pressure does to the breathing",
                        "",
                        RATIO,
                        volume / tabled)
                .by(
                        "residual gas by exhaust over plenum pressure, against that of the base pull",
                        LedgerPen.HEYWOOD + "section 6.2")
                .on(Subject.RUN)
                .from(x -> volume(from.again(x)) / (from.car().engine().breathedVolume(x[0]) * factor));
        pen.calculated("breathed-volume", "charge breathed at plenum conditions", "V", AIR_VOLUME_FLOW, volume)
                .by(
                        "eta_v V_d N/2 times the factor of the back pressure" + EngineEntries.times(factor),
                        LedgerPen.HEYWOOD + "section 2.10")
                .on("volumetric-efficiency", "displacement", "engine-speed", "back-pressure-factor")
                .from(x -> x[0] * x[1] * x[2] / 120 * factor * x[3]);
    }

    private static double volume(OperatingPoint point) {
        Charge charge = point.charge();
        return charge.gasFlow() * Gas.MOLAR_CONSTANT * charge.temperature() / charge.pressure();
    }

    private static CompressorPoint compressed(Subject from, double... x) {
        Turbo turbo = from.car().turbo();
        double inlet = x[2] - turbo.inlet().loss(x[0], x[4]);
        double outlet = x[1] + turbo.cooler().loss().loss(x[0], x[4] * x[1] / x[2]);
        return Compressor.at(turbo.map(), x[0], x[3], inlet, outlet);
    }
}
