package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.display.Display;
import org.shotledger.plan.Plan;
import org.shotledger.risk.ArmingConditions;
import org.shotledger.risk.BoostReference;
import org.shotledger.risk.Drift;
import org.shotledger.risk.DriftMap;
import org.shotledger.risk.Fault;
import org.shotledger.risk.Faults;
import org.shotledger.risk.RobustJetting;
import org.shotledger.table.Shown;
import org.shotledger.units.UnitSystem;

/** How drift, jetting jets, arming and faults of the invented demo build look. */
class RiskViewTest {
    private static final Plan PLAN = Demo.PLAN;

    @Test
    void aDriftMapShowsItsSafeRegionWithTheLimitsThatEndItNamed() {
        DriftMap map = DriftMap.of(PLAN);
        String html = html(map);
        String named = map.edges().stream()
                .flatMap(edge -> edge.limit().stream())
                .map(limit -> limit.name() + "</text>")
                .filter(html::contains)
                .findFirst()
                .orElse("");
        assertTrue(html.contains("every limit kept") && !named.isEmpty(), "chart");
        assertTrue(html.contains("Where the safe region ends"), "table");
    }

    @Test
    void theRegionDrawnAgreesWithTheMapAtItsPoints() {
        DriftMap map = DriftMap.of(Drift.of(PLAN), 0, DriftMap.grid(45e5, 70e5, 6), DriftMap.grid(2e5, 5e5, 6));
        DriftFields fields = DriftFields.of(map);
        for (int j = 0; j < 6; j++) {
            for (int i = 0; i < 6; i++) {
                assertEquals(map.outcomes().get(j).get(i).safe(), fields.safe()[5 * j][5 * i], j + ", " + i);
                assertEquals(map.bottlePressures().get(i), fields.bottlePressure()[5 * i], 1e-6);
            }
        }
    }

    @Test
    void everyPointOfAMapCanBeHadAsATable() {
        DriftMap map = DriftMap.of(Drift.of(PLAN), 0, DriftMap.grid(60e5, 66e5, 2), DriftMap.grid(3e5, 4e5, 3));
        assertEquals(6, RiskTables.points(map).in(Shown.SI).table().rowCount());
    }

    @Test
    void faultsShowWhatCatchesThemAndWhatDoesNot() {
        Faults faults = Faults.of(PLAN).and(Fault.sudden("<own> fault", s -> s.withFuelPressure(2.8e5)));
        String html = html(faults);
        assertTrue(html.contains("not caught in time"), "chart");
        assertTrue(html.contains("&lt;own&gt; fault"), "escaped");
        assertTrue(html.contains("close the bottle"), "leak");
        String text = RiskTables.effects(faults).in(Shown.SI).toText()
                + RiskTables.catches(faults).in(Shown.SI).toText();
        assertTrue(!text.contains("Infinity") && !text.contains("NaN"), text);
    }

    @Test
    void boostReferenceForgivingAndWindowShowThemselves() {
        assertTrue(html(BoostReference.of(PLAN)).contains("regulator follows boost"));
        assertTrue(html(ArmingConditions.of(PLAN)).contains("When the nitrous may be on"));
        RobustJetting jetting = RobustJetting.of(PLAN);
        assertTrue(html(jetting).contains("most forgiving that meets the target"));
        assertTrue(RiskCharts.of(jetting, UnitSystem.SI).svg().contains("Most power at the wheels, kW"));
    }

    private static String html(Object value) {
        return (String) Display.bundle(value).get(Display.HTML);
    }
}
