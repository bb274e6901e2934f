package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYSeries;
import org.shotledger.chart.ChartPicture;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.ledger.Ledger;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** What flows and what presses, drawn for the invented demonstration job. */
class FlowAndEngineChartsTest {
    // NIST SP 811 (2008), appendix B
    private static final double PSI_PER_BAR = 14.503773773;
    private static final double LB_PER_MIN_PER_G_PER_S = 60 / 453.59237;

    @Test
    void theSameFlowIsDrawnInBothUnits() {
        ChartPicture us = FlowCharts.overBottlePressure(Demo.PLAN.stated(), UnitSystem.US);
        ChartPicture si = FlowCharts.overBottlePressure(Demo.PLAN.stated(), UnitSystem.SI);
        assertEquals("Bottle pressure, psi abs", us.chart().getXAxisTitle());
        assertEquals("Mass flow, g/s", si.chart().getYAxisTitle());
        for (String name : new String[] {"nitrous oxide, expected", "nitrous fuel, expected"}) {
            XYSeries shown = us.chart().getSeriesMap().get(name);
            XYSeries same = si.chart().getSeriesMap().get(name);
            for (int i = 0; i < shown.getXData().length; i++) {
                assertEquals(PSI_PER_BAR * same.getXData()[i], shown.getXData()[i], 1e-4);
                assertEquals(LB_PER_MIN_PER_G_PER_S * same.getYData()[i], shown.getYData()[i], 1e-9);
            }
        }
    }

    @Test
    void theFlowIsDrawnOverTheBandTheBuilderTrustsAndMeetsThePlanInIt() {
        var limits = Demo.PLAN.car().limits();
        XYSeries nitrous = FlowCharts.overBottlePressure(Demo.PLAN.stated(), UnitSystem.SI)
                .chart()
                .getSeriesMap()
                .get("nitrous oxide, expected");
        double[] pressure = nitrous.getXData();
        assertEquals(limits.bottlePressureLow() / 1e5, pressure[0], 1e-9);
        assertTrue(pressure[pressure.length - 1] <= limits.bottlePressureHigh() / 1e5 + 1e-9);
        Plan plan = Demo.PLAN;
        Case rested =
                plan.stated().at().withBottle(BottleState.at(NitrousOxide.saturationTemperature(1e5 * pressure[7])));
        double rpm = plan.stated().strongest().orElseThrow().rpm();
        OperatingPoint point =
                Evaluate.at(plan.car(), plan.setup(), rested, rpm).orElseThrow();
        assertEquals(1e3 * point.nitrous().massFlow(), nitrous.getYData()[7], 1e-2 * nitrous.getYData()[7]);
    }

    /** The words below the picture are those of the plan's own bottle, as the ledger has them. */
    @Test
    void thePlansOwnFlowIsToldInWords() {
        Ledger ledger = Demo.PLAN.ledger();
        String words =
                FlowCharts.overBottlePressure(Demo.PLAN.stated(), UnitSystem.US).alt();
        String pressure = QuantityKind.ABSOLUTE_PRESSURE.text(
                ledger.find("bottle-pressure").orElseThrow().value(), UnitSystem.US);
        String flow = QuantityKind.MASS_FLOW.brief(
                ledger.find("nitrous-flow").orElseThrow().value(), UnitSystem.US);
        assertTrue(words.startsWith("At " + pressure + " nitrous oxide flows at " + flow + " (between "), words);
    }

    @Test
    void theCylinderPeaksWhereTheOutcomeSaysWithTheLimitDrawn() {
        ChartPicture us = EngineCharts.cylinder(Demo.PLAN.stated(), UnitSystem.US);
        ChartPicture si = EngineCharts.cylinder(Demo.PLAN.stated(), UnitSystem.SI);
        assertEquals("Cylinder pressure, psi abs", us.chart().getYAxisTitle());
        assertEquals("Cylinder pressure, bar abs", si.chart().getYAxisTitle());
        assertTrue(us.svg().contains(">at most 2320.6 psi abs<") && si.svg().contains(">at most 160.00 bar abs<"));
        double with = top(si, "boost and nitrous oxide");
        assertTrue(with > top(si, "boost alone"), "nitrous oxide raises the peak");
        double point = Demo.PLAN.stated().strongest().orElseThrow().cylinder().peakPressure() / 1e5;
        assertEquals(point, with, 0.01 * point);
        assertEquals(PSI_PER_BAR * with, top(us, "boost and nitrous oxide"), 1e-3);
    }

    private static double top(ChartPicture picture, String series) {
        return Arrays.stream(picture.chart().getSeriesMap().get(series).getYData())
                .max()
                .orElseThrow();
    }
}
