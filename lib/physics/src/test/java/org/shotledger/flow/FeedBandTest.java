package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/** Which hole meters, and the band of a path's flow, by paths whose holes are moved by hand. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class FeedBandTest {
    private static final FluidState BOTTLE = NitrousOxide.saturatedLiquid(293.15);
    private static final double BEHIND = 2.5e5;
    private static final NitrousJet JET = NitrousJet.of(1.1e-3);
    private static final NitrousJet SEAT = NitrousJet.of(1.3e-3).named("seat");
    private static final FlowBand TESTED = new FlowBand(0.95, 1, 1.06);

    /** A jet alone is off by what its band says; a test of it replaces that band. */
    @Test
    void a_jet_alone_has_its_own_band() {
        FlowBand own = OrificeLaw.CLASS.band(JET, BOTTLE);
        FlowBand band = FeedPath.of(JET).band(BOTTLE, BEHIND);
        assertEquals(own.low(), band.low(), 1e-6);
        assertEquals(1, band.best());
        assertEquals(own.high(), band.high(), 1e-6);
        FlowBand tested = FeedPath.of(JET.withMeasured(TESTED)).band(BOTTLE, BEHIND);
        assertEquals(0.95, tested.low(), 1e-6);
        assertEquals(1.06, tested.high(), 1e-6);
        assertSame(FlowBand.EXACT, FeedPath.of(JET).band(BOTTLE, BOTTLE.pressure()));
    }

    /** Holes nobody has tested move together; where the jet was tested, the seat before it is in what the test found. */
    @Test
    void of_a_tested_path_only_the_jet_moves() {
        FeedPath plain = FeedPath.of(new Orifice(SEAT, 0.0087), JET);
        double flow = plain.massFlow(BOTTLE, BEHIND);
        double low = FeedPath.of(new Orifice(SEAT.at(-1), 0.0087), JET.at(-1)).massFlow(BOTTLE, BEHIND);
        double high = FeedPath.of(new Orifice(SEAT.at(1), 0.0087), JET.at(1)).massFlow(BOTTLE, BEHIND);
        assertEquals(low / flow, plain.band(BOTTLE, BEHIND).low(), 1e-6);
        assertEquals(high / flow, plain.band(BOTTLE, BEHIND).high(), 1e-6);
        NitrousJet known = JET.withMeasured(TESTED);
        FeedPath tested = FeedPath.of(new Orifice(SEAT, 0.0087), known).at(-1);
        assertEquals(List.of(new Orifice(SEAT, 0.0087), known.at(-1)), tested.elements());
    }

    /** Of a jet that leads into the nozzle's passage the narrower meters; a hole before another line does not. */
    @Test
    void the_narrower_of_jet_and_passage_meters() {
        NitrousJet passage = NitrousJet.of(1.5e-3).named("passage");
        Tube line = Tube.level("line", 0.3, 0.004);
        assertEquals(
                List.of(JET),
                FeedPath.of(line, new Orifice(JET, 1.5e-3), passage).jets());
        NitrousJet equal = JET.withBore(1.5e-3);
        assertEquals(
                List.of(equal), FeedPath.of(new Orifice(equal, 1.5e-3), passage).jets());
        NitrousJet wide = JET.withBore(2e-3);
        assertEquals(
                List.of(passage),
                FeedPath.of(new Orifice(wide, 1.5e-3), passage).jets());
        assertEquals(
                List.of(passage), FeedPath.of(new Orifice(JET, 4e-3), passage).jets());
        assertEquals(
                List.of(passage),
                FeedPath.of(new Orifice(JET, 1.5e-3), line, passage).jets());
        assertEquals(List.of(passage), FeedPath.of(passage).jets());
        assertTrue(FeedPath.of(line).jets().isEmpty());
        FeedPath branch = FeedPath.of(line, JET);
        Manifold block = new Manifold("block", 0, List.of(branch, FeedPath.of(passage)));
        assertEquals(List.of(JET, passage), FeedPath.of(block).jets());
    }
}
