package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.curve.Bracket;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

class FeedPathTest {
    private static final FluidState BOTTLE = NitrousOxide.saturatedLiquid(293.15);
    private static final double MANIFOLD = 2.5e5;

    private static FeedPath usual(double jetBore) {
        return FeedPath.of(
                new Tube("siphon", 0.5, 0.008, 5e-6, 0.4),
                FlowValve.open("bottle valve", 1.2),
                Tube.level("hose", 3.2, 0.0087),
                Orifice.solenoid("solenoid", 2.6e-3, 0.0087),
                new NitrousJet("jet", jetBore, 3, Edge.ROUNDED, Double.NaN));
    }

    // K = 64/Re for laminar pipe flow (Hagen-Poiseuille); Moody chart: Re 1e5, smooth f = 0.0180, e/D 0.001 f = 0.0222
    @Test
    void frictionFactorMeetsTheMoodyChart() {
        assertEquals(64.0 / 500, Friction.churchill(500, 0), 1e-4);
        assertEquals(0.0180, Friction.churchill(1e5, 0), 3e-4);
        assertEquals(0.0222, Friction.churchill(1e5, 1e-3), 4e-4);
    }

    // McAdams mixture: x 0.4, 1e-3 and 1e-5 Pa s give 2.463e-5 Pa s (worked value of an open fluid-mechanics library)
    @Test
    void mixtureViscosityMeetsTheWorkedValue() {
        assertEquals(2.463e-5, Friction.mcAdams(0.4, 1e-3, 1e-5), 1e-8);
    }

    // NACA 1135: air, gamma 1.4, chokes at p*/p0 = 0.5283
    @Test
    void gasChokesWhereTheTablesSay() {
        assertEquals(0.5283, IsentropicGas.criticalRatio(1.4), 5e-5);
    }

    // Bernoulli with the handbook friction for liquid far from boiling: dp = f L/D rho u^2/2 (+ one velocity head at
    // the outlet)
    @Test
    void coldLiquidLosesWhatBernoulliSays() {
        FluidState liquid = NitrousOxide.atTemperaturePressure(250, 8e6);
        Tube tube = new Tube("line", 4, 0.005, 5e-6, 1.5);
        double massFlow = 0.05;
        double flux = massFlow / (Math.PI / 4 * 0.005 * 0.005);
        double head = 0.5 * flux * flux / liquid.density();
        double factor = Friction.churchill(flux * 0.005 / Viscosity.liquid(250), 1e-3);
        double expected = head * (factor * 4 / 0.005 + 1) + liquid.density() * 9.80665 * 1.5;
        assertEquals(expected, 8e6 - tube.outletPressure(liquid, massFlow), 2e-3 * expected);
    }

    // isenthalpic line loss from saturated 20 degC liquid: 2 bar give 2.75 % quality, 713 kg/m3, 18.2 degC; 10 bar 12.1
    // %
    @Test
    void lineLossFlashesTheLiquidAsComputedIndependently() {
        double[][] rows = {{2e5, 0.0275, 713, 18.2}, {10e5, 0.121, 483, 10.5}};
        for (double[] row : rows) {
            LocalLoss loss = new LocalLoss("loss", 0.005, 2);
            double area = Math.PI / 4 * 0.005 * 0.005;
            double flow = Bracket.root(
                    m -> BOTTLE.pressure() - loss.outletPressure(BOTTLE, m) - row[0],
                    0.01 * area * 1e4,
                    area * 2.5e4,
                    1e-9);
            FluidState after = NitrousOxide.atPressureEnthalpy(loss.outletPressure(BOTTLE, flow), BOTTLE.enthalpy());
            assertEquals(row[1], after.quality(), 0.0006);
            assertEquals(row[2], after.density(), 1.5);
            assertEquals(row[3], after.temperature() - 273.15, 0.1);
        }
    }

    @Test
    void jetChokesAndIgnoresBoost() {
        FeedFlow low = usual(1.6e-3).flow(BOTTLE, 1e5);
        FeedFlow boost = usual(1.6e-3).flow(BOTTLE, 3.2e5);
        assertEquals("jet", low.chokingElement());
        assertEquals(low.massFlow(), boost.massFlow(), 1e-6 * low.massFlow());
        double sum = low.jets().stream().mapToDouble(JetFlow::massFlow).sum();
        assertEquals(low.massFlow(), sum, 1e-6 * sum);
    }

    @Test
    void pressureFallsQualityRisesAndEnthalpyStaysAlongThePath() {
        FeedFlow flow = usual(1.8e-3).flow(BOTTLE, MANIFOLD);
        for (int i = 1; i < flow.nodes().size(); i++) {
            assertTrue(flow.nodes().get(i).pressure() < flow.nodes().get(i - 1).pressure());
            assertTrue(flow.nodes().get(i).quality() >= flow.nodes().get(i - 1).quality());
        }
        assertEquals(BOTTLE.enthalpy(), flow.jetInlet().enthalpy(), 1e-3);
    }

    @Test
    void solenoidLimitsWhenTheJetIsLargerThanItsHole() {
        for (double bore : new double[] {4e-3, 8.7e-3, 20e-3}) {
            FeedFlow flow = usual(bore).flow(BOTTLE, MANIFOLD);
            assertEquals("solenoid", flow.chokingElement());
            assertTrue(flow.reason().contains("solenoid"));
        }
        assertEquals(usual(6e-3).massFlow(BOTTLE, MANIFOLD), usual(20e-3).massFlow(BOTTLE, MANIFOLD), 1e-5);
    }

