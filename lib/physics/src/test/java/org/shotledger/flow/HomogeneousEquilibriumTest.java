package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shotledger.flow.CsvTable.number;

import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

class HomogeneousEquilibriumTest {
    static Stream<Map<String, String>> criticalCases() {
        return CsvTable.read(HomogeneousEquilibriumTest.class, "n2o_hem_critical.csv").stream();
    }

    private static FluidState stagnation(Map<String, String> row) {
        double temperature = number(row, "T0");
        double quality = number(row, "x0");
        return quality < 0
                ? NitrousOxide.atTemperaturePressure(temperature, number(row, "p0"))
                : NitrousOxide.mixture(temperature, quality);
    }

    // values of a general property library on the same equation of state, printed to ten digits
    @ParameterizedTest
    @MethodSource("criticalCases")
    void reproducesTheCriticalFluxTable(Map<String, String> row) {
        Throat throat = HomogeneousEquilibrium.criticalFlux(stagnation(row));
        assertEquals(1, throat.massFlux() / number(row, "Gcrit"), 2e-8, row::toString);
        // the table found its maximum by search, which fixes the place only to the root of its precision
        assertEquals(1, throat.pressure() / number(row, "pcrit"), 2e-6, row::toString);
        double quality = number(row, "x_throat");
        assertEquals(quality, Double.isNaN(throat.quality()) ? 0 : throat.quality(), 1e-5, row::toString);
        boolean kink = row.get("maximum_at").equals("flash_inception");
        assertEquals(kink ? Choking.FLASH_INCEPTION : Choking.SONIC, throat.choking(), row::toString);
    }

    @Test
    void reproducesTheFluxTableAt293KelvinOverDownstreamPressure() {
        FluidState stagnation = NitrousOxide.saturatedLiquid(293);
        for (Map<String, String> row : CsvTable.read(getClass(), "n2o_hem_noncritical_293K.csv")) {
            double pressure = number(row, "p2");
            assertEquals(
                    1,
                    HomogeneousEquilibrium.massFlux(stagnation, pressure) / number(row, "G_HEM_limited_at_critical"),
                    1e-8);
            assertEquals(
                    1, HomogeneousEquilibrium.unlimitedFlux(stagnation, pressure) / number(row, "G_isentropic"), 1e-7);
        }
    }

    // the critical flux is by definition the largest flux on the isentrope: searched by brute force
    @Test
    void noPressureGivesMoreThanTheCriticalFlux() {
        SplittableRandom random = new SplittableRandom(20260101);
        for (int i = 0; i < 60; i++) {
            FluidState stagnation = anyState(random);
            Throat throat = HomogeneousEquilibrium.criticalFlux(stagnation);
            Isentrope path = new Isentrope(stagnation);
            double low = Math.max(path.lowestPressure() * 1.0001, 0.05 * stagnation.pressure());
            double best = 0;
            for (int k = 1; k < 120; k++) {
                double pressure = stagnation.pressure() + (low - stagnation.pressure()) * k / 120;
                best = Math.max(best, path.fluxAt(pressure));
            }
            assertTrue(best <= throat.massFlux() * (1 + 1e-6), () -> "more than critical from " + stagnation);
            assertTrue(best >= throat.massFlux() * 0.985, () -> "critical flux not reached from " + stagnation);
        }
    }

    private static FluidState anyState(SplittableRandom random) {
        double temperature = random.nextDouble(215, 420);
        if (temperature < 309 && random.nextInt(3) == 0) {
            return NitrousOxide.mixture(temperature, random.nextDouble());
        }
        return NitrousOxide.atTemperaturePressure(temperature, random.nextDouble(0.5e6, 15e6));
    }

    @Test
    void fluxNeverFallsWhenTheDownstreamPressureFalls() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 20; i++) {
            FluidState stagnation = anyState(random);
            double before = 0;
            for (double share = 1; share > 0.05; share -= 0.05) {
                double flux = HomogeneousEquilibrium.massFlux(stagnation, share * stagnation.pressure());
                assertTrue(flux >= before * (1 - 1e-9), () -> "flux fell from " + stagnation);
                before = flux;
            }
        }
    }

    @Test
    void goesOverIntoAnIdealGasAtLowPressure() {
        FluidState gas = NitrousOxide.atTemperaturePressure(320, 2e4);
        double ideal = IsentropicGas.massFlux(gas.pressure(), gas.density(), gas.cp() / gas.cv(), 0);
        assertEquals(1, HomogeneousEquilibrium.criticalFlux(gas).massFlux() / ideal, 4e-3);
    }

    @Test
    void answersAroundTheCriticalPoint() {
        for (double temperature : new double[] {309.4, 309.5, 309.52, 309.53, 310, 315}) {
            for (double pressure : new double[] {7.1e6, 7.24e6, 7.25e6, 7.4e6, 9e6}) {
                FluidState state = NitrousOxide.atTemperaturePressure(temperature, pressure);
                Throat throat = HomogeneousEquilibrium.criticalFlux(state);
                assertTrue(throat.massFlux() > 1.2e4 && throat.massFlux() < 8e4, () -> state + " gives " + throat);
            }
        }
    }
}
