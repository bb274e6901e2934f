package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/** What is told of a feed path is what its parts do at the flow found: pressures, hold-up, vapour, the part that limits. */
class FeedReportTest {
    private static final FluidState BOTTLE = NitrousOxide.saturatedLiquid(293.15);
    private static final double BEHIND = 2.5e5;
    private static final Tube HOSE = Tube.level("hose", 3.2, 0.0087);
    private static final Tube LINE = Tube.level("line", 0.35, 0.004);
    private static final NitrousJet JET = NitrousJet.of(1.1e-3);

    private static Orifice solenoid(double bore) {
        return Orifice.solenoid("solenoid", bore, 0.0087);
    }

    private static FeedPath path(double solenoid, double jet) {
        return FeedPath.of(
                new Tube("siphon", 0.5, 0.008, 5e-6, 0.4),
                HOSE,
                solenoid(solenoid),
                Manifold.equal("block", 6, LINE, JET.withBore(jet)));
    }

    private static FluidState state(FeedNode node) {
        return NitrousOxide.atPressureEnthalpy(node.pressure(), BOTTLE.enthalpy());
    }

    /** The jets limit: every part loses what it loses at its flow, and the jets pass what the block is given. */
    @Test
    void everyNodeIsWhatThePartBeforeItLeaves() {
        FeedFlow flow = path(4e-3, 0.65e-3).flow(BOTTLE, BEHIND);
        List<FeedNode> nodes = flow.nodes();
        assertEquals(
                List.of("bottle", "siphon", "hose", "solenoid", "block", "line"),
                nodes.subList(0, 6).stream().map(FeedNode::after).toList());
        assertEquals(5 + 6, nodes.size());
        FeedElement[] parts = {new Tube("siphon", 0.5, 0.008, 5e-6, 0.4), HOSE, solenoid(4e-3)};
        for (int i = 0; i < parts.length; i++) {
            double outlet = parts[i].outletPressure(state(nodes.get(i)), flow.massFlow());
            assertEquals(outlet, nodes.get(i + 1).pressure(), 1e-6 * outlet, parts[i].name());
            assertEquals(flow.massFlow(), nodes.get(i + 1).massFlow());
        }
        assertEquals(nodes.get(3).pressure(), nodes.get(4).pressure(), "a block loses nothing");
        double line = LINE.outletPressure(state(nodes.get(4)), flow.massFlow() / 6);
        assertEquals(line, nodes.get(10).pressure(), 1e-5 * line);
        assertEquals(flow.massFlow() / 6, nodes.get(10).massFlow(), 1e-5 * flow.massFlow());
        assertEquals(line, flow.jetInlet().pressure(), 1e-5 * line);
        double each = JET.withBore(0.65e-3).massFlow(flow.jetInlet(), BEHIND);
        assertEquals(flow.massFlow(), 6 * each, 1e-5 * flow.massFlow());
        assertEquals("jet limits the flow: it chokes.", flow.reason());
    }

    /** Hold-up: the volume of each part times the mean density at its ends; six lines behind the block. */
    @Test
    void theHoldUpIsThatOfEveryPart() {
        FeedFlow flow = path(4e-3, 0.65e-3).flow(BOTTLE, BEHIND);
        List<FeedNode> n = flow.nodes();
        double siphon = Math.PI / 4 * 0.008 * 0.008 * 0.5;
        double hose = Math.PI / 4 * 0.0087 * 0.0087 * 3.2;
        double line = Math.PI / 4 * 0.004 * 0.004 * 0.35;
        double solenoid = solenoid(4e-3).volume();
        assertEquals(siphon + hose + solenoid + 6 * line, flow.volume(), 1e-9);
        double held = siphon * (n.get(0).density() + n.get(1).density()) / 2
                + hose * (n.get(1).density() + n.get(2).density()) / 2
                + solenoid * (n.get(2).density() + n.get(3).density()) / 2
                + 6 * line * (n.get(4).density() + n.get(5).density()) / 2;
        assertEquals(held, flow.holdUp(), 1e-6 * held);
    }

