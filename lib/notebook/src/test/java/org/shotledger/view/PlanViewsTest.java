package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.Samples;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.limits.Limits;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** How the plan of the invented demonstration job looks. */
class PlanViewsTest {
    // NIST SP 811 (2008), appendix B
    private static final double WATT_PER_HP = 745.69987158227022;
    private static final double METRE_PER_THOU = 25.4e-6;
    private static final Plan PLAN = Demo.PLAN;

    @AfterEach
    void backToUs() {
        Viewing.choose(Shown.US);
    }

    @Test
    void limitsShowValueBoundMarginCaseAndPlaceTheClosestFirst() {
        Limits limits = new Limits(Samples.margins().limits());
        Listing rows = LimitTables.of(limits).in(Shown.US);
        assertEquals("injector duty", Demo.column(rows, 0).get(0));
        assertEquals("1711.4 psi abs", Demo.cell(rows, "peak cylinder pressure", 1));
        assertEquals("\u25a0 broken", Demo.cell(rows, "injector duty", 5));
        assertEquals("hot", Demo.cell(rows, "injector duty", 6));
        assertEquals("7,000 rpm", Demo.cell(rows, "injector duty", 7));
    }

    // a pressure relief device is no builder's choice: 49 CFR 173.301(f), CGA S-1.1
    @Test
    void aHardLimitIsMovedByNobody() {
        Listing reasons = LimitTables.reasons(PLAN.limits());
        PLAN.limits()
                .all()
                .forEach(limit -> assertEquals(
                        limit.hard(), Demo.cell(reasons, limit.name(), 3).startsWith("nobody"), limit.name()));
        assertTrue(PLAN.limits().all().stream().anyMatch(limit -> limit.hard()), "there is one");
    }

    @Test
    void aBareResultFollowsTheUnitsOfTheSession() {
        var renderer = new ResultRenderer.OfLimits();
        Limits limits = new Limits(Samples.margins().limits());
        assertTrue(renderer.render(limits).toString().contains("1711.4 psi abs"));
        Viewing.choose(Shown.SI);
        assertTrue(renderer.render(limits).toString().contains("118.00 bar abs"));
        assertFalse(renderer.render(limits).toString().contains("psi"));
    }

    @Test
    void theSettingsAreThoseOfTheSetupInBothUnits() {
        Setup setup = PLAN.setup();
        var jets = setup.jets().orElseThrow();
        Listing us = SetupTables.of(setup).in(Shown.US);
        assertEquals(jets.nitrousBore() / METRE_PER_THOU, number(Demo.cell(us, "nitrous jet, every nozzle", 1)), 0.051);
        Listing si = SetupTables.of(setup).in(Shown.SI);
        assertEquals(1e3 * jets.fuelBore(), number(Demo.cell(si, "nitrous fuel jet, every nozzle", 1)), 0.00051);
        assertEquals(
                setup.bottle().startTemperature() - 273.15,
                number(Demo.cell(si, "bottle temperature at the start", 1)),
                0.051);
        assertEquals(setup.retard(), number(Demo.cell(si, "spark retard while the nitrous flows", 1)), 0.051);
    }

    @Test
    void everyStepOfBothBoostTablesStandsInOneTable() {
        var table = SetupTables.boost(PLAN.setup()).in(Shown.SI).table();
        double[] rpm = table.doubleColumn(0).asDoubleArray();
        double[] armed = table.doubleColumn(2).asDoubleArray();
        PLAN.setup().boost().armed().steps().forEach(step -> {
            int at = Arrays.binarySearch(rpm, step.rpm());
            assertTrue(at >= 0, step + " is missing");
            assertEquals(step.gaugePressure() / 1e5, armed[at], 1e-9);
        });
    }

