package org.shotledger.bottle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.shotledger.fluid.NitrousOxide;

/** Histories, waits, passes and refills of a bottle by hand: straight lines, clock times, masses, and what is refused. */
class BottleOverTimeTest {
    private static final Bottle BOTTLE = new Bottle(6.7e-3, 7.1, 900);
    private static final WorkingBand BAND = new WorkingBand(40e5, 72e5);

    private static Sample sample(double time, double value) {
        return new Sample(time, 300 + value, 1e5 * value, 4 - value, value / 8, 0.25 + value, 290 + value);
    }

    private static History history(Sample... samples) {
        return new History("by hand", 0, List.of(samples), List.of(), BOTTLE.charged(4, 295), null);
    }

    @Test
    void betweenTwoRowsEveryFigureLiesOnAStraightLine() {
        History history = history(sample(1, 1), sample(3, 2), sample(7, 0));
        assertEquals(sample(2, 1.5), history.at(2));
        assertEquals(sample(4, 1.5), history.at(4));
        assertEquals(sample(3, 2), history.at(3));
        assertEquals(sample(1, 1), history.at(0), "held before the first row");
        assertEquals(sample(7, 0), history.at(9), "held after the last");
        assertEquals(sample(5, 1), history(sample(5, 1)).at(2), "one row is the answer");
        assertEquals(sample(1, 1), history.first());
        assertEquals(sample(7, 0), history.last());
        assertEquals(4 - 1 + 1 / 8.0 - 4, history.massUsed(), 1e-12);
        Sample twice = history(sample(2, 1), sample(2, 3)).at(2);
        assertEquals(3, twice.pressure() / 1e5, 1e-12, "of two rows at one time the later");
    }

    private static PassTask task(double flow, double seconds) {
        return PassTask.of(BOTTLE, Outflow.constant(flow), seconds, BAND, 300, 298);
    }

    // 4.4 kg at 298 K, 0.08 kg/s: a pass of 12 s takes 0.96 kg; by the lever rule liquid lasts for three and a part
    @Test
    void theScaleTellsPassesAndTheSecondsLeft() {
        List<Passes.ScaleRow> rows = Passes.byScale(BOTTLE, 298, task(0.08, 12), 4.4, 1.1, 10);
        assertEquals(
                List.of(4.4, 3.3, 2.2, 1.1),
                rows.stream().map(row -> Math.rint(10 * row.charge()) / 10).toList());
        for (Passes.ScaleRow row : rows) {
            Passes passes = Passes.of(BOTTLE.charged(row.charge(), 298), task(0.08, 12), 10);
            assertEquals(passes.whole(), row.passes());
            Pass last = passes.passes().get(passes.passes().size() - 1);
            assertEquals(last.seconds(), row.spareSeconds(), 1e-9);
            assertEquals(PassEnd.LIQUID_GONE, row.end());
            assertTrue(row.spareSeconds() < 12);
        }
        Passes.ScaleRow counted =
                Passes.byScale(BOTTLE, 298, task(0.08, 12), 4.4, 4.4, 2).get(0);
        assertEquals(2, counted.passes(), "the count ends");
        assertEquals(0, counted.spareSeconds(), "a whole pass spares nothing");
        refused("the step is", () -> Passes.byScale(BOTTLE, 298, task(0.08, 12), 4.4, 0, 10));
        refused("the step is", () -> Passes.byScale(BOTTLE, 298, task(0.08, 12), 4.4, 4e-4, 10));
    }

    @Test
    void aPassSaysWhatItTookAndHowLowThePressureWent() {
        Pass pass = task(0.08, 5).run(BOTTLE.charged(4, 298));
        assertTrue(pass.whole());
        assertEquals(5, pass.seconds(), 1e-9);
        assertEquals(0.4, pass.massUsed(), 1e-9);
        assertEquals(3.6, pass.massLeft(), 1e-6);
        double lowest = pass.history().moments().stream()
                .mapToDouble(Sample::pressure)
                .min()
                .orElseThrow();
        assertEquals(lowest, pass.lowestPressure());
        assertTrue(lowest < BOTTLE.charged(4, 298).pressure());
        refused("the time is", () -> task(0.08, 0), () -> task(0.08, 1.1e4));
        assertEquals(1e4, task(0.08, 1e4).seconds());
    }

