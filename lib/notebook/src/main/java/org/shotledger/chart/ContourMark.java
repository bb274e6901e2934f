package org.shotledger.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** A line of equal value with its value written on it. */
final class ContourMark extends Mark {
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
        var font = strong ? Letters.bold(11) : Letters.regular(11);
        double width = width(g, words, font);
        List<double[]> places = new ArrayList<>();
        for (double part : new double[] {0.5, 0.3, 0.7, 0.15, 0.85}) {
            Contour.Piece piece = pieces.get((int) (part * (pieces.size() - 1)));
            places.add(new double[] {x(piece.x1()) - width / 2, y(piece.y1()) + 4});
        }
        write(g, words, font, Look.INK, places);
    }
}
