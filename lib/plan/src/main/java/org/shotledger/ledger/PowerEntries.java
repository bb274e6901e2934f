package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.SPECIFIC_ENERGY;
import static org.shotledger.units.QuantityKind.TORQUE;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import org.shotledger.car.BasePull;
import org.shotledger.car.Car;
import org.shotledger.car.EngineModel;
import org.shotledger.car.PullCorrection;
import org.shotledger.car.SheetPaths;
import org.shotledger.drive.Driveline;
import org.shotledger.engine.CommonPractice;
import org.shotledger.engine.EngineFactor;
import org.shotledger.evaluate.Calibration;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.setup.Factor;
import org.shotledger.units.UnitFactors;

/** From heat to power at the wheels. */
final class PowerEntries {
    /** Absolute accuracy of the root search of the calibration. */
    private static final double CALIBRATION = 1e-5;

    /** One hp from each lb/min, J/kg. */
    private static final double HORSEPOWER_PER_POUND_MINUTE = UnitFactors.HORSEPOWER * 60 / UnitFactors.POUND;

    private PowerEntries() {}

    static void write(LedgerPen pen, Subject from) {
        base(pen, from);
        crank(pen, from);
        wheels(pen, from);
    }

    private static void base(LedgerPen pen, Subject from) {
        Car car = from.car();
        double measured = car.basePull().strongest().wheelPower();
        car.basePull()
                .correction()
                .ifPresentOrElse(
                        correction -> observed(pen, car, measured, correction),
                        () -> pull(pen, car, "base-power", "wheel power of the base pull", "P_0", measured));
        pen.calculated(
                        "cycle-share",
                        "share of the fuel-air cycle",
                        "f",
                        RATIO,
                        car.model().factor().value())
                .uncertain(car.basePull().uncertainty() * car.model().factor().value())
                .by("solved so that the model gives the base pull's wheel power", "calibration on the car's own pull")
                .on("base-power")
                .within(CALIBRATION)
                .from(x -> calibrated(from, x[0] / measured));
        airPower(pen, from);
    }

    private static void pull(LedgerPen pen, Car car, String key, String name, String symbol, double value) {
        pen.given(key, name, symbol, POWER, value, SheetPaths.BASE_POWER, "the sheet's base pull")
                .uncertain(car.basePull().uncertainty() * value)
                .enter();
    }

    /** The engine knows nothing of a standard's air: it is held against what the dynamometer saw. */
    private static void observed(LedgerPen pen, Car car, double measured, PullCorrection correction) {
        pull(
                pen,
                car,
                "base-power-shown",
                "wheel power of the base pull as the chart shows it",
                "P_c",
                measured * correction.factor());
        pen.calculated("base-power", "wheel power of the base pull as observed", "P_0", POWER, measured)
                .uncertain(car.basePull().uncertainty() * measured)
                .by(
                        String.format(
                                Locale.ROOT,
                                "P_c / %.4f, the factor of the correction on the air of that day%s",
                                correction.factor(),
                                correction.holds() ? "" : "; it is beyond what the standard itself allows"),
                        correction.standard())
                .on("base-power-shown")
                .from(x -> x[0] / correction.factor());
    }

    /** The first figure to look at when a base pull is doubted. */
    private static void airPower(LedgerPen pen, Subject from) {
        double share = from.car().model().factor().value();
        double perAir = airPower(from, share);
        pen.calculated("base-air-power", "crankshaft power for each air flow, base pull", "", SPECIFIC_ENERGY, perAir)
                .by(
                        String.format(
                                Locale.ROOT,
                                "P_b over the air of that pull, %.2f hp from each lb/min; %s the band of 9 to 10.8 hp",
                                perAir / HORSEPOWER_PER_POUND_MINUTE,
                                CommonPractice.POWER_PER_AIR.contains(perAir)
                                        ? "inside"
                                        : "outside, so look at power, breathing table and boost of the pull:"),
                        "band: common practice, no source")
                .on("cycle-share")
                .from(x -> airPower(from, x[0]));
    }

    /** J for each kg of air, the engine reaching a share of the cycle. */
    private static double airPower(Subject from, double share) {
        Car car = from.car().with(from.car().model().with(new EngineFactor(share)));
        BasePull.Point strongest = car.basePull().strongest();
        return Calibration.pulled(car, from.setup(), strongest.rpm(), strongest.gaugePressure())
                .map(pulled ->
                        pulled.power().brake() / pulled.charge().mixture().dryAir())
                .orElse(Double.NaN);
    }