    // at its switch the heater goes off and on: its time lies between that for the first rise and the whole wait
    @Test
    void theHeaterCountsOnlyWhileItIsOn() {
        Charge cold = BOTTLE.charged(3, 290);
        HeatedRest rest = HeatedRest.of(cold, 4 * 3600, 275, 350, 295, 12);
        assertTrue(rest.enough());
        assertEquals(rest.ampereHours(), 350 * rest.heaterSeconds() / 12 / 3600, 1e-9);
        // first law: what the heater gave is what shell and contents gained and the colder air took
        double gain = 3 * (rest.after().state().internalEnergy() - cold.state().internalEnergy())
                + 7.1 * 900 * (rest.after().wallTemperature() - 290);
        double given = 350 * rest.heaterSeconds();
        assertTrue(given > gain, "the air is colder");
        // the outer surface loses by the coefficient of still air over the whole wait, at 20 K and less over the air
        assertTrue(rest.heaterSeconds() > rest.seconds() && rest.heaterSeconds() < 4 * 3600, rest::toString);
        assertEquals(295, rest.after().temperature(), 1);
        HeatedRest warm = HeatedRest.of(BOTTLE.charged(3, 296), 60, 297, 350, 295, 12);
        assertEquals(0, warm.seconds(), "warm enough at once");
        assertEquals(0, warm.heaterSeconds(), 1e-9, "and the heater stays off");
        refused(
                "the voltage",
                () -> HeatedRest.of(cold, 60, 290, 350, 295, 0),
                () -> HeatedRest.of(cold, 60, 290, 350, 310, 12));
        HeatInput air = HeatInput.surroundings(290);
        refused(
                "the pressure to reach",
                () -> HeaterTime.to(cold, air, 350, 0, 12, 60),
                () -> HeaterTime.to(cold, air, 350, 5e6, 0, 60));
    }

    @Test
    void aRefillTakesNothingWhereNothingIsWantedAndNoMoreThanIsLegal() {
        Charge mother = new Bottle(30e-3, 0, 0).charged(18, 295);
        Charge own = BOTTLE.charged(3, 280);
        Refill none = Refill.of(mother, own, 2);
        assertTrue(none.reached());
        assertEquals(0, none.transferred());
        assertEquals(own, none.own());
        Refill some = Refill.of(mother, own, 4);
        assertEquals(1, some.transferred(), 1e-9);
        assertEquals(17, some.mother().mass(), 1e-9);
        // 68 % of 6.7 L of water
        assertEquals(4.556, Refill.of(mother, own, 4.556).own().mass(), 1e-9);
        refused("68 %", () -> Refill.of(mother, own, 4.557), () -> Refill.of(mother, own, 0));
        // a mother bottle with little liquid gives what it has
        Charge little = new Bottle(30e-3, 0, 0).charged(8, 295);
        Refill part = Refill.of(little, BOTTLE.charged(0.3, 280), 4.5);
        assertFalse(part.reached());
        assertTrue(part.transferred() < little.liquidMass());
        assertEquals(280, Refill.chillTo(mother, own, 4), "cold enough as it is");
        assertTrue(Double.isNaN(Refill.chillTo(little, BOTTLE.charged(0.3, 295), 4.5)), "chilling does not help");
    }

    // lever rule in volume: V = m' v' + m'' v''
    @Test
    void liquidAndVapourFillTheBottle() {
        Charge charge = BOTTLE.charged(4, 290);
        double liquid = charge.liquidMass() / NitrousOxide.saturatedLiquid(290).density();
        double vapour = charge.vapourMass() / NitrousOxide.saturatedVapour(290).density();
        assertEquals(6.7e-3, liquid + vapour, 1e-9);
        assertEquals(liquid / 6.7e-3, charge.liquidVolumeFraction(), 1e-9);
        assertEquals(
                NitrousOxide.saturatedLiquid(290).enthalpy(), charge.outlet().enthalpy(), 1e-6);
        Charge full = BOTTLE.charged(5.6, 290);
        assertEquals(5.6, full.liquidMass());
        assertEquals(1, full.liquidVolumeFraction());
        assertEquals(full.state(), full.outlet());
        Charge gas = BOTTLE.charged(0.3, 290);
        assertEquals(0, gas.liquidMass());
        assertEquals(0, gas.liquidVolumeFraction());
    }

    private static void refused(String name, Executable... attempts) {
        Stream.of(attempts).forEach(attempt -> {
            String said = assertThrows(IllegalArgumentException.class, attempt).getMessage();
            assertTrue(said.contains(name), said);
        });
    }
}