    /** Behind a part that chokes the pressure settles where the rest of the path passes just that flow. */
    @Test
    void behindAChokeTheRestPassesWhatChokes() {
        FeedFlow flow = path(2e-3, 1.1e-3).flow(BOTTLE, BEHIND);
        assertEquals("solenoid", flow.chokingElement());
        assertEquals("solenoid limits the flow: it chokes.", flow.reason());
        FeedNode behind = flow.nodes().get(3);
        FeedPath rest = FeedPath.of(Manifold.equal("block", 6, LINE, JET));
        assertEquals(flow.massFlow(), rest.massFlow(state(behind), BEHIND), 1e-4 * flow.massFlow());
        assertTrue(behind.pressure() < 0.8 * flow.nodes().get(2).pressure());
        double most = solenoid(2e-3).hole().massFlow(state(flow.nodes().get(2)), BEHIND);
        assertEquals(flow.massFlow(), most, 1e-4 * flow.massFlow(), "the most that its hole passes");
    }

    // lever rule in volume: (v - v') / (v'' - v')
    @Test
    void theVapourShareOfTheVolumeFollowsFromTheDensity() {
        for (FeedNode node : path(4e-3, 0.65e-3).flow(BOTTLE, BEHIND).nodes()) {
            double liquid = 1 / NitrousOxide.saturatedLiquid(node.temperature()).density();
            double vapour = 1 / NitrousOxide.saturatedVapour(node.temperature()).density();
            assertEquals(
                    (1 / node.density() - liquid) / (vapour - liquid) * vapour * node.density(),
                    node.voidFraction(),
                    1e-6);
        }
        FeedFlow cold = path(4e-3, 0.65e-3).flow(NitrousOxide.atTemperaturePressure(260, 6e6), BEHIND);
        assertEquals(0, cold.nodes().get(0).voidFraction(), "liquid");
        FeedFlow gas = path(4e-3, 0.65e-3).flow(NitrousOxide.atTemperaturePressure(300, 2e6), BEHIND);
        assertEquals(1, gas.nodes().get(0).voidFraction(), "vapour");
    }

    @Test
    void whatDoesNotFlowOrNotChokeSaysWhy() {
        FeedFlow slow = path(4e-3, 0.65e-3).flow(BOTTLE, 0.97 * BOTTLE.pressure());
        assertFalse(slow.choked());
        assertEquals("The pressure behind the jets limits the flow; nothing chokes.", slow.reason());
        assertTrue(slow.massFlow() > 0 && slow.massFlow() < path(4e-3, 0.65e-3).massFlow(BOTTLE, BEHIND));
        FeedFlow equal = path(4e-3, 0.65e-3).flow(BOTTLE, BOTTLE.pressure());
        assertEquals("Nothing flows: the pressure behind the jets is not below that of the bottle.", equal.reason());
        assertEquals(0, equal.massFlow());
        assertEquals(BOTTLE, equal.jetInlet());
        // 1000 m of liquid of near 1.2 weigh 118 bar, and so cold it boils below the pressure behind
        FeedFlow tall = FeedPath.of(new Tube("riser", 1000, 0.01, 5e-6, 1000), JET)
                .flow(NitrousOxide.atTemperaturePressure(190, 5e6), BEHIND);
        assertEquals(
                "Nothing flows: the end of the path is closed or the liquid column takes the whole pressure.",
                tall.reason());
        FeedFlow open = FeedPath.of(HOSE).flow(BOTTLE, 0.97 * BOTTLE.pressure());
        assertFalse(open.choked());
        double outlet = HOSE.outletPressure(BOTTLE, open.massFlow());
        assertEquals(0.97 * BOTTLE.pressure(), outlet, 1e-4 * outlet, "an open end stands at the pressure behind it");
    }

    /** Branches of two kinds: each passes what it would pass alone from the block. */
    @Test
    void unequalBranchesTakeTheirOwn() {
        FeedPath small = FeedPath.of(LINE, JET.withBore(0.6e-3));
        FeedPath large = FeedPath.of(LINE, JET.withBore(0.9e-3));
        FeedFlow flow = FeedPath.of(HOSE, new Manifold("block", 2e-5, List.of(small, large, small)))
                .flow(BOTTLE, BEHIND);
        FluidState block = state(flow.nodes().get(1));
        double expected = 2 * small.massFlow(block, BEHIND) + large.massFlow(block, BEHIND);
        assertEquals(expected, flow.massFlow(), 1e-5 * expected);
        assertEquals(3, flow.jets().size());
        assertEquals(flow.jets().get(0), flow.jets().get(2));
        assertTrue(flow.jets().get(1).massFlow() > 1.5 * flow.jets().get(0).massFlow());
        double line = Math.PI / 4 * 0.004 * 0.004 * 0.35;
        assertEquals(HOSE.volume() + 2e-5 + 3 * line, flow.volume(), 1e-9);
    }

