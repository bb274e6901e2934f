package org.shotledger.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.plan.Plan;
import org.shotledger.budget.LimitSheet;
import org.shotledger.limits.Verdict;

/** The window of the invented demo build. */
class NitrousWindowTest {
    private static final Budget BUDGET = Heron.BUDGET;
    private static final ArmingConditions WINDOW = ArmingConditions.of(BUDGET);

    @ParameterizedTest
    @ValueSource(
            strings = {"rpm", "throttle", "boost", "lambda", "fuel-pressure", "bottle-pressure", "voltage", "gear"})
    void every_gate_stands_around_the_plan_with_a_reason(String key) {
        Interlock interlock = WINDOW.find(key).orElseThrow();
        assertFalse(interlock.lowReason().isEmpty(), key);
        if (!Double.isNaN(interlock.planned())) {
            assertFalse(interlock.closesAt(interlock.planned()), key + " does not close the plan");
            assertTrue(key.equals("rpm") || interlock.opensAt(interlock.planned()), key + " opens at the plan");
        }
    }

    @Test
    void a_gate_opens_later_than_it_closes() {
        Interlock interlock = WINDOW.find("bottle-pressure").orElseThrow();
        double just = interlock.low() + 0.5 * interlock.hysteresis();
        assertFalse(interlock.closesAt(just));
        assertFalse(interlock.opensAt(just));
        assertTrue(interlock.closesAt(interlock.low() * 0.999));
        assertTrue(interlock.opensAt(interlock.low() + 1.01 * interlock.hysteresis()));
    }

    @Test
    void the_lowest_speed_keeps_every_limit_and_the_next_breaks_one() {
        double low = WINDOW.find("rpm").orElseThrow().low();
        assertTrue(safe(low));
        assertFalse(safe(low - 50));
    }

    @Test
    void the_highest_speed_leaves_room_to_the_red_line_for_the_time_of_the_cut() {
        double high = WINDOW.find("rpm").orElseThrow().high();
        assertTrue(high < BUDGET.build().engine().redLineRpm());
        assertTrue(safe(high));
    }

    @Test
    void the_bottle_gate_does_not_reach_beyond_the_sheet() {
        Interlock interlock = WINDOW.find("bottle-pressure").orElseThrow();
        assertTrue(interlock.low() >= BUDGET.build().limits().bottlePressureLow());
        assertTrue(interlock.high() <= BUDGET.build().limits().bottlePressureHigh());
    }

    @Test
    void a_window_written_too_wide_is_told() {
        Budget wide = Budget.plan(BUDGET.build().with("wet-kit.window.rpm-low", "5000 rpm"), BUDGET.wish());
        String words = ArmingConditions.of(wide).comparison();
        assertTrue(words.contains("too far down"), words);
        assertTrue(WINDOW.comparison().endsWith("lies inside."), WINDOW.comparison());
    }

    @Test
    void the_mixture_gate_is_that_of_the_builder() {
        Interlock interlock = WINDOW.find("lambda").orElseThrow();
        assertEquals(BUDGET.build().limits().lambdaHigh(), interlock.high());
        assertEquals(BUDGET.build().limits().lambdaLow(), interlock.low());
    }

    private static boolean safe(double rpm) {
        return LimitSheet.of(BUDGET.build(), BUDGET.planned(rpm)).verdict() != Verdict.BROKEN;
    }
}
