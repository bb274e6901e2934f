package org.shotledger.chart;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.limits.Side;

/**
 * Collects what goes into a chart over two axes, then hands out the finished picture. All values are SI; the axes say in
 * which units they are shown. Every method gives the same object back, so that calls can be chained.
 */
public final class Plot {
    private static final int HEIGHT = 250;

    private final Frame frame;
    private final List<Curved> curves = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final Range rangeX = new Range();
    private final Range rangeY = new Range();
    private final Range rangeRight = new Range();
    private Scale right;
    private int height = HEIGHT;
    private int width = XySheet.WIDTH;
    private int looks;
    private boolean rows;
    private boolean tight;
    private boolean titled = true;

    private Plot(Frame frame) {
        this.frame = frame;
    }

    /** What a chart is called and what its axes measure. */
    record Frame(String key, String title, String alt, Scale x, Scale y) {}

    /** One series in the units of its axes. */
    @SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
    record Curved(String name, double[] x, double[] y, Look look, Style style, boolean onRight) {}

    /** How a series is drawn. */
    enum Style {
        LINE,
        LINE_WITH_MARKERS,
        POINTS,
        KEY_PLAIN,
        KEY_HATCHED
    }

    /**
     * Begins a chart.
     *
     * @param key short name in lower case, unique on a page
     * @param title what the chart shows
     * @param alt what a reader should take from it, in one or two sentences
     * @param x the horizontal axis
     * @param y the vertical axis
     * @return the chart, still empty
     */
    public static Plot of(String key, String title, String alt, Scale x, Scale y) {
        return new Plot(new Frame(key, title, alt, x, y));
    }

    /**
     * Adds a curve in the next look of the palette.
     *
     * @param name its name in the legend
     * @param x abscissae, SI
     * @param y ordinates, SI, as many; not-a-number leaves a gap
     * @return this chart
     * @throws IllegalArgumentException when there are not as many ordinates as abscissae, or none at all
     */
    public Plot line(String name, double[] x, double[] y) {
        return add(name, x, y, Look.of(looks++), Style.LINE_WITH_MARKERS, false);
    }

    /**
     * Adds the curve that is the sum of the others or the thing measured: black, without markers.
     *
     * @param name its name in the legend
     * @param x abscissae, SI
     * @param y ordinates, SI, as many
     * @return this chart
     */
    public Plot total(String name, double[] x, double[] y) {
        return add(name, x, y, Look.TOTAL, Style.LINE, false);
    }

    /**
     * Adds single points in the next look of the palette.
     *
     * @param name their name in the legend
     * @param x abscissae, SI
     * @param y ordinates, SI, as many
     * @return this chart
     */
    public Plot points(String name, double[] x, double[] y) {
        return add(name, x, y, Look.of(looks++), Style.POINTS, false);
    }

    /**
     * Gives the chart a second vertical axis on the right.
     *
     * @param axis what it measures
     * @return this chart
     */
    public Plot rightAxis(Scale axis) {
        right = axis;
        return this;
    }

    /**
     * Adds a curve that is read on the right axis.
     *
     * @param name its name in the legend
     * @param x abscissae, SI
     * @param y ordinates, SI, as many
     * @return this chart
     * @throws IllegalStateException when there is no right axis
     */
    public Plot rightLine(String name, double[] x, double[] y) {
        if (right == null) {
            throw new IllegalStateException("The chart '" + frame.key + "' has no right axis for the curve '" + name
                    + "'; call rightAxis first.");
        }
        return add(name, x, y, Look.of(looks++), Style.LINE_WITH_MARKERS, true);
    }

    /**
     * Fills the region between two curves.
     *
     * @param name its name in the legend
     * @param x abscissae, SI
     * @param low lower edge, SI
     * @param high upper edge, SI
     * @return this chart
     */
    public Plot band(String name, double[] x, double[] low, double[] high) {
        return band(name, x, low, high, Look.of(looks++), false);
    }

    /**
     * Draws a limit across the plot, with its words beside it.
     *
     * @param words what is limited and the figure, for example {@code "rail pressure at least 43.5 psi"}
     * @param at the bound, SI
     * @param side the side on which values must stay
     * @return this chart
     */
    public Plot limit(String words, double at, Side side) {
        return horizontal(words, at, side);
    }

    /**
     * Draws a target or a reference across the plot, with its words beside it.
     *
     * @param words what the line means
     * @param at the ordinate, SI
     * @return this chart
     */
    public Plot mark(String words, double at) {
        return horizontal(words, at, null);
    }

    /**
     * Draws a reference from bottom to top, with its words beside it.
     *
     * @param words what the line means
     * @param at the abscissa, SI
     * @return this chart
     */
    public Plot markAt(String words, double at) {
        return vertical(words, at, null);
    }

    /**
     * Draws a limit from bottom to top, with its words beside it.
     *
     * @param words what is limited and the figure
     * @param at the bound, SI
     * @param side the side on which values must stay
     * @return this chart
     */
    public Plot limitAt(String words, double at, Side side) {
        return vertical(words, at, side);
    }

