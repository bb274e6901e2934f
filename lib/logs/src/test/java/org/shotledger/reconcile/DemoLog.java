package org.shotledger.reconcile;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;

/**
 * Invents the demonstration's logs: what the Whimbrel's plan expects, seeded noise, and stated errors that a reader of the log should
 * find again. They are no measurement of anything.
 */
final class DemoLog {
    /** Bore of the fuel jets as a share of the planned one. */
    static final double FUEL_BORE = 0.96;
    /** How much later lambda is logged, s. */
    static final double LAMBDA_LAG = 0.06;
    /** Highest manifold pressure the sensor shows, kPa. */
    static final double SENSOR_END = 190;

    static final double STEP = 0.02;
    /** The pull begins where boost is up, rev/min: below it the plan has no answer to be laid over. */
    private static final double FIRST_SPEED = 4600;

    private static final double PSI = 6894.757293168;
    private static final double HP = 745.69987158227022;

    private final Expectation expectation;
    private final Outcome outcome;
    private final boolean nitrous;
    private final double sensorEnd;
    private final Random random;
    private final Deque<Double> lambdas = new ArrayDeque<>();
    private double manifold = 60e3;
    private double onSince = Double.NaN;

    private DemoLog(Outcome outcome, boolean nitrous, double sensorEnd, long seed) {
        this.outcome = outcome;
        this.expectation = new Expectation(outcome);
        this.nitrous = nitrous;
        this.sensorEnd = sensorEnd;
        this.random = new Random(seed);
    }

    /** The whole file. */
    static String text(Outcome outcome, boolean nitrous) {
        return text(outcome, nitrous, SENSOR_END);
    }

    /** The same with a manifold pressure sensor that ends elsewhere, kPa. */
    static String text(Outcome outcome, boolean nitrous, double sensorEnd) {
        return new DemoLog(outcome, nitrous, sensorEnd, nitrous ? 41 : 42).write();
    }

    private String write() {
        StringBuilder text = new StringBuilder();
        text.append(
                        "# Invented data, not a measurement of a real car; made for the Whimbrel demonstration by a seeded program.\n")
                .append(
                        "# What the plan expects, with noise, and with errors put in on purpose: the fuel jets are bored 4 % too\n")
                .append(
                        "# small (nitrous runs only), lambda comes 60 ms late, the manifold pressure sensor ends at 190 kPa,\n")
                .append("# eight rows are lost at 0.8 s, and the charge temperature drops out for five rows.\n")
                .append(
                        "Time,Eng Spd,Throttle,MAP,Lambda 1,Rail P,N2O Fuel P,Bottle P,N2O On,Charge T,Battery,Wheel Pwr,Spare 1\n");
        double rpm = FIRST_SPEED;
        boolean done = false;
        for (int i = 0; i < 520; i++) {
            double t = i * STEP;
            done |= rpm >= 7900;
            boolean pulling = t >= 2.4 && !done;
            boolean on = nitrous && pulling && rpm >= 5850 && rpm <= 7750;
            onSince = on && Double.isNaN(onSince) ? t : onSince;
            String row = row(t, rpm, on, t < 1.4 ? Load.CRUISE : pulling || t < 2.4 ? Load.FULL : Load.COAST);
            if (i < 40 || i >= 48) {
                text.append(row);
            }
            rpm += STEP * (pulling ? (on ? 720 : 560) : t < 2.4 ? 0 : -900);
            if (done && rpm < FIRST_SPEED) {
                break;
            }
        }
        return text.toString();
    }

    private enum Load {
        CRUISE,
        FULL,
        COAST
    }

    private String row(double t, double rpm, boolean on, Load load) {
        Optional<OperatingPoint> full = load == Load.FULL ? point(t, rpm, on) : Optional.empty();
        double wanted = full.map(p -> p.plenumPressure()).orElse(load == Load.CRUISE ? 60e3 : 35e3);
        manifold += (wanted - manifold) * STEP / (0.12 + STEP);
        double lambda = full.map(OperatingPoint::lambda).orElse(load == Load.CRUISE ? 1.0 : 1.3);
        lambdas.addLast(lambda);
        double late = lambdas.size() > Math.round(LAMBDA_LAG / STEP) ? lambdas.removeFirst() : lambdas.peekFirst();
        double power = full.map(OperatingPoint::wheelPower).orElse(load == Load.CRUISE ? 40 * HP : -20 * HP);
        double ambient = outcome.at().air().pressure();
        double rail = ambient + 3.0e5 + (manifold - ambient);
        double second = ambient + 3.5e5 + (on ? manifold - ambient : 0);
        double bottle = expectation.bottlePressure(Double.isNaN(onSince) ? 0 : on ? t - onSince : lastOn(t));
        int i = (int) Math.round(t / STEP);
        boolean lost = i >= 90 && i < 95;
        return String.format(
                Locale.ROOT,
                "%.2f,%.0f,%d,%.1f,%.3f,%.1f,%.1f,%.0f,%s,%s,%.2f,%.1f,%d\n",
                t,
                rpm + 5 * random.nextGaussian(),
                load == Load.FULL ? 100 : load == Load.CRUISE ? 22 : 0,
                Math.min(sensorEnd, manifold / 1e3 + 0.5 * random.nextGaussian()),
                late + 0.003 * random.nextGaussian(),
                (rail - ambient) / PSI + 0.3 * random.nextGaussian(),
                (second - ambient) / PSI + 0.3 * random.nextGaussian(),
                (bottle - ambient) / PSI + 3 * random.nextGaussian(),
                on ? "on" : "off",
                lost ? "" : String.format(Locale.ROOT, "%.1f", 41 + 0.2 * random.nextGaussian() - (on ? 22 : 0)),
                13.6 + 0.03 * random.nextGaussian() - (on ? 0.25 : 0),
                power / HP + 2.5 * random.nextGaussian(),
                0);
    }

    private double ended = Double.NaN;

    private double lastOn(double t) {
        ended = Double.isNaN(ended) ? t : ended;
        return ended - onSince;
    }

    private Optional<OperatingPoint> point(double t, double rpm, boolean on) {
        if (!on) {
            return expectation.off(rpm);
        }
        return expectation.on(rpm, t - onSince, FUEL_BORE * FUEL_BORE);
    }
}
