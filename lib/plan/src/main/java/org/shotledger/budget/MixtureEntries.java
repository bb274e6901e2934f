package org.shotledger.budget;

import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.TEMPERATURE;

import org.shotledger.fuel.Mixture;

/** The mixed charge and its oxygen balance. */
final class MixtureEntries {
    private MixtureEntries() {}

    static void write(LedgerPen pen, LedgerSubject from) {
        Evaluation peak = from.peak();
        Mixture mixture = peak.charge().mixture();
        pen.calculated(
                        "charge-temperature",
                        "temperature of the mixed charge",
                        "T_m",
                        TEMPERATURE,
                        peak.charge().temperature())
                .by("energy balance of air, nitrous oxide and both fuels", "first law; " + NitrousEntries.FLUID)
                .on("air-temperature", "nitrous-flow", "nitrous-fuel-flow");
        pen.calculated("air-flow", "dry air flow", "m_A", MASS_FLOW, mixture.dryAir())
                .by(
                        "speed-density: eta_v V_d N/2 p_m/(R T_m), less the room of nitrous oxide and fuel vapour",
                        LedgerPen.HEYWOOD + "section 6.2")
                .on("volumetric-efficiency", "displacement", "engine-speed", "plenum-pressure", "charge-temperature");
        pen.calculated("main-fuel-flow", "main fuel flow", "m_M", MASS_FLOW, mixture.mainFlow())
                .by("0.2314 m_A / (lambda_0 s)", "oxygen balance")
                .on("air-flow", "lambda-main", "main-fuel-oxygen");
        pen.calculated("lambda", "mixture of all streams", "lambda", RATIO, mixture.lambda())
                .by("(0.2314 m_A + 0.3635 m_N) / (s_M m_M + s_F m_F)", "oxygen balance")
                .on(
                        "air-flow",
                        "nitrous-flow",
                        "main-fuel-flow",
                        "nitrous-fuel-flow",
                        "nitrous-fuel-oxygen",
                        "main-fuel-oxygen");
        pen.calculated(
                        "circuit-ratio",
                        "nitrous oxide over nitrous fuel, by mass",
                        "r_N",
                        RATIO,
                        mixture.nitrousOxidiserFuel())
                .by("m_N / m_F", "definition")
                .on("nitrous-flow", "nitrous-fuel-flow");
        pen.calculated(
                        "circuit-lambda",
                        "mixture of the nitrous circuit alone",
                        "lambda_N",
                        RATIO,
                        mixture.nitrousLambda())
                .by("0.3635 m_N / (s_F m_F)", "oxygen balance")
                .on("nitrous-flow", "nitrous-fuel-flow", "nitrous-fuel-oxygen");
    }
}
