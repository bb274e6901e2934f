package org.shotledger.chart;

import java.awt.Graphics2D;
import org.knowm.xchart.style.markers.Marker;

/** A marker that leaves room between its copies, so that a densely sampled line stays a line. */
final class SpacedMarker extends Marker {
    private static final double SPACING = 62;

    private final Marker shape;
    private double lastX = Double.NEGATIVE_INFINITY;
    private double lastY = Double.NEGATIVE_INFINITY;

    SpacedMarker(Marker shape) {
        this.shape = shape;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, int size) {
        if (!(Math.hypot(x - lastX, y - lastY) < SPACING)) {
            shape.paint(g, x, y, size);
            lastX = x;
            lastY = y;
        }
    }
}
