package org.shotledger.stepup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.shotledger.budget.Budget;
import org.shotledger.build.Build;

/** The ladder of shots on the invented demo build: order, ends, and checkpoints that shut where they say. */
class StepUpTest {
    private static final Budget BUDGET = Budget.plan(Build.load(Path.of("../../data/heron/build.yaml")));
    private static final StepUp PLAN = StepUp.of(BUDGET);

    @Test
    void power_and_jets_rise_from_step_to_step_to_the_budgets_own_pair() {
        for (int i = 1; i < PLAN.shots().size(); i++) {
            var before = PLAN.shots().get(i - 1).option();
            var now = PLAN.shots().get(i).option();
            assertTrue(now.wheelPower() > before.wheelPower());
            assertTrue(now.pair().nitrousBore() > before.pair().nitrousBore());
        }
        assertTrue(PLAN.shots().size() >= 3);
        Shot last = PLAN.shots().get(PLAN.shots().size() - 1);
        assertEquals(BUDGET.jets().chosen(), last.option());
        assertEquals(1, last.share(), 1e-9);
    }

    @Test
    void the_band_widens_with_the_shot_and_holds_the_expected_power() {
        double before = 0;
        for (Shot shot : PLAN.shots()) {
            double width = shot.highPower() - shot.lowPower();
            assertTrue(width > before);
            before = width;
            assertTrue(shot.lowPower() < shot.option().wheelPower()
                    && shot.option().wheelPower() < shot.highPower());
        }
    }

    @Test
    void what_the_model_expects_passes_every_gate_and_a_fault_does_not() {
        for (Shot shot : PLAN.shots()) {
            for (Checkpoint checkpoint : shot.checkpoints()) {
                assertTrue(
                        Double.isNaN(checkpoint.expected()) || checkpoint.go(checkpoint.expected()), checkpoint.what());
                assertFalse(checkpoint.go(Double.NaN), checkpoint.what());
            }
            Checkpoint fuel = shot.checkpoints().stream()
                    .filter(g -> g.what().startsWith("nitrous fuel pressure"))
                    .findFirst()
                    .orElseThrow();
            assertFalse(fuel.go(0.85 * fuel.expected()), "a fuel pressure that sags shuts the checkpoint");
        }
    }

    @Test
    void retard_of_the_trade_grows_with_the_shot_and_the_largest_figure_is_taken_first() {
        double before = 0;
        for (Shot shot : PLAN.shots()) {
            Spark spark = shot.spark();
            assertTrue(spark.habitHigh() > before);
            before = spark.habitHigh();
            assertEquals(2 * spark.habitLow(), spark.habitHigh(), 1e-9);
            assertTrue(spark.first() >= spark.planned() && spark.first() >= spark.habitHigh());
        }
    }
}
