package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air against tables and worked examples. */
class AirBooksTest {
    /** International Standard Atmosphere by geometric altitude: K, bar, density over that of the sea (public table, as ISO 2533). */
    @ParameterizedTest
    @CsvSource({
        "500, 284.9, 0.9546, 0.9529",
        "2000, 275.2, 0.7950, 0.8217",
        "3000, 268.7, 0.7012, 0.7423",
        "5000, 255.7, 0.5405, 0.6012"
    })
    void standard_atmosphere(double altitude, double kelvin, double bar, double density) {
        assertEquals(kelvin, StandardAtmosphere.temperature(altitude), 0.06);
        assertEquals(bar * 1e5, StandardAtmosphere.pressure(altitude), 6);
        assertEquals(density * 1.225, StandardAtmosphere.density(altitude), 1.5e-4);
        assertEquals(altitude, StandardAtmosphere.altitude(bar * 1e5), 1);
    }

    /** ISO 2533: 10 000 m of geometric altitude are 9984 m of geopotential (from memory). */
    @Test
    void gravity_falls_with_altitude() {
        assertEquals(9984, StandardAtmosphere.geopotential(10_000), 0.6);
        assertEquals(0, StandardAtmosphere.geopotential(0));
    }

    /** Saturation of water, IAPWS 1995 and ASHRAE Fundamentals (from memory): Pa at 0.01, 25, 50 and 100 degC. */
    @ParameterizedTest
    @CsvSource({"0.01, 611.66", "25, 3169.9", "50, 12352", "100, 101420"})
    void vapour_pressure_of_water(double celsius, double pascal) {
        assertEquals(pascal, Steam.saturationPressure(celsius + 273.15), 3e-4 * pascal);
    }

    /**
     * 101 325 Pa, 20 degC, 50 %: 1.1994 kg/m3 (humid air of a general-purpose property library). Saturated at 20 degC: 14.76 g for each
     * kilogram of dry air (ASHRAE Fundamentals, from memory; real gas, half a per cent above the ideal).
     */
    @Test
    void moist_air() {
        assertEquals(1.1994, new MoistAir(101_325, 293.15, 0.5).density(), 1e-3);
        MoistAir saturated = new MoistAir(101_325, 293.15, 1);
        assertEquals(14.76e-3, saturated.humidityRatio(), 0.1e-3);
        // by moles: 2339 of 101 325 Pa are water of 18.015, the rest air of 28.96 g/mol
        assertEquals((0.02308 * 18.015 + 0.97692 * 28.965) * 1e-3, saturated.molarMass(), 2e-6);
        assertEquals(101_325 - 2339, saturated.dryPressure(), 1);
    }

    /** Mathur and Sharma (2010), example 27.5 by ISO 3046 (quoted elsewhere): 640 kW at 98 kPa, 303 K and 80 % are 683 kW at 100 kPa, 298 K, 30 %. */
    @Test
    void power_brought_to_standard_air() {
        double factor = AtmosphericFactor.SPARK_IGNITION.of(100e3 - 0.3 * 3200, 298, 98e3 - 0.8 * 4200, 303);
        assertEquals(683, 640 * factor, 0.5);
    }

    /** Dry air of 95 kPa and 308 K by hand. */
    @Test
    void every_standard_by_hand() {
        MoistAir air = new MoistAir(95e3, 308, 0);
        // 99/95 = 1.04211, sqrt(308/298) = 1.01664, together 1.05945
        assertEquals(1.18 * 1.05945 - 0.18, PowerCorrection.SAE_J1349_1990.factor(air), 2e-5);
        assertEquals((1.05945 - 0.15) / 0.85, PowerCorrection.SAE_J1349_2004.factor(air), 2e-5);
        // 1.2 ln 1.04211 + 0.6 ln 1.03356 = 0.04949 + 0.01981 = 0.06930
        assertEquals(Math.exp(0.06930), PowerCorrection.ISO_1585.factor(air), 3e-5);
        // 101.3/95 = 1.06632, sqrt(308/293) = 1.02528
        assertEquals(1.06632 * 1.02528, PowerCorrection.DIN_70020.factor(air), 2e-5);
        // 101.321/95 = 1.06654, sqrt(308/288.706) = 1.03288
        assertEquals(1.06654 * 1.03288, PowerCorrection.STP.factor(air), 2e-5);
    }

    @Test
    void at_its_own_reference_each_standard_corrects_nothing() {
        assertEquals(1, PowerCorrection.SAE_J1349_1990.factor(new MoistAir(99e3, 298, 0)), 1e-12);
        assertEquals(1, PowerCorrection.SAE_J1349_2004.factor(new MoistAir(99e3, 298, 0)), 1e-12);
        assertEquals(1, PowerCorrection.ISO_1585.factor(new MoistAir(99e3, 298, 0)), 1e-12);
        assertEquals(1, PowerCorrection.DIN_70020.factor(new MoistAir(101.3e3, 293, 0.5)), 1e-12);
        assertEquals(1, PowerCorrection.STP.factor(new MoistAir(101_321, 288.706, 0)), 1e-5);
    }

    /** By ISO 1585 at 298 K, (99/p)^1.2, 0.93 to 1.07 is 105.2 to 93.6 kPa; DIN allows a tenth, the old standard anything. */
    @Test
    void a_standard_holds_within_its_limits_only() {
        assertTrue(PowerCorrection.ISO_1585.holds(new MoistAir(93.7e3, 298, 0)));
        assertFalse(PowerCorrection.ISO_1585.holds(new MoistAir(93.5e3, 298, 0)));
        assertTrue(PowerCorrection.ISO_1585.holds(new MoistAir(105.1e3, 298, 0)));
        assertFalse(PowerCorrection.ISO_1585.holds(new MoistAir(105.3e3, 298, 0)));
        assertTrue(PowerCorrection.DIN_70020.holds(new MoistAir(92.2e3, 293, 0)));
        assertFalse(PowerCorrection.DIN_70020.holds(new MoistAir(92.0e3, 293, 0)));
        assertTrue(PowerCorrection.STP.holds(new MoistAir(60e3, 330, 0)));
        assertEquals("ISO 1585", PowerCorrection.ISO_1585.words());
    }
}
