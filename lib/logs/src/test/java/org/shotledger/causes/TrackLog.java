package org.shotledger.causes;

import java.io.StringReader;
import java.util.Locale;
import java.util.Random;
import org.shotledger.car.Vehicle;
import org.shotledger.delivery.Grip;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.LogFindings;
import org.shotledger.logs.LogMapping;

/**
 * Invents a log from the track: no power, but the speed of a car that Newton's law accelerates in one gear,
 * {@code m (1.04 + 0.0025 N^2) v' v = P - (rho/2 A v^2 + m g c) v} (T. D. Gillespie, Fundamentals of Vehicle Dynamics, SAE, 1992, from memory).
 */
final class TrackLog {
    private static final int GEAR = 3;
    private static final double STEP = 0.02;
    private static final double OPEN = 5850;
    private static final double CLOSE = 7750;

    private TrackLog() {}

    static LogFindings of(Planted truth, long seed) {
        Random random = new Random(seed);
        Outcome outcome = Evaluate.of(truth.car(), truth.setup(), truth.at());
        PointModel model = Evaluate.model(truth.car(), truth.setup(), truth.at());
        Vehicle car = truth.car().vehicle().orElseThrow();
        double turns = car.gears().get(GEAR - 1) * car.finalDrive();
        double perSpeed = turns / Grip.radius(car.tyres()) * 60 / (2 * Math.PI);
        double mass = car.mass() * (1.04 + 0.0025 * turns * turns);
        double rho = truth.at().air().density();
        StringBuilder text = new StringBuilder(
                "time (s),engine speed (rpm),throttle (%),manifold pressure (kPa abs),lambda,nitrous fuel pressure"
                        + " (kPa abs),bottle pressure (kPa abs),nitrous on,vehicle speed (km/h)\n");
        double speed = 4600 / perSpeed;
        double since = 0;
        for (int i = 0; speed * perSpeed < 7900; i++) {
            double rpm = speed * perSpeed;
            boolean on = rpm >= OPEN && rpm < CLOSE;
            since += on ? STEP : 0;
            double plenum =
                    truth.at().air().pressure() + truth.setup().boost().armed().at(rpm);
            PassOutcome.Moment bottle = moment(outcome, since);
            OperatingPoint p = on
                    ? model.withBottle(NitrousOxide.saturatedLiquid(bottle.temperature()))
                            .at(rpm, plenum, Mode.NITROUS)
                    : model.at(rpm, plenum, Mode.ARMED);
            text.append(String.format(
                    Locale.ROOT,
                    "%.2f,%.0f,100,%.2f,%.4f,%.2f,%.1f,%d,%.2f\n",
                    i * STEP,
                    rpm + 5 * random.nextGaussian(),
                    p.plenumPressure() / 1e3 + 0.5 * random.nextGaussian(),
                    p.lambda() * truth.lambdaReading() + 0.003 * random.nextGaussian(),
                    (on ? p.nitrousFuel().railPressure() : plenum + 3e5) / 1e3 + 2 * random.nextGaussian(),
                    bottle.pressure() / 1e3 + 20 * random.nextGaussian(),
                    on ? 1 : 0,
                    speed * 3.6 + 0.1 * random.nextGaussian()));
            double road = rho / 2 * car.dragArea() * speed * speed + car.mass() * 9.80665 * car.rollingResistance();
            speed += STEP * (p.wheelPower() / speed - road) / mass;
        }
        return EngineLog.read(new StringReader(text.toString()), "track.csv", LogMapping.NONE)
                .findings();
    }

    private static PassOutcome.Moment moment(Outcome outcome, double seconds) {
        return outcome.overPass().stream()
                .filter(m -> m.time() >= seconds)
                .findFirst()
                .orElseThrow();
    }
}
