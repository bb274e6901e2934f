package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.budget.BottleDay;
import org.shotledger.chart.ChartPicture;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;
import org.shotledger.units.UnitSystem;

/** The bottle of the invented demo build. */
class BottleViewsTest {
    private static final BottleDay DAY = BottleDay.of(Heron.BUDGET);

    // 49 CFR 173.304a(a)(2): nitrous oxide is filled to no more than 68.0 % of the water capacity by mass
    @Test
    void theFillingIsHeldAgainstTheRuleInBothUnits() {
        Listing filling = BottleViews.filling(Heron.BUDGET, DAY);
        assertEquals("680.0 kg/m\u00b3", Heron.cell(filling.in(Shown.SI), "allowed by 49 CFR 173.304a", 1));
        assertEquals("42.45 lb/ft\u00b3", Heron.cell(filling.in(Shown.US), "allowed by 49 CFR 173.304a", 1));
        assertEquals("10.00 lb (4.536 kg)", Heron.cell(filling, "charge, by mass", 1));
    }

    @Test
    void aDayHasOneRowAPassAndSaysWhichIsFull() {
        Listing passes = BottleViews.passes(DAY);
        List<String> results = Heron.column(passes.in(Shown.SI), 5);
        assertEquals(DAY.passes().size(), results.size());
        assertEquals(
                DAY.passes().stream().filter(BottleDay.Pass::full).count(),
                results.stream().filter("full"::equals).count());
        double[] charge =
                passes.in(Shown.SI).table().doubleColumn("Charge before, kg").asDoubleArray();
        for (int i = 1; i < charge.length; i++) {
            assertTrue(charge[i] < charge[i - 1], "a pass takes from the bottle");
        }
    }

    @Test
    void aBottleThatFillsWithLiquidBelowItsStartIsWarnedOf() {
        String warned = String.join("\n", BottleViews.warnings(Heron.BUDGET));
        assertTrue(warned.contains("start temperature") && warned.contains("liquid fills the bottle from"), warned);
        assertTrue(warned.contains("\u00b0F (") && warned.contains("\u00b0C)"), warned);
    }

    @Test
    void thePassIsDrawnInTheUnitsAskedFor() {
        ChartPicture us = BottleViews.pass(Heron.BUDGET, UnitSystem.US);
        ChartPicture si = BottleViews.pass(Heron.BUDGET, UnitSystem.SI);
        assertEquals("Bottle pressure, psi abs", us.chart().getYAxisTitle());
        assertEquals("Bottle pressure, bar abs", si.chart().getYAxisTitle());
        assertTrue(us.svg().contains(">Power at the wheels, hp<") && si.svg().contains(">Power at the wheels, kW<"));
        assertTrue(si.svg().contains(">bottle at least "), "limit");
        assertFalse(si.alt().contains("psi"), si.alt());
        double[] time = si.chart().getSeriesMap().get("bottle pressure (left)").getXData();
        assertEquals(0, time[0]);
        assertEquals(Heron.BUDGET.wish().passSeconds(), time[time.length - 1], 0.5);
    }
}