    /** A guess, good or bad, does not move the flow; nor does the case in which it is asked for. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.98, 0.999, 1.001, 1.02, 3})
    void aGuessDoesNotMoveTheFlow(double share) {
        for (double solenoid : new double[] {4e-3, 2e-3}) {
            FeedPath path = path(solenoid, 1.1e-3);
            double flow = path.massFlow(BOTTLE, BEHIND);
            assertEquals(flow, path.massFlow(BOTTLE, BEHIND, share * flow), 1e-6 * flow);
        }
    }

    // thin plate: the unchoked jet, 0.62 of Bernoulli's into vacuum, may pass; every other hole has the band of its
    // class
    @Test
    void theBandOfAThinPlateReachesToTheUnchokedJet() {
        FluidState liquid = NitrousOxide.atTemperaturePressure(283, 6.4e6);
        NitrousJet plate = new NitrousJet("plate", 1e-3, 0.3, Edge.SQUARE, Double.NaN);
        FlowBand usual = new HoleClass(Edge.SQUARE, Inlet.SUBCOOLED).band();
        double unchoked = 0.62 * Math.PI / 4 * 1e-6 * Math.sqrt(2 * liquid.density() * 6.4e6);
        FlowBand band = OrificeLaw.CLASS.band(plate, liquid);
        assertEquals(unchoked / plate.massFlow(liquid, 1e5), band.high(), 1e-6);
        assertTrue(band.high() > usual.high());
        assertEquals(usual.low(), band.low());
        NitrousJet longer = new NitrousJet("long", 1e-3, 2, Edge.SQUARE, Double.NaN);
        assertEquals(usual, OrificeLaw.CLASS.band(longer, liquid));
        NitrousJet rounded = new NitrousJet("rounded", 1e-3, 0.3, Edge.ROUNDED, Double.NaN);
        assertEquals(new HoleClass(Edge.ROUNDED, Inlet.SUBCOOLED).band(), OrificeLaw.CLASS.band(rounded, liquid));
        FluidState gas = NitrousOxide.atTemperaturePressure(300, 1e6);
        assertEquals(new HoleClass(Edge.SQUARE, Inlet.VAPOUR).band(), OrificeLaw.CLASS.band(plate, gas));
        NitrousJet unknown = new NitrousJet("unknown", 1e-3, 0.3, Edge.UNKNOWN, Double.NaN);
        FluidState boiling = NitrousOxide.saturatedLiquid(290);
        assertTrue(OrificeLaw.CLASS.band(unknown, boiling).high()
                >= new HoleClass(Edge.UNKNOWN, Inlet.SATURATED).band().high());
        NitrousJet plugged = new NitrousJet("plugged", 0, 0.3, Edge.SQUARE, Double.NaN);
        assertEquals(usual, OrificeLaw.CLASS.band(plugged, liquid));
    }

    // hydrostatics: rho g h, lost upward, gained downward
    @Test
    void withoutFlowATubeWeighsItsLiquid() {
        FluidState liquid = NitrousOxide.atTemperaturePressure(260, 6e6);
        double weight = liquid.density() * 9.80665 * 2;
        assertEquals(6e6 - weight, new Tube("up", 2, 0.01, 5e-6, 2).outletPressure(liquid, 0), 0.01 * weight);
        assertEquals(6e6 + weight, new Tube("down", 2, 0.01, 5e-6, -2).outletPressure(liquid, 0), 0.01 * weight);
        assertEquals(6e6, Tube.level("level", 2, 0.01).outletPressure(liquid, 0));
        assertEquals(6e6, Tube.level("none", 0, 0.01).outletPressure(liquid, 0));
    }
}
