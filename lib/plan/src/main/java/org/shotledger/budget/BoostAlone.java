package org.shotledger.budget;

import java.util.List;

/**
 * What the turbocharger gives by itself: at each engine speed the highest boost that keeps every limit.
 *
 * @param points one point an engine speed, ascending
 */
public record BoostAlone(List<Point> points) {

    /** Copies the list. */
    public BoostAlone {
        points = List.copyOf(points);
    }

    /**
     * One engine speed.
     *
     * @param rpm engine speed, rev/min
     * @param plenumPressure plenum pressure, Pa absolute; NaN where the turbocharger makes no boost
     * @param gaugePressure the same above the ambient pressure, Pa; NaN likewise
     * @param wheelPower wheel power, W; NaN likewise
     * @param stoppedBy the limit that allows no more boost, in words
     */
    public record Point(double rpm, double plenumPressure, double gaugePressure, double wheelPower, String stoppedBy) {}

    /**
     * The highest wheel power.
     *
     * @return the point with the most wheel power
     * @throws java.util.NoSuchElementException when there is no point
     */
    public Point best() {
        return points.stream()
                .filter(p -> !Double.isNaN(p.wheelPower()))
                .max(java.util.Comparator.comparingDouble(Point::wheelPower))
                .orElseThrow();
    }
}
