package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shotledger.units.QuantityKind;

/** What may be wrong with a sensor: each cause sends the true value through the sensor as it would then be, and back. */
final class Hypotheses {
    /** Supplies tried, over nominal: our choice, the size of a tired regulator's or a long ground's error. */
    private static final double[] SUPPLIES = {0.90, 0.95, 1.05, 1.10};

    /** Pull-ups found in controllers, ohm: common practice, no source. */
    private static final double[] PULL_UPS = {470, 1_000, 2_200, 2_490, 2_700, 3_300, 4_700, 10_000};

    private static final double OPEN = 1e9;

    private final Sensor sensor;
    private final boolean sharedReference;
    private final double barometer;
    private final double air;

    Hypotheses(Sensor sensor, boolean sharedReference, double barometer, double air) {
        this.sensor = sensor;
        this.sharedReference = sharedReference;
        this.barometer = barometer;
        this.air = air;
    }

    /** Those of the sensor alone. */
    List<Hypothesis> alone() {
        List<Hypothesis> list = new ArrayList<>();
        supply(list);
        pullUp(list);
        pressure(list);
        wires(list);
        return list;
    }

    /** The plug of another sensor on this one's input. */
    Hypothesis swappedWith(Sensor other, java.util.function.ToDoubleFunction<CheckValue> truthOfOther) {
        return new Hypothesis(
                "plug exchanged with " + other.name(),
                check -> sensor.value(other.output(truthOfOther.applyAsDouble(check))));
    }

    private void supply(List<Hypothesis> list) {
        double probe = sensor.low() + 0.5 * (sensor.high() - sensor.low());
        boolean follows = sensor.output(probe, new InputConditions(1.1, 1)) != sensor.output(probe);
        if (sharedReference || !follows) {
            return;
        }
        for (double supply : SUPPLIES) {
            InputConditions conditions = new InputConditions(supply, 1);
            String off =
                    String.format(Locale.ROOT, "%.0f %% %s", Math.abs(100 * (supply - 1)), supply < 1 ? "low" : "high");
            list.add(new Hypothesis("sensor supply " + off, check -> through(check.expected(), conditions)));
        }
    }

    private void pullUp(List<Hypothesis> list) {
        double nominal = sensor instanceof ThermistorSensor t
                ? t.pullUp()
                : sensor instanceof ResistanceSensor r ? r.pullUp() : 0;
        for (double real : PULL_UPS) {
            if (nominal > 0 && Math.abs(real / nominal - 1) > 0.02) {
                InputConditions conditions = new InputConditions(1, real / nominal);
                list.add(new Hypothesis(
                        String.format(Locale.ROOT, "pull-up is %.0f ohm, table made for %.0f ohm", real, nominal),
                        check -> through(check.expected(), conditions)));
            }
        }
    }

    private double through(double truth, InputConditions conditions) {
        return sensor.value(sensor.output(truth, conditions));
    }

    private void pressure(List<Hypothesis> list) {
        if (sensor.kind() == QuantityKind.GAUGE_PRESSURE) {
            list.add(new Hypothesis("absolute sensor entered as gauge", check -> held(check.expected() + barometer)));
        } else if (sensor.kind() == QuantityKind.ABSOLUTE_PRESSURE) {
            list.add(new Hypothesis("gauge sensor entered as absolute", check -> held(check.expected() - barometer)));
        }
    }

    private double held(double truth) {
        return sensor.value(sensor.output(truth));
    }

    private void wires(List<Hypothesis> list) {
        if (sensor instanceof ThrottleSensor) {
            list.add(new Hypothesis("closed and open end entered the wrong way round", check -> 1 - check.expected()));
        }
        if (sensor instanceof ThermocoupleSensor t) {
            double cold = t.output(air);
            list.add(new Hypothesis("cold end not added", check -> t.value(t.output(check.expected()) - cold)));
            list.add(new Hypothesis("cold end added twice", check -> t.value(t.output(check.expected()) + cold)));
            list.add(new Hypothesis(
                    "wires of the thermocouple exchanged", check -> t.value(2 * cold - t.output(check.expected()))));
        }
        if (sensor.outputKind() == QuantityKind.VOLTAGE && !(sensor instanceof ThermocoupleSensor)) {
            list.add(new Hypothesis(
                    "no signal: wire broken to a pull-down, or shorted to ground", check -> sensor.value(0)));
            list.add(new Hypothesis(
                    "full signal: ground broken, or shorted to the supply", check -> sensor.value(OPEN)));
        }
    }
}
