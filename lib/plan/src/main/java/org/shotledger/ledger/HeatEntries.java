package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;

import org.shotledger.car.EngineModel;
import org.shotledger.car.FuelStreams;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.fuel.Mixture;
import org.shotledger.limits.Provenance;
import org.shotledger.setup.Factor;

/** The heat, the part of it that works, and the exhaust. */
final class HeatEntries {
    private static final String BURNING =
            LedgerPen.HEYWOOD + "section 4.9; JANAF Thermochemical Tables, 4th edition (1998)," + " 82.05 kJ/mol";

    private HeatEntries() {}

    static void write(LedgerPen pen, Subject from) {
        OperatingPoint p = from.point();
        EngineModel model = from.car().model();
        pen.calculated("heat", "heat released", "Q", POWER, p.heat().total())
                .by(model.combustion().basis() + ", plus 1.864 MJ per kg of nitrous oxide decomposed", BURNING)
                .on("air-flow", "humidity-ratio", "nitrous-flow", "main-fuel-flow", "nitrous-fuel-flow")
                .from(x -> model.combustion().burn(mixture(from, x)).total());
        working(pen, from, model);
        pen.calculated(
                        "exhaust-flow",
                        "exhaust flow",
                        "m_E",
                        MASS_FLOW,
                        p.charge().mixture().totalFlow())
                .by("sum of air, water vapour, nitrous oxide and both fuels", "conservation of mass")
                .on("air-flow", "humidity-ratio", "nitrous-flow", "main-fuel-flow", "nitrous-fuel-flow")
                .from(x -> mixture(from, x).totalFlow());
        pen.calculated(
                        "exhaust-pressure",
                        "pressure before the turbine",
                        "p_e",
                        ABSOLUTE_PRESSURE,
                        p.shaft().exhaustPressure())
                .by(
                        "turbine power equals compressor power",
                        "Watson and Janota, Turbocharging the Internal Combustion Engine (1982)")
                .on("exhaust-flow", "compressor-power")
                .from(x -> from.model().shaft(x[0], x[1]).exhaustPressure());
    }

    private static void working(LedgerPen pen, Subject from, EngineModel model) {
        if (!from.nitrous()) {
            pen.calculated(
                            "working-heat",
                            "heat that works",
                            "Q_w",
                            POWER,
                            from.point().heat().total())
                    .by("all of it", "definition")
                    .on("heat")
                    .from(x -> x[0]);
            return;
        }
        Mixture m = from.point().charge().mixture();
        double own = model.combustion()
                .burn(Mixture.ofAir(m.dryAir(), m.waterVapour(), m.mainFuel(), m.mainFlow()))
                .total();
        pen.calculated("own-heat", "of that, what air and main fuel release alone", "Q_0", POWER, own)
                .by(model.combustion().basis(), BURNING)
                .on("air-flow", "humidity-ratio", "main-fuel-flow")
                .from(x -> model.combustion()
                        .burn(Mixture.ofAir(x[0], x[0] * x[1], from.fuels().main(), x[2]))
                        .total());
        pen.calculated(
                        "nitrous-work-share",
                        "share of the nitrous heat that works as well as the engine's own",
                        "k_N",
                        RATIO,
                        model.nitrousShare())
                .uncertain(PowerUncertainty.NITROUS_SHARE)
                .by(
                        "chosen so that the model meets the trade's 0.8 lb in 10 s per 100 hp; to be replaced by this engine's own pulls",
                        "common practice, no source")
                .provenance(Provenance.COMMON_PRACTICE)
                .enter();
        double factor = from.factor(Factor.NITROUS_WORK);
        double share = model.nitrousShare() * factor;
        double works = own + share * (from.point().heat().total() - own);
        pen.calculated("working-heat", "heat that works", "Q_w", POWER, works)
                .by("Q_0 + k_N (Q - Q_0)" + EngineEntries.times(factor), "definition of the share")
                .on("own-heat", "nitrous-work-share", "heat")
                .from(x -> x[0] + x[1] * factor * (x[2] - x[0]));
    }

    /** The streams from dry air, humidity ratio, nitrous oxide, main fuel and nitrous fuel. */
    static Mixture mixture(Subject from, double... x) {
        FuelStreams fuels = from.fuels();
        return new Mixture(x[0], x[0] * x[1], x[2], fuels.main(), x[3], fuels.nitrous(), x[4]);
    }
}
