package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.shotledger.fluid.NitrousOxide;

class FeedStudyTest {
    private static final FeedStudy STUDY = new FeedStudy(
            new NitrousCircuit(1.2, 8.7e-3, 3.2, 2, new Solenoid(2.6e-3, 0.65, 0.012, 0.01), 4e-3, 0.35, Double.NaN),
            1,
            OptionalDouble.empty(),
            NitrousOxide.saturatedLiquid(293.15),
            2.5e5);

    @Test
    void smallJetsChokeThemselvesAndLargeOnesLeaveItToTheSolenoid() {
        List<FeedStudy.Rung> rungs = STUDY.rungs(0.8e-3, 1.6e-3, 4e-3);
        assertEquals("nitrous jet", rungs.get(0).limit());
        assertEquals("nitrous solenoid", rungs.get(2).limit());
        assertTrue(rungs.get(0).flow().high() < rungs.get(2).flow().low());
    }

    @Test
    void liquidMovesLittleByFilterAndHoseButMuchWithoutAPurge() {
        List<FeedStudy.Change> changes = STUDY.changes(1.2e-3);
        assertTrue(changes.stream().allMatch(c -> c.ratio() < 1), changes::toString);
        assertTrue(changes.get(0).withinBand() && changes.get(1).withinBand(), changes::toString);
        // dry vapour of 20 degC chokes at about 0.5 of the liquid's flux by equilibrium
        assertEquals(0.5, changes.get(2).ratio(), 0.15);
        assertFalse(changes.get(2).withinBand());
    }

    // hold-up over flow by hand: 8.7 mm of bore over 3.2 m is 190 mL; saturated liquid of 20 degC has 785 kg/m3
    // (handbook value)
    @Test
    void aHoseThatWasNotPurgedIsFullOfLiquidAfterItsFillTime() {
        List<FeedStudy.Change> changes = STUDY.changes(1.2e-3);
        double flow = STUDY.rungs(1.2e-3).get(0).flow().best();
        double hose = Math.PI / 4 * 8.7e-3 * 8.7e-3 * 3.2 * 785 / flow;
        double line = Math.PI / 4 * 4e-3 * 4e-3 * 0.35 * 785 / flow;
        assertEquals(hose + line, changes.get(2).seconds(), 0.05 * hose);
        assertEquals(Double.POSITIVE_INFINITY, changes.get(0).seconds());
    }

    /**
     * Whatever part limits at best may be another at the ends of the band: with jets as wide as the solenoid the narrower effective
     * area limits, and both move together, so one part limits throughout where they are far apart.
     */
    @Test
    void theLimitIsToldOverTheBandAndFarFromTheCrossingItIsOne() {
        for (FeedStudy.Rung rung : STUDY.rungs(0.8e-3, 4e-3)) {
            assertEquals(rung.limit(), rung.limitLow());
            assertEquals(rung.limit(), rung.limitHigh());
        }
    }
}
