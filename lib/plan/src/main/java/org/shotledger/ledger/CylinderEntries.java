package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;

import org.shotledger.engine.Charge;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.fuel.Mixture;
import org.shotledger.gas.Gas;
import org.shotledger.setup.Factor;

/** The load of a cylinder. */
final class CylinderEntries {
    private CylinderEntries() {}

    static void write(LedgerPen pen, Subject from) {
        double factor = from.factor(Factor.PEAK_PRESSURE);
        double peak = from.point().cylinder().peakPressure();
        pen.calculated("peak-pressure", "peak cylinder pressure", "p_max", ABSOLUTE_PRESSURE, peak)
                .by(
                        "closed cycle of one zone: slider-crank, Wiebe burning, heat to the walls"
                                + EngineEntries.times(factor),
                        LedgerPen.HEYWOOD
                                + "chapters 9 and 12; Woschni, SAE 670931 (1967); burn timing: common practice, no source")
                .on(
                        "air-flow",
                        "humidity-ratio",
                        "nitrous-flow",
                        "main-fuel-flow",
                        "nitrous-fuel-flow",
                        "plenum-pressure",
                        "charge-temperature",
                        "breathed-volume",
                        "spark-retard",
                        "engine-speed",
                        "exhaust-flow",
                        "compressor-power")
                .from(x -> factor * peak(from, x));
    }

    private static double peak(Subject from, double... x) {
        OperatingPoint p = from.point();
        Mixture mixture = HeatEntries.mixture(from, x);
        Charge was = p.charge();
        Charge charge = new Charge(
                mixture,
                x[5],
                x[6],
                x[5] * x[7] / (Gas.MOLAR_CONSTANT * x[6]),
                was.airWithoutNitrous(),
                was.displacement(),
                was.cooling());
        OperatingPoint point = new OperatingPoint(
                x[9],
                p.mode(),
                p.wanted(),
                x[5],
                p.air(),
                p.bottle(),
                p.compressor(),
                p.airAfterCooler(),
                charge,
                p.nitrous(),
                p.nitrousFuel(),
                p.main(),
                from.car().model().combustion().burn(mixture),
                from.model().shaft(x[10], x[11]),
                p.cylinder(),
                p.power(),
                p.wheelPower());
        return from.model().cycle(point, x[8]).peakPressure();
    }
}
