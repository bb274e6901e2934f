package org.shotledger.chart;

import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * What lets a chart turn dark with the notebook around it: light and dark change places, hues stay, so that a curve keeps its name.
 *
 * <p>The front end says on {@code body} that its theme is dark; everywhere else, on paper and in a page, the chart stays on white.
 */
final class DarkTheme {

    /** JupyterLab's own mark of a dark theme (its documentation, "Theming"). */
    private static final String DARK_BODY = "body[data-jp-theme-light=\"false\"]";

    /**
     * One minus the hue turned by 180 degrees, by the matrix of W3C Filter Effects Module Level 1, {@code feColorMatrix}, type
     * {@code hueRotate}: luminance weights 0.213, 0.715, 0.072.
     */
    private static final String MATRIX =
            "0.574 -1.43 -0.144 0 1 -0.426 -0.43 -0.144 0 1 -0.426 -1.43 0.856 0 1 0 0 0 1 0";

    private DarkTheme() {}

    static void add(Element root, String key) {
        Document document = root.getOwnerDocument();
        Element filter = element(document, "filter");
        filter.setAttribute("id", key + "-dark");
        filter.setAttribute("color-interpolation-filters", "sRGB");
        Element matrix = element(document, "feColorMatrix");
        matrix.setAttribute("type", "matrix");
        matrix.setAttribute("values", MATRIX);
        filter.appendChild(matrix);
        Element style = element(document, "style");
        style.setAttribute("type", "text/css");
        style.setTextContent(DARK_BODY + " svg#" + key + "{filter:url(#" + key + "-dark)}");
        root.insertBefore(filter, root.getFirstChild());
        root.insertBefore(style, root.getFirstChild());
    }

    private static Element element(Document document, String name) {
        return document.createElementNS(SVGConstants.SVG_NAMESPACE_URI, name);
    }
}
