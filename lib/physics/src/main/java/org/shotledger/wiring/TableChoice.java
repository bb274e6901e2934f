package org.shotledger.wiring;

import java.util.Objects;
import org.shotledger.wiring.BreakPoints.Spacing;

/**
 * The break points of a sensor on an input. Free ones are chosen when first asked for, since the best choice takes longer than reading a
 * whole sheet. Two are equal when they are of the same sensor and set alike.
 */
public final class TableChoice {
    private final Sensor sensor;
    private final int count;
    private final Spacing spacing;
    private volatile BreakPoints points;

    private TableChoice(Sensor sensor, int count, Spacing spacing) {
        this.sensor = sensor;
        this.count = count;
        this.spacing = spacing;
        // at even steps at once, so that a sensor without a table is refused here
        BreakPoints even = BreakPoints.of(sensor, count, spacing == Spacing.FREE ? Spacing.EVEN_OUTPUT : spacing);
        this.points = spacing == Spacing.FREE ? null : even;
    }

    /**
     * Takes note of what is to be chosen.
     *
     * @param sensor the sensor, its output rising or falling throughout
     * @param count of points that the controller takes, 2 to 128
     * @param spacing how it lets them be set
     * @return the choice
     */
    static TableChoice of(Sensor sensor, int count, Spacing spacing) {
        return new TableChoice(sensor, count, spacing);
    }

    /** The table to enter. */
    BreakPoints points() {
        if (points == null) {
            points = BreakPoints.of(sensor, count, spacing);
        }
        return points;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TableChoice o && sensor.equals(o.sensor) && count == o.count && spacing == o.spacing;
    }

    @Override
    public int hashCode() {
        return Objects.hash(sensor, count, spacing);
    }
}
