package org.shotledger.causes;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
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
 * Invents the log of a pull from a run that differs from the plan: the outcome of the changed car, setup and case, worked out anew, with
 * seeded noise. It uses nothing of the fit.
 */
final class PlantedLog {
    static final double STEP = 0.02;
    private static final double FIRST = 4600;
    private static final double LAST = 7900;
    private static final double OPEN = 5850;
    private static final double CLOSE = 7750;
    private static final double PSI = 6894.757293168;

    /** What is read at an engine speed. */
    private record Reading(
            double rpm, double lambda, double power, double manifold, double rail, double fuel, double bottle) {
        Reading between(Reading other, double at) {
            double s = (at - rpm) / (other.rpm - rpm);
            return new Reading(
                    at,
                    lambda + s * (other.lambda - lambda),
                    power + s * (other.power - power),
                    manifold + s * (other.manifold - manifold),
                    rail + s * (other.rail - rail),
                    fuel + s * (other.fuel - fuel),
                    bottle + s * (other.bottle - bottle));
        }
    }

    /** How large the noise of each channel is against a usual logger's, and the time over which half of its variance wanders, s. */
    record NoiseOf(double size, double memory) {
        static final NoiseOf WHITE = new NoiseOf(1, 0);
        static final NoiseOf CORRELATED = new NoiseOf(1, 0.3);
    }

    private final Planted truth;
    private final Outcome outcome;
    private final List<Reading> off = new ArrayList<>();
    private final List<Reading> on = new ArrayList<>();

    PlantedLog(Planted truth) {
        this.truth = truth;
        this.outcome = Evaluate.of(truth.car(), truth.setup(), truth.at());
        PointModel model = Evaluate.model(truth.car(), truth.setup(), truth.at());
        for (double rpm = FIRST; rpm <= LAST; rpm += 300) {
            off.add(reading(model.at(rpm, plenum(rpm), Mode.ARMED), 0));
        }
        if (truth.setup().jets().isPresent()) {
            for (double rpm = OPEN; rpm <= CLOSE; rpm += 190) {
                on.add(with(model, rpm, (rpm - OPEN) / 720));
            }
        }
    }

    private double plenum(double rpm) {
        return truth.at().air().pressure() + truth.setup().boost().armed().at(rpm);
    }

    private Reading with(PointModel model, double rpm, double seconds) {
        double[] bottle = bottle(seconds);
        PointModel cooled = model.withBottle(NitrousOxide.saturatedLiquid(bottle[0]));
        PointModel pump = Double.isNaN(truth.pumpVoltage())
                ? cooled
                : PointModel.of(
                        truth.car(),
                        truth.setup(),
                        truth.at().withVoltage(truth.pumpVoltage()),
                        NitrousOxide.saturatedLiquid(bottle[0]));
        double plenum = plenum(rpm);
        return reading(cooled.at(rpm, plenum, Mode.NITROUS, cooled.feed(plenum), pump.nitrousFuel(plenum)), bottle[1]);
    }

    private double[] bottle(double seconds) {
        List<PassOutcome.Moment> pass = outcome.overPass();
        int i = 1;
        while (i + 1 < pass.size() && pass.get(i).time() < seconds) {
            i++;
        }
        PassOutcome.Moment a = pass.get(i - 1);
        PassOutcome.Moment b = pass.get(i);
        double s = (seconds - a.time()) / (b.time() - a.time());
        return new double[] {
            a.temperature() + s * (b.temperature() - a.temperature()), a.pressure() + s * (b.pressure() - a.pressure())
        };
    }

    private Reading reading(OperatingPoint p, double bottle) {
        return new Reading(
                p.rpm(),
                p.lambda() * truth.lambdaReading(),
                p.wheelPower() * truth.powerReading(),
                p.plenumPressure(),
                p.main().railPressure(),
                p.nitrousFuel().railPressure(),
                bottle + truth.bottleReading());
    }

    private static Reading at(List<Reading> readings, double rpm) {
        int i = 1;
        while (i + 1 < readings.size() && readings.get(i).rpm() < rpm) {
            i++;
        }
        return readings.get(i - 1).between(readings.get(i), rpm);
    }

    LogFindings findings(long seed, NoiseOf noise) {
        return EngineLog.read(new StringReader(text(seed, noise)), "planted.csv", LogMapping.NONE)
                .findings();
    }

    String text(long seed, NoiseOf noise) {
        Random random = new Random(seed);
        double[] wander = new double[8];
        StringBuilder text =
                new StringBuilder("time (s),engine speed (rpm),throttle (%),manifold pressure (kPa abs),lambda,fuel"
                        + " pressure (kPa abs),nitrous fuel pressure (kPa abs),bottle pressure (kPa abs),nitrous"
                        + " on,battery voltage (V),wheel power (kW)\n");
        double rpm = FIRST;
        double start =
                outcome.overPass().isEmpty() ? 50e5 : outcome.overPass().get(0).pressure() + truth.bottleReading();
        for (int i = 0; rpm < LAST; i++) {
            double t = i * STEP;
            boolean pulling = t >= 1;
            boolean nitrous = pulling && !on.isEmpty() && rpm >= OPEN && rpm < CLOSE;
            Reading r = nitrous ? at(on, rpm) : at(off, rpm);
            text.append(String.format(
                    Locale.ROOT,
                    "%.2f,%.0f,100,%.2f,%.4f,%.2f,%.2f,%.1f,%d,%.2f,%.2f\n",
                    t,
                    rpm + 5 * random.nextGaussian(),
                    r.manifold() / 1e3 + 0.5 * next(random, wander, 0, noise),
                    r.lambda() + 0.003 * next(random, wander, 1, noise),
                    r.rail() / 1e3 + 0.3 * PSI / 1e3 * next(random, wander, 2, noise),
                    (nitrous
                                            ? r.fuel()
                                            : truth.at().air().pressure()
                                                    + truth.setup()
                                                            .nitrousRegulator()
                                                            .basePressure())
                                    / 1e3
                            + 0.3 * PSI / 1e3 * next(random, wander, 3, noise),
                    (nitrous ? r.bottle() : start) / 1e3 + 3 * PSI / 1e3 * next(random, wander, 4, noise),
                    nitrous ? 1 : 0,
                    truth.at().voltage() + 0.03 * next(random, wander, 5, noise),
                    r.power() / 1e3 + 1.9 * next(random, wander, 6, noise)));
            rpm += STEP * (pulling ? (nitrous ? 720 : 560) : 0);
        }
        return text.toString();
    }

    /** One value of noise with a deviation of the size: white, or half its variance white and half of first order. */
    private static double next(Random random, double[] wander, int channel, NoiseOf noise) {
        double white = random.nextGaussian();
        if (noise.memory() == 0) {
            return noise.size() * white;
        }
        double keep = Math.exp(-STEP / noise.memory());
        wander[channel] = keep * wander[channel] + Math.sqrt(1 - keep * keep) * random.nextGaussian();
        return noise.size() * Math.sqrt(0.5) * (white + wander[channel]);
    }
}
