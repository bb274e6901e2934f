package org.shotledger.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.internal.chartpart.Annotation;
import org.knowm.xchart.internal.chartpart.Chart;

/** Something drawn into a plot beside its series: a limit, a band, a label. Coordinates are those of the axes. */
abstract class Mark extends Annotation {
    private static final double CLOSE = 2;

    private XYChart xy;
    private Space space;

    Mark() {
        super(false);
    }

    @Override
    @SuppressWarnings("rawtypes") // XChart declares it so
    public void init(Chart chart) {
        super.init(chart);
        xy = (XYChart) chart;
    }

    /** Hands over the space shared by all marks of a chart. */
    void share(Space common) {
        space = common;
    }

    @Override
    public final void paint(Graphics2D g) {
        Shape clip = g.getClip();
        bounds = plot();
        draw(g);
        g.setClip(clip);
    }

    abstract void draw(Graphics2D g);

    /** Enters what this mark will draw as a thing not to be covered by words. */
    void occupy(Space common) {
        // most marks are surfaces, on which words may stand
    }

    final Rectangle2D plot() {
        double x = getXAxisScreenValueForMin();
        double y = getYAxisScreenValueForMin();
        return new Rectangle2D.Double(x, y, getXAxisScreenValueForMax() - x, getYAxisScreenValueForMax() - y);
    }

    final double x(double value) {
        return xy.getScreenXFromChart(value);
    }

    final double y(double value) {
        return xy.getScreenYFromChart(value);
    }

    /** Writes a label at the best of some places; each place is the left end of its base line. */
    final void write(Graphics2D g, String text, Font font, Color color, List<double[]> places) {
        write(g, text, font, color, CLOSE, places);
    }

    /** Writes a label with some free pixels at its sides. */
    final void write(Graphics2D g, String text, Font font, Color color, double aside, List<double[]> places) {
        g.setFont(font);
        double width = font.getStringBounds(text, g.getFontRenderContext()).getWidth();
        double ascent = font.getSize2D() * 0.78;
        List<Rectangle2D> spots = new ArrayList<>();
        for (double[] place : places) {
            spots.add(new Rectangle2D.Double(
                    place[0] - aside, place[1] - ascent - CLOSE, width + 2 * aside, font.getSize2D() + 2 * CLOSE));
        }
        Rectangle2D spot = space.take(spots, plot());
        g.setColor(aside > CLOSE ? Color.WHITE : new Color(255, 255, 255, 215));
        g.fill(spot);
        g.setColor(color);
        g.drawString(text, (float) (spot.getX() + aside), (float) (spot.getY() + CLOSE + ascent));
    }

    static double width(Graphics2D g, String text, Font font) {
        return font.getStringBounds(text, g.getFontRenderContext()).getWidth();
    }

    /** Enters the curves of a chart as things not to be covered. */
    static void enter(XYChart chart, Space space) {
        for (XYSeries series : chart.getSeriesMap().values()) {
            double[] xs = series.getXData();
            double[] ys = series.getYData();
            int axis = series.getYAxisGroup();
            for (int i = 1; i < xs.length; i++) {
                space.addLine(new Line2D.Double(
                        chart.getScreenXFromChart(xs[i - 1]),
                        chart.getScreenYFromChart(ys[i - 1], axis),
                        chart.getScreenXFromChart(xs[i]),
                        chart.getScreenYFromChart(ys[i], axis)));
            }
        }
    }
}
