package org.shotledger.chart;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.shotledger.limits.Side;

/**
 * A straight line across the plot with its words beside it. A limit carries short strokes on the side that must not be
 * entered, as on a drawing; a line without a side is a target or a reference and is dashed.
 */
final class LineMark extends Mark {
    /** Axes end on whole pixels, values do not. */
    private static final double ROUNDING = 2;

    private static final double STROKE_EVERY = 9;
    private static final double STROKE_LENGTH = 5;

    private final String words;
    private final double at;
    private final boolean vertical;
    private final Side side;

    LineMark(String words, double at, boolean vertical, Side side) {
        this.words = words;
        this.at = at;
        this.vertical = vertical;
        this.side = side;
    }

    @Override
    void draw(Graphics2D g) {
        Rectangle2D plot = plot();
        double p = vertical ? x(at) : y(at);
        double low = vertical ? plot.getMinX() : plot.getMinY();
        double high = vertical ? plot.getMaxX() : plot.getMaxY();
        if (p < low - ROUNDING || p > high + ROUNDING) {
            return;
        }
        g.setColor(Look.INK);
        g.setStroke(
                side == null
                        ? new BasicStroke(1.3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 4}, 0)
                        : new BasicStroke(1.6f));
        g.draw(
                vertical
                        ? new Line2D.Double(p, plot.getMinY(), p, plot.getMaxY())
                        : new Line2D.Double(plot.getMinX(), p, plot.getMaxX(), p));
        if (side != null) {
            forbid(g, plot, p);
        }
        if (words.isEmpty()) {
            return;
        }
        Font font = Letters.bold(12);
        write(g, words, font, Look.INK, vertical ? beside(g, font, plot, p) : along(g, font, plot, p));
    }

    @Override
    void occupy(Space common) {
        Rectangle2D plot = plot();
        common.addLine(
                vertical
                        ? new Line2D.Double(x(at), plot.getMinY(), x(at), plot.getMaxY())
                        : new Line2D.Double(plot.getMinX(), y(at), plot.getMaxX(), y(at)));
    }

    private void forbid(Graphics2D g, Rectangle2D plot, double p) {
        g.setStroke(new BasicStroke(0.8f));
        double away = STROKE_LENGTH * (side == Side.AT_MOST ? 1 : -1);
        Path2D strokes = new Path2D.Double();
        if (vertical) {
            for (double y = plot.getMinY() + STROKE_EVERY; y < plot.getMaxY(); y += STROKE_EVERY) {
                strokes.moveTo(p, y);
                strokes.lineTo(p + away, y - STROKE_LENGTH);
            }
        } else {
            for (double x = plot.getMinX(); x < plot.getMaxX() - STROKE_LENGTH; x += STROKE_EVERY) {
                strokes.moveTo(x, p);
                strokes.lineTo(x + STROKE_LENGTH, p - away);
            }
        }
        g.draw(strokes);
    }

    private List<double[]> along(Graphics2D g, Font font, Rectangle2D plot, double p) {
        double width = width(g, words, font);
        double clear = 6;
        double above = p - clear - (side == Side.AT_MOST ? STROKE_LENGTH : 0);
        double below = p + clear + 0.78 * font.getSize2D() + (side == Side.AT_LEAST ? STROKE_LENGTH : 0);
        List<double[]> places = new ArrayList<>();
        for (double part : new double[] {1, 0, 0.5, 0.75, 0.25}) {
            double x = plot.getMinX() + 6 + part * (plot.getWidth() - width - 12);
            places.add(new double[] {x, above});
            places.add(new double[] {x, below});
        }
        return places;
    }

    private List<double[]> beside(Graphics2D g, Font font, Rectangle2D plot, double p) {
        double width = width(g, words, font);
        double right = p + (side == Side.AT_MOST ? STROKE_LENGTH : 0) + 5;
        double left = p - (side == Side.AT_LEAST ? STROKE_LENGTH : 0) - 5 - width;
        List<double[]> places = new ArrayList<>();
        for (double part : new double[] {0, 1, 0.5, 0.25, 0.75}) {
            double y = plot.getMinY() + 14 + part * (plot.getHeight() - 22);
            places.add(new double[] {right, y});
            places.add(new double[] {left, y});
        }
        return places;
    }
}
