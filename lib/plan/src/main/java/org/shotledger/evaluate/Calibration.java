package org.shotledger.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.shotledger.car.BasePull;
import org.shotledger.car.Car;
import org.shotledger.car.FuelStreams;
import org.shotledger.curve.Curve;
import org.shotledger.engine.Cylinder;
import org.shotledger.engine.EngineFactor;
import org.shotledger.engine.ExhaustProbe;
import org.shotledger.engine.Intake;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Finds the one free constant of the engine model, the share of the fuel-air cycle's work that the engine reaches, so that the model
 * gives the wheel power of the base pull with that pull's own fuel, air, boost and mixture. With several points their powers are met
 * in sum; what is left at each is the misfit. The point of most power also tells the heat loss of the cylinder, what the exhaust
 * probe reads, how near to knock the pull was, and the back pressure at which the breathing table holds.
 */
public final class Calibration {
    /** Bounds of the engine's factor, as {@code EngineFactor} allows them. */
    private static final double LEAST = 0.4;

    private static final double MOST = 1.0;
    /** Any state does: the nitrous is closed on a base pull. */
    private static final double BOTTLE = 290;
    /** The cylinder's heat loss moves peak pressure and so friction a little. */
    private static final int ROUNDS = 2;
    /** Engine speeds at which the pull's knock index is worked out, from this share of the highest. */
    private static final int KNOCK_SPEEDS = 8;

    /** Share of the highest speed below which no full-load pull is made: our choice. */
    private static final double LOWEST_SHARE = 0.3;

    private Calibration() {}

    /**
     * Calibrates a car on its own base pull.
     *
     * @param car the car
     * @param setup what was set; only fuel pressure and mixture count, and the mixture is the pull's own
     * @return the same car with calibrated models
     * @throws IllegalArgumentException when no share from 0.4 to 1.0 gives the measured power; the message names both ends
     */
    public static Car of(Car car, Setup setup) {
        Car calibrated = car;
        for (int round = 0; round < ROUNDS; round++) {
            calibrated = withFactor(calibrated, setup);
            calibrated = withBase(calibrated, setup);
        }
        return withFactor(calibrated, setup);
    }

    private static Car withFactor(Car car, Setup setup) {
        double measured = car.basePull().points().stream()
                .mapToDouble(BasePull.Point::wheelPower)
                .sum();
        double low = wheelPower(car, setup, LEAST);
        double high = wheelPower(car, setup, MOST);
        if (Double.isNaN(low + high)) {
            throw new IllegalArgumentException(outside(car, setup));
        }
        if (!(low <= measured && measured <= high)) {
            throw new IllegalArgumentException(misfit(car, measured, low, high));
        }
        try {
            // power is a straight line in the factor, but for the friction that follows the cylinder
            double share = new BracketingNthOrderBrentSolver(1e-10, 1e-6, 5)
                    .solve(100, x -> wheelPower(car, setup, x) - measured, LEAST, MOST);
            return car.with(car.model().with(new EngineFactor(share)));
        } catch (MathIllegalArgumentException e) {
            throw new IllegalArgumentException("The base pull does not settle the calibration; check its figures.", e);
        }
    }

    /** What the strongest point tells beside its power. */
    private static Car withBase(Car car, Setup setup) {
        BasePull.Point strongest = car.basePull().strongest();
        OperatingPoint point = pulled(car, setup, strongest.rpm(), strongest.gaugePressure())
                .orElseThrow(() -> new IllegalArgumentException(
                        "The base pull's point of most power lies outside the compressor map or the breathing table;"
                                + " check its boost and engine speed."));
        double cycles = car.engine().cylinders() * point.rpm() / 120;
        Cylinder cylinder = Cylinder.fitted(
                car.engine(), point.cylinder().base(), point.power().indicated() / cycles);
        Car fitted = car.with(car.model().with(cylinder));
        double exhaust = burned(fitted, point).cycle().exhaustTemperature();
        return fitted.with(fitted.model()
                .withBase(
                        ExhaustProbe.calibrate(car.turbo().exhaustTemperature(), exhaust),
                        knock(fitted, setup),
                        point.shaft().exhaustPressure() / point.plenumPressure()));
    }

    private static CylinderModel.Burned burned(Car car, OperatingPoint point) {
        CylinderModel cylinders = new CylinderModel(car, fuels(car));
        double exhaustPressure = point.shaft().exhaustPressure();
        return cylinders.burn(
                point.rpm(),
                cylinders.ready(point.rpm(), intake(car, point), point.charge(), exhaustPressure, false, 1),
                0);
    }

