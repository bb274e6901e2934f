package org.shotledger.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The typeface of charts and documents: Liberation Sans, shipped as a library so that every machine measures the same
 * widths. Its metrics are those of Arial and Helvetica, which stand in where a browser lacks it.
 */
final class Letters {
    /** The family names put into the SVG, in the order in which a reader's machine is to try them. */
    static final String FAMILIES = "Liberation Sans, Arial, Helvetica, sans-serif";

    private static final Font REGULAR = load("LiberationSans-Regular.ttf");
    private static final Font BOLD = load("LiberationSans-Bold.ttf").deriveFont(Font.BOLD);

    private Letters() {}

    /**
     * The upright face.
     *
     * @param size height of the letters, pixels of the drawing
     * @return the font
     */
    static Font regular(float size) {
        return REGULAR.deriveFont(size);
    }

    /**
     * The bold face.
     *
     * @param size height of the letters, pixels of the drawing
     * @return the font
     */
    static Font bold(float size) {
        return BOLD.deriveFont(size);
    }

    private static Font load(String file) {
        try (InputStream in = Letters.class.getResourceAsStream("/liberation/" + file)) {
            if (in == null) {
                throw new IllegalStateException("The font " + file
                        + " is not on the class path; add the font library named in the notebook module's pom.");
            }
            Font font = Font.createFont(Font.TRUETYPE_FONT, in);
            GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(font);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException("The font " + file + " cannot be read from the class path.", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("The font " + file + " on the class path is damaged.", e);
        }
    }
}
