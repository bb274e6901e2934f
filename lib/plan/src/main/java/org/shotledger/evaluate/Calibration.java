package org.shotledger.evaluate;

import java.util.Optional;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.shotledger.car.BasePull;
import org.shotledger.car.Car;
import org.shotledger.car.EngineModel;
import org.shotledger.car.FuelStreams;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Finds the one free constant of the engine model, the share of the ideal cycle's work that the engine reaches, so that the model
 * gives the wheel power of the base pull with that pull's own fuel, air, boost and mixture. With several points their powers are met
 * in sum; what is left at each is the misfit.
 */
public final class Calibration {
    private static final double LEAST = 0.4;
    private static final double MOST = 1.0;
    /** Any state does: the nitrous is closed on a base pull. */
    private static final double BOTTLE = 290;

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
        double measured =
                car.basePull().points().stream().mapToDouble(BasePull.Point::wheelPower).sum();
        double low = wheelPower(car, setup, LEAST);
        double high = wheelPower(car, setup, MOST);
        if (Double.isNaN(low) || Double.isNaN(high)) {
            throw new IllegalArgumentException(outside(car, setup));
        }
        if (!(low <= measured && measured <= high)) {
            throw new IllegalArgumentException(misfit(car, measured, low, high));
        }
        try {
            double share = new BracketingNthOrderBrentSolver(1e-10, 1e-6, 5)
                    .solve(100, x -> wheelPower(car, setup, x) - measured, LEAST, MOST);
            return car.with(model(car, share));
        } catch (MathIllegalArgumentException e) {
            throw new IllegalArgumentException("The base pull does not settle the calibration; check its figures.", e);
        }
    }

    /** The first point of the pull without an answer, and why. */
    private static String outside(Car car, Setup setup) {
        for (BasePull.Point point : car.basePull().points()) {
            try {
                run(car, setup, point.rpm(), point.gaugePressure());
            } catch (NoAnswerException none) {
                return "The base pull at " + QuantityKind.ROTATION.text(point.rpm(), UnitSystem.SI) + " and "
                        + QuantityKind.GAUGE_PRESSURE.text(point.gaugePressure(), UnitSystem.US) + " ("
                        + QuantityKind.GAUGE_PRESSURE.text(point.gaugePressure(), UnitSystem.SI)
                        + ") has no answer: " + none.getMessage()
                        + ". Check boost (gauge or absolute), weather, volumetric efficiency, displacement and compressor map.";
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
        return QuantityKind.POWER.text(watts, UnitSystem.US) + " (" + QuantityKind.POWER.text(watts, UnitSystem.SI) + ")";
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
            return Optional.of(run(car, setup, rpm, gaugePressure));
        } catch (NoAnswerException none) {
            return Optional.empty();
        }
    }

    private static OperatingPoint run(Car car, Setup setup, double rpm, double gaugePressure) {
        BasePull pull = car.basePull();
        FuelStreams then = car.fuels().withMain(pull.fuel());
        Case day = Case.of("base pull", pull.air(), car.injection().voltage());
        PointModel model = PointModel.of(
                car, then, setup.withMixture(pull.lambda()).withoutJets(), day, NitrousOxide.saturatedLiquid(BOTTLE));
        return model.at(rpm, pull.air().pressure() + gaugePressure, Mode.BOOST_ALONE);
    }

    private static double wheelPower(Car car, Setup setup, double share) {
        Car tried = car.with(model(car, share));
        return car.basePull().points().stream()
                .mapToDouble(point -> pulled(tried, setup, point.rpm(), point.gaugePressure())
                        .map(OperatingPoint::wheelPower)
                        .orElse(Double.NaN))
                .sum();
    }

    private static EngineModel model(Car car, double share) {
        return car.model().withCycleShare(share);
    }
}
