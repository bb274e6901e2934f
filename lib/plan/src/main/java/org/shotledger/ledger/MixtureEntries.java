package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.TEMPERATURE;

import org.shotledger.car.FuelStreams;
import org.shotledger.car.Injection;
import org.shotledger.engine.Charge;
import org.shotledger.engine.ChargeMixing;
import org.shotledger.engine.Intake;
import org.shotledger.engine.Intake.FuelSupplied;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.setup.Factor;

/** The mixed charge, its oxygen balance and the main fuel's supply. */
final class MixtureEntries {
    private static final double AIR = Oxidisers.OXYGEN_IN_DRY_AIR;
    private static final double NITROUS = Oxidisers.OXYGEN_IN_NITROUS_OXIDE;
    private static final String BALANCE = "oxygen balance";

    private MixtureEntries() {}

    static void write(LedgerPen pen, Subject from) {
        charge(pen, from);
        Mixture mixture = from.point().charge().mixture();
        double metered = from.factor(Factor.MAIN_FUEL);
        var main = pen.calculated("main-fuel-flow", "main fuel flow", "m_M", MASS_FLOW, mixture.mainFlow());
        if (RailEntries.fallen(from)) {
            main.by(
                            "0.2314 m_A / (lambda_0 s_M)" + EngineEntries.times(metered)
                                    + ", times the share that the injectors pass",
                            BALANCE)
                    .on("air-flow", "lambda-main", "main-fuel-oxygen", "injector-share")
                    .from(x -> AIR * x[0] * metered * x[3] / (x[1] * x[2]));
        } else {
            main.by("0.2314 m_A / (lambda_0 s_M)" + EngineEntries.times(metered), BALANCE)
                    .on("air-flow", "lambda-main", "main-fuel-oxygen")
                    .from(x -> AIR * x[0] * metered / (x[1] * x[2]));
        }
        if (from.nitrous()) {
            nitrous(pen, mixture);
        } else {
            pen.calculated("lambda", "mixture", "lambda", RATIO, mixture.lambda())
                    .by("0.2314 m_A / (s_M m_M)", BALANCE)
                    .on("air-flow", "main-fuel-flow", "main-fuel-oxygen")
                    .from(x -> AIR * x[0] / (x[1] * x[2]));
        }
        supply(pen, from);
    }

    private static void charge(LedgerPen pen, Subject from) {
        Charge charge = from.point().charge();
        String[] inputs = {
            "plenum-pressure",
            "air-temperature",
            "humidity-ratio",
            "nitrous-flow",
            "nitrous-enthalpy",
            "lambda-main",
            "nitrous-fuel-flow",
            "fuel-temperature",
            "main-evaporated",
            "breathed-volume",
            "oxide-evaporated",
            "wall-heat"
        };
        pen.calculated(
                        "charge-temperature",
                        "temperature of the mixed charge",
                        "T_m",
                        TEMPERATURE,
                        charge.temperature())
                .by(
                        "energy balance of air, nitrous oxide and both fuels, no more of them vapour than their vapour pressure allows",
                        "first law; Antoine and Raoult, constants of the NIST Chemistry WebBook, from memory; "
                                + NitrousEntries.FLUID)
                .on(inputs)
                .from(x -> mixed(from, x).temperature());
        pen.calculated(
                        "air-flow",
                        "dry air flow",
                        "m_A",
                        MASS_FLOW,
                        charge.mixture().dryAir())
                .by(
                        "speed-density: eta_v V_d N/2 p_m/(R T_m), less the room of nitrous oxide and fuel vapour",
                        LedgerPen.HEYWOOD + "section 6.2")
                .on(inputs)
                .from(x -> mixed(from, x).mixture().dryAir());
    }

    private static Charge mixed(Subject from, double... x) {
        FuelStreams fuels = from.fuels();
        Intake intake = new Intake(
                x[0],
                x[1],
                x[2],
                x[3],
                x[4],
                new FuelSupplied(fuels.main(), x[7], x[8]),
                x[5] / (from.factor(Factor.MAIN_FUEL) * RailEntries.share(from)),
                new FuelSupplied(fuels.nitrous(), x[7], fuels.nitrousEvaporated()),
                x[6],
                new Intake.Warming(x[10], x[11]));
        return ChargeMixing.mix(intake, x[9]);
    }

    private static void nitrous(LedgerPen pen, Mixture mixture) {
        pen.calculated("lambda", "mixture of all streams", "lambda", RATIO, mixture.lambda())
                .by("(0.2314 m_A + 0.3635 m_N) / (s_M m_M + s_F m_F)", BALANCE)
                .on(
                        "air-flow",
                        "nitrous-flow",
                        "main-fuel-flow",
                        "nitrous-fuel-flow",
                        "main-fuel-oxygen",
                        "nitrous-fuel-oxygen")
                .from(x -> (AIR * x[0] + NITROUS * x[1]) / (x[4] * x[2] + x[5] * x[3]));
        pen.calculated(
                        "circuit-ratio",
                        "nitrous oxide over nitrous fuel, by mass",
                        "r_N",
                        RATIO,
                        mixture.nitrousOxidiserFuel())
                .by("m_N / m_F", "definition")
                .on("nitrous-flow", "nitrous-fuel-flow")
                .from(x -> x[0] / x[1]);
        pen.calculated(
                        "circuit-lambda",
                        "mixture of the nitrous circuit alone",
                        "lambda_N",
                        RATIO,
                        mixture.nitrousLambda())
                .by("0.3635 m_N / (s_F m_F)", BALANCE)
                .on("nitrous-flow", "nitrous-fuel-flow", "nitrous-fuel-oxygen")
                .from(x -> NITROUS * x[0] / (x[1] * x[2]));
    }

    private static void supply(LedgerPen pen, Subject from) {
        OperatingPoint p = from.point();
        Injection injection = from.car().injection();
        pen.calculated(
                        "injector-duty",
                        "main injector duty",
                        "",
                        FRACTION,
                        p.main().duty())
                .by("opening time for the fuel of a cycle over the cycle's time", "the injector's flow and dead time")
                .on("main-fuel-flow", "engine-speed", "main-fuel-density", "main-rail", "plenum-pressure", "voltage")
                .from(x -> injection.injector().duty(x[0] / injection.count(), x[1], x[2], x[3] - x[4], x[5]));
    }
}
