package org.shotledger.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import org.knowm.xchart.style.markers.Marker;

/** A marker on a rim of ink, for colours that white paper swallows. */
final class OutlinedMarker extends Marker {
    private static final int RIM = 2;

    private final Marker shape;

    OutlinedMarker(Marker shape) {
        this.shape = shape;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, int size) {
        Color color = g.getColor();
        g.setColor(Look.INK);
        shape.paint(g, x, y, size + RIM);
        g.setColor(color);
        shape.paint(g, x, y, size);
    }
}
