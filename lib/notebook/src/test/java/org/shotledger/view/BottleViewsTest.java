package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BottleFill;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;

/** The bottle of the invented demonstration job. */
class BottleViewsTest {
    private static final Plan FULL = filled(0.68e3, 305.15);

    // 49 CFR 173.304a(a)(2): nitrous oxide is filled to no more than 68.0 % of the water capacity by mass
    @Test
    void theFillingIsHeldAgainstTheRuleInBothUnits() {
        Listing filling = BottleViews.filling(FULL);
        assertEquals("680.0 kg/m\u00b3", Demo.cell(filling.in(Shown.SI), "allowed by 49 CFR 173.304a", 1));
        assertEquals("42.45 lb/ft\u00b3", Demo.cell(filling.in(Shown.US), "allowed by 49 CFR 173.304a", 1));
        assertEquals("680.0 kg/m\u00b3", Demo.cell(filling.in(Shown.SI), "charge per water capacity", 1));
    }

    // liquid of 680 kg/m3 has the boiling temperature 301 K: NIST Chemistry WebBook, saturation of N2O (from memory)
    @Test
    void aBottleThatFillsWithLiquidBelowItsStartIsWarnedOf() {
        String warned = String.join("\n", BottleViews.warnings(FULL));
        assertTrue(warned.contains("start temperature") && warned.contains("liquid fills the bottle from"), warned);
        assertTrue(warned.contains("\u00b0F (") && warned.contains("\u00b0C)"), warned);
        assertTrue(BottleViews.warnings(filled(0.4e3, 290)).stream()
                .noneMatch(sentence -> sentence.contains("liquid fills the bottle from")));
    }

    private static Plan filled(double density, double temperature) {
        Plan plan = Demo.PLAN;
        double charge = density * plan.car().bottle().vessel().waterCapacity();
        return new Plan(
                plan.job(),
                plan.setup().withBottle(new BottleFill(charge, temperature)),
                plan.outcomes(),
                plan.limits(),
                plan.alternatives(),
                plan.stopped(),
                plan.moved());
    }
}
