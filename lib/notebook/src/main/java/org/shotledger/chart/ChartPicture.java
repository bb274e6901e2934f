package org.shotledger.chart;

import java.util.Optional;
import java.util.function.Supplier;
import org.knowm.xchart.XYChart;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;

/** A finished chart: a title, words for those who cannot see it, and the drawing, which is made when it is first asked for. */
public final class ChartPicture implements Displayable {
    private final String key;
    private final String title;
    private final String alt;
    private final Supplier<XYChart> recipe;
    private String svg;

    /**
     * Makes a picture.
     *
     * @param key short name in lower case, unique on a page; ids inside the drawing begin with it
     * @param title what the chart shows
     * @param alt what a reader should take from it, in one or two sentences
     * @param recipe makes the XChart object anew at each call
     * @throws IllegalArgumentException when the key is not made of lower-case letters, digits and hyphens, or a text is blank
     */
    public ChartPicture(String key, String title, String alt, Supplier<XYChart> recipe) {
        if (!key.matches("[a-z][a-z0-9-]*")) {
            throw new IllegalArgumentException("The chart key '" + key
                    + "' cannot serve as an id; use lower-case letters, digits and hyphens, a letter first.");
        }
        if (title.isBlank() || alt.isBlank()) {
            throw new IllegalArgumentException("The chart '" + key
                    + "' lacks a title or an alternative text; give both, so that it can be read out.");
        }
        this.key = key;
        this.title = title;
        this.alt = alt;
        this.recipe = recipe;
    }

    /**
     * The name under which the drawing stands on a page.
     *
     * @return the key
     */
    public String key() {
        return key;
    }

    /**
     * What the chart shows.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * What a reader should take from the chart.
     *
     * @return the alternative text
     */
    public String alt() {
        return alt;
    }

    /**
     * The XChart object behind the picture, to restyle or to go on with.
     *
     * @return a new object at each call; changes to it do not reach this picture
     */
    public XYChart chart() {
        return recipe.get();
    }

    /**
     * The drawing as SVG, the same at each run.
     *
     * @return one {@code svg} element with real text, a {@code role} and a label
     */
    public synchronized String svg() {
        if (svg == null) {
            svg = SvgDrawing.of(key, title, alt, recipe.get());
        }
        return svg;
    }

    /**
     * The drawing as PNG on white.
     *
     * @param width width of the image, pixels, 100 to 10000
     * @return the bytes of the image
     * @throws IllegalArgumentException when the width is out of range
     */
    public byte[] png(int width) {
        if (width < 100 || width > 10_000) {
            throw new IllegalArgumentException(
                    "The width of the picture '" + key + "' is " + width + " pixels; choose 100 to 10000.");
        }
        return Raster.png(svg(), width);
    }

    /**
     * The picture as a figure with its caption.
     *
     * @return a {@code figure} element
     */
    @Override
    public String toHtml() {
        return "<figure class=\"chart\">" + svg() + "<figcaption>" + Display.escapeHtml(alt) + "</figcaption></figure>";
    }

    @Override
    public String toText() {
        return title + "\n" + alt;
    }

    @Override
    public Optional<String> toSvg() {
        return Optional.of(svg());
    }

    @Override
    public String toString() {
        return toText();
    }
}
