package org.shotledger.chart;

import java.awt.Graphics2D;
import java.util.List;
import org.knowm.xchart.XYChart;

/** The first mark of a chart: draws nothing, but tells the others where the curves run once the axes are laid out. */
final class Survey extends Mark {
    private final XYChart surveyed;
    private final List<Mark> others;

    Survey(XYChart chart, List<Mark> others) {
        this.surveyed = chart;
        this.others = others;
    }

    @Override
    void draw(Graphics2D g) {
        Space space = new Space();
        enter(surveyed, space);
        others.forEach(mark -> mark.occupy(space));
        others.forEach(mark -> mark.share(space));
    }
}
