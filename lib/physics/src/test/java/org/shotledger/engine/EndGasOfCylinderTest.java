package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.gas.GasPolynomial;

/** What the stepped cycle says beside its work, each worked out in another way from its pressures. */
class EndGasOfCylinderTest {
    private static final Engine ENGINE = CylinderTest.ENGINE;
    private final CycleInput input = CylinderTest.input(ENGINE, 5000, 200e3, 0.02, 0.85);
    private final Cylinder cylinder = Cylinder.of(ENGINE);
    private final Cycle cycle = cylinder.run(input);

    /**
     * Livengood and Wu over the pressures of the cycle: the end gas has the temperature of the charge until it burns, m R T = p V, and is
     * compressed without heat after that, dT/T = R/cp dp/p.
     */
    @Test
    void the_knock_integral_is_that_of_gas_compressed_by_the_pressure() {
        assertEquals(1, cycle.knockIntegral() / integral(95, 1), 0.02);
        Cycle warm = cylinder.run(input, 100, 1.05 * input.temperature());
        assertEquals(1, warm.knockIntegral() / integral(100, 1.05), 0.02);
        assertEquals(cycle.work(), warm.work(), "the work is that of the whole charge");
    }

    private double integral(double octane, double hotter) {
        CycleTrace trace = cylinder.trace(input);
        double[] angle = trace.angle();
        double[] p = trace.pressure();
        double[] v = trace.volume();
        GasPolynomial gas = input.unburned();
        double r = gas.gasConstant();
        int first = 0;
        while (angle[first] < -60) {
            first++;
        }
        int last = first;
        while (input.burning().burned(angle[last + 1]) < 0.99) {
            last++;
        }
        int n = last - first + 1;
        double[] time = new double[n];
        double[] pressure = new double[n];
        double[] temperature = new double[n];
        double own = 0;
        for (int i = 0; i < n; i++) {
            int at = first + i;
            time[i] = angle[at] / (6 * input.rpm());
            pressure[i] = p[at];
            boolean burning = input.burning().burned(angle[at]) > 0;
            own = burning
                    ? own * Math.exp(r / (gas.heatCapacity(own) + r) * Math.log(p[at] / p[at - 1]))
                    : p[at] * v[at] / (input.mass() * r);
            temperature[i] = own * hotter;
        }
        return Knock.integral(octane, time, pressure, temperature);
    }

    /**
     * First law of a cylinder that empties against a constant pressure: u + p_e v before is h after, so the gas leaves with
     * cv T4 + (p_e/p4) R T4 = cp T_e (any text of thermodynamics).
     */
    @Test
    void gas_leaves_with_the_energy_that_blow_down_leaves_it() {
        GasPolynomial burned = input.burned();
        double t4 = cycle.endTemperature();
        double r = burned.gasConstant();
        double before = burned.energy(t4) + input.exhaustPressure() / cycle.endPressure() * r * t4;
        double after = burned.energy(cycle.exhaustTemperature()) + r * cycle.exhaustTemperature();
        double cp = burned.heatCapacity(t4) + r;
        assertTrue(t4 - cycle.exhaustTemperature() > 50, "blow-down cools");
        assertEquals(0, (before - after) / cp, 0.1 * (t4 - cycle.exhaustTemperature()), "kelvin");
    }

    /** Nothing burns, fast and with little wall loss: an isentropic compression to the clearance, by the entropy of the gas. */
    @Test
    void a_motored_cylinder_compresses_isentropically() {
        CycleInput motored =
                new CycleInput(20_000, 5e-4, 320, input.unburned(), input.burned(), 0, Wiebe.of(60, 50), 350, 1e5, 95);
        Crank crank = new Crank(ENGINE);
        double ratio = crank.volume(0) / crank.volume(-140);
        double hot = input.unburned().isentropic(320, ratio);
        double pressure = 5e-4 * input.unburned().gasConstant() * hot / crank.volume(0);
        Cycle motion = new Cylinder(ENGINE, -140, 140, 1, new Woschni(0.3)).run(motored);
        assertEquals(1, motion.peakPressure() / pressure, 0.01);
        assertEquals(1, motion.peakTemperature() / hot, 0.01);
        assertEquals(0, motion.peakAngle(), 1.01);
    }

    /**
     * Woschni, SAE 670931: h = 3.26 B^-0.2 p^0.8 T^-0.55 w^0.8 with kPa, and w = 2.28 S_p + 3.24e-3 V_d T_r/(p_r V_r) (p - p_motored) while
     * it burns, summed over the pressures of the cycle; the motored pressure falls with the volume to the power 1.32.
     */
    @Test
    void heat_goes_to_the_wall_by_the_published_formula() {
        CycleTrace trace = cylinder.trace(input);
        double[] angle = trace.angle();
        double[] p = trace.pressure();
        double[] v = trace.volume();
        Crank crank = new Crank(ENGINE);
        double dt = (angle[1] - angle[0]) / (6 * input.rpm());
        double piston = 2 * 0.086 * input.rpm() / 60;
        double displacement = Math.PI / 4 * 0.0845 * 0.0845 * 0.086;
        double unburned = input.unburned().gasConstant();
        double loss = 0;
        for (int i = 0; i < p.length; i++) {
            double x = input.burning().burned(angle[i]);
            double t = p[i] * v[i] / (input.mass() * unburned);
            for (int k = 0; k < 5; k++) {
                double r = unburned + x * (input.burned().gasConstant(t) - unburned);
                t = p[i] * v[i] / (input.mass() * r);
            }
            double motored = p[0] * Math.pow(v[0] / v[i], 1.32);
            double burning = x > 0
                    ? 3.24e-3 * displacement * input.temperature() / (p[0] * v[0]) * Math.max(0, p[i] - motored)
                    : 0;
            double h = 3.26
                    * Math.pow(0.0845, -0.2)
                    * Math.pow(p[i] / 1000, 0.8)
                    * Math.pow(t, -0.55)
                    * Math.pow(2.28 * piston + burning, 0.8);
            loss += h * crank.area(angle[i]) * (t - input.wallTemperature()) * dt;
        }
        assertEquals(1, cycle.heatLoss() / loss, 0.01);
    }

    @Test
    void mean_pressure_is_work_over_displacement() {
        assertEquals(cycle.work(), cycle.imep() * Math.PI / 4 * 0.0845 * 0.0845 * 0.086, 1e-9);
        // ideal gas when the valve closes
        double volume = new Crank(ENGINE).volume(-140);
        double p = input.mass() * input.unburned().gasConstant() * input.temperature() / volume;
        assertEquals(p, cylinder.closingPressure(input), 1e-6 * p);
        assertEquals(p, cylinder.trace(input).pressure()[0], 1e-6 * p);
    }

    @Test
    void a_fit_beyond_its_range_stands_at_the_end() {
        Cylinder most = new Cylinder(ENGINE, -140, 140, 1, new Woschni(3));
        Cylinder least = new Cylinder(ENGINE, -140, 140, 1, new Woschni(0.3));
        assertEquals(least, Cylinder.fitted(ENGINE, input, 1.5 * cycle.work()));
        assertEquals(most, Cylinder.fitted(ENGINE, input, 0.5 * cycle.work()));
        assertNotEquals(most, least);
        assertEquals(
                most.hashCode(),
                Cylinder.fitted(ENGINE, input, 0.5 * cycle.work()).hashCode());
        assertNotEquals(cylinder, new Cylinder(ENGINE, -130, 140, 1, new Woschni(1)));
        assertNotEquals(cylinder, (Object) "cylinder");
    }
}
