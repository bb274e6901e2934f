package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.shotledger.bottle.Pass;
import org.shotledger.bottle.Sample;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.job.Job;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;
import org.shotledger.units.Quantities;

/** The case "at the end of the last pass" against the last row of the bottle's own history. */
class LastMomentTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Setup SETUP =
            JOB.setup().withBoost(Quantities.barGauge(1.2)).withJets(Quantities.thou(40), Quantities.thou(21));
    private static final Case LAST = JOB.stated().withBottle(BottleState.LAST);
    private static final Pass PASS = new Bottles()
            .day(JOB.car(), SETUP, LAST)
            .orElseThrow()
            .last(SETUP.passes().count());
    private static final Sample THEN = PASS.history().last();

    @Test
    void thePressureIsThatOfTheLastRowAndTheFlowToo() {
        Outcome outcome = Evaluate.of(JOB.car(), SETUP, LAST);
        OperatingPoint peak = outcome.strongest().orElseThrow();
        assertEquals(THEN.pressure(), peak.bottle().pressure(), 1e-9 * THEN.pressure());
        // the bottle is emptied by a table of the path, which is good to 1.2 % with vapour
        assertEquals(THEN.massFlow(), peak.nitrous().massFlow(), 0.012 * THEN.massFlow());
        PassOutcome.Moment last = outcome.overPass().get(outcome.overPass().size() - 1);
        assertEquals(last.pressure(), peak.bottle().pressure(), 1e-9 * last.pressure());
        assertEquals(last.lambda(), peak.lambda(), 0.01);
    }

    /** At rest the vapour that is still to come has come, and the pressure is higher. */
    @Test
    void theBottleHasNotComeToRestYet() {
        double atRest = PASS.history().left().pressure();
        assertTrue(THEN.pressure() < 0.998 * atRest, THEN.pressure() + " " + atRest);
    }

    /** Superheated liquid: internal energy and flow work of the saturated liquid of its temperature, from the equation of state itself. */
    @Test
    void theSuperheatOfTheLiquidIsNeitherLostNorMade() {
        FluidState entering = Day.end(PASS);
        FluidState liquid = NitrousOxide.saturatedLiquid(THEN.temperature());
        assertTrue(THEN.temperature() > NitrousOxide.saturationTemperature(THEN.pressure()), "it is superheated");
        double whole = liquid.enthalpy() - (liquid.pressure() - THEN.pressure()) / liquid.density();
        assertEquals(whole, entering.enthalpy(), 1e-6 * Math.abs(whole));
        assertTrue(entering.quality() > 0 && entering.quality() < 0.1, "some of it has boiled: " + entering.quality());
        assertEquals(
                NitrousOxide.saturationTemperature(THEN.pressure()), entering.temperature(), 1e-6, "it boils there");
    }

    @Test
    void theFirstRowIsTheBottleAsCharged() {
        assertEquals(PASS.start().outlet(), Day.entering(PASS, PASS.history().first()));
    }

    /** Two hundredths above the pressure of boiling it is compressed, at that pressure boiling. */
    @Test
    void liquidUnderMorePressureIsCompressed() {
        double boiling = NitrousOxide.saturationPressure(290);
        Sample pressed = new Sample(1, 290, 1.02 * boiling, 5, 0.1, 0.05, 290);
        assertEquals(NitrousOxide.atTemperaturePressure(290, 1.02 * boiling), Day.entering(PASS, pressed));
        Sample boils = new Sample(1, 290, boiling, 5, 0.1, 0.05, 290);
        assertEquals(0, Day.entering(PASS, boils).quality(), 1e-6);
        assertEquals(290, Day.entering(PASS, boils).temperature(), 1e-6);
    }
}
