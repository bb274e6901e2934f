package org.shotledger.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitFactors;
import org.shotledger.units.UnitSystem;

/**
 * Power from the acceleration of a car of known mass:
 *
 * <pre>{@code
 * P = (m (1 + w + d N^2) dv/dt + rho/2 A (v + u)^2 + m g (c + s)) v
 * }</pre>
 *
 * <p>with the mass m, the shares w and d of wheels and drivetrain, N turns of the engine for one of the wheels, the drag area A, the head
 * wind u, rolling resistance c and grade s. It is what a steady dynamometer would read at the wheels: what engine and driveline take to
 * spin up is given back. Slip of driven wheels whose speed was logged reads as power that is not there.
 *
 * <p>dv/dt is the slope of a Savitzky-Golay window of degree 2. The standard uncertainty is the root of the sum of squares of the effect
 * of each doubt of the car and of the scatter of the speed through the window (JCGM 100:2008, 5.1.2). It holds no doubt about the model: a
 * gusty wind, a road that is not straight, a clutch that slips.
 *
 * @param time moments, s
 * @param rpm engine speeds, rev/min
 * @param speed vehicle speeds, smoothed, m/s
 * @param acceleration m/s2
 * @param gears gear engaged, 0 where none is
 * @param wheelPower W; NaN where no gear is engaged, beside a shift, and where the speed has gaps
 * @param standard standard uncertainty of the power, W; NaN likewise
 * @param doubts what the uncertainty is made of at the greatest power, the largest first
 * @param gear how the gears were found
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record AccelerationPower(
        double[] time,
        double[] rpm,
        double[] speed,
        double[] acceleration,
        int[] gears,
        double[] wheelPower,
        double[] standard,
        List<PowerDoubt> doubts,
        String gear) {
    private static final double WINDOW = 0.5;

    public AccelerationPower {
        doubts = List.copyOf(doubts);
    }

    /**
     * A part of the uncertainty.
     *
     * @param what the figure that is not known well
     * @param watts its effect on the power, W, standard
     */
    public record PowerDoubt(String what, double watts) {}

    /**
     * Power over a pull.
     *
     * @param findings the log with its findings
     * @param car the car
     * @param pull the pull
     * @return the power at the samples of the vehicle speed within the pull
     * @throws IllegalArgumentException when the log has no vehicle speed or no engine speed, or too few samples of it in the pull
     */
    public static AccelerationPower of(LogFindings findings, RunningCar car, Pull pull) {
        Series logged = findings.series(LogChannel.VEHICLE_SPEED);
        double step = logged.step();
        Series even =
                Double.isFinite(step) ? logged.every(step, findings.longestStep(LogChannel.VEHICLE_SPEED)) : logged;
        int[] within = IntStream.range(0, even.size())
                .filter(i -> even.time()[i] >= pull.from() && even.time()[i] <= pull.to())
                .toArray();
        SavitzkyGolay filter = SavitzkyGolay.lasting(WINDOW, Double.isFinite(step) ? step : 1, 2);
        if (within.length < 2 * filter.weights().length) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "The log %s has %d samples of vehicle speed in the pull from %.2f s on; at least %d are needed for power from"
                            + " acceleration.",
                    findings.log().file(),
                    within.length,
                    pull.from(),
                    2 * filter.weights().length));
        }
        double[] smooth = filter.smooth(even.values());
        double[] slope = filter.slope(even.values(), step);
        double[] time = pick(even.time(), within);
        double[] rpm = findings.series(LogChannel.ENGINE_SPEED).at(time, findings.longestStep(LogChannel.ENGINE_SPEED));
        double scatter = scatter(pick(even.values(), within), pick(smooth, within), filter);
        double slopeDoubt = scatter * Math.sqrt(square(filter.slopeWeights())) / step;
        int margin = filter.weights().length / 2;
        return of(car, time, rpm, pick(smooth, within), pick(slope, within), slopeDoubt, margin);
    }

    private static AccelerationPower of(
            RunningCar car,
            double[] time,
            double[] rpm,
            double[] speed,
            double[] acceleration,
            double slopeDoubt,
            int margin) {
        GearFinder found = GearFinder.of(rpm, speed, car);
        double[] power = new double[time.length];
        double[] standard = new double[time.length];
        List<PowerDoubt> doubts = List.of();
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < time.length; i++) {
            boolean held = car.gears().isEmpty() || held(found.gears(), i, margin);
            power[i] = held ? power(car, speed[i], acceleration[i], rpm[i]) : Double.NaN;
            List<PowerDoubt> here = held ? doubts(car, speed[i], acceleration[i], rpm[i], slopeDoubt) : List.of();
            standard[i] = held
                    ? Math.sqrt(here.stream()
                            .mapToDouble(d -> d.watts() * d.watts())
                            .sum())
                    : Double.NaN;
            if (power[i] > most) {
                most = power[i];
                doubts = here;
            }
        }
        return new AccelerationPower(
                time, rpm, speed, acceleration, found.gears(), power, standard, doubts, found.sentence());
    }

    /** Whether the same gear is engaged all through the window about a sample. */
    private static boolean held(int[] gears, int at, int margin) {
        for (int k = Math.max(0, at - margin); k <= Math.min(gears.length - 1, at + margin); k++) {
            if (gears[k] != gears[at]) {
                return false;
            }
        }
        return gears[at] > 0;
    }

    /**
     * Power of one moment, the equation above.
     *
     * @param car the car
     * @param speed logged speed, m/s, above 0
     * @param acceleration of the logged speed, m/s2
     * @param rpm engine speed, rev/min
     * @return wheel power, W; negative where the car is braked more than its drag does
     */
    public static double power(RunningCar car, double speed, double acceleration, double rpm) {
        double v = speed * car.speedFactor().value();
        double a = acceleration * car.speedFactor().value();
        double turns = GearFinder.overall(rpm, v, car);
        double mass = car.mass().value();
        double spin = 1 + car.wheels().value() + car.drivetrain().value() * turns * turns;
        double air = v + car.headwind().value();
        double drag = car.airDensity().value() / 2 * car.dragArea().value() * air * Math.abs(air);
        double road = mass
                * UnitFactors.GRAVITY
                * (car.rolling().value() + car.grade().value());
        return (mass * spin * a + drag + road) * v;
    }

    private static List<PowerDoubt> doubts(RunningCar car, double v, double a, double rpm, double slopeDoubt) {
        double at = power(car, v, a, rpm);
        List<PowerDoubt> doubts = new ArrayList<>();
        doubts.add(new PowerDoubt("scatter of the speed", Math.abs(power(car, v, a + slopeDoubt, rpm) - at)));
        CarDoubts.each(car)
                .forEach((what, changed) -> doubts.add(new PowerDoubt(what, Math.abs(power(changed, v, a, rpm) - at))));
        doubts.sort(Comparator.comparingDouble(d -> -d.watts()));
        return doubts;
    }

    /** Scatter of one sample: 1.4826 times the median size of what smoothing takes away, over what it leaves (Hampel, 1974). */
    private static double scatter(double[] values, double[] smooth, SavitzkyGolay filter) {
        double[] sizes = IntStream.range(0, values.length)
                .mapToDouble(i -> Math.abs(values[i] - smooth[i]))
                .filter(size -> !Double.isNaN(size))
                .sorted()
                .toArray();
        return sizes.length == 0 ? Double.NaN : 1.4826 * sizes[sizes.length / 2] / Math.sqrt(1 - filter.noise());
    }

    private static double square(double[] weights) {
        return Arrays.stream(weights).map(w -> w * w).sum();
    }

    private static double[] pick(double[] from, int[] rows) {
        return Arrays.stream(rows).mapToDouble(i -> from[i]).toArray();
    }

    /**
     * The greatest power in one sentence.
     *
     * @param system the units
     * @return the power, its band of two standard uncertainties, and the two largest doubts
     */
    public String sentence(UnitSystem system) {
        int best = -1;
        for (int i = 0; i < wheelPower.length; i++) {
            best = wheelPower[i] > (best < 0 ? Double.NEGATIVE_INFINITY : wheelPower[best]) ? i : best;
        }
        if (best < 0) {
            return "No power can be had from the acceleration: no gear is held long enough. " + gear;
        }
        return String.format(
                Locale.ROOT,
                "By acceleration the greatest wheel power is %s +/- %s (two standard uncertainties) at %.0f rpm; most of the doubt is"
                        + " in %s and %s.",
                QuantityKind.POWER.text(wheelPower[best], system),
                QuantityKind.POWER.text(2 * standard[best], system),
                rpm[best],
                doubts.get(0).what(),
                doubts.get(1).what());
    }
}
