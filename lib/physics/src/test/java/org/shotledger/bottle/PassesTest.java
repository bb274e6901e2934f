package org.shotledger.bottle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.shotledger.fluid.FluidState;

class PassesTest {
    private static final double POUND = 0.45359237;
    private static final Bottle BOTTLE = new Bottle(6.7e-3, 7.1, 900);
    private static final WorkingBand BAND = new WorkingBand(40e5, 72e5);
    private static final int BOTTLES = Integer.getInteger("shotledger.bottles", 40);

    private static PassTask task(double flow, double seconds) {
        return PassTask.of(BOTTLE, Outflow.constant(flow), seconds, BAND, 300, 298);
    }

    @Test
    void countsWholePassesAndSaysWhyTheNextIsCutShort() {
        Passes passes = Passes.of(BOTTLE.charged(10 * POUND, 298), task(0.08, 12), 10);
        // a pass takes 0.96 kg; by the lever rule 10 lb less three passes leave 0.5 kg of liquid at 298 K, less two 1.8
        // kg
        assertEquals(0.5, BOTTLE.charged(10 * POUND - 3 * 0.96, 298).liquidMass(), 0.05);
        assertEquals(1.8, BOTTLE.charged(10 * POUND - 2 * 0.96, 298).liquidMass(), 0.05);
        assertEquals(3, passes.whole());
        Pass last = passes.passes().get(passes.passes().size() - 1);
        assertEquals(PassEnd.LIQUID_GONE, last.end());
        double drawn = passes.passes().stream().mapToDouble(Pass::massUsed).sum();
        assertEquals(10 * POUND - last.massLeft(), drawn, 1e-9);
        assertEquals(0.08 * 12, passes.passes().get(0).massUsed(), 1e-9);
    }

    // a charge too small for liquid at all, and one whose liquid lasts part of a pass
    @Test
    void vapourIsNoPass() {
        for (double pounds : new double[] {0.2, 1, 2}) {
            Passes passes = Passes.of(BOTTLE.charged(pounds * POUND, 298), task(0.08, 10), 100);
            assertEquals(0, passes.whole(), pounds + " lb");
            assertEquals(PassEnd.LIQUID_GONE, passes.passes().get(0).end(), pounds + " lb");
        }
        assertEquals(
                PassEnd.NOTHING_TAKEN, task(0, 10).run(BOTTLE.charged(4, 298)).end());
    }

    @Test
    void aStartOutsideTheBandGivesNothing() {
        Pass warm = task(0.08, 10).run(BOTTLE.charged(11 * POUND, 305));
        assertEquals(PassEnd.BAND_HIGH, warm.end());
        assertEquals(0, warm.seconds());
        assertEquals(
                PassEnd.BAND_LOW, task(0.08, 10).run(BOTTLE.charged(4, 280)).end());
    }

    // with a start within the band; jets by the square root of the pressure difference, and constant flows
    @Test
    void moreChargeNeverGivesFewerPasses() {
        List<String> wrong = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < BOTTLES; i++) {
            Bottle bottle = new Bottle(1e-3 * Math.pow(40, random.nextDouble()), 7 * random.nextInt(2), 900);
            double temperature = 285 + 18 * random.nextDouble();
            double largest = 680 * bottle.waterCapacity();
            double seconds = 3 + 15 * random.nextDouble();
            double flow = largest / seconds / (1 + 6 * random.nextDouble());
            double start = bottle.charged(0.5 * largest, temperature).pressure();
            WorkingBand band = new WorkingBand((0.6 + 0.3 * random.nextDouble()) * start, 90e5);
            Outflow outflow = random.nextBoolean() ? Outflow.constant(flow) : jet(flow, start);
            PassTask task = PassTask.of(bottle, outflow, seconds, band, temperature, temperature);
            int before = Integer.MAX_VALUE;
            for (double share = 1; share > 0.1; share -= 0.15) {
                int now = Passes.of(bottle.charged(share * largest, temperature), task, 20)
                        .whole();
                if (now > before) {
                    wrong.add(bottle + " " + temperature + " " + share + ": " + before + " then " + now + " " + task);
                }
                before = now;
            }
        }
        assertEquals(List.of(), wrong);
    }

    private static Outflow jet(double flow, double start) {
        double scale = Math.sqrt(750 * start);
        return (double time, FluidState outlet) -> flow * Math.sqrt(outlet.density() * outlet.pressure()) / scale;
    }

    @Test
    void theScaleTableRunsDownToNothing() {
        List<Passes.ScaleRow> rows = Passes.byScale(BOTTLE, 298, task(0.08, 12), 10 * POUND, 2 * POUND, 10);
        assertEquals(5, rows.size());
        assertEquals(3, rows.get(0).passes());
        assertEquals(0, rows.get(4).passes());
        for (int i = 1; i < rows.size(); i++) {
            assertTrue(rows.get(i).passes() <= rows.get(i - 1).passes());
        }
    }

    @Test
    void aTimedRestWithoutHeatStartsColder() {
        HeatInput air = HeatInput.surroundings(290);
        Passes rested =
                Passes.of(BOTTLE.charged(10 * POUND, 298), task(0.08, 12).withRest(new Rest.Timed(300, air)), 3);
        assertEquals(3, rested.passes().size());
        assertTrue(rested.passes().get(1).start().temperature() < 297);
    }
}
