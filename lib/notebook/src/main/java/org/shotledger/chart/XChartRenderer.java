package org.shotledger.chart;

import java.util.LinkedHashMap;
import java.util.Map;
import org.knowm.xchart.XYChart;
import org.shotledger.display.Display;
import org.shotledger.display.DisplayRenderer;

/** Shows an XChart chart that a user has made or changed. */
public final class XChartRenderer implements DisplayRenderer<XYChart> {

    /** Made by the service loader. */
    public XChartRenderer() {}

    @Override
    public Class<XYChart> type() {
        return XYChart.class;
    }

    @Override
    public Map<String, Object> render(XYChart chart) {
        String title = chart.getTitle() == null || chart.getTitle().isBlank() ? "Chart" : chart.getTitle();
        String series = "Shows " + String.join(", ", chart.getSeriesMap().keySet()) + ".";
        String key = "chart-" + Integer.toHexString(title.hashCode());
        Map<String, Object> forms = new LinkedHashMap<>();
        forms.put(Display.TEXT, title + "\n" + series);
        forms.put(Display.SVG, SvgDrawing.of(key, title, series, chart));
        return forms;
    }
}
