package org.shotledger.chart;

import java.util.Optional;
import java.util.function.IntFunction;
import org.knowm.xchart.XYChart;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;

/** A finished chart: a title, words for those who cannot see it, and the drawing, which is made when it is first asked for. */
public final class ChartPicture implements Displayable {
    /** Width of a drawing that a telephone shows without making its letters smaller, pixels. */
    private static final int NARROW = 360;

    private final String key;
    private final String title;
    private final String alt;
    private final int width;
    private final IntFunction<XYChart> recipe;
    private String svg;

    /**
     * Makes a picture.
     *
     * @param key short name in lower case, unique on a page; ids inside the drawing begin with it
     * @param title what the chart shows
     * @param alt what a reader should take from it, in one or two sentences
     * @param width of the drawing, pixels
     * @param recipe makes the XChart object anew at each call, as wide as it is told, pixels
     * @throws IllegalArgumentException when the key is not made of lower-case letters, digits and hyphens, or a text is blank
     */
    public ChartPicture(String key, String title, String alt, int width, IntFunction<XYChart> recipe) {
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
        this.width = width;
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
        return recipe.apply(width);
    }

    /**
     * The drawing as SVG, the same at each run.
     *
     * @return one {@code svg} element with real text, a {@code role} and a label
     */
    public synchronized String svg() {
        if (svg == null) {
            svg = SvgDrawing.of(key, title, alt, chart());
        }
        return svg;
    }

    /**
     * The drawing laid out anew for a narrow screen.
     *
     * @return one {@code svg} element as {@link #svg()}, with ids of its own
     */
    public String narrow() {
        return SvgDrawing.of(key + "-narrow", title, alt, recipe.apply(Math.min(width, NARROW)));
    }

    /**
     * The drawing as PNG on white.
     *
     * @param pixels width of the image, pixels, 100 to 10000
     * @return the bytes of the image
     * @throws IllegalArgumentException when the width is out of range
     */
    public byte[] png(int pixels) {
        if (pixels < 100 || pixels > 10_000) {
            throw new IllegalArgumentException(
                    "The width of the picture '" + key + "' is " + pixels + " pixels; choose 100 to 10000.");
        }
        return Raster.png(svg(), pixels);
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