    @Test
    void everyCaseStandsInTheTableWithThePowerOfItsOutcome() {
        Listing rows = OutcomeTables.outcomes(PLAN.outcomes()).in(Shown.US);
        double[] power = rows.table().doubleColumn(1).asDoubleArray();
        for (int i = 0; i < power.length; i++) {
            assertEquals(PLAN.outcomes().get(i).power() / WATT_PER_HP, power[i], 1e-9);
        }
        assertEquals(PLAN.outcomes().size(), power.length);
    }

    @Test
    void powerOverEngineSpeedHoldsThePeakAndTheEndsOfTheNitrous() {
        var outcome = PLAN.stated();
        var rpm = OutcomeTables.of(outcome).table().doubleColumn(0).asList();
        List<OperatingPoint> on = outcome.withNitrous();
        assertTrue(rpm.containsAll(List.of(
                on.get(0).rpm(),
                on.get(on.size() - 1).rpm(),
                outcome.strongest().orElseThrow().rpm())));
    }

    @Test
    void thePassEndsWithItsLastMoment() {
        var pass = PLAN.stated().pass().orElseThrow();
        double[] time = OutcomeTables.of(pass).table().doubleColumn(0).asDoubleArray();
        assertEquals(0, time[0]);
        assertEquals(pass.moments().get(pass.moments().size() - 1).time(), time[time.length - 1], 1e-12);
    }

    @Test
    void thePowerChartEndsWhereItsCurvesEnd() {
        var chart = Charts.of(PLAN, UnitSystem.SI).chart();
        var off = PLAN.stated().off();
        assertEquals(off.get(0).rpm(), chart.getStyler().getXAxisMin());
        assertEquals(off.get(off.size() - 1).rpm(), chart.getStyler().getXAxisMax());
        double[] drawn = chart.getSeriesMap().get("with nitrous oxide").getYData();
        assertEquals(PLAN.stated().power() / 1e3, Arrays.stream(drawn).max().orElseThrow(), 1e-9);
    }

    @Test
    void thePassIsDrawnInTheUnitsAskedFor() {
        var pass = PLAN.stated().pass().orElseThrow();
        double least = PLAN.car().limits().bottlePressureLow();
        ChartPicture us = Charts.of(pass, least, UnitSystem.US);
        ChartPicture si = Charts.of(pass, least, UnitSystem.SI);
        assertEquals("Bottle pressure, psi abs", us.chart().getYAxisTitle());
        assertEquals("Bottle pressure, bar abs", si.chart().getYAxisTitle());
        assertFalse(si.alt().contains("psi"), si.alt());
        assertTrue(si.svg().contains(">bottle at least "), "limit");
    }

    @Test
    void theMixtureOfEveryCaseIsDrawnBetweenItsLimits() {
        var series = Charts.mixture(PLAN, UnitSystem.US).chart().getSeriesMap();
        PLAN.outcomes().stream()
                .filter(outcome -> !outcome.overPass().isEmpty())
                .forEach(outcome -> assertTrue(
                        series.containsKey(outcome.at().name()), outcome.at().name()));
    }

    @Test
    void thePlanStandsAmongWhatWasWeighed() {
        ChartPicture picture = Charts.alternatives(PLAN, UnitSystem.SI);
        double[] margin = picture.chart().getSeriesMap().get("chosen").getYData();
        assertEquals(100 * PLAN.parts().leastMargin(), margin[0], 1e-9);
    }

    @Test
    void aWeighedSetupIsOneRow() {
        Listing rows = PlanTables.alternatives(PLAN.alternatives());
        assertEquals(PLAN.alternatives().size(), Demo.column(rows, 0).size());
        assertEquals(
                PLAN.alternatives().get(0).wheelPower() / WATT_PER_HP,
                rows.in(Shown.US).table().doubleColumn(3).get(0),
                1e-9);
        assertEquals(
                "Power, " + QuantityKind.POWER.unit(UnitSystem.SI),
                rows.in(Shown.SI).table().column(3).name());
    }

    private static double number(String cell) {
        return Double.parseDouble(cell.replaceFirst(" .*", ""));
    }
}
