package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shotledger.flow.Edge;
import org.shotledger.flow.FlowBand;
import org.shotledger.flow.FlowFactor;
import org.shotledger.flow.FlowTest;
import org.shotledger.flow.NitrousJet;
import org.shotledger.flow.OrificeLaw;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.nitrous.FuelCircuit.Pressures;
import org.shotledger.supply.Regulator;

/** Both sides of a system together, its parts exchanged and its tests remembered. */
class WetKitTest {
    /** Pressed well above its boiling pressure, so that the lines let nothing flash before the jets. */
    private static final FluidState LIQUID = NitrousOxide.atTemperaturePressure(283.15, 60e5);

    private static final Pressures AT = new Pressures(1e5, 1e5, 1e5);
    private static final Regulator REGULATOR = new Regulator("regulator", 3e5, 1);
    private static final WetKit KIT = InventedKit.kit(4);
    private static final FlowBand CLASS_BAND = new FlowBand(0.8, 1, 1.25);

    private static FlowTested tested(JetSide side, double bore, double factor) {
        FlowFactor before = FlowFactor.untested(side == JetSide.NITROUS ? CLASS_BAND : new FlowBand(0.95, 1, 1.05));
        FlowFactor after = new FlowFactor(Math.log(factor), 0.02, 1, 0);
        FlowTest test = new FlowTest(1, 0.01, 10, 0.1);
        return new FlowTested("t", side, test, bore, 4, 50e5, 0.1, 0, before, after);
    }

    /** With wide lines the jets share nothing, so flow is proportional to their number. */
    @Test
    void four_nozzles_pass_four_times_one() {
        JetPair jets = new JetPair(0.6e-3, 0.6e-3);
        double four = KIT.nitrousPath(jets).massFlow(LIQUID, 1e5);
        double one = KIT.withNozzles(1).nitrousPath(jets).massFlow(LIQUID, 1e5);
        assertEquals(4, four / one, 0.05);
        assertEquals(four, KIT.nitrousFlowOfFactor(0.6e-3, LIQUID, 1e5).applyAsDouble(1), 1e-6 * four);
        assertEquals(0.9, KIT.nitrousFlowOfFactor(0.6e-3, LIQUID, 1e5).applyAsDouble(0.9) / four, 0.01);
        double fuel = KIT.fuelFlow(750, jets, AT, REGULATOR, 12).massFlow();
        double oneFuel =
                KIT.withNozzles(1).fuelFlow(750, jets, AT, REGULATOR, 12).massFlow();
        assertEquals(4, fuel / oneFuel, 1e-3);
        // Bernoulli: 0.8 x pi/4 x 0.36e-6 m2 x sqrt(2 x 750 x 3e5)
        assertEquals(0.8 * Math.PI / 4 * 0.36e-6 * 21_213.2, oneFuel, 1e-4 * oneFuel);
        assertEquals(0.6e-3, KIT.fuelBoreFor(fuel, 750, AT, REGULATOR), 1e-9);
    }

    /** Two equal holes in series pass 1/sqrt(2) of one (any text of hydraulics); flashing liquid also passes less. */
    @Test
    void passages_of_a_nozzle_stand_in_series_with_its_jets() {
        JetPair jets = new JetPair(0.6e-3, 0.6e-3);
        WetKit narrow = new WetKit(
                KIT.position(),
                4,
                KIT.nitrous(),
                KIT.fuel(),
                KIT.ladder(),
                Optional.of(new NozzlePassages(0.5e-3, 0.6e-3)));
        double free = KIT.fuelFlow(750, jets, AT, REGULATOR, 12).massFlow();
        assertEquals(
                free / Math.sqrt(2),
                narrow.fuelFlow(750, jets, AT, REGULATOR, 12).massFlow(),
                1e-3 * free);
        double path = narrow.nitrousPath(jets).massFlow(LIQUID, 1e5);
        assertTrue(path < 0.8 * KIT.nitrousPath(jets).massFlow(LIQUID, 1e5));
        assertEquals(path, narrow.nitrousFlowOfFactor(0.6e-3, LIQUID, 1e5).applyAsDouble(1), 1e-6 * path);
    }

    @Test
    void parts_are_exchanged_one_at_a_time() {
        FuelCircuit fuel = KIT.fuel().withJet(FuelJet.stated(0.6));
        assertEquals(
                new WetKit(KIT.position(), 4, KIT.nitrous(), fuel, KIT.ladder(), KIT.passages()), KIT.withFuel(fuel));
        NitrousCircuit nitrous = KIT.nitrous().withHoseLength(4);
        assertEquals(
                new WetKit(KIT.position(), 4, nitrous, KIT.fuel(), KIT.ladder(), KIT.passages()),
                KIT.withNitrous(nitrous));
        assertEquals(16, KIT.withNozzles(16).nozzles());
        for (int bad : new int[] {0, 17}) {
            var e = assertThrows(IllegalArgumentException.class, () -> KIT.withNozzles(bad));
            assertEquals("The nitrous system has " + bad + " nozzles; allowed is 1 to 16.", e.getMessage());
        }
    }

