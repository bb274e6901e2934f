package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.curve.Bracket;
import org.shotledger.units.QuantityKind;

/** A sensor: what it puts out for what it measures, to be typed into a controller and checked at two points. */
public sealed interface Sensor
        permits RatiometricSensor,
                LinearSensor,
                ThrottleSensor,
                PulledUpSensor,
                ThermocoupleSensor,
                EthanolSensor,
                PulseWidthSensor,
                FrequencySensor {

    /**
     * What it is called.
     *
     * @return the name
     */
    String name();

    /**
     * What it measures.
     *
     * @return the kind
     */
    QuantityKind kind();

    /**
     * The least value of its range.
     *
     * @return SI
     */
    double low();

    /**
     * The greatest value of its range.
     *
     * @return SI
     */
    double high();

    /**
     * What its output is.
     *
     * @return the kind of the output, a voltage where nothing else is said
     */
    default QuantityKind outputKind() {
        return QuantityKind.VOLTAGE;
    }

    /**
     * What it puts out.
     *
     * @param value what is measured, SI, inside the range
     * @return V; Hz or s where {@link #outputKind()} is a frequency or a time
     */
    double output(double value);

    /**
     * What it puts out where supply or pull-up are not what they should be.
     *
     * @param value what is measured, SI
     * @param conditions of the input
     * @return V, Hz or s; unchanged where the sensor leans on neither
     */
    default double output(double value, InputConditions conditions) {
        return output(value);
    }

    /**
     * The value that a controller with a perfect table shows.
     *
     * @param output V, Hz or s
     * @return SI, held at the nearer end of the range for an output beyond it
     */
    default double value(double output) {
        double atLow = output(low()) - output;
        double atHigh = output(high()) - output;
        if (Math.signum(atLow) * Math.signum(atHigh) > 0) {
            return Math.abs(atLow) < Math.abs(atHigh) ? low() : high();
        }
        return Bracket.root(v -> output(v) - output, low(), high(), 1e-9 * (high() - low()));
    }

    /**
     * Its law in words.
     *
     * @return equation and source
     */
    String law();

    /**
     * What a broken wire and a short circuit look like.
     *
     * @return one sentence
     */
    String faults();

    /**
     * Two points at which it is checked in the car, each with how the point is made.
     *
     * @return two points
     */
    List<Check> checks();

    /**
     * The table to type into a controller.
     *
     * @param points number of points, 2 or more
     * @return points evenly spaced over the range
     */
    default List<Point> table(int points) {
        List<Point> rows = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double value = low() + (high() - low()) * i / (points - 1);
            rows.add(new Point(value, output(value)));
        }
        return rows;
    }

    /**
     * A point of the table.
     *
     * @param value what is measured, SI
     * @param output V or Hz
     */
    record Point(double value, double output) {}

    /**
     * A point at which the sensor is checked.
     *
     * @param how how the point is made
     * @param value what is measured, SI
     * @param output what must be read, V or Hz
     */
    record Check(String how, double value, double output) {}
}
