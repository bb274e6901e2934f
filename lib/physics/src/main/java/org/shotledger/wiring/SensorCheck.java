package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shotledger.units.Require;

/**
 * Judges readings of known states.
 *
 * @param sensors every sensor of the car
 * @param values what they must show
 * @param sharedReference whether the converter measures against the sensor supply, so that its error cancels
 * @param barometer pressure of the air, Pa absolute
 * @param air temperature of the air, K
 */
public record SensorCheck(
        List<Sensor> sensors, List<CheckValue> values, boolean sharedReference, double barometer, double air) {
    public SensorCheck {
        sensors = List.copyOf(sensors);
        values = List.copyOf(values);
        Require.within("pressure of the air", barometer, 3e4, 1.2e5, "Pa");
        Require.within("temperature of the air", air, 220, 340, "K");
    }

    /**
     * Judges each sensor that has a reading with a check value. A cause counts when it alone explains every reading of the sensor, and, where
     * it would show on others too, when nothing on those speaks against it: an exchanged plug must explain both sensors.
     *
     * @param readings what the controller shows
     * @return in the order of the sensors
     */
    public List<SensorVerdict> judge(List<SensorReading> readings) {
        List<SensorVerdict> verdicts = new ArrayList<>();
        for (Sensor sensor : sensors) {
            Map<CheckValue, Double> shown = shown(sensor, readings);
            if (!shown.isEmpty()) {
                verdicts.add(judge(sensor, shown, readings));
            }
        }
        return verdicts;
    }

    private SensorVerdict judge(Sensor sensor, Map<CheckValue, Double> shown, List<SensorReading> readings) {
        double worst = misfit(new Hypothesis("nothing", CheckValue::expected), shown);
        List<SensorVerdict.Cause> causes = new ArrayList<>();
        if (worst > 1) {
            Hypotheses hypotheses = new Hypotheses(sensor, sharedReference, barometer, air);
            for (Hypothesis one : hypotheses.alone()) {
                consider(one, shown, causes);
            }
            causes.sort(Comparator.comparing(SensorVerdict.Cause::misfit));
            // one cause for two wrong sensors is likelier than two causes
            causes.addAll(0, exchanges(sensor, shown, readings));
        }
        return new SensorVerdict(sensor.name(), worst <= 1, worst, causes);
    }

    private List<SensorVerdict.Cause> exchanges(
            Sensor sensor, Map<CheckValue, Double> shown, List<SensorReading> readings) {
        List<SensorVerdict.Cause> causes = new ArrayList<>();
        for (Sensor other : sensors) {
            if (exchangeable(sensor, other, readings)) {
                consider(swap(sensor, other), shown, causes);
            }
        }
        causes.sort(Comparator.comparing(SensorVerdict.Cause::misfit));
        return causes;
    }

    private static void consider(Hypothesis one, Map<CheckValue, Double> shown, List<SensorVerdict.Cause> causes) {
        double misfit = misfit(one, shown);
        if (misfit <= 1) {
            causes.add(new SensorVerdict.Cause(one.what(), misfit));
        }
    }

    /** Whether the other sensor's readings too are those of exchanged plugs. */
    private boolean exchangeable(Sensor sensor, Sensor other, List<SensorReading> readings) {
        if (other.equals(sensor) || other.outputKind() != sensor.outputKind()) {
            return false;
        }
        Map<CheckValue, Double> shown = shown(other, readings);
        return !shown.isEmpty()
                && shown.keySet().stream()
                        .allMatch(check -> truth(sensor, check.state()).isPresent())
                && shown(sensor, readings).keySet().stream()
                        .allMatch(check -> truth(other, check.state()).isPresent())
                && misfit(swap(other, sensor), shown) <= 1;
    }

    private Hypothesis swap(Sensor input, Sensor plugged) {
        return new Hypotheses(input, sharedReference, barometer, air)
                .swappedWith(plugged, check -> truth(plugged, check.state()).orElseThrow());
    }

    private Optional<Double> truth(Sensor sensor, CheckValue.State state) {
        return values.stream()
                .filter(check -> check.sensor().equals(sensor.name()) && check.state() == state)
                .map(CheckValue::expected)
                .findFirst();
    }

    private Map<CheckValue, Double> shown(Sensor sensor, List<SensorReading> readings) {
        return values.stream()
                .filter(check -> check.sensor().equals(sensor.name())
                        && reading(check, readings).isPresent())
                .collect(Collectors.toMap(
                        check -> check, check -> reading(check, readings).orElseThrow()));
    }

    private static Optional<Double> reading(CheckValue check, List<SensorReading> readings) {
        return readings.stream()
                .filter(reading -> reading.sensor().equals(check.sensor()) && reading.state() == check.state())
                .map(SensorReading::value)
                .findFirst();
    }

    private static double misfit(Hypothesis one, Map<CheckValue, Double> shown) {
        return shown.entrySet().stream()
                .mapToDouble(entry -> Math.abs(entry.getValue() - one.shown().applyAsDouble(entry.getKey()))
                        / entry.getKey().halfWidth())
                .max()
                .orElse(0);
    }
}
