package org.shotledger.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Each refusal is one sentence with name, value and what is allowed; what is allowed passes unchanged. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RequireTest {

    @Test
    void numbers_outside_their_limits_are_refused() {
        assertEquals(
                "The bore is 1.0 m; allowed is 0.04 to 0.16 m. Check the value and its unit.",
                message(() -> Require.within("bore", 1, 0.04, 0.16, "m")));
        assertEquals(
                "The share of pump is NaN; allowed is 0.0 to 1.0. Check the value and its unit.",
                message(() -> Require.within("share", "pump", Double.NaN, 0, 1, "")));
        assertEquals(
                "The mass is 0.0 kg; it must be a finite number above zero.",
                message(() -> Require.positive("mass", 0, "kg")));
        assertEquals(
                "The mass is -1.0 kg; it must be a finite number, zero or above.",
                message(() -> Require.notNegative("mass", -1, "kg")));
        assertEquals(
                "The mass of shell is Infinity kg; it must be a finite number, zero or above.",
                message(() -> Require.notNegative("mass", "shell", Double.POSITIVE_INFINITY, "kg")));
        assertEquals(0.04, Require.within("bore", 0.04, 0.04, 0.16, "m"));
        assertEquals(0, Require.notNegative("mass", "shell", 0, "kg"));
    }

    @Test
    void what_is_missing_is_named() {
        assertEquals("The pump has no name; give it one.", message(() -> Require.named("pump", " ")));
        assertEquals("The curve is missing; give one.", message(() -> Require.given("curve", null)));
    }

    @Test
    void a_figure_is_a_finite_number() {
        assertEquals(
                "A figure of kind mass flow is NaN; give a finite number.",
                message(() -> new Amount(QuantityKind.MASS_FLOW, Double.NaN)));
    }

    private static String message(Executable attempt) {
        return assertThrows(IllegalArgumentException.class, attempt).getMessage();
    }
}
