package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.flow.FlowBand;
import org.shotledger.flow.FlowFactor;
import org.shotledger.flow.FlowTest;
import org.shotledger.flow.FlowTestPlan;
import org.shotledger.flow.NitrousJet;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/** What a flow test should give and what it then tells, where jets alone set the flow. */
class FlowTestRigTest {
    /** Water at 3 bar through two fuel jets of 1 mm with a coefficient of 0.8. */
    private static FlowTestRig water(double dropDeviation) {
        return FlowTestRig.fuel(InventedKit.kit(2), 2, 1e-3, 1000, 3e5, dropDeviation, InventedKit.AMBIENT);
    }

    /** Bernoulli by hand: 2 x 0.8 x pi/4 x 1e-6 m2 times sqrt(2 x 1000 x 3e5) = 24 495 kg/(m2 s) are 30.8 g/s. */
    @Test
    void flow_of_water_to_expect() {
        FlowTestRig rig = water(0.03e5);
        assertEquals(0.03078, rig.expected(), 5e-6);
        assertEquals(4e5, rig.pressure(), 1e-9);
        assertEquals(JetSide.FUEL, rig.side());
        FlowTestRig both = FlowTestRig.fuel(InventedKit.kit(2), 4, 1e-3, 1000, 3e5, 0, InventedKit.AMBIENT);
        assertEquals(2, both.expected() / rig.expected(), 1e-3, "twice the nozzles");
    }

    /** Flow goes with the root of the pressure, so one per cent of pressure is half a per cent of flow. */
    @Test
    void an_unsure_pressure_counts_half() {
        assertEquals(0.005, water(0.03e5).stateDeviation(), 1e-12);
        assertEquals(0, water(0).stateDeviation());
    }

    /** A long test tells the truth: jets that passed 0.9 of what was expected have a factor of 0.9. */
    @Test
    void a_good_test_finds_the_factor_of_the_jets() {
        FlowTestRig rig = water(0);
        FlowTested told = rig.told("first", new FlowTest(0.9 * rig.expected() * 600, 1e-5, 600, 1e-3));
        assertEquals(0.9, Math.exp(told.after().logarithm()), 1e-3);
        assertEquals(rig.expected(), told.expected());
        assertEquals(rig.known(), told.before());
        assertEquals("first", told.name());
        WetKit after = InventedKit.kit(2).after(told);
        assertEquals(0.9, after.fuel().jet().measured().orElseThrow().best(), 1e-3);
        assertTrue(after.nitrous().jet().measured().isEmpty());
        FlowTestRig again = FlowTestRig.fuel(after, 2, 1e-3, 1000, 3e5, 0, InventedKit.AMBIENT);
        assertEquals(0.9 * rig.expected(), again.expected(), 1e-3 * rig.expected(), "the next one expects it");
    }

    /** The advice foretells the test: after the seconds advised the factor is known as well as was wanted. */
    @Test
    void a_discharge_as_long_as_advised_gives_the_precision_wanted() {
        FlowTestRig rig = water(0.03e5);
        double wanted = 0.02;
        FlowTestPlan plan = rig.discharge(wanted, 5e-3, 0.2);
        assertTrue(plan.seconds() > 1, plan.toString());
        assertEquals(rig.expected() * plan.seconds(), plan.mass(), 1e-12);
        FlowTested told = rig.told("as advised", new FlowTest(plan.mass(), 5e-3, plan.seconds(), 0.2));
        assertEquals(wanted, told.after().deviation(), 1e-3 * wanted);
    }

    /**
     * Jets as wide as their solenoid: of a change of the jets half arrives at the flow, as m ~ 1/sqrt(1 + 1/f^2) has the slope
     * 1/(1 + f^2). Errors of the reading count twice for the jets, and the advice must know it.
     */
    @Test
    void what_the_solenoid_hides_takes_a_longer_test() {
        // four jets of 1 mm have the area of one hole of 2 mm
        FuelCircuit narrow = InventedKit.FUEL.withSolenoid(new Solenoid(2e-3, 0.8, 0.01, 0.01));
        WetKit kit = InventedKit.kit(4).withFuel(narrow);
        FlowTestRig rig = FlowTestRig.fuel(kit, 4, 1e-3, 1000, 3e5, 0.03e5, InventedKit.AMBIENT);
        assertEquals(0.5, rig.known().effect(rig.flowOfFactor()), 0.01);
        FlowTestPlan plan = rig.discharge(0.03, 5e-3, 0.2);
        // own error (1/0.03^2 - 1/0.1245^2)^-1/2 = 0.031 for the jets, less 2 x 0.005 of the state, by the root of
        // squares
        double own = 1 / Math.sqrt(1 / (0.03 * 0.03) - 1 / Math.pow(rig.known().deviation(), 2));
        double left = Math.sqrt(own * own - 0.01 * 0.01);
        double seconds = 2 * Math.hypot(5e-3 / rig.expected(), 0.2) / left;
        assertEquals(seconds, plan.seconds(), 0.02 * seconds);
    }

    @Test
    void an_unsure_state_sets_the_best_that_can_be_had() {
        FlowTestRig rig = water(0.3e5);
        // 10 % of pressure is 5 % of flow: no test is better, and 1.2 times as much is aimed at
        FlowTestPlan plan = rig.discharge(0.001, 5e-3, 0.2);
        FlowTested told = rig.told("as advised", new FlowTest(plan.mass(), 5e-3, plan.seconds(), 0.2));
        assertEquals(1.2 * 0.05, told.after().deviation(), 1e-3);
    }

