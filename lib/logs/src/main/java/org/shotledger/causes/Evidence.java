package org.shotledger.causes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.Car;
import org.shotledger.car.Vehicle;
import org.shotledger.delivery.Grip;
import org.shotledger.evaluate.Outcome;
import org.shotledger.logs.AccelerationPower;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.logs.Pull;
import org.shotledger.logs.RunningCar;
import org.shotledger.logs.Series;
import org.shotledger.reconcile.Reconciliation;

/**
 * What a log says in the settled pieces of its pulls: the mean of each channel there, and what its scatter makes that mean uncertain by.
 *
 * @param bins the pieces
 * @param values means, SI, by observable and piece; NaN where there is none
 * @param scatter standard deviation of each mean from the scatter of the samples alone, as the fit sees it
 * @param shape what the logged boost differs from the planned, its mean left out, Pa; zero where it is not known
 * @param powerStandard standard uncertainty that all power readings share, relative; 0 for a dynamometer
 * @param power where the power comes from, in one sentence
 */
@SuppressWarnings("ArrayRecordComponent") // lives for one fit only
record Evidence(
        List<Bin> bins, double[][] values, double[][] scatter, double[] shape, double powerStandard, String power) {
    /** Boost of other shape than planned counts from this many deviations of its own scatter on. */
    private static final double CLEAR = 2;

    static Evidence of(Outcome outcome, LogFindings findings) {
        List<Pull> pulls = Stretches.pulls(findings);
        List<Bin> bins = Stretches.of(outcome, findings, pulls);
        if (bins.size() < 3) {
            throw new IllegalArgumentException("The log " + findings.log().file() + " has " + bins.size()
                    + " settled pieces in its pulls; at least 3 are needed to ask for causes: log a longer pull, or"
                    + " one in which the nitrous stays on for more than a second.");
        }
        Source power = Source.of(outcome.car(), outcome, findings, pulls);
        int n = Observable.values().length;
        double[][] values = new double[n][bins.size()];
        double[][] scatter = new double[n][bins.size()];
        double lag = lag(outcome, findings);
        for (Observable what : Observable.values()) {
            Optional<Series> series = what == Observable.WHEEL_POWER ? power.series() : series(what, findings);
            double late = what == Observable.LAMBDA ? lag : 0;
            new Means(what, series, bins, late).into(values[what.row()], scatter[what.row()]);
        }
        double[] shape = shape(
                outcome, bins, values[Observable.MANIFOLD_PRESSURE.row()], scatter[Observable.MANIFOLD_PRESSURE.row()]);
        return new Evidence(bins, values, scatter, shape, power.standard(), power.words());
    }

    private static double lag(Outcome outcome, LogFindings findings) {
        if (!findings.log().has(LogChannel.LAMBDA)) {
            return 0;
        }
        var lag = Reconciliation.lambdaLag(outcome, findings);
        return lag.clear() ? lag.seconds() : 0;
    }

    private static Optional<Series> series(Observable what, LogFindings findings) {
        EngineLog log = findings.log();
        if (what == Observable.CRANK_POWER && !log.has(LogChannel.CRANK_POWER) && log.has(LogChannel.CRANK_TORQUE)) {
            return Optional.of(Source.turned(findings, LogChannel.CRANK_TORQUE));
        }
        return log.has(what.channel()) ? Optional.of(findings.series(what.channel())) : Optional.empty();
    }

    private static double[] shape(Outcome outcome, List<Bin> bins, double[] manifold, double[] scatter) {
        double[] off = new double[bins.size()];
        double sum = 0;
        int n = 0;
        for (int i = 0; i < off.length; i++) {
            double planned = outcome.at().air().pressure()
                    + outcome.setup().boost().armed().at(bins.get(i).rpm());
            off[i] = manifold[i] - planned;
            if (!Double.isNaN(off[i])) {
                sum += off[i];
                n++;
            }
        }
        double mean = n == 0 ? 0 : sum / n;
        double square = 0;
        double noise = 0;
        for (int i = 0; i < off.length; i++) {
            off[i] = Double.isNaN(off[i]) ? 0 : off[i] - mean;
            square += off[i] * off[i];
            noise += Double.isNaN(scatter[i]) ? 0 : scatter[i] * scatter[i] * 1e10;
        }
        return square > CLEAR * CLEAR * noise ? off : new double[bins.size()];
    }

    /** Whether a channel has values in at least two pieces. */
    boolean has(Observable what) {
        return Arrays.stream(values[what.row()]).filter(v -> !Double.isNaN(v)).count() >= 2;
    }

    /** Where wheel power comes from. */
    private record Source(Optional<Series> series, double standard, String words) {

        static Source of(Car car, Outcome outcome, LogFindings findings, List<Pull> pulls) {
            EngineLog log = findings.log();
            if (log.has(LogChannel.WHEEL_POWER)) {
                return new Source(
                        Optional.of(findings.series(LogChannel.WHEEL_POWER)), 0, "Power is the logged wheel power.");
            }
            if (log.has(LogChannel.WHEEL_TORQUE)) {
                return new Source(
                        Optional.of(turned(findings, LogChannel.WHEEL_TORQUE)),
                        0,
                        "Power is the logged wheel torque times engine speed.");
            }
            if (log.has(LogChannel.CRANK_POWER) || log.has(LogChannel.CRANK_TORQUE)) {
                return new Source(Optional.empty(), 0, "Power is that of the crankshaft.");
            }
            if (log.has(LogChannel.VEHICLE_SPEED) && car.vehicle().isPresent()) {
                return accelerated(car.vehicle().get(), outcome, findings, pulls);
            }
            return new Source(
                    Optional.empty(),
                    0,
                    "The log has no power, no torque and no vehicle speed with a vehicle in the sheet: mixture,"
                            + " pressures and flows are judged without it.");
        }

        private static Source accelerated(Vehicle vehicle, Outcome outcome, LogFindings findings, List<Pull> pulls) {
            RunningCar running = RunningCar.usual(
                    vehicle.mass(),
                    vehicle.dragArea(),
                    vehicle.rollingResistance(),
                    outcome.at().air().density(),
                    vehicle.gears(),
                    vehicle.finalDrive(),
                    Grip.radius(vehicle.tyres()));
            List<double[]> rows = new ArrayList<>();
            double relative = 0;
            int n = 0;
            for (Pull pull : pulls) {
                try {
                    AccelerationPower power = AccelerationPower.of(findings, running, pull);
                    for (int i = 0; i < power.time().length; i++) {
                        if (!Double.isNaN(power.wheelPower()[i])) {
                            rows.add(new double[] {power.time()[i], power.wheelPower()[i]});
                            relative += power.standard()[i] / Math.abs(power.wheelPower()[i]);
                            n++;
                        }
                    }
                } catch (IllegalArgumentException tooShort) {
                    // the pull has too few samples of speed; others may serve
                }
            }
            if (n == 0) {
                return new Source(
                        Optional.empty(),
                        0,
                        "Power by acceleration cannot be had: too few samples of vehicle speed with a gear held.");
            }
            double[] time = rows.stream().mapToDouble(r -> r[0]).toArray();
            double[] watts = rows.stream().mapToDouble(r -> r[1]).toArray();
            return new Source(
                    Optional.of(new Series(time, watts)),
                    relative / n,
                    String.format(
                            java.util.Locale.ROOT,
                            "Power is had from the acceleration of the car (standard uncertainty %.1f %% that all its"
                                    + " values share).",
                            100 * relative / n));
        }

        static Series turned(LogFindings findings, LogChannel torque) {
            Series turning = findings.series(torque);
            double[] rpm = findings.series(LogChannel.ENGINE_SPEED)
                    .at(turning.time(), findings.longestStep(LogChannel.ENGINE_SPEED));
            double[] watts = new double[rpm.length];
            for (int i = 0; i < rpm.length; i++) {
                watts[i] = turning.values()[i] * 2 * Math.PI / 60 * rpm[i];
            }
            return new Series(turning.time(), watts);
        }
    }
}
