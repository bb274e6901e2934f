package org.shotledger.stepup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;

/** The ladder of shots on the invented demonstration car: order, ends, limits, and checkpoints that shut where they say. */
class StepUpTest {
    private static final Plan PLAN = Plan.find(Job.load(Path.of("../../data/whimbrel")));
    private static final StepUp STEPS = StepUp.of(PLAN);

    @Test
    void power_and_jets_rise_from_step_to_step_to_the_plan_itself() {
        for (int i = 1; i < STEPS.shots().size(); i++) {
            Shot before = STEPS.shots().get(i - 1);
            Shot now = STEPS.shots().get(i);
            assertTrue(now.wheelPower() > before.wheelPower());
            assertTrue(now.setup().jets().orElseThrow().nitrousBore()
                    > before.setup().jets().orElseThrow().nitrousBore());
        }
        assertTrue(STEPS.shots().size() >= 3, "steps: " + STEPS.shots().size());
        Shot last = STEPS.fullShot().orElseThrow();
        assertSame(PLAN.setup(), last.setup());
        assertEquals(PLAN.stated().power(), last.wheelPower());
        assertEquals(1, last.share());
    }

    /** The figures printed for a step are those of its setup: worked out once more from nothing but that setup. */
    @Test
    void each_step_is_its_setup_evaluated() {
        for (Shot shot : STEPS.shots()) {
            var again = Evaluate.of(PLAN.car(), shot.setup(), PLAN.job().stated());
            assertEquals(again.power(), shot.wheelPower(), 1e-9 * again.power());
            assertEquals(again.strongest().orElseThrow().lambda(), shot.point().lambda(), 1e-9);
            assertEquals(PLAN.setup().boost(), shot.setup().boost());
            assertEquals(PLAN.setup().retard(), shot.spark().planned());
        }
    }

    @Test
    void no_step_is_closer_to_a_limit_than_the_full_shot() {
        for (Shot shot : STEPS.shots()) {
            assertTrue(shot.plan().parts().leastMargin() >= PLAN.parts().leastMargin() - 1e-6, "step " + shot.step());
        }
    }

    @Test
    void the_band_widens_with_the_shot_and_holds_the_expected_power() {
        double before = 0;
        for (Shot shot : STEPS.shots()) {
            double width = shot.highPower() - shot.lowPower();
            assertTrue(width > before);
            before = width;
            assertTrue(shot.lowPower() < shot.wheelPower() && shot.wheelPower() < shot.highPower());
        }
    }

    @Test
    void what_the_model_expects_passes_every_checkpoint_and_a_fault_does_not() {
        for (Shot shot : STEPS.shots()) {
            for (Checkpoint checkpoint : shot.checkpoints()) {
                assertTrue(
                        Double.isNaN(checkpoint.expected()) || checkpoint.go(checkpoint.expected()),
                        checkpoint.toString());
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
    void retard_of_the_trade_grows_with_the_shot() {
        double before = 0;
        for (Shot shot : STEPS.shots()) {
            Spark spark = shot.spark();
            assertTrue(spark.habitHigh() > before);
            before = spark.habitHigh();
            assertEquals(2 * spark.habitLow(), spark.habitHigh(), 1e-9);
            assertTrue(spark.most() >= spark.planned() && spark.most() >= spark.habitHigh());
        }
    }
}
