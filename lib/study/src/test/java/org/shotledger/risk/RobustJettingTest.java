package org.shotledger.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.plan.Plan;

/** The most robust jets of the invented demo car. */
class RobustJettingTest {
    private static final Plan PLAN = Whimbrel.PLAN;
    private static final RobustJetting ROBUST = RobustJetting.of(PLAN);

    @Test
    void the_most_forgiving_setting_bears_at_least_what_the_plan_bears_and_meets_the_wish() {
        RobustJetting.Choice plan = ROBUST.plan();
        RobustJetting.Choice best = ROBUST.meeting();
        assertTrue(best.tolerance() >= plan.tolerance());
        assertTrue(best.tolerance() > plan.tolerance() || best.boostHeld() >= plan.boostHeld());
        assertTrue(PLAN.target().reachedBy(best.wheelPower()));
    }

    @Test
    void no_setting_is_leaner_than_the_tune_wants() {
        // the demo's goal is a total lambda; the plan's own lambda lies a little beside it away from its speed of most
        // power
        double leanest = Math.max(
                PLAN.target().mixture().value(),
                PLAN.stated().withNitrous().stream()
                        .mapToDouble(OperatingPoint::lambda)
                        .max()
                        .orElseThrow());
        for (RobustJetting.Choice choice : ROBUST.byNitrousJet()) {
            assertTrue(choice.lambda() <= leanest + 1e-6, choice.toString());
        }
    }

    @Test
    void no_point_inside_the_box_breaks_a_limit_that_the_corners_keep() {
        // the measure rests on monotone behaviour: corners and sides are asked, the inside is not; here it is
        Drift drift = Drift.of(PLAN);
        double size = Tolerance.of(drift).size();
        DriftBand band = drift.band();
        double high = PLAN.car().limits().bottlePressureHigh() * (1 - 1e-9);
        SplittableRandom random = new SplittableRandom(55);
        for (int i = 0; i < 400; i++) {
            double bottle = drift.bottlePressure() + random.nextDouble(-size, size) * band.bottlePressure();
            FaultOutcome inside = drift.at(
                    Math.min(bottle, high),
                    drift.fuelPressure() + random.nextDouble(-size, size) * band.fuelPressure(),
                    random.nextDouble(-size, size) * band.boost());
            assertTrue(inside.safe(), inside.firstWords());
        }
    }

    @Test
    void the_box_ends_where_it_says() {
        Drift drift = Drift.of(PLAN);
        Tolerance found = Tolerance.of(drift);
        assertTrue(Tolerance.holds(drift, found.size()));
        assertFalse(Tolerance.holds(drift, found.size() + 0.02));
        assertFalse(found.stoppedBy().isEmpty());
    }

    @Test
    void twice_the_band_halves_the_excursion() {
        DriftBand band = DriftBand.of(Scenario.of(PLAN));
        DriftBand twice = new DriftBand(2 * band.bottlePressure(), 2 * band.fuelPressure(), 2 * band.boost(), "");
        double one = Tolerance.of(Drift.of(PLAN, band)).size();
        double two = Tolerance.of(Drift.of(PLAN, twice)).size();
        assertEquals(one / 2, two, 0.02);
    }
}
