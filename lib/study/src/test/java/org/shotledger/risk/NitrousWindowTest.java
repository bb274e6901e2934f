package org.shotledger.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.budget.Budget;
import org.shotledger.budget.LimitSheet;
import org.shotledger.budget.Verdict;

/** The window of the invented demo build. */
class NitrousWindowTest {
    private static final Budget BUDGET = Heron.BUDGET;
    private static final NitrousWindow WINDOW = NitrousWindow.of(BUDGET);

    @ParameterizedTest
    @ValueSource(
            strings = {"rpm", "throttle", "boost", "lambda", "fuel-pressure", "bottle-pressure", "voltage", "gear"})
    void every_gate_stands_around_the_plan_with_a_reason(String key) {
        Gate gate = WINDOW.find(key).orElseThrow();
        assertFalse(gate.lowReason().isEmpty(), key);
        if (!Double.isNaN(gate.planned())) {
            assertFalse(gate.closesAt(gate.planned()), key + " does not close the plan");
            assertTrue(key.equals("rpm") || gate.opensAt(gate.planned()), key + " opens at the plan");
        }
    }

    @Test
    void a_gate_opens_later_than_it_closes() {
        Gate gate = WINDOW.find("bottle-pressure").orElseThrow();
        double just = gate.low() + 0.5 * gate.hysteresis();
        assertFalse(gate.closesAt(just));
        assertFalse(gate.opensAt(just));
        assertTrue(gate.closesAt(gate.low() * 0.999));
        assertTrue(gate.opensAt(gate.low() + 1.01 * gate.hysteresis()));
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
        Gate gate = WINDOW.find("bottle-pressure").orElseThrow();
        assertTrue(gate.low() >= BUDGET.build().limits().bottlePressureLow());
        assertTrue(gate.high() <= BUDGET.build().limits().bottlePressureHigh());
    }

    @Test
    void a_window_written_too_wide_is_told() {
        Budget wide = Budget.plan(BUDGET.build().with("wet-kit.window.rpm-low", "5000 rpm"), BUDGET.wish());
        String words = NitrousWindow.of(wide).comparison();
        assertTrue(words.contains("too far down"), words);
        assertTrue(WINDOW.comparison().endsWith("lies inside."), WINDOW.comparison());
    }

    @Test
    void the_mixture_gate_is_that_of_the_builder() {
        Gate gate = WINDOW.find("lambda").orElseThrow();
        assertEquals(BUDGET.build().limits().lambdaHigh(), gate.high());
        assertEquals(BUDGET.build().limits().lambdaLow(), gate.low());
    }

    private static boolean safe(double rpm) {
        return LimitSheet.of(BUDGET.build(), BUDGET.planned(rpm)).verdict() != Verdict.BROKEN;
    }
}
