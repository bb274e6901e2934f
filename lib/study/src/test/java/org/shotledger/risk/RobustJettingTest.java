package org.shotledger.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.shotledger.plan.Plan;

/** The most robust jets of the invented demo build. */
class ForgivingTest {
    private static final Budget BUDGET = Heron.BUDGET;
    private static final RobustJetting FORGIVING = RobustJetting.of(BUDGET);

    @Test
    void the_most_forgiving_setting_bears_at_least_what_the_plan_bears_and_meets_the_wish() {
        RobustJetting.Choice plan = FORGIVING.plan();
        RobustJetting.Choice best = FORGIVING.meeting();
        assertTrue(best.tolerance() >= plan.tolerance());
        assertTrue(best.tolerance() > plan.tolerance() || best.boostHeld() >= plan.boostHeld());
        assertTrue(BUDGET.wish().metBy(best.wheelPower()));
    }

    @Test
    void no_setting_is_leaner_than_the_tune_wants() {
        double leanest = BUDGET.mixtureGoal().value(); // the demo's goal is a total lambda
        for (RobustJetting.Choice choice : FORGIVING.byNitrousJet()) {
            assertTrue(choice.lambda() <= leanest, choice.toString());
        }
    }

    @Test
    void no_point_inside_the_box_breaks_a_limit_that_the_corners_keep() {
        // the measure rests on monotone behaviour: corners and sides are asked, the inside is not; here it is
        Drift drift = Drift.of(BUDGET);
        double size = Tolerance.of(drift).size();
        DriftBand band = drift.band();
        double high = BUDGET.build().limits().bottlePressureHigh() * (1 - 1e-9);
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
        Drift drift = Drift.of(BUDGET);
        Tolerance found = Tolerance.of(drift);
        assertTrue(Tolerance.holds(drift, found.size()));
        assertFalse(Tolerance.holds(drift, found.size() + 0.02));
        assertFalse(found.stoppedBy().isEmpty());
    }

    @Test
    void twice_the_band_halves_the_excursion() {
        DriftBand band = DriftBand.of(BUDGET.build());
        DriftBand twice = new DriftBand(2 * band.bottlePressure(), 2 * band.fuelPressure(), 2 * band.boost(), "");
        double one = Tolerance.of(Drift.of(BUDGET, band)).size();
        double two = Tolerance.of(Drift.of(BUDGET, twice)).size();
        assertEquals(one / 2, two, 0.02);
    }

    @Test
    void a_setting_that_keeps_a_share_of_the_wish_gives_at_least_that_power() {
        RobustJetting.Choice kept = FORGIVING.keeping(0.95).orElseThrow();
        assertTrue(kept.wheelPower() >= 0.95 * FORGIVING.wish());
        assertTrue(kept.tolerance() >= FORGIVING.meeting().tolerance());
        assertTrue(FORGIVING.keeping(2).isEmpty());
    }
}
