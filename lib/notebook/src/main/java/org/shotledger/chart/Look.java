package org.shotledger.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * How one series is told from the next: colour, dash and marker together, so that grey print and colour-blind eyes still
 * see the difference. Colours after M. Okabe and K. Ito, Color Universal Design (2008).
 */
enum Look {
    /** Blue, solid, circles. */
    FIRST(new Color(0x0072B2), SeriesMarkers.CIRCLE),
    /** Vermilion, long dashes, squares. */
    SECOND(new Color(0xD55E00), SeriesMarkers.SQUARE, 9, 4),
    /** Bluish green, dash and dot, triangles. */
    THIRD(new Color(0x009E73), SeriesMarkers.TRIANGLE_UP, 9, 3, 2, 3),
    /** Reddish purple, dots, diamonds. */
    FOURTH(new Color(0xCC79A7), SeriesMarkers.DIAMOND, 2, 3),
    /** Orange, short dashes, triangles pointing down. */
    FIFTH(new Color(0xE69F00), SeriesMarkers.TRIANGLE_DOWN, 5, 3),
    /** Sky blue, dash and two dots, circles. */
    SIXTH(new Color(0x56B4E9), SeriesMarkers.CIRCLE, 9, 3, 2, 3, 2, 3),
    /** Black, solid, no marker: the sum, or the thing measured. */
    TOTAL(Color.BLACK, SeriesMarkers.NONE),
    /** Grey, thin, solid: the lines of a map. */
    SPEED(new Color(0x8C8C8C), SeriesMarkers.NONE),
    /** Grey triangles on their tips: not to be had. */
    REJECTED(new Color(0x8C8C8C), SeriesMarkers.TRIANGLE_DOWN),
    /** Blue, solid, every point marked. */
    FRONT(new Color(0x0072B2), SeriesMarkers.CIRCLE);

    /** Ink of text, axes and limit lines. */
    static final Color INK = new Color(0x222222);
    /** Ink of what is said beside the main thing; 4.5 to 1 against white or better. */
    static final Color QUIET = new Color(0x595959);
    /** Grid lines. */
    static final Color GRID = new Color(0xDDDDDD);

    private static final Look[] IN_TURN = {FIRST, SECOND, THIRD, FOURTH, FIFTH, SIXTH};

    private final Color color;
    private final Marker marker;
    private final float[] dash;

    Look(Color color, Marker marker, float... dash) {
        this.color = color;
        this.marker = marker;
        this.dash = dash;
    }

    Color color() {
        return color;
    }

    /** What its surfaces and markers are outlined with: ink where the colour alone stands out too little from white. */
    Color edge() {
        return this == FIFTH || this == SIXTH ? INK : color;
    }

    Color wash(int alpha) {
        return new Color(color.getRed(), color.getGreen(), color.getBlue(), alpha);
    }

    Marker marker() {
        return edge().equals(color) ? marker : new OutlinedMarker(marker);
    }

    BasicStroke stroke(float width) {
        return dash.length == 0
                ? new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    static Look of(int index) {
        return IN_TURN[Math.floorMod(index, IN_TURN.length)];
    }
}
