package org.shotledger.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** A line of equal value with its value written on it. */
final class ContourMark extends Mark {
    private static final double[] PARTS = {0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6};
    /** Pixels between a line and words beside it. */
    private static final double AWAY = 7;

    /** A piece of a line too short to be named, pixels. */
    private static final double SHORT = 24;

    private final String words;
    private final List<Contour.Piece> pieces;
    private final boolean strong;

    ContourMark(String words, List<Contour.Piece> pieces, boolean strong) {
        this.words = words;
        this.pieces = pieces;
        this.strong = strong;
    }

    @Override
    void draw(Graphics2D g) {
        if (pieces.isEmpty()) {
            return;
        }
        g.clip(plot());
        g.setColor(Look.INK);
        g.setStroke(new BasicStroke(strong ? 2.2f : 1f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        Path2D path = new Path2D.Double();
        for (Contour.Piece piece : pieces) {
            path.moveTo(x(piece.x1()), y(piece.y1()));
            path.lineTo(x(piece.x2()), y(piece.y2()));
        }
        g.draw(path);
        if (words.isEmpty() || length() < SHORT) {
            return;
        }
        var font = strong ? Letters.bold(12) : Letters.regular(12);
        write(g, words, font, Look.INK, strong ? beside(width(g, words, font)) : on(width(g, words, font)));
    }

    private double length() {
        double sum = 0;
        for (Contour.Piece piece : pieces) {
            sum += Math.hypot(x(piece.x2()) - x(piece.x1()), y(piece.y2()) - y(piece.y1()));
        }
        return sum;
    }

    private List<double[]> on(double width) {
        List<double[]> places = new ArrayList<>();
        for (double part : PARTS) {
            double[] at = at(part);
            double left = Math.max(plot().getMinX() + 4, at[0] - width / 2);
            places.add(new double[] {Math.min(left, plot().getMaxX() - width - 4), at[1] + 4});
        }
        return places;
    }

    private List<double[]> beside(double width) {
        List<double[]> places = new ArrayList<>();
        for (double part : PARTS) {
            double[] at = at(part);
            places.add(new double[] {at[0] - width / 2, at[1] - AWAY});
            places.add(new double[] {at[0] - width / 2, at[1] + AWAY + 9});
            places.add(new double[] {at[0] + AWAY, at[1] + 4});
            places.add(new double[] {at[0] - width - AWAY, at[1] + 4});
        }
        return places;
    }

    private double[] at(double part) {
        Contour.Piece piece = pieces.get((int) (part * (pieces.size() - 1)));
        return new double[] {x(piece.x1()), y(piece.y1())};
    }

    @Override
    void occupy(Space common) {
        if (strong || words.isEmpty()) {
            for (Contour.Piece piece : pieces) {
                common.addLine(new Line2D.Double(x(piece.x1()), y(piece.y1()), x(piece.x2()), y(piece.y2())));
            }
        }
    }
}
