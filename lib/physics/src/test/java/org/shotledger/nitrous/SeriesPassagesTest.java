package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.shotledger.curve.Curve;
import org.shotledger.flow.FeedFlow;
import org.shotledger.flow.FlowFactor;
import org.shotledger.flow.FlowTest;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.supply.Pump;
import org.shotledger.supply.PumpGroup;
import org.shotledger.supply.Regulator;

/** Jets and the drillings behind them share the pressure drop. */
class SeriesPassagesTest {
    private static final double AMBIENT = 101325;
    private static final Solenoid SOLENOID = new Solenoid(4e-3, 0.65, 0.012, 0.01);
    private static final NitrousCircuit NITROUS =
            new NitrousCircuit(1.2, 8.7e-3, 3.2, 2, SOLENOID, 4e-3, 0.35, Double.NaN);
    private static final FluidState BOTTLE = NitrousOxide.saturatedLiquid(293.15);

    private static double nitrous(double jet, double passage) {
        return NITROUS.path(6, jet, OptionalDouble.of(passage)).massFlow(BOTTLE, 2.5e5);
    }

    @Test
    void nitrousPassageMuchWiderThanTheJetChangesNothingAndOneAsNarrowAsItCosts() {
        double free = NITROUS.path(6, 0.8e-3).massFlow(BOTTLE, 2.5e5);
        assertEquals(1, nitrous(0.8e-3, 3.5e-3) / free, 1e-3);
        double same = nitrous(0.8e-3, 0.8e-3) / free;
        assertTrue(same < 0.97 && same > 0.5, "as narrow as the jet: " + same);
        double before = 0;
        for (double passage = 0.4e-3; passage < 3e-3; passage += 0.2e-3) {
            double flow = nitrous(0.8e-3, passage);
            assertTrue(flow >= before * (1 - 1e-6), "wider passage, less flow at " + passage);
            before = flow;
        }
    }

    @Test
    void partThatChokesIsNamed() {
        FeedFlow narrow = NITROUS.path(1, 1.2e-3, OptionalDouble.of(0.6e-3)).flow(BOTTLE, 2.5e5);
        assertEquals("nozzle passage", narrow.chokingElement());
        FeedFlow wide = NITROUS.path(1, 0.8e-3, OptionalDouble.of(3e-3)).flow(BOTTLE, 2.5e5);
        assertEquals("nitrous jet", wide.chokingElement());
        FeedFlow none = NITROUS.path(1, 0.8e-3).flow(BOTTLE, 2.5e5);
        assertEquals(none.jetInlet().pressure(), wide.jetInlet().pressure(), 1e3, "the state before the jet is told");
    }

    @Test
    void blockedFilterAndLongHoseCostFlow() {
        double free = NITROUS.path(6, 1.2e-3).massFlow(BOTTLE, 2.5e5);
        assertTrue(NITROUS.withFilterBlocked(0.5).path(6, 1.2e-3).massFlow(BOTTLE, 2.5e5) < free);
        assertTrue(NITROUS.withHoseLength(9).path(6, 1.2e-3).massFlow(BOTTLE, 2.5e5) < free);
        assertThrows(IllegalArgumentException.class, () -> NITROUS.withFilterBlocked(1));
    }

    @Test
    void flowTestOfTheWholeCircuitFindsTheFactorThatWasPutIn() {
        var flow = NITROUS.flowOfFactor(6, 0.8e-3, OptionalDouble.empty(), BOTTLE, AMBIENT);
        double truth = flow.applyAsDouble(0.81);
        FlowTest test = new FlowTest(10 * truth, 1e-6, 10, 0);
        FlowFactor after = FlowFactor.untested(NITROUS.path(6, 0.8e-3).band(BOTTLE, AMBIENT))
                .after(test, flow, 0);
        assertEquals(0.81, after.band().best(), 1e-3);
    }

    private static final Regulator REGULATOR = new Regulator("regulator", 3.5e5, 1);
    private static final FuelCircuit FUEL = new FuelCircuit(
            Optional.of(new FuelCell(pumps(), 6e-3)), new Solenoid(10e-3, 0.65, 0.01, 0.01), FuelJet.stated(0.8));
    private static final FuelCircuit.Pressures AT = new FuelCircuit.Pressures(AMBIENT, 2.5e5, 2.5e5);

    private static PumpGroup pumps() {
        double[] rise = {0, 4e5, 8e5};
        Pump.Line line = new Pump.Line(
                13.5,
                Curve.of("flow", rise, new double[] {200e-6, 150e-6, 100e-6}),
                Curve.of("current", rise, new double[] {6, 10, 15}));
        Pump.Line low = new Pump.Line(
                11,
                Curve.of("flow", rise, new double[] {150e-6, 110e-6, 70e-6}),
                Curve.of("current", rise, new double[] {6, 10, 15}));
        return new PumpGroup("pumps", List.of(new Pump("pump", List.of(low, line))), PumpGroup.Arrangement.PARALLEL, 0);
    }

    private static double fuel(double jet, double passage) {
        return FUEL.flow(785, new FuelCircuit.Jets(6, jet, passage), AT, REGULATOR, 13.5)
                .massFlow();
    }

    // two equal resistances in series pass 1/sqrt(2) of one; any hydraulics text
    @Test
    void fuelPassageAsNarrowAsTheJetLeavesOneOverRootTwo() {
        double free = fuel(0.5e-3, Double.POSITIVE_INFINITY);
        // the solenoid, 10 mm, takes less than a thousandth
        assertEquals(1 / Math.sqrt(2), fuel(0.5e-3, 0.5e-3) / free, 1e-3);
        assertEquals(1, fuel(0.5e-3, 3e-3) / free, 1e-3);
        // (0.66/0.75)^4 = 0.600: 1/sqrt(1.600) = 0.791
        assertEquals(1 / Math.sqrt(1 + Math.pow(0.66 / 0.75, 4)), fuel(0.66e-3, 0.75e-3) / fuel(0.66e-3, 1), 1e-3);
    }

    @Test
    void jetFoundForAFlowPassesItBehindItsPassage() {
        FuelCircuit.Jets passages = new FuelCircuit.Jets(6, 0, 0.9e-3);
        double bore = FUEL.boreFor(0.02, 785, passages, AT, REGULATOR);
        assertEquals(0.02, fuel(bore, 0.9e-3), 1e-8);
        assertTrue(
                bore > FUEL.boreFor(0.02, 785, new FuelCircuit.Jets(6, 0, Double.POSITIVE_INFINITY), AT, REGULATOR),
                "a larger jet than without the passage");
        String message = assertThrows(
                        IllegalArgumentException.class,
                        () -> FUEL.boreFor(0.02, 785, new FuelCircuit.Jets(6, 0, 0.3e-3), AT, REGULATOR))
                .getMessage();
        assertTrue(message.contains("passages"), message);
    }
}
