package org.shotledger.chart;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** A lying bar with its words written above it, so that a long name needs no room at the side. */
final class BarMark extends Mark {
    /** Height of one row of bars, pixels. */
    static final int ROW = 31;

    /** Room above the first row for the words of lines that cross all rows, pixels. */
    static final int HEAD = 16;

    private static final double THICKNESS = 15;

    /** Free pixels around the words of a bar, so that a line behind them ends before it touches a letter. */
    private static final double CLEAR = 5;

    private static final double INDENT = 8;
    private static final String CUT = " \u2026";

    private final String words;
    private final int row;
    private final int rows;
    private final double from;
    private final double to;
    private final Look look;
    private final double hatch;

    /**
     * Sets a bar.
     *
     * @param words written above the bar; empty when another bar of the row carries them
     * @param row the row, 0 at the top
     * @param rows number of rows in the plot
     * @param from one end, in the units of the axis
     * @param to the other end
     * @param look its colour
     * @param hatch distance of the strokes across it, pixels; 0 for none
     */
    BarMark(String words, int row, int rows, double from, double to, Look look, double hatch) {
        this.words = words;
        this.row = row;
        this.rows = rows;
        this.from = from;
        this.to = to;
        this.look = look;
        this.hatch = hatch;
    }

    @Override
    void draw(Graphics2D g) {
        Rectangle2D plot = plot();
        double top = plot.getMinY() + HEAD + row * (plot.getHeight() - HEAD) / rows + 18;
        double left = clamped(x(Math.min(from, to)), plot);
        double right = clamped(x(Math.max(from, to)), plot);
        Rectangle2D bar = new Rectangle2D.Double(left, top, Math.max(right - left, 1.5), THICKNESS);
        g.setColor(look.wash(hatch > 0 ? 70 : 190));
        g.fill(bar);
        if (hatch > 0) {
            hatch(g, bar);
        }
        g.setColor(look.edge());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(bar);
        if (!words.isEmpty()) {
            Font font = Letters.regular(12);
            String fitting = fitting(g, words, font, plot.getWidth() - 2 * INDENT);
            write(g, fitting, font, Look.INK, CLEAR, List.of(new double[] {plot.getMinX() + INDENT, top - 5}));
        }
    }

    /** As many whole words as have room; an ellipsis stands for the rest, which the table beside a chart has in full. */
    private static String fitting(Graphics2D g, String words, Font font, double room) {
        if (width(g, words, font) <= room) {
            return words;
        }
        String kept = words;
        while (width(g, kept + CUT, font) > room && kept.indexOf(' ') > 0) {
            kept = kept.substring(0, kept.lastIndexOf(' '));
        }
        return kept + CUT;
    }

    private void hatch(Graphics2D g, Rectangle2D bar) {
        java.awt.Shape before = g.getClip();
        g.clip(bar);
        g.setColor(look.color());
        g.setStroke(new BasicStroke(1f));
        g.draw(Hatch.over(bar, hatch));
        g.setClip(before);
    }

    private static double clamped(double x, Rectangle2D plot) {
        return Math.min(Math.max(x, plot.getMinX() + 1), plot.getMaxX() - 1);
    }
}
