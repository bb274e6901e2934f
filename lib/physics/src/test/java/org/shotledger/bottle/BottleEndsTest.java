package org.shotledger.bottle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/** Where a run ends by itself, by the first law: empty by mass, by pressure or by flow, and what the equation of state covers. */
class BottleEndsTest {
    private static final double WATER = 6.7e-3;
    private static final Bottle BOTTLE = new Bottle(WATER, 7.1, 900);
    private static final FluidState GAS = NitrousOxide.atTemperaturePressure(300, 20e5);
    private static final Charge OF_GAS = new Charge(BOTTLE, GAS.density() * WATER, GAS, 300);

    private static Emptying task(Charge charge, Outflow outflow, HeatInput heat) {
        return new Emptying(charge, outflow, heat, 3600, 0, 0, 0, Set.of());
    }

    private static BottleEvent last(History history, BottleEvent.Kind kind) {
        BottleEvent event = history.events().get(history.events().size() - 1);
        assertEquals(kind, event.kind());
        return event;
    }

    /** Without liquid the siphon draws vapour from the first moment on, and that is said. */
    @Test
    void gasIsEmptyAtTwiceTheAtmosphere() {
        // of so little that it stays dry
        FluidState thin = NitrousOxide.atTemperaturePressure(300, 8e5);
        double mass = thin.density() * WATER;
        History history = task(new Charge(BOTTLE, mass, thin, 300), Outflow.constant(0.02), HeatInput.none())
                .equilibrium();
        BottleEvent first = history.events().get(0);
        assertEquals(BottleEvent.Kind.LIQUID_UNCOVERED, first.kind());
        assertEquals(0, first.time());
        BottleEvent empty = last(history, BottleEvent.Kind.EMPTY);
        assertEquals(2e5, empty.pressure(), 1);
        // what leaves an adiabatic vessel leaves the rest at its entropy
        FluidState end = NitrousOxide.atPressureEntropy(2e5, thin.entropy());
        assertEquals(end.density() * WATER, empty.mass(), 1e-5 * empty.mass());
        assertEquals(mass - empty.mass(), 0.02 * empty.time(), 1e-6);
    }

    /** A wall that keeps the gas warm holds the pressure up, but thin gas is not held for ever: 20 bar down to 2. */
    @Test
    void gasKeptWarmLosesMassWithItsPressure() {
        HeatInput warm = new HeatInput(9e5, 9e5, 300, 0, 0, 0);
        BottleEvent empty = last(
                task(OF_GAS, Outflow.constant(1e-3), warm).withDuration(400).equilibrium(), BottleEvent.Kind.EMPTY);
        assertEquals(NitrousOxide.atTemperaturePressure(300, 2e5).density() * WATER, empty.mass(), 5e-3 * empty.mass());
    }

    /** A flow that goes with the pressure over 15 bar: a fiftieth of what the vapour began with is left at 15.1 bar. */
    @Test
    void aFlowThatThePressureBehindTheJetsHasStoppedEndsTheRun() {
        Outflow against = (time, outlet) -> 1e-8 * Math.max(0, outlet.pressure() - 15e5);
        BottleEvent empty = last(task(OF_GAS, against, HeatInput.none()).equilibrium(), BottleEvent.Kind.EMPTY);
        assertEquals(15e5 + 0.02 * 5e5, empty.pressure(), 20);
    }

    /** Heated without a switch, a bottle full of liquid leaves the equation of state by its pressure, one of gas by its temperature. */
    @Test
    void heatWithoutASwitchEndsWhereTheEquationOfStateDoes() {
        HeatInput stove = new HeatInput(1e5, 0, 300, 5000, 1e9, 1e9);
        BottleEvent dense = last(
                task(BOTTLE.charged(0.75e3 * WATER, 300), Outflow.none(), stove).equilibrium(),
                BottleEvent.Kind.BEYOND_EQUATION);
        assertEquals(49e6, dense.pressure(), 1e3);
        BottleEvent thin = last(task(OF_GAS, Outflow.none(), stove).equilibrium(), BottleEvent.Kind.BEYOND_EQUATION);
        double hot = NitrousOxide.atTemperatureDensity(520, GAS.density()).pressure();
        assertEquals(hot, thin.pressure(), 1e-6 * hot);
        assertTrue(thin.time() > 0);
    }

    /** A run whose time is up says so once, at that time, with all of its mass there that has not left. */
    @Test
    void timeThatIsUpIsTheOnlyEventOfAQuietRun() {
        History history = task(BOTTLE.charged(3, 295), Outflow.constant(1e-4), HeatInput.none())
                .withDuration(50)
                .withRows(20)
                .equilibrium();
        assertEquals(
                List.of(BottleEvent.Kind.TIME_UP),
                history.events().stream().map(BottleEvent::kind).toList());
        assertEquals(3 - 50e-4, last(history, BottleEvent.Kind.TIME_UP).mass(), 1e-9);
        assertEquals(
                List.of(0.0, 20.0, 40.0, 50.0),
                history.moments().stream().map(Sample::time).toList());
    }
}