    /** The pull over all engine speeds: where the turbocharger did not give its boost yet, with what it gave. */
    private static Curve knock(Car car, Setup setup) {
        Curve breathing = car.engine().volumetricEfficiency();
        double high = car.engine().highestRpm();
        double low = Math.min(Math.max(breathing.low(), LOWEST_SHARE * high), high);
        HeldBoost held =
                new HeldBoost(pullModel(car, setup), car.basePull().air().pressure());
        List<OperatingPoint> points = new ArrayList<>();
        for (int i = 0; i <= KNOCK_SPEEDS; i++) {
            double rpm = low + (high - low) * i / KNOCK_SPEEDS;
            double plenum = car.basePull().air().pressure() + boost(car.basePull(), rpm);
            held.point(rpm, plenum, Mode.BOOST_ALONE).ifPresent(points::add);
        }
        if (points.isEmpty()) {
            throw new IllegalArgumentException(
                    "By its own figures the turbocharger gives the base pull no boost at any engine speed; check the turbine's"
                            + " effective area and efficiency, the exhaust temperature and the compressor map.");
        }
        return Curve.of(
                "knock index of the base pull",
                points.stream().mapToDouble(OperatingPoint::rpm).toArray(),
                points.stream().mapToDouble(p -> burned(car, p).index()).toArray());
    }

    private static double boost(BasePull pull, double rpm) {
        BasePull.Point nearest = pull.points().get(0);
        for (BasePull.Point point : pull.points()) {
            nearest = Math.abs(point.rpm() - rpm) < Math.abs(nearest.rpm() - rpm) ? point : nearest;
        }
        return nearest.gaugePressure();
    }

    private static Intake intake(Car car, OperatingPoint point) {
        FuelStreams then = fuels(car);
        return new Intake(
                point.plenumPressure(),
                point.airAfterCooler(),
                point.air().humidityRatio(),
                0,
                point.bottle().enthalpy(),
                new Intake.FuelSupplied(then.main(), then.temperature(), then.mainEvaporated()),
                car.basePull().lambda(),
                new Intake.FuelSupplied(then.nitrous(), then.temperature(), then.nitrousEvaporated()),
                0,
                then.warming());
    }

    private static FuelStreams fuels(Car car) {
        return car.fuels().withMain(car.basePull().fuel());
    }

    /** The first point of the pull without an answer, and why. */
    private static String outside(Car car, Setup setup) {
        PointModel model = pullModel(car, setup);
        for (BasePull.Point point : car.basePull().points()) {
            try {
                model.at(point.rpm(), car.basePull().air().pressure() + point.gaugePressure(), Mode.BOOST_ALONE);
            } catch (NoAnswerException none) {
                return "The base pull at " + QuantityKind.ROTATION.text(point.rpm(), UnitSystem.SI) + " and "
                        + QuantityKind.GAUGE_PRESSURE.text(point.gaugePressure(), UnitSystem.US) + " ("
                        + QuantityKind.GAUGE_PRESSURE.text(point.gaugePressure(), UnitSystem.SI)
                        + ") has no answer: " + none.getMessage().replaceFirst("\\.$", "")
                        + ". Check boost (gauge or absolute), weather, volumetric efficiency, displacement, compressor map, and the"
                        + " losses before the compressor and behind the turbine.";
            }
        }
        return "The base pull has no answer at the ends of what an engine's work can be; check its figures.";
    }

    private static String misfit(Car car, double measured, double low, double high) {
        int n = car.basePull().points().size();
        return "The base pull gives " + hp(measured / n) + " at the wheels"
                + (n > 1 ? " on average" : "")
                + "; by its own boost, fuel, mixture and the breathing table it can only lie from "
                + hp(low / n) + " to " + hp(high / n)
                + ". Check boost (gauge or absolute), weather, volumetric efficiency, displacement and driveline loss.";
    }

    private static String hp(double watts) {
        return QuantityKind.POWER.text(watts, UnitSystem.US) + " (" + QuantityKind.POWER.text(watts, UnitSystem.SI)
                + ")";
    }

    /**
     * The base pull run through the models.
     *
     * @param car the car
     * @param setup what was set
     * @param rpm engine speed, rev/min
     * @param gaugePressure boost, Pa above ambient
     * @return the point; empty where the models have no answer
     */
    public static Optional<OperatingPoint> pulled(Car car, Setup setup, double rpm, double gaugePressure) {
        try {
            return Optional.of(
                    pullModel(car, setup).at(rpm, car.basePull().air().pressure() + gaugePressure, Mode.BOOST_ALONE));
        } catch (NoAnswerException none) {
            return Optional.empty();
        }
    }

    private static PointModel pullModel(Car car, Setup setup) {
        BasePull pull = car.basePull();
        Case day = Case.of("base pull", pull.air(), car.injection().voltage());
        return PointModel.of(
                car,
                fuels(car),
                setup.withMixture(pull.lambda()).withoutJets(),
                day,
                NitrousOxide.saturatedLiquid(BOTTLE));
    }

    private static double wheelPower(Car car, Setup setup, double share) {
        Car tried = car.with(car.model().with(new EngineFactor(share)));
        return car.basePull().points().stream()
                .mapToDouble(point -> pulled(tried, setup, point.rpm(), point.gaugePressure())
                        .map(OperatingPoint::wheelPower)
                        .orElse(Double.NaN))
                .sum();
    }
}
