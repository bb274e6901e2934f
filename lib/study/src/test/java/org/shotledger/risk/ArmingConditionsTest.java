package org.shotledger.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.plan.Plan;

/** The arming conditions of the invented demo car. */
class ArmingConditionsTest {
    private static final Plan PLAN = Whimbrel.PLAN;
    private static final ActivationWindow EVERYWHERE = new ActivationWindow(1, 20_000);
    private static final ArmingConditions ARMING = ArmingConditions.of(PLAN);

    @ParameterizedTest
    @ValueSource(
            strings = {"rpm", "throttle", "boost", "lambda", "fuel-pressure", "bottle-pressure", "voltage", "gear"})
    void every_interlock_stands_around_the_plan_with_a_reason(String key) {
        Interlock interlock = ARMING.find(key).orElseThrow();
        assertFalse(interlock.lowReason().isEmpty(), key);
        if (!Double.isNaN(interlock.planned())) {
            assertFalse(interlock.closesAt(interlock.planned()), key + " does not close the plan");
        }
    }

    @Test
    void an_interlock_closes_below_its_low_bound() {
        Interlock interlock = ARMING.find("bottle-pressure").orElseThrow();
        double just = interlock.low() + 0.5 * interlock.hysteresis();
        assertFalse(interlock.closesAt(just));
        assertTrue(interlock.closesAt(interlock.low() * 0.999));
    }

    @Test
    void the_lowest_speed_keeps_every_limit_and_the_next_breaks_one() {
        double low = ARMING.find("rpm").orElseThrow().kept().low();
        assertTrue(safe(low));
        assertFalse(safe(low - 50));
    }

    @Test
    void the_highest_speed_leaves_room_to_the_red_line_for_the_time_of_the_cut() {
        double high = ARMING.find("rpm").orElseThrow().kept().high();
        assertTrue(high < PLAN.car().engine().redLineRpm());
        assertTrue(safe(high));
    }

    @Test
    void speeds_and_bottle_band_are_the_figures_of_setup_and_car() {
        Interlock rpm = ARMING.find("rpm").orElseThrow();
        assertEquals(PLAN.setup().arming().rpmLow(), rpm.low());
        assertEquals(PLAN.setup().arming().rpmHigh(), rpm.high());
        Interlock bottle = ARMING.find("bottle-pressure").orElseThrow();
        assertEquals(PLAN.car().limits().bottlePressureLow(), bottle.low());
        assertEquals(PLAN.car().limits().bottlePressureHigh(), bottle.high());
    }

    @Test
    void closed_nitrous_opens_only_within_the_boost_tolerance_of_the_setup() {
        Interlock boost = ARMING.find("boost").orElseThrow();
        double tolerance = PLAN.setup().boost().tolerance();
        if (boost.high() > tolerance) {
            assertEquals(tolerance, boost.high() - boost.hysteresis(), 1e-9 * boost.high());
        }
    }

    @Test
    void speeds_set_too_wide_are_told() {
        double low = ARMING.find("rpm").orElseThrow().kept().low() - 300;
        ActivationWindow too = new ActivationWindow(low, PLAN.setup().arming().rpmHigh());
        ArmingConditions wide =
                ArmingConditions.of(Plan.of(PLAN.job(), PLAN.setup().withArming(too)));
        assertTrue(wide.comparison().contains("too far down"), wide.comparison());
        assertTrue(
                wide.reachingTooFar().stream().anyMatch(s -> s.contains("engine speed")),
                wide.reachingTooFar().toString());
    }

    @Test
    void the_mixture_interlock_is_that_of_the_builder() {
        Interlock interlock = ARMING.find("lambda").orElseThrow();
        assertEquals(PLAN.car().limits().lambdaHigh(), interlock.high());
        assertEquals(PLAN.car().limits().lambdaLow(), interlock.low());
    }

    private static boolean safe(double rpm) {
        return Evaluate.at(
                        PLAN.car(),
                        PLAN.setup().withArming(EVERYWHERE),
                        PLAN.stated().at(),
                        rpm)
                .map(point -> PointLimits.of(PLAN.car(), point).margin() >= 0)
                .orElse(false);
    }
}
