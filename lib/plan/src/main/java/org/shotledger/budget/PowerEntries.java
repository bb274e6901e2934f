package org.shotledger.budget;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;

import org.shotledger.build.Build;

/** From heat to power at the wheels, and the load of a cylinder. */
final class PowerEntries {
    /** Standard uncertainty of the effectiveness, our own reading of the spread of the trade's figures, 0.8 to 1.0 lb. */
    private static final double EFFECTIVENESS_UNCERTAINTY = 0.1;

    private PowerEntries() {}

    static void write(LedgerPen pen, LedgerSubject from) {
        Evaluation peak = from.peak();
        Build build = from.build();
        Evaluator evaluator = from.evaluator();
        pen.sheet(
                "base-power",
                "wheel power of the base pull",
                "P_0",
                POWER,
                build.basePull().wheelPower(),
                "base-pull.wheel-power");
        pen.calculated(
                        "cycle-share",
                        "share of the constant-volume cycle",
                        "f",
                        RATIO,
                        evaluator.model().efficiency().fraction())
                .by("solved so that the model gives the base pull's wheel power", "calibration on the build's own pull")
                .on("base-power", "volumetric-efficiency", "displacement", "lambda-main");
        pen.calculated("heat", "heat released", "Q", POWER, peak.heat().total())
                .by(
                        evaluator.model().combustion().basis() + ", plus 1.864 MJ per kg of nitrous oxide decomposed",
                        LedgerPen.HEYWOOD
                                + "section 4.9; JANAF Thermochemical Tables, 4th edition (1998), 82.05 kJ/mol")
                .on(
                        "lambda",
                        "air-flow",
                        "nitrous-flow",
                        "main-fuel-flow",
                        "nitrous-fuel-flow",
                        "main-fuel-heat",
                        "nitrous-fuel-heat");
        pen.calculated(
                        "nitrous-effectiveness",
                        "share of the nitrous heat that works as well as the engine's own",
                        "k_N",
                        RATIO,
                        evaluator.model().nitrousEffectiveness())
                .uncertain(EFFECTIVENESS_UNCERTAINTY)
                .by(
                        "chosen so that the model meets the trade's 0.8 lb in 10 s per 100 hp; to be replaced by this engine's own pulls",
                        "common practice, no source")
                .standing(Standing.COMMON_PRACTICE)
                .on();
        pen.calculated(
                        "indicated",
                        "indicated power",
                        "P_i",
                        POWER,
                        peak.power().indicated())
                .by(
                        "f (1 - r^(1-g)) (Q_own + k_N Q_nitrous), less the loss by spark retard",
                        LedgerPen.HEYWOOD + "chapter 5; calibration on the build's own pull")
                .on("nitrous-effectiveness", "heat", "cycle-share", "compression-ratio");
        pen.calculated("friction", "friction power", "P_f", POWER, peak.power().friction())
                .by(
                        evaluator.model().friction().basis(),
                        evaluator.model().friction().basis())
                .on("engine-speed", "displacement");
        pen.calculated(
                        "exhaust-pressure",
                        "pressure before the turbine",
                        "p_e",
                        ABSOLUTE_PRESSURE,
                        peak.shaft().exhaustPressure())
                .by(
                        "turbine power equals compressor power",
                        "Watson and Janota, Turbocharging the Internal Combustion Engine (1982)")
                .on("air-flow", "compressor-outlet");
        pen.calculated("pumping", "pumping power", "P_p", POWER, peak.power().pumping())
                .by("(p_e - p_m) V_d N/2", LedgerPen.HEYWOOD + "section 5.4")
                .on("exhaust-pressure", "plenum-pressure", "displacement", "engine-speed");
        pen.calculated(
                        "brake",
                        "power at the crankshaft",
                        "P_b",
                        POWER,
                        peak.power().brake())
                .by("P_i - P_f - P_p", "definition")
                .on("indicated", "friction", "pumping");
        pen.sheet(
                "driveline-loss",
                "driveline loss, proportional part",
                "k",
                FRACTION,
                build.driveline().proportionalLoss(),
                "driveline.loss");
        pen.calculated("wheel-power", "power at the wheels", "P_w", POWER, peak.wheelPower())
                .uncertain(from.wheelUncertainty())
                .by("(P_b - drag) (1 - k)", "definition")
                .on("brake", "driveline-loss");
        pen.calculated("nitrous-power", "of that, from nitrous", "", POWER, from.added())
                .by("difference of the same point with the nitrous on and off", "definition")
                .on("wheel-power");
        pen.calculated(
                        "peak-pressure",
                        "peak cylinder pressure",
                        "p_max",
                        ABSOLUTE_PRESSURE,
                        peak.cylinder().peakPressure())
                .by(
                        "closed cycle of one zone: slider-crank, Wiebe burning, heat to the walls",
                        LedgerPen.HEYWOOD
                                + "chapters 9 and 12; Woschni, SAE 670931 (1967); burn timing: common practice, no source")
                .on("heat", "compression-ratio", "plenum-pressure", "charge-temperature");
    }
}
