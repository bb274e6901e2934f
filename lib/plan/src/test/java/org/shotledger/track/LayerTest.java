package org.shotledger.track;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointModel;
import org.shotledger.job.Job;

/** A figure between its nodes and where nodes are missing, with numbers set for each node; the points only carry them. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class LayerTest {
    private static final double[] RPM = {1000, 2000, 4000};
    private static final double[] PLENUM = {1, 2, 4, 5};
    private static final double NONE = Double.NaN;

    /** Twelve points that differ. */
    private static final List<OperatingPoint> POINTS = points();

    private static List<OperatingPoint> points() {
        Job job = Job.load(Path.of("../../data/whimbrel"));
        PointModel model = Evaluate.model(job.car(), job.setup(), job.stated());
        return IntStream.range(0, 12)
                .mapToObj(i -> model.at(5000 + 10 * i, 1.5e5, Mode.BOOST_ALONE))
                .toList();
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // an array of optionals, filled below
    private static Layer layer(double[]... values) {
        Map<OperatingPoint, Double> figures = new HashMap<>();
        Optional<OperatingPoint>[][] points = new Optional[3][4];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 4; j++) {
                points[i][j] = Optional.empty();
                if (!Double.isNaN(values[i][j])) {
                    OperatingPoint point = POINTS.get(4 * i + j);
                    figures.put(point, values[i][j]);
                    points[i][j] = Optional.of(point);
                }
            }
        }
        return Layer.of(RPM, PLENUM, points, figures::get);
    }

    private static Layer whole() {
        return layer(new double[] {10, 20, 60, 70}, new double[] {30, 50, 80, 90}, new double[] {100, 120, 130, 190});
    }

    /** Half way and a quarter of the way between four nodes; beyond the ends the nearest edge holds. */
    @ParameterizedTest
    @CsvSource({
        "1000, 1, 10",
        "2000, 4, 80",
        "4000, 5, 190",
        "1500, 1, 20",
        "2500, 1, 47.5",
        "1000, 3, 40",
        "1000, 4.5, 65",
        "1500, 3, 52.5", // between 10..30 -> 35 at 2 and 70 at 4
        "3000, 4.5, 122.5", // 105 at 4 and 140 at 5
        "500, 0, 10",
        "9000, 9, 190",
        "500, 9, 70",
        "9000, 0, 100"
    })
    void between_nodes_a_figure_is_straight_and_beyond_them_it_holds(double rpm, double plenum, double expected) {
        assertEquals(expected, whole().at(rpm, plenum), 1e-9);
    }

    @Test
    void a_node_of_the_pressures_is_straight_over_engine_speed() {
        assertEquals(35, whole().atNode(1500, 1), 1e-9);
        assertEquals(92.5, whole().atNode(2500, 2), 1e-9);
        assertEquals(190, whole().atNode(5000, 3), 1e-9);
    }

    /** Below: the line of 80 at 4 and 90 at 5 back to 60 at 2 and 50 at 1. Above and between the one before holds. */
    @Test
    void missing_nodes_take_the_line_below_and_hold_above_and_between() {
        Layer gaps = layer(
                new double[] {NONE, NONE, 80, 90}, new double[] {30, 50, NONE, NONE}, new double[] {100, NONE, 130, 190
                });
        assertEquals(50, gaps.at(1000, 1), 1e-9);
        assertEquals(60, gaps.at(1000, 2), 1e-9);
        assertEquals(50, gaps.at(2000, 4), 1e-9);
        assertEquals(50, gaps.at(2000, 5), 1e-9);
        assertEquals(100, gaps.at(4000, 2), 1e-9);
        assertEquals(130, gaps.at(4000, 4), 1e-9);
    }

    @Test
    void a_single_known_node_holds_at_its_engine_speed() {
        Layer few =
                layer(new double[] {NONE, 7, NONE, NONE}, new double[] {3, NONE, NONE, 5}, new double[] {1, 1, 1, 1});
        assertEquals(7, few.at(1000, 1), 1e-9);
        assertEquals(7, few.at(1000, 5), 1e-9);
        assertEquals(3, few.at(2000, 4), 1e-9);
    }

    /** A figure that is not a number at one engine speed would be none at all speeds up to the next, and a pass there has no torque. */
    @Test
    void an_engine_speed_without_any_answer_is_the_next_that_has_one() {
        double[] none = {NONE, NONE, NONE, NONE};
        Layer middle = layer(none.clone(), new double[] {3, 3, 4, 5}, none.clone());
        assertEquals(3, middle.at(1000, 1), 1e-9);
        assertEquals(4, middle.at(1500, 4), 1e-9);
        assertEquals(5, middle.at(3000, 5), 1e-9);
        Layer gap = layer(new double[] {10, 20, 60, 70}, none.clone(), new double[] {100, 120, 130, 190});
        assertEquals(100, gap.at(2000, 1), 1e-9);
        assertEquals(55, gap.at(1500, 1), 1e-9);
        Layer low = layer(new double[] {10, 20, 60, 70}, none.clone(), none.clone());
        assertEquals(60, low.at(4000, 4), 1e-9);
    }

    @Test
    void a_place_at_a_node_belongs_to_the_stretch_below_it() {
        assertEquals(0, Layer.segment(PLENUM, 0.5));
        assertEquals(0, Layer.segment(PLENUM, 2));
        assertEquals(1, Layer.segment(PLENUM, 2.01));
        assertEquals(2, Layer.segment(PLENUM, 9));
        assertEquals(0.5, Layer.share(PLENUM, 1, 3), 1e-12);
        assertEquals(0, Layer.share(PLENUM, 1, 1), 1e-12);
        assertEquals(1, Layer.share(PLENUM, 1, 4.5), 1e-12);
    }
}
