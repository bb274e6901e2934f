package org.shotledger.evaluate;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.shotledger.car.Car;
import org.shotledger.nitrous.ActivationWindow;

/** The engine speeds at which an outcome is worked out. */
public final class Speeds {
    /** Largest step of engine speed, rev/min: our choice, below which a chart shows nothing more. */
    private static final double STEP = 100;
    /** Step outside the speeds with nitrous, rev/min: our choice, what a chart of boost alone needs. */
    private static final double WIDE_STEP = 250;
    /** An outcome is shown from this share of the speed at which the nitrous opens. */
    private static final double SHOWN_FROM = 0.6;

    private Speeds() {}

    /**
     * Speeds over a range, both ends included, at most 100 rpm apart.
     *
     * @param low rev/min
     * @param high rev/min, not below {@code low}
     * @return ascending, shape (n)
     */
    public static double[] over(double low, double high) {
        return over(low, high, STEP);
    }

    private static double[] over(double low, double high, double step) {
        TreeSet<Double> speeds = new TreeSet<>();
        speeds.add(low);
        speeds.add(high);
        for (double rpm = Math.ceil(low / step) * step; rpm < high; rpm += step) {
            speeds.add(rpm);
        }
        return speeds.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * The speeds with nitrous that the car can run at: the window, as far as the breathing table and the red line go.
     *
     * @param car what is built
     * @param window when the nitrous may be on
     * @return ascending; empty where the engine runs at none of them
     */
    public static double[] withNitrous(Car car, ActivationWindow window) {
        double low =
                Math.max(window.rpmLow(), car.engine().volumetricEfficiency().low());
        double high = Math.min(window.rpmHigh(), car.engine().highestRpm());
        return low <= high ? over(low, high) : new double[0];
    }

    /**
     * All speeds of an outcome.
     *
     * @param car what is built
     * @param window when the nitrous may be on
     * @return ascending
     */
    public static double[] all(Car car, ActivationWindow window) {
        double low = Math.max(
                car.engine().volumetricEfficiency().low(),
                Math.min(SHOWN_FROM * window.rpmLow(), 0.5 * car.engine().highestRpm()));
        TreeSet<Double> speeds = new TreeSet<>();
        for (double rpm :
                over(Math.ceil(low / WIDE_STEP) * WIDE_STEP, car.engine().highestRpm(), WIDE_STEP)) {
            speeds.add(rpm);
        }
        for (double rpm : withNitrous(car, window)) {
            speeds.add(rpm);
        }
        return speeds.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * The speeds of a line that have no point.
     *
     * @param speeds rev/min
     * @param points the points found
     * @return those speeds, in their order
     */
    public static DoubleStream missing(double[] speeds, List<OperatingPoint> points) {
        return DoubleStream.of(speeds).filter(rpm -> points.stream().noneMatch(point -> point.rpm() == rpm));
    }
}