    @Test
    void the_last_test_of_each_side_counts() {
        assertTrue(KIT.lastTest(JetSide.NITROUS).isEmpty());
        assertTrue(KIT.known(JetSide.FUEL, 1e-3).isEmpty());
        FlowTested first = tested(JetSide.NITROUS, 1e-3, 0.8);
        FlowTested second = tested(JetSide.NITROUS, 1e-3, 0.9);
        FlowTested fuel = tested(JetSide.FUEL, 0.7e-3, 1.1);
        WetKit kit = KIT.after(first).after(second).after(fuel);
        assertSame(second, kit.lastTest(JetSide.NITROUS).orElseThrow());
        assertSame(fuel, kit.lastTest(JetSide.FUEL).orElseThrow());
        assertEquals(0.9, kit.nitrous().jet().measured().orElseThrow().best(), 1e-12);
        assertEquals(1.1, kit.fuel().jet().measured().orElseThrow().best(), 1e-12);
        assertEquals(second.after(), kit.known(JetSide.NITROUS, 1.1e-3).orElseThrow());
    }

    /** What is not known of a class, ln(1.25/0.8)/(2 x 1.645) = 0.1357, comes back for jets of another size, added as squares. */
    @Test
    void a_test_says_less_of_jets_of_another_size() {
        WetKit kit = KIT.after(tested(JetSide.FUEL, 1e-3, 1.1)).after(tested(JetSide.NITROUS, 1e-3, 0.9));
        FlowFactor far = kit.known(JetSide.NITROUS, 1.3e-3).orElseThrow();
        assertEquals(Math.hypot(0.02, 0.1357), far.deviation(), 1e-4);
        assertEquals(Math.log(0.9), far.logarithm(), 1e-12);
        assertSame(kit, kit.suited(new JetPair(1e-3, 1e-3)), "jets as tested");
        assertSame(KIT, KIT.suited(new JetPair(3e-3, 3e-3)), "nobody has tested");
        WetKit nitrous = kit.suited(new JetPair(1.3e-3, 1e-3));
        assertWider(kit.nitrous().jet().measured(), nitrous.nitrous().jet().measured());
        assertEquals(kit.fuel(), nitrous.fuel());
        WetKit fuel = kit.suited(new JetPair(1e-3, 1.3e-3));
        assertWider(kit.fuel().jet().measured(), fuel.fuel().jet().measured());
        assertEquals(kit.nitrous(), fuel.nitrous());
    }

    private static void assertWider(Optional<FlowBand> as, Optional<FlowBand> suited) {
        assertEquals(as.orElseThrow().best(), suited.orElseThrow().best(), 1e-12);
        assertTrue(suited.get().low() < as.get().low()
                && suited.get().high() > as.get().high());
    }

    @Test
    void another_law_forgets_the_nitrous_tests_only() {
        WetKit kit = KIT.after(tested(JetSide.NITROUS, 1e-3, 0.9)).after(tested(JetSide.FUEL, 1e-3, 1.1));
        WetKit other = kit.withFlowLaw(OrificeLaw.EQUILIBRIUM);
        assertEquals(OrificeLaw.EQUILIBRIUM, other.nitrous().jet().law());
        assertTrue(other.nitrous().jet().measured().isEmpty(), "the factor was relative to the old law");
        assertTrue(other.lastTest(JetSide.NITROUS).isEmpty());
        assertTrue(other.lastTest(JetSide.FUEL).isPresent());
        assertEquals(kit.fuel(), other.fuel());
    }

    /** Lichtarowicz (1965) covers holes 2 to 10 bores long. */
    @Test
    void the_law_of_long_holes_wants_a_length_it_covers() {
        for (double length : new double[] {2, 10}) {
            assertNotNull(long_(length).withFlowLaw(OrificeLaw.LONG_ORIFICE));
        }
        for (double length : new double[] {1.9, 10.1}) {
            var e = assertThrows(
                    IllegalArgumentException.class, () -> long_(length).withFlowLaw(OrificeLaw.LONG_ORIFICE));
            assertTrue(e.getMessage().contains("these are " + length + " bores long"), e.getMessage());
            assertNotNull(long_(length).withFlowLaw(OrificeLaw.EQUILIBRIUM));
        }
        var unknown = assertThrows(IllegalArgumentException.class, () -> KIT.withFlowLaw(OrificeLaw.LONG_ORIFICE));
        assertTrue(unknown.getMessage().contains("of a length not stated"), unknown.getMessage());
    }

    private static WetKit long_(double length) {
        return KIT.withNitrous(
                KIT.nitrous().withJet(new NitrousJet("nitrous jet", 0, length, Edge.SQUARE, Double.NaN)));
    }

    /** What is left of a filter's area passes at a higher speed, its loss grows with the square: half left, four times the loss. */
    @Test
    void a_filter_half_blocked_costs_four_times_the_loss() {
        NitrousCircuit circuit =
                new NitrousCircuit(4, 12e-3, 1, 2, new Solenoid(6e-3, 0.8, 0.01, 0.01), 6e-3, 0.1, Double.NaN);
        assertEquals(8, circuit.withFilterBlocked(0.5).filterLoss(), 1e-12);
        assertEquals(circuit, circuit.withFilterBlocked(0));
        for (double bad : new double[] {-0.01, 1}) {
            var e = assertThrows(IllegalArgumentException.class, () -> circuit.withFilterBlocked(bad));
            assertEquals("The blocked share of the filter is " + bad + "; allowed is 0 to below 1.", e.getMessage());
        }
    }
}
