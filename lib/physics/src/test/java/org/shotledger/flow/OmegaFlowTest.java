package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.fluid.NitrousOxide;

class OmegaFlowTest {
    // API Standard 520 Part I, 2020, annex C example C.2.2, as quoted in an open library's documentation
    @Test
    void sizesTheStandardsTwoPhaseExample() {
        double omega = OmegaFlow.fromFlash(0.01945, 0.02265);
        assertEquals(1.481, omega, 5e-4);
        OmegaFlow flow = new OmegaFlow(omega, 5.564e5, 1, 1 / 0.01945);
        assertEquals(0.656, flow.criticalRatio(), 5e-4);
        double area = 216560 / 3600.0 / (0.85 * flow.flux(2.045e5));
        assertEquals(24538e-6, area, 10e-6);
        // the standard reads its ratio from a chart and prints 24 400 mm2
        assertEquals(24400e-6, area, 0.006 * 24400e-6);
    }

    // same standard, example C.2.3 (subcooled liquid)
    @Test
    void sizesTheStandardsSubcooledExample() {
        double omega = OmegaFlow.fromFlash(1 / 511.3, 1 / 262.7);
        assertEquals(8.515, omega, 0.005);
        OmegaFlow flow = new OmegaFlow(omega, 20.733e5, 7.419 / 20.733, 511.3);
        assertTrue(flow.highlySubcooled());
        // the quoted flux carries the rounding of its pressures
        assertEquals(36893, flow.flux(1.703e5), 8);
        double area = 378.5e-3 / 60 * 511.3 / (0.65 * flow.flux(1.703e5));
        assertEquals(134.75e-6, area, 0.4e-6);
    }

    // the linear volume law with omega = 1 is an isothermal ideal gas: critical ratio exp(-1/2), closed form
    @Test
    void omegaOneIsAnIsothermalGas() {
        OmegaFlow flow = new OmegaFlow(1, 1e5, 1, 1);
        assertEquals(Math.exp(-0.5), flow.criticalRatio(), 1e-12);
        assertEquals(Math.exp(-0.5) * Math.sqrt(1e5), flow.flux(0), 1e-8);
    }

    // facts computed from the definition with a general property library: within 1 % of HEM for saturated nitrous oxide
    @Test
    void followsHomogeneousEquilibriumForSaturatedNitrousOxide() {
        double[][] rows = {{273.15, 3.249, 0.747, 22049}, {283.15, 2.740, 0.728, 25698}, {293.15, 2.318, 0.710, 29354}};
        for (double[] row : rows) {
            OmegaFlow flow = Omega.of(NitrousOxide.saturatedLiquid(row[0]));
            assertEquals(row[1], flow.omega(), 5e-4 * row[1]);
            assertEquals(row[2], flow.criticalRatio(), 6e-4);
            Throat throat = Omega.criticalFlux(NitrousOxide.saturatedLiquid(row[0]));
            assertEquals(row[3], throat.massFlux(), 5e-4 * row[3]);
            double exact = HomogeneousEquilibrium.criticalFlux(NitrousOxide.saturatedLiquid(row[0]))
                    .massFlux();
            assertEquals(1, throat.massFlux() / exact, 0.01);
        }
    }

    @Test
    void propertyFormIsLowerNearTheCriticalPoint() {
        var liquid = NitrousOxide.saturatedLiquid(293.15);
        var vapour = NitrousOxide.saturatedVapour(293.15);
        double omega = OmegaFlow.fromProperties(
                0,
                liquid.specificVolume(),
                vapour.specificVolume() - liquid.specificVolume(),
                liquid.cp(),
                293.15,
                liquid.pressure(),
                vapour.enthalpy() - liquid.enthalpy());
        assertEquals(3.294, omega, 0.002);
    }
}
