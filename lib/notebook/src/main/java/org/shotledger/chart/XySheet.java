package org.shotledger.chart;

import java.awt.Color;
import java.awt.font.FontRenderContext;
import java.util.List;
import java.util.stream.Stream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** The finished content of a chart, and how it is set in XChart: one style for all charts of the project. */
record XySheet(
        Plot.Frame frame,
        Scale right,
        List<Plot.Curved> curves,
        Range rangeX,
        Range rangeY,
        Range rangeRight,
        boolean rows,
        boolean tight,
        boolean titled,
        int height) {
    /** Width of a chart unless it is made for a narrow place, pixels. */
    static final int WIDTH = 680;

    /** A narrower drawing has no room for its title: what it stands in says it. */
    private static final int TITLED = 400;

    private static final int KEY_LINE = 30;
    private static final int KEY_HEIGHT = 13;

    XYChart draw(List<Mark> marks, int width) {
        boolean beside = beside(width);
        XYChart chart = new XYChartBuilder()
                .width(width)
                .height(beside ? height : height + (int) (KEY_HEIGHT * (named().count() - 1)))
                .title(frame.title())
                .xAxisTitle(frame.x().title())
                .yAxisTitle(frame.y().title())
                .build();
        style(chart.getStyler(), beside);
        chart.getStyler().setChartTitleVisible(titled && width >= TITLED);
        ranges(chart);
        curves.forEach(curve -> add(chart, curve));
        breakSpacing(chart);
        if (!marks.isEmpty()) {
            chart.addAnnotation(new Survey(chart, marks));
            marks.forEach(chart::addAnnotation);
        }
        return chart;
    }

    private void style(XYStyler s, boolean beside) {
        s.setAntiAlias(true);
        s.setBaseFont(Letters.regular(12));
        s.setChartTitleFont(Letters.bold(15));
        s.setAxisTitleFont(Letters.regular(12));
        s.setAxisTickLabelsFont(Letters.regular(12));
        s.setLegendFont(Letters.regular(12));
        s.setChartBackgroundColor(Color.WHITE);
        s.setPlotBackgroundColor(Color.WHITE);
        s.setChartFontColor(Look.INK);
        s.setAxisTickLabelsColor(Look.INK);
        s.setAxisTickMarksColor(Look.QUIET);
        s.setPlotBorderColor(Look.QUIET);
        s.setPlotGridLinesColor(Look.GRID);
        s.setPlotGridLinesStroke(new java.awt.BasicStroke(0.6f));
        s.setChartTitleBoxVisible(false);
        s.setChartPadding(10);
        s.setAxisTicksLineVisible(false);
        s.setPlotContentSize(1);
        s.setMarkerSize(8);
        s.setYAxisTickMarkSpacingHint(48);
        s.setXAxisTickMarkSpacingHint(84);
        s.setxAxisTickLabelsFormattingFunction(TickText::of);
        s.setyAxisTickLabelsFormattingFunction(TickText::of);
        legend(s, beside);
    }

    private void legend(XYStyler s, boolean beside) {
        s.setLegendPosition(Styler.LegendPosition.OutsideS);
        s.setLegendBorderColor(Color.WHITE);
        s.setLegendSeriesLineLength(KEY_LINE);
        s.setLegendPadding(6);
        s.setLegendLayout(beside ? Styler.LegendLayout.Horizontal : Styler.LegendLayout.Vertical);
        s.setLegendVisible(named().findAny().isPresent());
    }

    /** Curves that stand in the legend. */
    private Stream<Plot.Curved> named() {
        return curves.stream().filter(curve -> !curve.name().startsWith("_"));
    }

    /** Whether the legend fits into one line; where it does not, the drawing grows by its lines. */
    private boolean beside(int width) {
        FontRenderContext letters = new FontRenderContext(null, true, true);
        double total = named().mapToDouble(curve -> KEY_LINE
                        + 20
                        + Letters.regular(12)
                                .getStringBounds(curve.name(), letters)
                                .getWidth())
                .sum();
        return total < width - 30;
    }

    private void ranges(XYChart chart) {
        XYStyler s = chart.getStyler();
        double aside = !tight && curves.stream().anyMatch(curve -> curve.style() == Plot.Style.POINTS) ? 0.03 : 0;
        s.setXAxisMin(rangeX.from(aside));
        s.setXAxisMax(rangeX.to(aside));
        s.setYAxisMin(0, rangeY.from(rows || tight ? 0 : 0.06));
        s.setYAxisMax(0, rangeY.to(rows || tight ? 0 : 0.08));
        if (rows) {
            s.setYAxisTicksVisible(false);
            s.setYAxisTitleVisible(false);
            s.setPlotGridHorizontalLinesVisible(false);
        }
        if (right != null) {
            chart.setYAxisGroupTitle(1, right.title());
            s.setYAxisGroupPosition(1, Styler.YAxisPosition.Right);
            s.setYAxisMin(1, rangeRight.from(0.06));
            s.setYAxisMax(1, rangeRight.to(0.08));
        }
    }

    /** XChart puts ticks at the data where these are evenly spaced, at numbers no reader likes; one odd point ends that. */
    private void breakSpacing(XYChart chart) {
        double odd = rangeX.from(0) + 0.3719 * (rangeX.to(0) - rangeX.from(0));
        chart.addSeries("_odd", new double[] {odd}, new double[] {Double.NaN}).setShowInLegend(false);
    }

    private static void add(XYChart chart, Plot.Curved curve) {
        XYSeries series = chart.addSeries(curve.name(), curve.x(), curve.y());
        series.setShowInLegend(!curve.name().startsWith("_"));
        series.setLineColor(curve.look().color());
        series.setMarkerColor(curve.look().color());
        series.setMarker(SeriesMarkers.NONE);
        series.setLineStyle(curve.look().stroke(2.2f));
        series.setYAxisGroup(curve.onRight() ? 1 : 0);
        series.setXYSeriesRenderStyle(XYSeriesRenderStyle.Line);
        switch (curve.style()) {
            case LINE -> {}
            case LINE_WITH_MARKERS ->
                series.setMarker(new SpacedMarker(curve.look().marker()));
            case POINTS -> {
                series.setLineStyle(SeriesLines.NONE);
                series.setMarker(curve.look().marker());
            }
            case KEY_PLAIN, KEY_HATCHED -> {
                series.setLineStyle(SeriesLines.NONE);
                series.setMarker(new Swatch(curve.look(), curve.style() == Plot.Style.KEY_HATCHED));
            }
        }
    }
}
