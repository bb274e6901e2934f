package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shotledger.curve.Curve;
import org.shotledger.flow.Edge;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.FuelCircuit.Jets;
import org.shotledger.nitrous.FuelCircuit.Pressures;
import org.shotledger.supply.Pump;
import org.shotledger.supply.PumpGroup;
import org.shotledger.supply.Regulator;

/** Solenoid and jets as holes in series, each figure from Bernoulli by hand. */
class FuelCircuitTest {
    private static final double AMBIENT = 1e5;
    private static final double DENSITY = 750;
    private static final double FREE = Double.POSITIVE_INFINITY;
    /** Holds 3 bar over the plenum. */
    private static final Regulator REGULATOR = new Regulator("regulator", 3e5, 1);

    private static final Pressures AT = new Pressures(AMBIENT, 2e5, 2e5);
    private static final Solenoid SOLENOID = new Solenoid(4e-3, 0.8, 0.01, 0.01);

    /** Gives less in a straight line over pressure, nothing at 10 bar. */
    private static FuelCell cell(double unloaded) {
        double[] rise = {0, 10e5};
        Curve flow = Curve.of("flow", rise, new double[] {unloaded, 0});
        Pump.Line line = new Pump.Line(12, flow, Curve.of("current", rise, new double[] {5, 12}));
        Pump pump = new Pump("pump", List.of(line));
        return new FuelCell(new PumpGroup("pumps", List.of(pump), PumpGroup.Arrangement.PARALLEL, 0), 6e-3);
    }

    private static FuelCircuit circuit(double unloaded) {
        return new FuelCircuit(Optional.of(cell(unloaded)), SOLENOID, FuelJet.stated(0.8));
    }

    /**
     * Four jets of 2 mm have the area of the solenoid's 4 mm, so each takes half of the drop of 3 bar: 0.8 x pi/4 x 16e-6 m2 times
     * sqrt(2 x 750 x 1.5e5) = 15 000 kg/(m2 s).
     */
    @Test
    void two_equal_holes_in_series_share_the_drop() {
        FuelFlow flow = circuit(400e-6).flow(DENSITY, new Jets(4, 2e-3, FREE), AT, REGULATOR, 12);
        assertEquals(0.8 * Math.PI / 4 * 16e-6 * 15_000, flow.massFlow(), 1e-10);
        assertEquals(5e5, flow.railPressure());
        assertEquals(3.5e5, flow.jetPressure(), 1e-6);
        // the pump against 4 bar over ambient gives 0.6 of 400 ml/s
        assertEquals(0.240e-3 * DENSITY, flow.pumpCapacity(), 1e-12);
        assertFalse(flow.pumpLimited());
    }

    /** As the pump gives q0 (1 - p/10 bar) and the holes take C sqrt(p + 1 bar - 2 bar), the rail solves a quadratic in the root. */
    @Test
    void a_weak_pump_lets_the_rail_sink_until_both_pass_the_same() {
        double q0 = 150e-6;
        FuelFlow flow = circuit(q0).flow(DENSITY, new Jets(4, 2e-3, FREE), AT, REGULATOR, 12);
        double c = 0.8 * Math.PI / 4 * 16e-6 / Math.sqrt(2) * Math.sqrt(2 * DENSITY);
        // with x^2 = rail - 2 bar: c x = rho q0 (1 - (x^2 + 1 bar)/10 bar)
        double a = DENSITY * q0 / 10e5;
        double x = (-c + Math.sqrt(c * c + 4 * a * 0.9 * DENSITY * q0)) / (2 * a);
        assertTrue(flow.pumpLimited());
        assertEquals(2e5 + x * x, flow.railPressure(), 1e-2);
        assertEquals(c * x, flow.massFlow(), 1e-9);
        assertEquals(2e5 + x * x / 2, flow.jetPressure(), 1e-2, "half of the drop");
        assertEquals(0.6 * q0 * DENSITY, flow.pumpCapacity(), 1e-12, "at the pressure that was wanted");
    }

    /** Nothing flows while boost holds the rail's pressure back. */
    @Test
    void a_rail_no_higher_than_the_nozzle_passes_nothing() {
        Regulator plain = new Regulator("plain", 1e5, 0);
        Jets jets = new Jets(4, 2e-3, FREE);
        assertEquals(0, circuit(400e-6).flow(DENSITY, jets, AT, plain, 12).massFlow());
        Pressures boosted = new Pressures(AMBIENT, 2.5e5, 2.5e5);
        assertEquals(0, circuit(400e-6).flow(DENSITY, jets, boosted, plain, 12).massFlow());
    }

