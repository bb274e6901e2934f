package org.shotledger.wiring;

import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;

/**
 * A sensor on an input of the controller: how well it is read and which table is entered for it.
 *
 * @param sensor the sensor
 * @param accuracy of input and sensor
 * @param choice of the break points to enter
 * @param role what of the car it measures
 * @param warmIdle value that the builder knows at warm idle, SI; NaN where none is known
 * @param warmIdleWidth half width of that value, SI
 */
public record SensorInput(
        Sensor sensor,
        InputAccuracy accuracy,
        TableChoice choice,
        SensorRole role,
        double warmIdle,
        double warmIdleWidth) {
    /** Places over the range of the sensor at which the input is looked at: our choice. */
    private static final int LOOKS = 33;

    public SensorInput {
        Require.given("sensor", sensor);
        Require.given("accuracy of " + sensor.name(), accuracy);
        Require.given("table of " + sensor.name(), choice);
        Require.given("role of " + sensor.name(), role);
    }

    /**
     * A sensor on an input of a controller.
     *
     * @param sensor the sensor
     * @param stage how the controller reads
     * @param tolerances of the sensor's own supply, pull-up and class
     * @param role what of the car it measures
     * @return the input without a known value at warm idle
     */
    public static SensorInput of(Sensor sensor, InputStage stage, Tolerances tolerances, SensorRole role) {
        InputAccuracy accuracy = new InputAccuracy(
                Double.isNaN(tolerances.supply()) ? stage.supplyTolerance() : tolerances.supply(),
                stage.sharedReference(),
                tolerances.pullUp(),
                fullScale(sensor, stage),
                stage.bits(),
                tolerances.classWidth());
        return new SensorInput(
                sensor,
                accuracy,
                TableChoice.of(sensor, stage.points(), stage.spacing()),
                role,
                Double.NaN,
                Double.NaN);
    }

    /** An amplifier or a timer is taken to be matched to the sensor; a plain voltage meets the converter's own range. */
    private static double fullScale(Sensor sensor, InputStage stage) {
        boolean plain = sensor.outputKind() == QuantityKind.VOLTAGE && !(sensor instanceof ThermocoupleSensor);
        return plain ? stage.range() : Math.max(sensor.output(sensor.low()), sensor.output(sensor.high()));
    }

    /**
     * The same with a value that is known at warm idle.
     *
     * @param value SI
     * @param width half width, SI, above zero
     * @return the changed input
     */
    public SensorInput atWarmIdle(double value, double width) {
        return new SensorInput(sensor, accuracy, choice, role, value, width);
    }

    /**
     * Name of the sensor.
     *
     * @return its name
     */
    public String name() {
        return sensor.name();
    }

    /**
     * The table to enter for it.
     *
     * @return the break points
     */
    public BreakPoints table() {
        return choice.points();
    }

    /**
     * How far a shown value may lie from the true one.
     *
     * @param value true value, SI, inside the sensor's range
     * @return the parts
     */
    public ErrorBar error(double value) {
        return ErrorBar.of(sensor, value, accuracy, table());
    }

    /**
     * The value at which the error bar is widest, looked for at 33 places of the range.
     *
     * @return SI
     */
    public double worstAt() {
        double worst = sensor.low();
        double width = -1;
        for (int i = 0; i < LOOKS; i++) {
            double value = sensor.low() + (sensor.high() - sensor.low()) * i / (LOOKS - 1);
            double here = error(value).total();
            if (here > width) {
                width = here;
                worst = value;
            }
        }
        return worst;
    }

    /**
     * What the data line of a sensor says about its own errors.
     *
     * @param supply half width of its own supply as a share; NaN where it is that of the controller
     * @param pullUp half width of the pull-up resistor as a share, 0 where there is none
     * @param classWidth half width of the sensor by its class, SI
     */
    public record Tolerances(double supply, double pullUp, double classWidth) {}
}
