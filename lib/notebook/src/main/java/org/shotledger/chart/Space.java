package org.shotledger.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What already stands in a plot, so that a label can find a spot where it covers nothing. */
final class Space {
    /** Free pixels that a label keeps from a line. */
    private static final double CLEAR = 2.5;

    private final List<Line2D> lines = new ArrayList<>();
    private final List<Rectangle2D> labels = new ArrayList<>();

    void addLine(Line2D line) {
        lines.add(line);
    }

    /**
     * Takes the best of some spots for a label.
     *
     * @param spots candidates, the preferred one first
     * @param inside the plot; a spot that leaves it is taken only when all do
     * @return the spot that covers least
     */
    Rectangle2D take(List<Rectangle2D> spots, Rectangle2D inside) {
        Rectangle2D best = spots.get(0);
        int least = Integer.MAX_VALUE;
        for (Rectangle2D spot : spots) {
            int covered = cost(spot, inside);
            if (covered < least) {
                least = covered;
                best = spot;
            }
        }
        labels.add(best);
        return best;
    }

    private int cost(Rectangle2D spot, Rectangle2D inside) {
        int cost = inside.contains(spot) ? 0 : 1000;
        for (Rectangle2D label : labels) {
            cost += label.intersects(spot) ? 100 : 0;
        }
        Rectangle2D clear = new Rectangle2D.Double(
                spot.getX() - CLEAR, spot.getY() - CLEAR, spot.getWidth() + 2 * CLEAR, spot.getHeight() + 2 * CLEAR);
        for (Line2D line : lines) {
            cost += clear.intersectsLine(line) ? 1 : 0;
        }
        return cost;
    }
}
