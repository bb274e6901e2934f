package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.shotledger.curve.Curve;

/** Sizes and figures of engines against worked examples; each is quoted from elsewhere, the printed page was not seen. */
class EngineBooksTest {
    private static Engine engine(int cylinders, double bore, double stroke, double rod, double ratio) {
        return new Engine("book", cylinders, bore, stroke, rod, ratio, Curve.constant("ve", 0.8), 7000);
    }

    /** Mathur and Sharma, Internal Combustion Engine (2010), example 1.1: 4 x 68 x 75 mm at 8 to 1, 1089.5 and 38.9 cm3. */
    @Test
    void displacement_and_clearance() {
        Engine e = engine(4, 0.068, 0.075, 0.13, 8);
        assertEquals(1089.5e-6, e.displacement(), 0.06e-6);
        assertEquals(38.9e-6, e.clearance(), 0.06e-6);
        assertEquals(1089.5e-6 / 4, e.cylinderDisplacement(), 0.06e-6);
        // half of it each turn: at 1200 rpm ten times a second
        assertEquals(1089.5e-6 * 10, e.displacementRate(1200), 1e-6);
        assertEquals(0.8 * 1089.5e-6 * 10, e.breathedVolume(1200), 1e-6);
    }

    /** The same, example 18.1: 4 x 110 x 130 mm, 36 kW at 2250 rpm: 3.885 bar; example 18.4: 147 N m at 1200 rpm, 105 x 125: 4.27 bar. */
    @Test
    void mean_effective_pressure_and_torque() {
        assertEquals(3.885e5, engine(4, 0.110, 0.130, 0.25, 8).meanEffectivePressure(36e3, 2250), 200);
        double power = 147 * 2 * Math.PI * 1200 / 60;
        assertEquals(147, Engine.torque(power, 1200), 1e-9);
        assertEquals(4.27e5, engine(4, 0.105, 0.125, 0.25, 8).meanEffectivePressure(power, 1200), 1e3);
        // Pulkrabek, example 2-2: 205 N m at 3600 rpm are 77.3 kW
        assertEquals(205, Engine.torque(77.3e3, 3600), 0.2);
    }

    /** Pulkrabek, example 2-1 (from memory): V6 of 3 l, as long as wide, 9.5 to 1, rod 166 mm: 86 mm, 10.32 m/s at 3600 rpm, 59 cm3. */
    @Test
    void a_crank_of_a_book() {
        Engine e = engine(6, 0.086, 0.086, 0.166, 9.5);
        assertEquals(3e-3, e.displacement(), 0.005e-3);
        assertEquals(10.32, e.meanPistonSpeed(3600), 0.01);
        assertEquals(59e-6, e.clearance(), 0.3e-6);
        Crank crank = new Crank(e);
        // right angle of the crank: rod and throw make a triangle, 166 + 43 - sqrt(166^2 - 43^2) = 48.67 mm
        assertEquals(48.67e-3, crank.travel(90), 0.01e-3);
        assertEquals(e.clearance(), crank.volume(0), 1e-12);
        assertEquals(e.clearance() + Math.PI / 4 * 0.086 * 0.086 * 48.67e-3, crank.volume(90), 1e-7);
    }

    /** Geometry of a cylinder: two discs, and a wall of volume over disc times circumference, 4 V / bore. */
    @Test
    void the_wall_that_the_gas_touches() {
        Engine e = engine(6, 0.086, 0.086, 0.166, 9.5);
        Crank crank = new Crank(e);
        for (double angle : new double[] {0, 40, 90, 180}) {
            double discs = 2 * Math.PI * 0.043 * 0.043;
            assertEquals(discs + 4 * crank.volume(angle) / 0.086, crank.area(angle), 1e-12, "at " + angle);
        }
    }

    /** Mathur and Sharma, example 18.1: 10.5 kg/h of 42 MJ/kg for 36 kW are 0.294; Heywood eq. 2.22 (from memory): 0.30 of 44, 272.7 g/kWh. */
    @Test
    void fuel_for_power() {
        assertEquals(0.294, Consumption.efficiency(10.5 / 3600 / 36e3, 42e6), 5e-4);
        assertEquals(272.7e-3 / 3.6e6, Consumption.specific(0.30, 44e6), 1e-10);
    }

    /** Rajput, Internal Combustion Engines, example 7.12: index 0.55, 110 x 140 mm, 2400 rpm, 340 K, coefficient 0.33: 44.9 mm. */
    @Test
    void an_inlet_valve_by_its_mach_index() {
        double speed = 2 * 0.140 * 2400 / 60;
        assertEquals(44.9e-3, InletMachIndex.valveDiameter(0.55, 0.110, speed, 0.33, 340), 0.05e-3);
        assertEquals(0.55, InletMachIndex.of(0.110, 44.9e-3, speed, 0.33, 340), 2e-3);
        // a choked mean flow through the whole piston: index 1 with a coefficient of 1 is the speed of sound, 340.3 m/s
        // at 288.15 K
        assertEquals(1, InletMachIndex.of(0.1, 0.1, 340.3, 1, 288.15), 1e-4);
    }

    /** Mathur and Sharma, example 1.4: 35 kW at the brake and 0.8 are 43.75 kW indicated and 8.75 kW of friction. */
    @Test
    void power_from_cylinder_to_flywheel() {
        Power power = new Power(43.75e3, 0, 8.75e3, 3000);
        assertEquals(35e3, power.brake(), 1e-9);
        assertEquals(0.8, power.mechanicalEfficiency(), 1e-12);
        assertEquals(35e3, power.torque() * 100 * Math.PI, 1e-8, "3000 rpm are 100 pi rad/s");
        assertEquals(33e3, new Power(43.75e3, 2e3, 8.75e3, 3000).brake(), 1e-9, "pumping is taken off as well");
        assertEquals(
                37e3, new Power(43.75e3, -2e3, 8.75e3, 3000).brake(), 1e-9, "or given by boost above back pressure");
    }
}
