package org.shotledger.commission;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.FuelStreams;
import org.shotledger.job.Job;
import org.shotledger.setup.Setup;
import org.shotledger.supply.Regulator;
import org.shotledger.units.QuantityKind;
import org.shotledger.wiring.CheckValue;
import org.shotledger.wiring.CheckValue.State;
import org.shotledger.wiring.Sensor;
import org.shotledger.wiring.SensorCheck;
import org.shotledger.wiring.SensorInput;
import org.shotledger.wiring.SensorVerdict;
import org.shotledger.wiring.ThrottleSensor;
import org.shotledger.wiring.Wiring;
import org.shotledger.workshop.Readings;

/**
 * What every sensor of a car must show in known states, and what the readings that were taken mean.
 *
 * @param inputs the sensors on their inputs
 * @param values what they must show
 * @param barometer pressure of the air for which they hold, Pa absolute
 * @param air temperature of the air for which they hold, K
 * @param readings what was shown
 */
public record SensorChecks(
        List<SensorInput> inputs, List<CheckValue> values, double barometer, double air, Readings readings) {
    /** How well a regulator is set by a dial gauge, over its pressure: common practice, no source. */
    private static final double REGULATOR = 0.03;
    /** How well the content of a fuel is known that nobody measured on the day: common practice, no source. */
    private static final double CONTENT = 0.03;
    /** A thermostat's opening and its band, K: common practice, no source. */
    private static final double COOLANT = 363.15;

    /** How far a cold engine may stand from the air around it after a night, K: our choice. */
    private static final double COOLANT_BAND = 12;
    /** Share of a range below which no reading differs: the last digit of a display. */
    private static final double DIGIT = 1e-3;
    /** How well a throttle finds its stops again, of its travel: common practice, no source. */
    private static final double THROTTLE_STOP = 0.02;
    /** Wandering of an idle speed, rev/min: common practice, no source. */
    private static final double IDLE_BAND = 150;

    public SensorChecks {
        inputs = List.copyOf(inputs);
        values = List.copyOf(values);
    }

    /**
     * The checks of a job with its setup.
     *
     * @param job the job; barometer and temperature are those of its readings, else those of its target's place
     * @param setup what is set
     * @return the checks; empty of values where the sheet describes no sensors
     */
    public static SensorChecks of(Job job, Setup setup) {
        Readings readings = job.workshop().readings();
        double barometer =
                Double.isNaN(readings.barometer()) ? job.stated().air().pressure() : readings.barometer();
        double air = Double.isNaN(readings.air()) ? job.stated().air().temperature() : readings.air();
        List<SensorInput> inputs = job.car().wiring().map(Wiring::inputs).orElse(List.of());
        List<CheckValue> values = new ArrayList<>();
        for (SensorInput input : inputs) {
            values.addAll(engineOff(input, barometer, air));
            prime(job, setup, input, barometer).ifPresent(values::add);
            warmIdle(job, input).ifPresent(values::add);
        }
        return new SensorChecks(inputs, values, barometer, air, readings);
    }

    private static List<CheckValue> engineOff(SensorInput input, double barometer, double air) {
        Sensor sensor = input.sensor();
        // the error bar where the value is known: that of the range's middle says little at its end
        return CheckValue.engineOff(sensor, barometer, air, 1).stream()
                .map(value -> {
                    double width = Math.hypot(error(input, value.expected()), state(sensor));
                    return new CheckValue(sensor.name(), value.state(), value.expected(), width, value.why());
                })
                .toList();
    }

    /** How well the state itself is known. */
    private static double state(Sensor sensor) {
        return sensor.kind() == QuantityKind.TEMPERATURE
                ? CheckValue.SOAKED
                : sensor instanceof ThrottleSensor ? THROTTLE_STOP : 0;
    }

    private static double error(SensorInput input, double value) {
        Sensor sensor = input.sensor();
        double inside = Math.min(sensor.high(), Math.max(sensor.low(), value));
        return Math.max(input.error(inside).total(), DIGIT * (sensor.high() - sensor.low()));
    }

    private static Optional<CheckValue> prime(Job job, Setup setup, SensorInput input, double barometer) {
        return switch (input.role()) {
            case MAIN_FUEL_PRESSURE -> pressure(input, setup.mainRegulator(), barometer);
            case NITROUS_FUEL_PRESSURE -> pressure(input, setup.nitrousRegulator(), barometer);
            case ETHANOL_CONTENT ->
                job.car()
                        .fuels()
                        .blend()
                        .map(FuelStreams.Blend::ethanol)
                        .map(content -> known(
                                input,
                                State.PRIME,
                                content,
                                CONTENT,
                                "the fuel of the sheet, once it has reached the sensor"));
            default -> Optional.empty();
        };
    }

    private static Optional<CheckValue> pressure(SensorInput input, Regulator regulator, double barometer) {
        double rail = regulator.railPressure(barometer, barometer);
        double shown = input.sensor().kind() == QuantityKind.ABSOLUTE_PRESSURE ? rail : rail - barometer;
        return Optional.of(known(
                input,
                State.PRIME,
                shown,
                REGULATOR * (rail - barometer),
                "the regulator's base pressure, its reference open to the air"));
    }

    private static Optional<CheckValue> warmIdle(Job job, SensorInput input) {
        if (!Double.isNaN(input.warmIdle())) {
            return Optional.of(
                    known(input, State.WARM_IDLE, input.warmIdle(), input.warmIdleWidth(), "the builder's own figure"));
        }
        double idle =
                job.car().wiring().map(wiring -> wiring.supply().idleRpm()).orElse(Double.NaN);
        return switch (input.role()) {
            case COOLANT_TEMPERATURE ->
                Optional.of(known(
                        input,
                        State.WARM_IDLE,
                        COOLANT,
                        COOLANT_BAND,
                        "a usual thermostat (common practice, no source)"));
            case ENGINE_SPEED ->
                Optional.of(known(input, State.WARM_IDLE, idle, IDLE_BAND, "the idle speed of the sheet"));
            case CAR_SPEED -> Optional.of(known(input, State.WARM_IDLE, 0, DIGIT, "the car stands"));
            default -> Optional.empty();
        };
    }

    private static CheckValue known(SensorInput input, State state, double value, double width, String why) {
        return new CheckValue(input.name(), state, value, Math.hypot(error(input, value), width), why);
    }

    /**
     * What the readings of the sheet mean.
     *
     * @return one verdict a sensor that has a reading with a known value
     */
    public List<SensorVerdict> judge() {
        return judge(readings);
    }

    /**
     * What readings mean.
     *
     * @param shown the readings
     * @return one verdict a sensor that has a reading with a known value
     */
    public List<SensorVerdict> judge(Readings shown) {
        boolean shared = inputs.stream().allMatch(input -> input.accuracy().sharedReference());
        return new SensorCheck(inputs.stream().map(SensorInput::sensor).toList(), values, shared, barometer, air)
                .judge(shown.readings());
    }

    /**
     * The sensor of a name.
     *
     * @param name its name
     * @return the sensor on its input
     * @throws IllegalArgumentException when there is none
     */
    public SensorInput input(String name) {
        return inputs.stream()
                .filter(input -> input.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No sensor is called \"" + name + "\"; there are "
                        + inputs.stream().map(SensorInput::name).toList() + "."));
    }
}
