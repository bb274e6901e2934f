package org.shotledger.chart;

import java.awt.Dimension;
import java.awt.Font;
import java.io.StringWriter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.apache.batik.svggen.SVGIDGenerator;
import org.apache.batik.util.SVGConstants;
import org.knowm.xchart.XYChart;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Draws an XChart object as one SVG element that names itself to a reader who cannot see it. */
final class SvgDrawing {
    private SvgDrawing() {}

    /** What draws forgets a wish to stop; whoever draws must still see it. */
    static String of(String key, String title, String alt, XYChart chart) {
        boolean stopped = Thread.currentThread().isInterrupted();
        try {
            return draw(key, title, alt, chart);
        } finally {
            if (stopped) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private static String draw(String key, String title, String alt, XYChart chart) {
        Document document = GenericDOMImplementation.getDOMImplementation()
                .createDocument(SVGConstants.SVG_NAMESPACE_URI, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(2);
        context.setIDGenerator(new KeyedIds(key));
        Canvas canvas = new Canvas(context, fonts(chart));
        teach(canvas.words(), chart);
        canvas.setSVGCanvasSize(new Dimension(chart.getWidth(), chart.getHeight()));
        chart.paint(canvas, chart.getWidth(), chart.getHeight());
        canvas.flush();
        Element root = canvas.getRoot();
        name(root, document, key, title, alt, chart);
        TextWidths.write(root);
        return write(canvas, root, key);
    }

    private static List<Font> fonts(XYChart chart) {
        var styler = chart.getStyler();
        return List.of(
                styler.getChartTitleFont(),
                styler.getAxisTitleFont(),
                styler.getAxisTickLabelsFont(),
                styler.getLegendFont());
    }

    private static void teach(Words words, XYChart chart) {
        words.learn(chart.getTitle());
        words.learn(chart.getXAxisTitle());
        words.learn(chart.getYAxisTitle());
        words.learn(chart.getYAxisGroupTitle(1));
        chart.getSeriesMap().values().forEach(series -> words.learn(series.getLabel()));
        var styler = chart.getStyler();
        var x = styler.getxAxisTickLabelsFormattingFunction();
        var y = styler.getyAxisTickLabelsFormattingFunction();
        styler.setxAxisTickLabelsFormattingFunction(value -> learned(words, TickText.of(x, value)));
        styler.setyAxisTickLabelsFormattingFunction(value -> learned(words, TickText.of(y, value)));
    }

    private static String learned(Words words, String text) {
        words.learn(text);
        return text;
    }

    private static void name(Element root, Document document, String key, String title, String alt, XYChart chart) {
        root.setAttribute("viewBox", "0 0 " + chart.getWidth() + " " + chart.getHeight());
        root.setAttribute("role", "img");
        root.setAttribute("aria-label", title + ". " + alt);
        root.setAttribute("id", key);
        root.setAttribute("class", "chart");
        Element name = document.createElementNS(SVGConstants.SVG_NAMESPACE_URI, "title");
        name.setTextContent(title);
        Element description = document.createElementNS(SVGConstants.SVG_NAMESPACE_URI, "desc");
        description.setTextContent(alt);
        DarkTheme.add(root, key);
        root.insertBefore(description, root.getFirstChild());
        root.insertBefore(name, root.getFirstChild());
    }

    private static String write(Canvas canvas, Element root, String key) {
        StringWriter out = new StringWriter();
        try {
            canvas.stream(root, out, false, false);
        } catch (SVGGraphics2DIOException e) {
            throw new IllegalStateException("The chart cannot be written as SVG: " + e.getMessage(), e);
        }
        String svg = out.toString();
        return svg.substring(svg.indexOf("<svg"))
                .replace("'Dialog'", Letters.FAMILIES)
                .replace("'Liberation Sans'", Letters.FAMILIES)
                .replace("id=\"genericDefs\"", "id=\"" + key + "-generic\"")
                .replace("&apos;Liberation Sans&apos;", Letters.FAMILIES)
                .replace(" xml:space=\"preserve\"", "")
                .replaceAll("\\s*\n\\s*", "")
                .trim();
    }

    /** Ids that are the same at each run and different from those of the other charts of a page. */
    private static final class KeyedIds extends SVGIDGenerator {
        private final String key;
        private final Map<String, Integer> counts = new HashMap<>();

        KeyedIds(String key) {
            this.key = key;
        }

        @Override
        public String generateID(String prefix) {
            return key + "-" + prefix + counts.merge(prefix, 1, Integer::sum);
        }
    }
}
