package org.shotledger.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class WireTest {

    /** ASTM B258, nominal diameters in inch as printed: 0 AWG 0.3249, 4 0.2043, 10 0.1019, 14 0.0641, 18 0.0403, 22 0.0253. */
    @ParameterizedTest
    @CsvSource({"0,0.3249", "4,0.2043", "8,0.1285", "10,0.1019", "12,0.0808", "14,0.0641", "18,0.0403", "22,0.0253"})
    void diameters_are_those_of_the_standard(int gauge, double inch) {
        assertEquals(inch, new Wire(gauge).diameter() / 0.0254, 0.6e-4);
    }

    /**
     * NBS Handbook 100 (1966), resistance of solid annealed copper at 20 degC in ohm per 1000 ft: 10 AWG 0.9989, 14 2.525,
     * 18 6.385, 22 16.14. Four digits.
     */
    @ParameterizedTest
    @CsvSource({"10,0.9989", "14,2.525", "18,6.385", "22,16.14"})
    void resistances_are_those_of_the_handbook(int gauge, double ohmPerThousandFeet) {
        double found = new Wire(gauge).solidResistance(304.8, 293.15);
        assertEquals(ohmPerThousandFeet, found, 1.5e-3 * ohmPerThousandFeet);
    }

    /** IEC 60028: 0.393 % for each kelvin at 20 degC; a wire of 234.5 degC "inferred zero" doubles at 274.5 degC. */
    @Test
    void copper_resists_more_when_it_is_warm() {
        Wire wire = new Wire(12);
        assertEquals(
                1 + 60 / (234.5 + 20), wire.resistance(1, 353.15) / wire.resistance(1, 293.15), 2e-4, "linear law");
    }

    /** 33 CFR 183.425, Table 5, 105 degC insulation, and its note 1. */
    @ParameterizedTest
    @CsvSource({"18,20", "16,25", "14,35", "12,45", "10,60", "8,80", "6,120", "4,160", "2,210", "0,285"})
    void allowed_currents_are_those_of_the_regulation(int gauge, double ampere) {
        assertEquals(ampere, Ampacity.allowed(new Wire(gauge), false, 1), 0);
        assertEquals(0.85 * ampere, Ampacity.allowed(new Wire(gauge), true, 1), 1e-9);
    }

    @Test
    void a_bundle_leaves_less_and_an_unknown_gauge_is_named() {
        assertEquals(0.7 * 35, Ampacity.allowed(new Wire(14), false, 3), 1e-9);
        assertEquals(0.6 * 35, Ampacity.allowed(new Wire(14), false, 5), 1e-9);
        assertEquals(0.5 * 35, Ampacity.allowed(new Wire(14), false, 20), 1e-9);
        assertEquals(
                "The table of allowed currents has no 13 AWG; it has [18, 16, 14, 12, 10, 8, 6, 4, 2, 0] AWG.",
                assertThrows(IllegalArgumentException.class, () -> Ampacity.allowed(new Wire(13), false, 1))
                        .getMessage());
    }

    /** ISO 8820-3: 110 % for 100 h; at 200 % a fuse may open after 0.15 s, at 350 % after 0.04 s (from memory). */
    @Test
    void a_fuse_carries_a_short_surge_and_no_long_one() {
        Fuse fuse = new Fuse(10);
        assertTrue(fuse.carries(11, 360_000));
        assertTrue(fuse.carries(20, 0.14) && !fuse.carries(20, 0.16));
        assertTrue(fuse.carries(30, 0.03) && !fuse.carries(30, 0.05));
        assertTrue(!fuse.carries(70, 0.001), "beyond the last point nothing is known");
        assertEquals(15, Fuse.smallest(11, 11, 0).orElseThrow().rating());
        assertEquals(30, Fuse.smallest(11, 60, 0.1).orElseThrow().rating());
        assertTrue(Fuse.smallest(90, 90, 0).isEmpty());
    }

    @Test
    void the_wire_carries_its_fuse_and_loses_no_more_than_allowed_and_a_thinner_one_does_not() {
        Cable.Rules rules = new Cable.Rules(13.5, 353.15, 0.03, 3);
        for (double current : new double[] {1, 5, 9, 13, 26, 40}) {
            for (double length : new double[] {0.5, 2, 4.1, 9}) {
                Cable cable = Cable.of(load(current, length), rules);
                assertTrue(cable.allowed() >= cable.fuse().rating(), cable.toString());
                assertTrue(cable.drop() <= 0.03 * 13.5, cable.toString());
                assertEquals(
                        current * new Wire(cable.wire().gauge()).resistance(2 * length, 353.15), cable.drop(), 1e-12);
                if (cable.wire().gauge() < 18) {
                    Wire thinner = new Wire(cable.wire().gauge() + 2);
                    boolean tooHot =
                            Ampacity.allowed(thinner, false, 3) < cable.fuse().rating();
                    boolean drops = current * thinner.resistance(2 * length, 353.15) > 0.03 * 13.5;
                    assertTrue(tooHot || drops, cable.toString());
                    assertEquals(tooHot ? "current" : "voltage drop", cable.decidedBy());
                }
            }
        }
    }

    @Test
    void a_load_beyond_every_fuse_is_refused_in_one_sentence() {
        Cable.Rules rules = new Cable.Rules(13.5, 353.15, 0.03, 1);
        assertEquals(
                "The load 'pump' takes 90.0 A, and 90.0 A at switching on; no blade fuse up to 100 A carries that, so split"
                        + " the load or guard it by a bolted fuse.",
                assertThrows(IllegalArgumentException.class, () -> Cable.of(load(90, 1), rules))
                        .getMessage());
    }

    @Test
    void what_the_alternator_lacks_comes_out_of_the_battery() {
        List<Load> loads = List.of(load(100, 1), new Load("n", 40, 40, 0, 0.5, 1, false, true, true, Load.Phase.PASS));
        CurrentBalance plain = CurrentBalance.of(Load.Phase.ALWAYS, loads, 112, 10, 252_000);
        CurrentBalance pass = CurrentBalance.of(Load.Phase.PASS, loads, 112, 10, 252_000);
        assertEquals(0, plain.shortfall());
        assertEquals(8, pass.shortfall(), 1e-12, "100 + 40 * 0.5 - 112");
        assertEquals(80.0 / 252_000, pass.batteryShare(), 1e-12);
    }

    @Test
    void a_pulsed_coil_gets_a_clamp_and_a_solid_state_switch() {
        Load valve = new Load("valve", 13, 13, 0, 1, 4, true, true, true, Load.Phase.PASS);
        assertTrue(valve.switching(4).startsWith("By a solid-state switch"), valve.switching(4));
        assertTrue(
                valve.switching(4).contains("closes late") || valve.switching(4).contains("close late"));
        assertEquals(
                "By a controller output. Its coil needs a clamp of 30 V or more across it; a plain diode lets it close"
                        + " late.",
                valve.switching(20));
    }

    private static Load load(double current, double length) {
        return new Load("pump", current, current, 0, 1, length, false, false, false, Load.Phase.ALWAYS);
    }
}