    private static double calibrated(Subject from, double share) {
        BasePull pull = from.car().basePull();
        BasePull scaled = new BasePull(
                pull.air(),
                pull.fuel(),
                pull.lambda(),
                pull.points().stream()
                        .map(p -> new BasePull.Point(p.rpm(), p.gaugePressure(), share * p.wheelPower()))
                        .toList(),
                pull.uncertainty(),
                pull.correction());
        return Calibration.of(from.car().with(scaled), from.setup())
                .model()
                .factor()
                .value();
    }

    private static void crank(LedgerPen pen, Subject from) {
        OperatingPoint p = from.point();
        EngineModel model = from.car().model();
        share(pen, from);
        double factor = from.factor(Factor.ENGINE_WORK);
        String[] inputs = Stream.concat(Stream.of("cycle-share", "nitrous-work-share"), Stream.of(Subject.RUN))
                .toArray(String[]::new);
        pen.calculated("indicated", "indicated power", "P_i", POWER, p.power().indicated())
                .by(
                        "f (W_air + k_N (W - W_air)) of the fuel-air cycle, times what the spark and the fuel that is"
                                + " still liquid leave of it"
                                + EngineEntries.times(factor),
                        LedgerPen.HEYWOOD + "chapter 5; calibration on the car's own pull")
                .on(inputs)
                .from(x -> from.again(x[0], x[1], Arrays.copyOfRange(x, 2, x.length))
                        .power()
                        .indicated());
        pen.calculated("friction", "friction power", "P_f", POWER, p.power().friction())
                .by(
                        "friction mean effective pressure times V_d N/2",
                        model.friction().basis())
                .on("peak-pressure", "stroke", "engine-speed", "displacement")
                .from(x -> model.friction().meanEffectivePressure(x[0], 2 * x[1] * x[2] / 60) * x[3] * x[2] / 120);
        pen.calculated("pumping", "pumping power", "P_p", POWER, p.power().pumping())
                .by("(p_e - p_m) V_d N/2", LedgerPen.HEYWOOD + "section 5.4")
                .on("exhaust-pressure", "plenum-pressure", "displacement", "engine-speed")
                .from(x -> (x[0] - x[1]) * x[2] * x[3] / 120);
        pen.calculated(
                        "brake",
                        "power at the crankshaft",
                        "P_b",
                        POWER,
                        p.power().brake())
                .by("P_i - P_f - P_p", "definition")
                .on("indicated", "friction", "pumping")
                .from(x -> x[0] - x[1] - x[2]);
        pen.calculated("crank-torque", "torque at the crankshaft", "", TORQUE, p.crankTorque())
                .by("P_b / (pi N / 30)", "definition")
                .on("brake", "engine-speed")
                .from(x -> x[0] / (Math.PI * x[1] / 30));
    }

    private static void share(LedgerPen pen, Subject from) {
        double value = from.car().model().nitrous().value();
        pen.given(
                        "nitrous-work-share",
                        "share of the work that nitrous adds which arrives",
                        "k_N",
                        FRACTION,
                        value,
                        SheetPaths.NITROUS_WORK,
                        "not measured, a band; to be replaced by a pull with nitrous; our choice, no source")
                .uncertain(PowerUncertainty.nitrousShare(from.car()))
                .enter();
    }

    private static void wheels(LedgerPen pen, Subject from) {
        OperatingPoint p = from.point();
        Driveline driveline = from.car().driveline();
        pen.sheet(
                "driveline-loss",
                "driveline loss, proportional part",
                "k",
                FRACTION,
                driveline.proportionalLoss(),
                SheetPaths.DRIVELINE_LOSS);
        pen.calculated("wheel-power", "power at the wheels", "P_w", POWER, p.wheelPower())
                .uncertain(PowerUncertainty.of(from.car(), p, from.offPower()))
                .by("(P_b - drag) (1 - k)", "definition")
                .on("brake", "driveline-loss", "engine-speed")
                .from(x -> (x[0] - driveline.dragTorque() * Math.PI * x[2] / 30) * (1 - x[1]));
        if (from.nitrous()) {
            pen.calculated("off-power", "power at the wheels with the nitrous closed", "", POWER, from.offPower())
                    .by("the same models at the same speed and boost", "as the power at the wheels")
                    .on("engine-speed", "plenum-pressure")
                    .from(x -> from.model().at(x[0], x[1], Mode.ARMED).wheelPower());
            pen.calculated("nitrous-power", "of that, from nitrous", "", POWER, from.added())
                    .by("difference of the same point with the nitrous on and closed", "definition")
                    .on("wheel-power", "off-power")
                    .from(x -> x[0] - x[1]);
        }
    }
}
