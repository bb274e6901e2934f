package org.shotledger.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** Words beside a point. */
final class LabelMark extends Mark {
    private final String words;
    private final double atX;
    private final double atY;
    private final boolean strong;

    LabelMark(String words, double atX, double atY, boolean strong) {
        this.words = words;
        this.atX = atX;
        this.atY = atY;
        this.strong = strong;
    }

    @Override
    void draw(Graphics2D g) {
        Font font = strong ? Letters.bold(12) : Letters.regular(12);
        double width = width(g, words, font);
        double x = x(atX);
        double y = y(atY);
        List<double[]> places = new ArrayList<>();
        for (double far : new double[] {8, 16, 28}) {
            places.add(new double[] {x + far, y + 4});
            places.add(new double[] {x - width / 2, y - far});
            places.add(new double[] {x - width - far, y + 4});
            places.add(new double[] {x - width / 2, y + far + 8});
            places.add(new double[] {x + far, y - far});
            places.add(new double[] {x - width - far, y - far});
            places.add(new double[] {x + far, y + far + 8});
        }
        write(g, words, font, strong ? Look.INK : Look.QUIET, places);
    }
}