    @Test
    void solenoidBeforeABlockLimitsThoughTheJetsBehindItChokeToo() {
        FeedFlow flow = FeedPath.of(
                        Tube.level("hose", 3.2, 0.0087),
                        Orifice.solenoid("solenoid", 2.6e-3, 0.0087),
                        Manifold.equal("block", 6, Tube.level("line", 0.4, 0.003), NitrousJet.of(1.6e-3)))
                .flow(BOTTLE, MANIFOLD);
        assertEquals("solenoid", flow.chokingElement());
    }

    @Test
    void flowGrowsWithTheJetAndShrinksWithTheHose() {
        double before = 0;
        for (double bore = 0.4e-3; bore < 3e-3; bore += 0.2e-3) {
            double flow = usual(bore).massFlow(BOTTLE, MANIFOLD);
            assertTrue(flow >= before);
            before = flow;
        }
        double shorter =
                FeedPath.of(Tube.level("line", 1, 0.003), NitrousJet.of(2e-3)).massFlow(BOTTLE, MANIFOLD);
        double longer =
                FeedPath.of(Tube.level("line", 30, 0.003), NitrousJet.of(2e-3)).massFlow(BOTTLE, MANIFOLD);
        assertTrue(longer < 0.75 * shorter);
    }

    @Test
    void longThinTubeChokesAtItsEnd() {
        FeedFlow flow = FeedPath.of(Tube.level("tube", 30, 0.003)).flow(BOTTLE, 1e5);
        assertEquals("tube", flow.chokingElement());
        assertTrue(flow.massFlow() > 0.01 && flow.massFlow() < 0.05);
    }

    // a tube without length is a nozzle: it passes homogeneous-equilibrium critical flux
    @Test
    void veryShortTubePassesTheCriticalFlux() {
        double flow = FeedPath.of(Tube.level("stub", 1e-4, 0.003)).massFlow(BOTTLE, 1e5);
        double critical = HomogeneousEquilibrium.criticalFlux(BOTTLE).massFlux() * Math.PI / 4 * 9e-6;
        assertEquals(1, flow / critical, 0.02);
    }

    @Test
    void closedPartsGiveNoFlowAndSayWhy() {
        FeedFlow closed = FeedPath.of(new FlowValve("bottle valve", 1, 0, 0), NitrousJet.of(1e-3))
                .flow(BOTTLE, MANIFOLD);
        assertEquals(0, closed.massFlow());
        assertEquals("Nothing flows: bottle valve is closed.", closed.reason());
        FeedFlow plugged = usual(0).flow(BOTTLE, MANIFOLD);
        assertEquals("Nothing flows: jet has no hole.", plugged.reason());
        FeedFlow pushed = usual(1e-3).flow(BOTTLE, 6e6);
        assertTrue(pushed.reason().contains("not below that of the bottle"));
    }

    @Test
    void equalBranchesShareTheFlowAndAnUnequalOneTakesItsOwn() {
        FeedPath equal = FeedPath.of(
                Tube.level("hose", 3.2, 0.0087),
                Orifice.solenoid("solenoid", 2.6e-3, 0.0087),
                Manifold.equal("block", 6, Tube.level("line", 0.4, 0.003), NitrousJet.of(0.65e-3)));
        FeedFlow flow = equal.flow(BOTTLE, MANIFOLD);
        assertEquals(6, flow.jets().size());
        assertEquals(flow.massFlow() / 6, flow.jets().get(5).massFlow(), 1e-6 * flow.massFlow());
        assertEquals("jet", flow.chokingElement());
    }

    @Test
    void wrongOrderIsRefusedWithTheNameOfThePart() {
        IllegalArgumentException error = assertThrows(
                IllegalArgumentException.class, () -> FeedPath.of(NitrousJet.of(1e-3), Tube.level("hose", 1, 0.01)));
        assertTrue(error.getMessage().startsWith("Feed path: jet ends the path"));
    }

    @Test
    void holdUpIsTheVolumeTimesTheDensityAndFillTimeFollows() {
        FeedFlow flow = usual(1.6e-3).flow(BOTTLE, MANIFOLD);
        double volume = Math.PI / 4 * (3.2 * 0.0087 * 0.0087 + 0.5 * 0.008 * 0.008);
        assertEquals(volume, flow.volume(), 1e-3 * volume);
        assertEquals(flow.holdUp() / flow.massFlow(), flow.fillTime(), 1e-12);
        assertTrue(flow.holdUp() > 0.9 * volume * flow.nodes().get(4).density());
    }

    @Test
    void intakeVacuumBelowTheTriplePressureChangesNothingOnAChokedPath() {
        FeedPath path = usual(1.2e-3);
        double atmospheric = path.flow(BOTTLE, 1.0e5).massFlow();
        for (double vacuum : new double[] {0, 2e4, 5e4, 8.7e4, 8.8e4, 9e4}) {
            assertEquals(atmospheric, path.flow(BOTTLE, vacuum).massFlow(), 1e-6 * atmospheric, "Pa: " + vacuum);
            assertEquals(atmospheric, path.massFlow(BOTTLE, vacuum), 1e-6 * atmospheric, "Pa: " + vacuum);
        }
    }
}
