package org.shotledger.boost;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Worked examples and tables of textbooks, each quoted from elsewhere: the printed page was not seen. */
class TurboBooksTest {
    /** Borgnakke and Sonntag, Fundamentals of Thermodynamics, example 9.12: 300 K, 100 to 150 kPa, 0.70; answer 352.7 K. */
    @Test
    void temperature_after_a_supercharger() {
        assertEquals(352.7, Compressor.outletTemperature(300, 1.5, 0.70, 1.4), 0.1);
    }

    /**
     * Cengel and Boles, Thermodynamics, example 7-13: from 100 to 900 kPa at 300 K the work is 263.2 kJ/kg isentropic. First law: that is
     * 1.0045 kJ/(kg K), from R = 0.287 and k = 1.4, times the rise.
     */
    @Test
    void work_of_an_isentropic_compression() {
        assertEquals(263.2, 1.0045 * (Compressor.outletTemperature(300, 9, 1, 1.4) - 300), 0.1);
    }

    /**
     * Worked case of a turbocharger in a thermal engineering text (title not known): air of 303 K from 0.97 to 2.1 bar at 0.75 leaves
     * with 129.8 degC, gas of 853 K from 1.9 to 1.06 bar at 0.85 and k = 1.33 with 482.3 degC.
     */
    @Test
    void both_ends_of_a_turbocharger() {
        assertEquals(129.8, Compressor.outletTemperature(303, 2.1 / 0.97, 0.75, 1.4) - 273, 0.05);
        assertEquals(482.3, Turbine.outletTemperature(853, 1.9 / 1.06, 0.85, 1.33) - 273, 0.05);
    }

    /** Moran and Shapiro, Fundamentals of Engineering Thermodynamics, example 9.14: 0.001 m2, 1 MPa, 360 K; 2.13 and 1.79 kg/s. */
    @Test
    void a_nozzle_choked_and_not() {
        assertEquals(2.13, Nozzle.flow(1e-3, 1e6, 360, 500e3, 287, 1.4), 0.005);
        assertEquals(1.79, Nozzle.flow(1e-3, 1e6, 360, 784e3, 287, 1.4), 0.01);
        assertEquals(0, Nozzle.flow(1e-3, 1e6, 360, 1e6, 287, 1.4), 1e-9, "no pressure difference, no flow");
    }

    /** NACA 1135, table for k = 1.4 at Mach 1 (from memory): p/p0 = 0.5283; the largest flow is 0.6847 A p0 / sqrt(R T0). */
    @Test
    void sonic_conditions_of_air() {
        assertEquals(0.5283, Nozzle.criticalRatio(1.4), 5e-5);
        assertEquals(0.6847, Nozzle.flow(2, 3e5, 900, 0, 290, 1.4) * Math.sqrt(290 * 900) / (2 * 3e5), 5e-5);
    }

    /** Handbook: air with R = 287 J/(kg K) and k = 1.4 has cp = 1005 J/(kg K); cp - cv = R and cp/cv = k (Mayer). */
    @Test
    void heat_capacity_of_an_ideal_gas() {
        ExhaustGas gas = new ExhaustGas(0.3, 1000, 287, 1.4);
        assertEquals(1005, gas.specificHeat(), 1);
        ExhaustGas hot = new ExhaustGas(0.3, 1000, 290, 1.3);
        assertEquals(290, hot.specificHeat() - hot.specificHeat() / 1.3, 1e-9);
    }

    /** 85 degF are 302.594 K (29.444 degC); 28.4 inHg are 96.173 kPa (1 inHg = 3386.39 Pa). */
    @Test
    void reference_state_of_maps_in_american_units() {
        assertEquals(302.594, MapReference.US.temperature(), 1e-3);
        assertEquals(96_173, MapReference.US.pressure(), 1);
    }
}
