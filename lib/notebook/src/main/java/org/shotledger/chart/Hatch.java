package org.shotledger.chart;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Strokes at 45 degrees, as one path. */
final class Hatch {
    private Hatch() {}

    static Path2D over(Rectangle2D box, double spacing) {
        Path2D strokes = new Path2D.Double();
        double rise = box.getHeight();
        for (double d = -rise; d < box.getWidth(); d += spacing) {
            strokes.moveTo(box.getMinX() + d, box.getMaxY());
            strokes.lineTo(box.getMinX() + d + rise, box.getMinY());
        }
        return strokes;
    }
}
