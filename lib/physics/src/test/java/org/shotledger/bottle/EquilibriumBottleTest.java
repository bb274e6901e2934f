package org.shotledger.bottle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shotledger.flow.CsvTable.number;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shotledger.flow.CsvTable;
import org.shotledger.fluid.NitrousOxide;

class EquilibriumBottleTest {
    private static final Bottle SIX_LITRES = new Bottle(6.75e-3, 0, 0);

    // adiabatic equilibrium table, 4.536 kg at 297 K in 6.75 L, liquid out at 0.0363 kg/s
    @Test
    void reproducesTheAdiabaticEmptyingTable() {
        List<Map<String, String>> rows = CsvTable.read(getClass(), "n2o_tank_blowdown.csv");
        History history = Emptying.drain(SIX_LITRES.charged(4.536, 297), 0.0363, 1);
        Map<String, String> last = rows.get(rows.size() - 1);
        BottleEvent end = history.find(BottleEvent.Kind.LIQUID_UNCOVERED).orElseThrow();
        assertEquals(1, end.time() / number(last, "t"), 1e-7);
        assertEquals(number(last, "T"), history.last().temperature(), 1e-5);
        for (int i = 0; i < rows.size() - 1; i++) {
            Sample moment = history.moments().get(i);
            assertEquals(number(rows.get(i), "t"), moment.time(), 1e-9);
            assertEquals(number(rows.get(i), "T"), moment.temperature(), 1e-5);
            assertEquals(1, moment.pressure() / number(rows.get(i), "p"), 1e-6);
            assertEquals(number(rows.get(i), "m_liq"), moment.liquidMass(), 1e-5);
        }
    }

    @Test
    void conservesEnergyWhileVapourIsDrawn() {
        Charge charge = SIX_LITRES.charged(2, 290);
        History history = Emptying.of(charge, Outflow.constant(0.05))
                .throughVapour()
                .withDuration(25)
                .equilibrium();
        assertTrue(history.find(BottleEvent.Kind.LIQUID_UNCOVERED).isPresent());
        Sample last = history.last();
        assertEquals(2 - 0.05 * 25, last.mass(), 1e-6);
        assertTrue(last.pressure()
                < history.find(BottleEvent.Kind.LIQUID_UNCOVERED).get().pressure());
    }

    // the heater's whole energy must be found in the contents and the shell
    @Test
    void heatsToTheThermostatAndStopsThere() {
        Bottle bottle = new Bottle(6.7e-3, 7.1, 900);
        Charge cold = bottle.charged(4.54, 285);
        HeatInput warmth = new HeatInput(300, 0, 285, 350, 6.2e6, 6.0e6);
        History history = Emptying.of(cold, Outflow.none())
                .withHeat(warmth)
                .withDuration(1800)
                .equilibrium();
        BottleEvent off = history.find(BottleEvent.Kind.THERMOSTAT).orElseThrow();
        assertEquals(6.2e6, off.pressure(), 10);
        Sample then = history.at(off.time());
        double contents = 4.54
                * (NitrousOxide.atTemperatureDensity(then.temperature(), 4.54 / 6.7e-3)
                                .internalEnergy()
                        - cold.state().internalEnergy());
        double shell = 7.1 * 900 * (then.wallTemperature() - 285);
        assertEquals(1, (contents + shell) / (350 * off.time()), 0.02);
    }
}
