package org.shotledger.wiring;

/**
 * How far a shown value may lie from the true one.
 *
 * <p>Each part is found by sending the value through the sensor with its cause at the edge of its width and back through the table's
 * curve; both edges are tried and the greater counts. The parts are independent, so they are added by squares (JCGM 100:2008, 5.1.2). The
 * width is that of the limits, not a standard deviation.
 *
 * @param supply by the sensor supply, in the value's SI unit
 * @param pullUp by the pull-up resistor
 * @param converter by the steps of the converter
 * @param sensor by the sensor's class
 * @param table by the straight lines between break points, zero without a table
 */
public record ErrorBar(double supply, double pullUp, double converter, double sensor, double table) {

    /**
     * Error of a sensor at a value.
     *
     * @param sensor the sensor
     * @param value true value, SI, inside its range
     * @param accuracy of input and sensor
     * @param table entered in the controller
     * @return the parts
     */
    public static ErrorBar of(Sensor sensor, double value, InputAccuracy accuracy, BreakPoints table) {
        double supply = accuracy.sharedReference() ? 0 : accuracy.supply();
        double output = sensor.output(value);
        double step = accuracy.halfStep();
        return new ErrorBar(
                Math.max(off(sensor, value, 1 + supply, 1), off(sensor, value, 1 - supply, 1)),
                Math.max(off(sensor, value, 1, 1 + accuracy.pullUp()), off(sensor, value, 1, 1 - accuracy.pullUp())),
                Math.max(Math.abs(sensor.value(output + step) - value), Math.abs(sensor.value(output - step) - value)),
                accuracy.classWidth(),
                Math.abs(table.value(output) - value));
    }

    /**
     * All parts together.
     *
     * @return half width, in the value's SI unit
     */
    public double total() {
        return Math.sqrt(supply * supply + pullUp * pullUp + converter * converter + sensor * sensor + table * table);
    }

    private static double off(Sensor sensor, double value, double supply, double pullUp) {
        if (supply == 1 && pullUp == 1) {
            return 0;
        }
        return Math.abs(sensor.value(sensor.output(value, new InputConditions(supply, pullUp))) - value);
    }
}
