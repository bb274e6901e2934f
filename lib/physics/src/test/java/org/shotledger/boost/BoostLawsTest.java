package org.shotledger.boost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Laws of maps and shafts on an invented compressor. */
class BoostLawsTest {
    /** Parabolic lines of an invented wheel. */
    private static List<SpeedLine> lines() {
        List<SpeedLine> lines = new ArrayList<>();
        for (int k = 1; k <= 6; k++) {
            double u = k / 6.0;
            double[] flow = new double[6];
            double[] ratio = new double[6];
            double[] efficiency = new double[6];
            for (int i = 0; i < 6; i++) {
                double along = i / 5.0;
                flow[i] = u * (0.15 + 0.45 * along);
                ratio[i] = 1 + 2.4 * u * u * (1 - 0.55 * along * along);
                efficiency[i] = 0.76 - 0.25 * (along - 0.5) * (along - 0.5) - 0.1 * (u - 0.7) * (u - 0.7);
            }
            lines.add(SpeedLine.of(120_000 * u, flow, ratio, efficiency));
        }
        return lines;
    }

    private static final CompressorMap MAP = new CompressorMap("invented", MapReference.SI, lines(), 118_000);
    private static final Turbine TURBINE =
            new Turbine("invented", 9e-4, 0.7, 0.97, new FlowLoss("exhaust", 8e3, 0.4, 0.4));

    @Test
    void the_points_of_the_map_come_back() {
        for (SpeedLine line : MAP.lines().subList(1, 5)) {
            for (SpeedLine.Point p : line.points().subList(1, 5)) {
                MapPoint found = MAP.locate(p.correctedFlow(), p.pressureRatio());
                assertEquals(line.correctedRpm(), found.correctedRpm(), 1e-4 * line.correctedRpm());
                assertEquals(p.efficiency(), found.efficiency(), 2e-4);
                assertTrue(found.surgeMargin() > 0 && found.chokeMargin() > 0);
            }
        }
    }

    @Test
    void the_order_of_lines_does_not_matter() {
        List<SpeedLine> shuffled = new ArrayList<>(lines());
        Collections.shuffle(shuffled, new Random(5));
        CompressorMap other = new CompressorMap("shuffled", MapReference.SI, shuffled, 118_000);
        assertEquals(MAP.locate(0.3, 2.2), other.locate(0.3, 2.2));
    }

    @Test
    void more_pressure_at_the_same_flow_needs_more_speed_and_power() {
        double rpm = 0;
        double power = 0;
        for (double ratio = 1.6; ratio < 2.6; ratio += 0.05) {
            CompressorPoint p = Compressor.at(MAP, 0.3, 298, 1e5, ratio * 1e5);
            assertTrue(p.rpm() > rpm && p.power() > power, "at " + ratio);
            rpm = p.rpm();
            power = p.power();
        }
    }

    @Test
    void beyond_the_map_it_refuses_and_names_the_border() {
        assertEquals(MapEdge.SURGE, edge(0.05, 2.2));
        assertEquals(MapEdge.CHOKE, edge(0.7, 1.5));
        assertEquals(MapEdge.OVERSPEED, edge(0.3, 3.9));
        assertEquals(MapEdge.SLOWEST, edge(0.05, 1.01));
        var thrown = assertThrows(OutsideMapException.class, () -> MAP.locate(0.05, 2.2));
        assertTrue(
                thrown.getMessage().contains("beyond the surge line of the compressor map invented"),
                thrown.getMessage());
    }

    private static MapEdge edge(double flow, double ratio) {
        return assertThrows(OutsideMapException.class, () -> MAP.locate(flow, ratio))
                .edge();
    }

    @Test
    void crossing_lines_and_bad_points_are_refused() {
        List<SpeedLine> same = List.of(lines().get(0), lines().get(0));
        var crossing =
                assertThrows(IllegalArgumentException.class, () -> new CompressorMap("m", MapReference.SI, same, 1e5));
        assertTrue(crossing.getMessage().contains("cross or coincide"), crossing.getMessage());
        double[] three = {0.1, 0.1, 0.2};
        double[] ok = {2, 1.9, 1.8};
        double[] eta = {0.6, 0.7, 0.6};
        assertThrows(IllegalArgumentException.class, () -> SpeedLine.of(50_000, three, ok, eta));
        assertThrows(IllegalArgumentException.class, () -> SpeedLine.of(50_000, three, ok, new double[] {0.6}));
        assertThrows(IllegalArgumentException.class, () -> new SpeedLine.Point(0.1, 2, 1.2));
    }

    @Test
    void turbine_power_equals_compressor_power_on_any_shaft() {
        SplittableRandom r = new SplittableRandom(21);
        for (int i = 0; i < 300; i++) {
            ExhaustGas gas = new ExhaustGas(r.nextDouble(0.2, 0.7), r.nextDouble(900, 1250), 290, 1.3);
            double power = r.nextDouble(1e3, 6e4);
            ShaftBalance b = ShaftBalance.solve(TURBINE, gas, power, 1.1e5);
            assertEquals(power, ShaftBalance.shaftPower(TURBINE, gas, b.expansionRatio(), 1.1e5), 1e-7 * power);
            ExhaustGas through = new ExhaustGas(b.turbineFlow(), gas.temperature(), 290, 1.3);
            double ratio = ShaftBalance.expansionRatio(power, through, 0.7, 0.97);
            assertEquals(b.expansionRatio(), ratio, 1e-7 * ratio, "the closed form of the published balance");
            assertEquals(b.holdsBoost(), b.turbineFlow() <= gas.flow());
        }
    }

    @Test
    void a_cooler_never_cools_below_its_coolant() {
        ChargeCooler cooler = new ChargeCooler("c", 0.72, new FlowLoss("c", 12e3, 0.5, 2.5));
        assertEquals(300 + 0.28 * 120, cooler.outletTemperature(420, 300), 1e-9);
        assertEquals(12e3, cooler.loss().loss(0.5, 2.5), 1e-9);
        assertEquals(4 * 12e3, cooler.loss().loss(1.0, 2.5), 1e-6);
    }
}
