package org.shotledger.track;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.setup.BoostTable;

/**
 * The engine of an outcome over engine speed and plenum pressure, with the nitrous closed and open: operating points of the same model,
 * worked out once, with straight lines between them.
 *
 * <p>The plenum pressure follows from the speed of the turbocharger's shaft by the compressor map. Below the map and where the turbine
 * cannot hold a boost the points beside are continued; the engine below the lowest speed with an answer is that at it.
 */
final class EngineField {
    /** Engine speeds of the field: our choice, a few hundred rpm apart. */
    private static final int SPEEDS = 13;
    /** Plenum pressures of the field: our choice. */
    private static final int PRESSURES = 7;

    private static final double PER_RPM = Math.PI / 30;

    final double ambient;
    final double highestRpm;
    private final double[] plenum;
    private final BoostTable boost;
    private final Side off;
    private final Side on;

    /** What is known of one side, nitrous closed or open. */
    private record Side(
            Layer torque, Layer shaft, Layer surplus, Layer lambda, Layer peak, Layer mainFuel, Layer nitrousFuel) {}

    private EngineField(Outcome outcome) {
        Car car = outcome.car();
        var breathing = car.engine().volumetricEfficiency();
        this.ambient = outcome.at().air().pressure();
        this.highestRpm = car.engine().highestRpm();
        this.boost = outcome.setup().jets().isPresent()
                ? outcome.setup().boost().armed()
                : outcome.setup().boost().off();
        double[] rpm = even(breathing.low(), highestRpm, SPEEDS);
        this.plenum = even(ambient, ambient + Math.max(boost.highest(), 0.1e5), PRESSURES);
        PointModel model = Evaluate.model(car, outcome.setup(), outcome.at());
        this.off = side(model, rpm, Mode.BOOST_ALONE);
        this.on = outcome.setup().jets().isPresent() ? side(model, rpm, Mode.NITROUS) : off;
    }

    static EngineField of(Outcome outcome) {
        return new EngineField(outcome);
    }

    private Side side(PointModel model, double[] rpm, Mode mode) {
        @SuppressWarnings({"unchecked", "rawtypes"}) // an array of optionals, filled below
        Optional<OperatingPoint>[][] points = new Optional[rpm.length][plenum.length];
        for (int i = 0; i < rpm.length; i++) {
            for (int j = 0; j < plenum.length; j++) {
                points[i][j] = point(model, rpm[i], plenum[j], mode);
            }
        }
        if (Arrays.stream(points).flatMap(Arrays::stream).noneMatch(Optional::isPresent)) {
            throw new IllegalArgumentException("The models have no answer at any engine speed with the nitrous "
                    + (mode.nitrousFlows() ? "open" : "closed") + "; a pass in time needs one.");
        }
        return new Side(
                layer(rpm, points, OperatingPoint::crankTorque),
                layer(rpm, points, point -> point.compressor().rpm() * PER_RPM),
                layer(rpm, points, model::shaftSurplus),
                layer(rpm, points, OperatingPoint::lambda),
                layer(rpm, points, point -> point.cylinder().peakPressure()),
                layer(rpm, points, point -> point.main().massFlow()),
                layer(rpm, points, point -> point.nitrousFuel().massFlow()));
    }

    private Layer layer(double[] rpm, Optional<OperatingPoint>[][] points, ToDoubleFunction<OperatingPoint> figure) {
        return Layer.of(rpm, plenum, points, figure);
    }

    private static Optional<OperatingPoint> point(PointModel model, double rpm, double pressure, Mode mode) {
        try {
            return Optional.of(model.at(rpm, pressure, mode));
        } catch (NoAnswerException none) {
            return Optional.empty();
        }
    }

    private static double[] even(double low, double high, int count) {
        double[] x = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = low + (high - low) * i / (count - 1);
        }
        return x;
    }

    /** Plenum pressure at a speed of the shaft, held inside the field, Pa absolute. */
    double plenum(double rpm, double shaft, double nitrous) {
        for (int j = 0; j < plenum.length - 1; j++) {
            double high = shaftAt(rpm, j + 1, nitrous);
            if (shaft <= high || j == plenum.length - 2) {
                double low = shaftAt(rpm, j, nitrous);
                double share = high > low ? Math.min(1, Math.max(0, (shaft - low) / (high - low))) : 0;
                return plenum[j] + share * (plenum[j + 1] - plenum[j]);
            }
        }
        return plenum[0];
    }

    private double shaftAt(double rpm, int j, double nitrous) {
        double closed = off.shaft.atNode(rpm, j);
        return closed + nitrous * (on.shaft.atNode(rpm, j) - closed);
    }

    /** Speed of the shaft at which the boost asked for is there, rad/s. */
    double shaftWanted(double rpm, double nitrous) {
        return between(off.shaft, on.shaft, rpm, wanted(rpm), nitrous);
    }

    /** Speed of the shaft without boost, rad/s. */
    double shaftWithoutBoost(double rpm) {
        return off.shaft.at(rpm, ambient);
    }

    private double wanted(double rpm) {
        return ambient + Math.max(0, boost.at(rpm));
    }

    double torque(double rpm, double pressure, double nitrous) {
        return between(off.torque, on.torque, rpm, pressure, nitrous);
    }

    double surplus(double rpm, double pressure, double nitrous) {
        return between(off.surplus, on.surplus, rpm, pressure, nitrous);
    }

    double lambda(double rpm, double pressure, double nitrous) {
        return between(off.lambda, on.lambda, rpm, pressure, nitrous);
    }

    double peak(double rpm, double pressure, double nitrous) {
        return between(off.peak, on.peak, rpm, pressure, nitrous);
    }

    /** Both fuels, kg/s. */
    double fuel(double rpm, double pressure, double nitrous) {
        return between(off.mainFuel, on.mainFuel, rpm, pressure, nitrous)
                + between(off.nitrousFuel, on.nitrousFuel, rpm, pressure, nitrous);
    }

    private static double between(Layer closed, Layer open, double rpm, double pressure, double nitrous) {
        double without = closed.at(rpm, pressure);
        return nitrous == 0 ? without : without + nitrous * (open.at(rpm, pressure) - without);
    }
}
