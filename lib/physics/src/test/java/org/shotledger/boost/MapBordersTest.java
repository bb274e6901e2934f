package org.shotledger.boost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What belongs to a map and what lies beyond it, on three lines of an invented wheel. */
class MapBordersTest {
    private static final SpeedLine SLOW = line(60_000, 1.6, 0.06, 0.30);
    private static final SpeedLine MIDDLE = line(80_000, 2.1, 0.10, 0.40);
    private static final SpeedLine FAST = line(100_000, 2.8, 0.15, 0.50);
    private static final CompressorMap MAP = map(118_000, SLOW, MIDDLE, FAST);

    /** Falls from a ratio at surge by a quarter of its rise to the middle of the flow and by three quarters to choke. */
    private static SpeedLine line(double rpm, double ratio, double surge, double choke) {
        double rise = ratio - 1;
        return SpeedLine.of(
                rpm,
                new double[] {surge, (surge + choke) / 2, choke},
                new double[] {ratio, ratio - 0.25 * rise, ratio - 0.75 * rise},
                new double[] {0.68, 0.76, 0.62});
    }

    private static CompressorMap map(double maximumRpm, SpeedLine... lines) {
        return new CompressorMap("invented", MapReference.SI, List.of(lines), maximumRpm);
    }

    private static OutsideMapException refused(double flow, double ratio) {
        return assertThrows(OutsideMapException.class, () -> MAP.locate(flow, ratio));
    }

    @Test
    void the_corners_of_the_map_belong_to_it() {
        for (SpeedLine line : List.of(SLOW, FAST)) {
            for (SpeedLine.Point corner : List.of(line.surge(), line.choke())) {
                MapPoint found = MAP.locate(corner.correctedFlow(), corner.pressureRatio());
                assertEquals(line.correctedRpm(), found.correctedRpm(), 1e-3);
                assertEquals(corner.efficiency(), found.efficiency(), 1e-9);
            }
        }
    }

    @Test
    void just_beyond_each_border_it_refuses_by_that_border() {
        assertEquals(MapEdge.SURGE, refused(0.99 * 0.10, 2.1).edge());
        assertEquals(MapEdge.OVERSPEED, refused(0.15, 2.81).edge());
        assertEquals(MapEdge.SLOWEST, refused(0.18, 1.44).edge());
        assertEquals(MapEdge.CHOKE, refused(0.501, 1.45).edge());
        assertEquals(MapEdge.OVERSPEED, refused(0.50, 1.46).edge(), "at its last flow the fastest line is not choked");
        assertEquals(
                "The point of 0.15 kg/s corrected flow at pressure ratio 2.81 lies beyond the fastest line of the compressor"
                        + " map invented; its highest pressure ratio is 2.8. Use another compressor or less boost.",
                refused(0.15, 2.81).getMessage());
    }

    @Test
    void the_surge_line_goes_through_the_first_points() {
        for (SpeedLine line : List.of(SLOW, MIDDLE, FAST)) {
            assertEquals(
                    line.surge().correctedFlow(), MAP.surgeFlow(line.surge().pressureRatio()), 1e-8);
            assertEquals(line.choke().correctedFlow(), MAP.chokeFlow(line.correctedRpm()), 1e-12);
        }
        assertEquals(0.06, MAP.surgeFlow(1.2), "below the slowest line its flow stands");
        assertThrows(OutsideMapException.class, () -> MAP.surgeFlow(2.81));
    }

    /** Half way along the middle line: 0.25 kg/s, surge of that ratio by the surge line, choke at 0.40 kg/s. */
    @Test
    void margins_are_shares_of_the_flow_there_is() {
        MapPoint point = MAP.locate(0.25, 2.1 - 0.25 * 1.1);
        assertEquals(0.5, point.along(), 1e-6);
        assertEquals(0.15 / 0.25, point.chokeMargin(), 1e-6);
        double lost = point.surgeMargin() * 0.25;
        assertEquals(MAP.surgeFlow(point.pressureRatio()), 0.25 - lost, 1e-12);
        assertTrue(lost > 0.15, "the surge line at the lower ratio lies left of the line's own first point");
    }

    /** At the reference temperature the corrected speed is the wheel's own: 118 000 leaves 47.5 % over 80 000 rpm. */
    @Test
    void speed_left_to_the_limit() {
        CompressorPoint point = Compressor.at(MAP, 0.25, 298, 100e3, (2.1 - 0.25 * 1.1) * 100e3);
        assertEquals(80_000, point.rpm(), 1);
        assertEquals(0.475, point.speedMargin(), 1e-4);
        assertEquals(118_000, MAP.maximumRpm());
    }

    /** Similarity: air four times as hot on the absolute scale would be twice as fast; 10 % hotter gives the root of 1.1. */
    @Test
    void hot_inlet_air_turns_the_wheel_faster() {
        double ratio = 2.1 - 0.25 * 1.1;
        double flow = 0.25 / Math.sqrt(1.1);
        CompressorPoint hot = Compressor.at(MAP, flow, 298 * 1.1, 100e3, ratio * 100e3);
        assertEquals(80_000 * Math.sqrt(1.1), hot.rpm(), 1);
    }

    @Test
    void lines_that_touch_are_refused() {
        SpeedLine sameSpeed = line(60_000, 2.1, 0.10, 0.40);
        SpeedLine sameRatio = line(80_000, 1.6, 0.10, 0.40);
        SpeedLine sameChoke = line(80_000, 2.1, 0.10, 0.30);
        for (SpeedLine other : List.of(sameSpeed, sameRatio, sameChoke)) {
            var e = assertThrows(IllegalArgumentException.class, () -> map(118_000, SLOW, other));
            assertTrue(e.getMessage().contains("cross or coincide"), e.getMessage());
        }
        assertThrows(IllegalArgumentException.class, () -> map(118_000, SLOW));
        var twoPoints = assertThrows(
                IllegalArgumentException.class,
                () -> new SpeedLine(8e4, SLOW.points().subList(0, 2)));
        assertEquals("The speed line at 80000.0 rpm has 2 points; give at least three.", twoPoints.getMessage());
    }

    /** Cars are compared by what they are made of. */
    @Test
    void maps_are_equal_when_nothing_differs() {
        assertEquals(MAP, map(118_000, FAST, MIDDLE, SLOW));
        assertEquals(MAP.hashCode(), map(118_000, FAST, MIDDLE, SLOW).hashCode());
        assertNotEquals(0, MAP.hashCode());
        assertNotEquals(MAP, map(117_000, SLOW, MIDDLE, FAST));
        assertNotEquals(MAP, map(118_000, SLOW, FAST));
        List<SpeedLine> lines = List.of(SLOW, MIDDLE, FAST);
        assertNotEquals(MAP, new CompressorMap("other", MapReference.SI, lines, 118_000));
        assertNotEquals(MAP, new CompressorMap("invented", MapReference.US, lines, 118_000));
        assertEquals("compressor map invented, 3 speed lines", MAP.toString());
    }
}
