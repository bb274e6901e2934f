package org.shotledger.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.List;

/** A filled region: the bracket around an estimate, a share of a total, the safe part of a map. */
final class BandMark extends Mark {
    private static final double HATCH = 8;

    private final List<double[][]> polygons;
    private final Look look;
    private final boolean hatched;

    /**
     * Takes the corners of closed polygons.
     *
     * @param polygons each as its abscissae and its ordinates, in the units of the axes
     * @param look the colour
     * @param hatched whether strokes run across the region
     */
    BandMark(List<double[][]> polygons, Look look, boolean hatched) {
        this.polygons = polygons;
        this.look = look;
        this.hatched = hatched;
    }

    /** The region between two curves over the same abscissae. */
    static BandMark between(double[] x, double[] low, double[] high, Look look, boolean hatched) {
        int n = x.length;
        double[] xs = new double[2 * n];
        double[] ys = new double[2 * n];
        for (int i = 0; i < n; i++) {
            xs[i] = x[i];
            ys[i] = low[i];
            xs[2 * n - 1 - i] = x[i];
            ys[2 * n - 1 - i] = high[i];
        }
        return new BandMark(List.<double[][]>of(new double[][] {xs, ys}), look, hatched);
    }

    @Override
    void draw(Graphics2D g) {
        Path2D outline = new Path2D.Double();
        polygons.forEach(polygon -> append(outline, polygon[0], polygon[1]));
        Area region = new Area(outline);
        region.intersect(new Area(plot()));
        g.setColor(look.wash(hatched ? 28 : 56));
        g.fill(region);
        if (hatched) {
            g.clip(region);
            g.setColor(look.wash(150));
            g.setStroke(new BasicStroke(0.7f));
            g.draw(Hatch.over(region.getBounds2D(), HATCH));
        }
    }

    private void append(Path2D outline, double[] xs, double[] ys) {
        outline.moveTo(x(xs[0]), y(ys[0]));
        for (int i = 1; i < xs.length; i++) {
            outline.lineTo(x(xs[i]), y(ys[i]));
        }
        outline.closePath();
    }
}
