package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Cycles of air against the closed forms and a worked example of thermodynamics texts. */
class AirCycleBooksTest {
    private static final double R = 287;
    private static final double GAMMA = 1.4;

    /** Otto: 1 - r^(1 - k), whatever the heat; at 8 to 1 it is 0.5647 (any text). */
    @Test
    void constant_volume() {
        AirCycle cycle = AirCycle.limitedPressure(8, 300, 1e5, 1e6, Double.POSITIVE_INFINITY, R, GAMMA);
        assertEquals(0.5647, cycle.efficiency(), 5e-5);
        assertEquals(0.5647e6, cycle.work(), 50);
        // v1 = R T/p = 0.861 m3/kg, of which 7/8 are swept
        assertEquals(cycle.work() / (0.861 * 7 / 8), cycle.meanEffectivePressure(), 1);
        // T2 = 300 x 8^0.4 = 689.2 K; 1 MJ at cv 717.5 adds 1393.7 K; p3 = p1 x 8 x T3/T1
        assertEquals(2082.9, cycle.peakTemperature(), 0.2);
        assertEquals(8e5 * 2082.9 / 300, cycle.peakPressure(), 600);
    }

    /** Diesel, all heat at the pressure of compression: 1 - r^(1 - k) (c^k - 1)/(k (c - 1)) with the cut-off ratio c. */
    @Test
    void constant_pressure() {
        double t2 = 300 * Math.pow(16, 0.4);
        double p2 = 1e5 * Math.pow(16, 1.4);
        double heat = 1004.5 * t2; // doubles the temperature: cut-off 2
        AirCycle cycle = AirCycle.limitedPressure(16, 300, 1e5, heat, p2, R, GAMMA);
        double expected = 1 - Math.pow(16, -0.4) * (Math.pow(2, 1.4) - 1) / (1.4 * (2 - 1));
        assertEquals(expected, cycle.efficiency(), 1e-6);
        assertEquals(p2, cycle.peakPressure(), 1e-3);
        assertEquals(2 * t2, cycle.peakTemperature(), 1e-3);
        var e = assertThrows(
                IllegalArgumentException.class,
                () -> AirCycle.limitedPressure(16, 300, 1e5, heat, 0.999 * p2, R, GAMMA));
        assertNotNull(e.getMessage());
    }

    /** Dual, pressure ratio a and cut-off c: 1 - r^(1 - k) (a c^k - 1)/((a - 1) + k a (c - 1)) (any text). */
    @Test
    void limited_pressure() {
        double t2 = 300 * Math.pow(10, 0.4);
        double p2 = 1e5 * Math.pow(10, 1.4);
        double a = 1.5;
        double c = 1.2;
        double heat = 717.5 * t2 * (a - 1) + 1004.5 * a * t2 * (c - 1);
        AirCycle cycle = AirCycle.limitedPressure(10, 300, 1e5, heat, a * p2, R, GAMMA);
        double expected = 1 - Math.pow(10, -0.4) * (a * Math.pow(c, 1.4) - 1) / (a - 1 + 1.4 * a * (c - 1));
        assertEquals(expected, cycle.efficiency(), 1e-6);
        assertEquals(a * c * t2, cycle.peakTemperature(), 1e-3);
    }

    /**
     * Cengel and Boles, Thermodynamics, example 9-2 (from memory): 8 to 1 from 290 K and 100 kPa with 800 kJ/kg and real heat
     * capacities: 1575 K, 4.345 MPa, 418.2 kJ/kg, 0.523, 574 kPa.
     */
    @Test
    void air_whose_heat_capacity_grows() {
        AirCycle cycle = AirCycle.constantVolume(8, 290, 1e5, 800e3);
        assertEquals(1575, cycle.peakTemperature(), 3);
        assertEquals(4.345e6, cycle.peakPressure(), 0.01e6);
        assertEquals(418.2e3, cycle.work(), 1.5e3);
        assertEquals(0.523, cycle.efficiency(), 0.002);
        assertEquals(574e3, cycle.meanEffectivePressure(), 2.5e3);
    }
}
