package org.shotledger.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.knowm.xchart.style.markers.Marker;

/** The piece of a region shown in the legend. */
final class Swatch extends Marker {
    private static final double WIDTH = 30;
    private static final double HEIGHT = 11;
    private static final double HATCH = 7;

    private final Look look;
    private final boolean hatched;

    Swatch(Look look, boolean hatched) {
        this.look = look;
        this.hatched = hatched;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, int size) {
        double left = x - WIDTH / 2;
        double top = y - HEIGHT / 2;
        g.setColor(look.wash(hatched ? 28 : 56));
        g.fill(new Rectangle2D.Double(left, top, WIDTH, HEIGHT));
        g.setColor(look.edge());
        g.setStroke(new BasicStroke(0.8f));
        Path2D lines = new Path2D.Double(new Rectangle2D.Double(left, top, WIDTH, HEIGHT));
        for (double d = 0; hatched && d + HEIGHT <= WIDTH; d += HATCH) {
            lines.moveTo(left + d, top + HEIGHT);
            lines.lineTo(left + d + HEIGHT, top);
        }
        g.draw(lines);
    }
}