    /**
     * Writes words beside a point.
     *
     * @param words the words
     * @param x abscissa of the point, SI
     * @param y ordinate of the point, SI
     * @return this chart
     */
    public Plot label(String words, double x, double y) {
        marks.add(new LabelMark(words, frame.x.shown(x), frame.y.shown(y), false));
        return this;
    }

    /**
     * Makes sure that the axes reach some values.
     *
     * @param x an abscissa, SI; not-a-number to leave the axis as it is
     * @param y an ordinate, SI; not-a-number to leave the axis as it is
     * @return this chart
     */
    public Plot reach(double x, double y) {
        rangeX.include(frame.x.shown(x));
        rangeY.include(frame.y.shown(y));
        return this;
    }

    /**
     * The finished picture; what is added to this object later does not reach it.
     *
     * @return the picture
     * @throws IllegalStateException when nothing was added
     */
    public ChartPicture picture() {
        if (curves.isEmpty()) {
            throw new IllegalStateException(
                    "The chart '" + frame.key + "' has no curve; add one before asking for the picture.");
        }
        XySheet sheet = new XySheet(
                frame,
                right,
                List.copyOf(curves),
                rangeX.copy(),
                rangeY.copy(),
                rangeRight.copy(),
                rows,
                tight,
                titled,
                height);
        List<Mark> marksNow = List.copyOf(marks);
        return new ChartPicture(frame.key, frame.title, frame.alt, width, pixels -> sheet.draw(marksNow, pixels));
    }

    /** A chart for a narrow place, such as a telephone. */
    Plot width(int pixels) {
        width = pixels;
        return this;
    }

    /** Leaves the title to the caption under the drawing, where room is short. */
    Plot untitled() {
        titled = false;
        return this;
    }

    Plot height(int pixels) {
        height = pixels;
        return this;
    }

    Plot strongLabel(String words, double x, double y) {
        marks.add(new LabelMark(words, frame.x.shown(x), frame.y.shown(y), true));
        return this;
    }

    Plot band(String name, double[] x, double[] low, double[] high, Look look, boolean hatched) {
        double[] xs = checked(name, x, low, frame.x);
        rangeX.include(xs);
        double[] ylow = frame.y.shown(low);
        double[] yhigh = frame.y.shown(high);
        rangeY.include(ylow);
        rangeY.include(yhigh);
        marks.add(BandMark.between(xs, ylow, yhigh, look, hatched));
        return key(name, look, hatched);
    }

    Plot regions(List<double[][]> corners, Look look, boolean hatched) {
        List<double[][]> shown = corners.stream()
                .map(corner -> new double[][] {frame.x.shown(corner[0]), frame.y.shown(corner[1])})
                .toList();
        if (!shown.isEmpty()) {
            marks.add(new BandMark(shown, look, hatched));
        }
        return this;
    }

    /** Adds a swatch to the legend for a region drawn otherwise. */
    Plot key(String name, Look look, boolean hatched) {
        curves.add(new Curved(
                name,
                new double[] {Double.NaN},
                new double[] {Double.NaN},
                look,
                hatched ? Style.KEY_HATCHED : Style.KEY_PLAIN,
                false));
        return this;
    }

    Plot mark(Mark own) {
        marks.add(own);
        return this;
    }

    Plot add(String name, double[] x, double[] y, Look look, Style style, boolean onRight) {
        double[] xs = checked(name, x, y, frame.x);
        double[] ys = (onRight ? right : frame.y).shown(y);
        curves.add(new Curved(name, xs, ys, look, style, onRight));
        rangeX.include(xs);
        (onRight ? rangeRight : rangeY).include(ys);
        return this;
    }

    private Plot horizontal(String words, double at, Side side) {
        rangeY.include(frame.y.shown(at));
        marks.add(new LineMark(words, frame.y.shown(at), false, side));
        return this;
    }

    private Plot vertical(String words, double at, Side side) {
        rangeX.include(frame.x.shown(at));
        marks.add(new LineMark(words, frame.x.shown(at), true, side));
        return this;
    }

    private double[] checked(String name, double[] x, double[] y, Scale axis) {
        if (x.length == 0 || x.length != y.length) {
            throw new IllegalArgumentException("The curve '" + name + "' of the chart '" + frame.key + "' has "
                    + x.length + " abscissae and " + y.length + " values; give as many of one as of the other.");
        }
        return axis.shown(x);
    }

    /** Turns the vertical axis into rows for lying bars, the first on top. */
    Plot rows(int count) {
        rows = true;
        height = 118 + BarMark.HEAD + count * BarMark.ROW;
        rangeY.include(0, count);
        return key("_rows", Look.SPEED, false);
    }

    /** Lets the axes end where the values end. */
    Plot tight() {
        tight = true;
        return this;
    }
}
