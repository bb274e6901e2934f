package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TEMPERATURE;

import org.shotledger.boost.Compressor;
import org.shotledger.boost.CompressorPoint;
import org.shotledger.car.SheetPaths;
import org.shotledger.car.Turbo;
import org.shotledger.engine.MoistAir;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.flow.FeedFlow;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;

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
                        "solved so that compressor, cooler, mixed charge and what the engine breathes agree",
                        LedgerPen.HEYWOOD + "section 6.2; the car's compressor map")
                .on(
                        "engine-speed",
                        "plenum-pressure",
                        "ambient-pressure",
                        "ambient-temperature",
                        "humidity",
                        "lambda-main",
                        "nitrous-flow",
                        "nitrous-fuel-flow")
                .from(x -> breathed(from, x));
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

    private static double breathed(Subject from, double... x) {
        OperatingPoint p = from.point();
        FeedFlow feed = x[6] == p.nitrous().massFlow()
                ? p.nitrous()
                : p.nitrous().times(x[6] / p.nitrous().massFlow());
        FuelFlow fuel = x[7] == p.nitrousFuel().massFlow()
                ? p.nitrousFuel()
                : p.nitrousFuel().times(x[7] / p.nitrousFuel().massFlow());
        return from.in(new MoistAir(x[2], x[3], x[4]), x[5])
                .at(x[0], x[1], p.mode(), feed, fuel)
                .compressor()
                .flow();
    }

    private static CompressorPoint compressed(Subject from, double... x) {
        Turbo turbo = from.car().turbo();
        double inlet = x[2] - turbo.inlet().loss(x[0], x[4]);
        double outlet = x[1] + turbo.cooler().loss().loss(x[0], x[4] * x[1] / x[2]);
        return Compressor.at(turbo.map(), x[0], x[3], inlet, outlet);
    }
}