    @Test
    void what_is_known_well_enough_needs_no_test() {
        FlowTestRig rig = water(0.03e5);
        double known = rig.known().deviation();
        assertEquals(new FlowTestPlan(0, 0), rig.discharge(known / 1.099, 5e-3, 0.2));
        assertTrue(rig.discharge(known / 1.101, 5e-3, 0.2).seconds() > 0);
    }

    /** 20 degC boil at 50.6 bar absolute (NIST); what the rig expects is what the feed path passes into the open. */
    @Test
    void nitrous_oxide_is_expected_as_the_feed_path_passes_it() {
        TestBottle bottle = new TestBottle(50.6e5, 0.5e5, Double.NaN);
        FlowTestRig rig = FlowTestRig.nitrous(InventedKit.kit(4), 2, 0.8e-3, bottle, InventedKit.AMBIENT);
        FluidState liquid = NitrousOxide.saturatedLiquid(NitrousOxide.saturationTemperature(50.6e5));
        double path = InventedKit.NITROUS.path(2, 0.8e-3).massFlow(liquid, InventedKit.AMBIENT);
        NitrousJet jet = InventedKit.NITROUS.jet().withBore(0.8e-3);
        FluidState inlet = InventedKit.NITROUS
                .path(2, 0.8e-3)
                .flow(liquid, InventedKit.AMBIENT)
                .jetInlet();
        FlowBand band = jet.law().band(jet, inlet);
        assertEquals(path, rig.flowOfFactor().applyAsDouble(1), 1e-6 * path);
        assertEquals(1, rig.untested().best(), 1e-6, "nobody has tested these jets");
        assertEquals(band.low(), rig.untested().low(), 1e-6, "the band of the jets' class");
        assertEquals(band.high(), rig.untested().high(), 1e-6);
        assertEquals(path, rig.expected(), 1e-6 * path);
        // half of the difference between one deviation up and one down, relative
        double high = flow(51.1e5);
        double low = flow(50.1e5);
        assertEquals((high - low) / 2 / path, rig.stateDeviation(), 0.05 * rig.stateDeviation());
        assertEquals(50.6e5, rig.pressure());
    }

    private static double flow(double pressure) {
        FluidState liquid = NitrousOxide.saturatedLiquid(NitrousOxide.saturationTemperature(pressure));
        return InventedKit.NITROUS.path(2, 0.8e-3).massFlow(liquid, InventedKit.AMBIENT);
    }

    /** Saturation pressure at 293.15 K is 50.6 bar (NIST); 60 bar at that temperature is a full bottle of liquid only. */
    @Test
    void a_bottle_boils_unless_it_stands_well_above_its_boiling_pressure() {
        FluidState boiling = new TestBottle(50.6e5, 0, Double.NaN).liquid(0);
        assertEquals(293.15, boiling.temperature(), 0.1);
        assertEquals(50.6e5, boiling.pressure(), 10);
        FluidState near = new TestBottle(50.6e5, 0, 293.15).liquid(0);
        assertEquals(50.6e5, near.pressure(), 10, "thermometer and gauge agree");
        // 52 bar is 3 % above: still taken for boiling, a little warmer than read
        assertEquals(294.3, new TestBottle(52e5, 0, 293.15).liquid(0).temperature(), 0.3);
        FluidState full = new TestBottle(60e5, 0, 293.15).liquid(0);
        assertEquals(60e5, full.pressure(), 10);
        assertEquals(293.15, full.temperature(), 1e-6);
        assertTrue(full.density() > boiling.density(), "pressed together");
        TestBottle unsure = new TestBottle(50e5, 1e5, Double.NaN);
        assertEquals(52e5, unsure.liquid(2).pressure(), 10);
        assertEquals(49e5, unsure.liquid(-1).pressure(), 10);
        // the critical point is at 72.45 bar (NIST): beyond 0.99 of it nothing boils
        assertEquals(
                0.99 * 72.45e5, new TestBottle(80e5, 0, Double.NaN).liquid(0).pressure(), 0.01e5);
    }

    private static FlowTested tested(double bore, double surprise) {
        FlowFactor before = FlowFactor.untested(new FlowBand(0.8, 1, 1.2));
        FlowTest test = new FlowTest(1, 0.01, 10, 0.1);
        return new FlowTested(
                "t", JetSide.FUEL, test, bore, 1, 4e5, 0.1, 0, before, new FlowFactor(0, 0.05, 1, surprise));
    }

    @Test
    void other_sizes_and_surprises_are_told() {
        FlowTested test = tested(1e-3, 0);
        assertFalse(test.isFarFrom(1e-3) || test.isFarFrom(1.149e-3) || test.isFarFrom(0.851e-3));
        assertTrue(test.isFarFrom(1.151e-3) && test.isFarFrom(0.849e-3));
        assertFalse(tested(1e-3, 2).isSurprising() || tested(1e-3, -2).isSurprising());
        assertTrue(tested(1e-3, 2.01).isSurprising() && tested(1e-3, -2.01).isSurprising());
    }
}