    /**
     * Lichtarowicz, Duggins and Markland (1965) for a hole 3 bores long at 0.5 x sqrt(2 x 750 x 3000) / 0.8 = Re 1326, by hand:
     * 1/0.8015 + 20/1326 x 7.75 - 0.015/(1 + 7.5 x 0.4920) = 1.2477 + 0.1169 - 0.0032 = 1.3614, so the coefficient is 0.7346.
     */
    @Test
    void a_slow_flow_through_a_long_jet_takes_the_coefficient_of_its_reynolds_number() {
        FuelCircuit slow = new FuelCircuit(
                Optional.of(cell(400e-6)), new Solenoid(10e-3, 0.8, 0.01, 0.01), FuelJet.shaped(Edge.SQUARE, 3));
        Regulator low = new Regulator("low", 0.5e5, 0);
        Pressures at = new Pressures(AMBIENT, 1.47e5, 1.47e5);
        double expected = 0.7346 * Math.PI / 4 * 0.25e-6 * Math.sqrt(2 * DENSITY * 3000);
        double flow = slow.flow(DENSITY, new Jets(1, 0.5e-3, FREE), at, low, 12).massFlow();
        assertEquals(expected, flow, 1e-4 * expected);
        assertEquals(0.5e-3, slow.boreFor(flow, DENSITY, new Jets(1, 0, FREE), at, low), 1e-4 * 0.5e-3);
    }

    @Test
    void a_jet_is_found_for_any_flow_below_what_the_solenoid_passes() {
        FuelCircuit circuit = circuit(400e-6);
        Jets open = new Jets(4, 0, FREE);
        // four holes of 2 mm take half of the drop, see above
        double half = 0.8 * Math.PI / 4 * 16e-6 * 15_000;
        assertEquals(2e-3, circuit.boreFor(half, DENSITY, open, AT, REGULATOR), 1e-9);
        // the solenoid alone: root of 2 more
        double most = half * Math.sqrt(2);
        assertTrue(circuit.boreFor(0.999 * most, DENSITY, open, AT, REGULATOR) > 4e-3);
        var e = assertThrows(
                IllegalArgumentException.class, () -> circuit.boreFor(1.001 * most, DENSITY, open, AT, REGULATOR));
        assertTrue(e.getMessage().contains("but its solenoid alone passes 0.213"), e.getMessage());
        Regulator none = new Regulator("none", 1e5, 0);
        assertThrows(IllegalArgumentException.class, () -> circuit.boreFor(1e-3, DENSITY, open, AT, none));
    }

    /** Jets of twice the area behind an equal solenoid: 1/sqrt(1 + 1/4) of it instead of 1/sqrt(2). */
    @Test
    void a_factor_on_the_jets_reaches_the_flow_through_the_solenoid() {
        var flow = circuit(400e-6).flowOfFactor(DENSITY, new Jets(4, 2e-3, FREE), 3e5);
        double solenoid = 0.8 * Math.PI / 4 * 16e-6 * 15_000 * Math.sqrt(2);
        assertEquals(solenoid / Math.sqrt(2), flow.applyAsDouble(1), 1e-10);
        assertEquals(solenoid / Math.sqrt(1.25), flow.applyAsDouble(2), 1e-10);
        assertEquals(solenoid / Math.sqrt(5), flow.applyAsDouble(0.5), 1e-10);
    }

    @Test
    void parts_are_exchanged_and_the_rest_stays() {
        FuelCircuit own = circuit(400e-6);
        FuelCircuit main = new FuelCircuit(Optional.empty(), SOLENOID, FuelJet.stated(0.8));
        assertFalse(own.onMainRail());
        assertTrue(main.onMainRail());
        Jets jets = new Jets(4, 2e-3, FREE);
        assertEquals(
                Double.POSITIVE_INFINITY,
                main.flow(DENSITY, jets, AT, REGULATOR, 12).pumpCapacity());
        Solenoid wide = new Solenoid(40e-3, 0.8, 0.01, 0.01);
        // without the solenoid's share of the drop the jets pass root of 2 as much
        double before = main.flow(DENSITY, jets, AT, REGULATOR, 12).massFlow();
        double after =
                main.withSolenoid(wide).flow(DENSITY, jets, AT, REGULATOR, 12).massFlow();
        assertEquals(Math.sqrt(2), after / before, 1e-3);
        assertEquals(
                own.cell(), own.withSolenoid(wide).withJet(FuelJet.stated(0.6)).cell());
        assertEquals(FuelJet.stated(0.6), own.withJet(FuelJet.stated(0.6)).jet());
        FuelFlow quarter = new FuelFlow(0.04, 5e5, 4e5, 0.1, true).times(0.25);
        assertEquals(new FuelFlow(0.01, 5e5, 4e5, 0.1, true), quarter);
    }
}
