package org.shotledger.chart;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.Locale;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Writes the width each text was laid out for beside it, so that a reader's machine with another typeface fits the text into its
 * place instead of running over its neighbour.
 */
final class TextWidths {
    /** Size that SVG text has where no element states one, as Batik leaves it out. */
    private static final float USUAL_SIZE = 12;

    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    private TextWidths() {}

    static void write(Element root) {
        write(root, USUAL_SIZE, false);
    }

    private static void write(Element element, float outerSize, boolean outerBold) {
        String sized = element.getAttribute("font-size");
        String weighted = element.getAttribute("font-weight");
        float size = sized.isEmpty() ? outerSize : Float.parseFloat(sized.replace("px", ""));
        boolean bold = weighted.isEmpty() ? outerBold : weighted.equals("bold");
        if (element.getTagName().equals("text") && element.getTextContent().length() > 1) {
            Font font = bold ? Letters.bold(size) : Letters.regular(size);
            double width =
                    font.getStringBounds(element.getTextContent(), MEASURE).getWidth();
            element.setAttribute("textLength", String.format(Locale.ROOT, "%.1f", width));
            element.setAttribute("lengthAdjust", "spacingAndGlyphs");
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                write(inner, size, bold);
            }
        }
    }
}
