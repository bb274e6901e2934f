package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;
import org.shotledger.wiring.BreakPoints;
import org.shotledger.wiring.EthanolSensor;
import org.shotledger.wiring.InputStage;
import org.shotledger.wiring.RatiometricSensor;
import org.shotledger.wiring.Sensor;
import org.shotledger.wiring.SensorInput;
import org.shotledger.wiring.SensorRole;
import org.shotledger.wiring.ThermocoupleSensor;
import org.shotledger.wiring.Wiring;

/** The wiring of the invented demo build as tables. */
class WiringTablesTest {
    private static final Wiring WIRING = Demo.PLAN.car().wiring().orElseThrow();

    // common practice: a blade fuse carries three quarters of its rating for good
    @Test
    void everyFuseCarriesItsLoadAtThreeQuartersAndTheWireCarriesTheFuse() {
        var cables = WiringTables.cables(WIRING).in(Shown.SI).table();
        assertEquals(WIRING.loads().size(), cables.rowCount());
        for (int i = 0; i < cables.rowCount(); i++) {
            double fuse = cables.doubleColumn("Fuse, A").get(i);
            assertTrue(0.75 * fuse >= cables.doubleColumn("Current, A").get(i), "row " + i);
            assertTrue(cables.doubleColumn("It may carry, A").get(i) >= fuse, "row " + i);
        }
    }

    @Test
    void aLengthStandsInFeetAndMetres() {
        assertEquals("13.5 ft (4.1 m)", Demo.cell(WiringTables.cables(WIRING), "bottle heater", 6));
    }

    @Test
    void loadsThatAreAlwaysOnNeedNoSwitchOfThePlan() {
        List<String> switched = Demo.column(WiringTables.switching(WIRING), 0);
        assertTrue(switched.contains("nitrous solenoid") && !switched.contains("cooling fans"), switched.toString());
    }

    @Test
    void eachPhaseIsFedByAlternatorAndBattery() {
        var phases = WiringTables.balances(WIRING, 10, 6800, 300).in(Shown.US).table();
        assertEquals(3, phases.rowCount());
        for (int i = 0; i < 3; i++) {
            double lacking = phases.doubleColumn("Loads take, A").get(i)
                    - phases.doubleColumn("Alternator gives at most, A").get(i);
            assertEquals(
                    Math.max(0, lacking),
                    phases.doubleColumn("From the battery, A").get(i),
                    1e-9);
        }
    }

    @Test
    void everySignalIsListedWithItsPin() {
        Listing pins = PinTables.of(WIRING.pins());
        assertEquals(WIRING.pins().placements().size(), pins.table().rowCount());
        assertTrue(Demo.column(pins, 3).stream().noneMatch(String::isBlank));
    }

    @Test
    void aPressureSensorIsTypedInInTheUnitsAskedFor() {
        Listing table = SensorTables.of(input(new RatiometricSensor("rail", 0, 10e5, 5, 0.1, 0.9)));
        assertEquals(
                List.of("Pressure, bar gauge", "Output"),
                table.in(Shown.SI).table().columnNames());
        assertEquals(5.0, table.in(Shown.SI).table().doubleColumn(0).get(1), 1e-12);
        // 1 bar is 14.503 773 8 psi, NIST SP 811 (2008), appendix B
        assertEquals(72.518869, table.in(Shown.US).table().doubleColumn(0).get(1), 1e-6);
        assertEquals(List.of("0.500 V", "2.500 V", "4.500 V"), Demo.column(table.in(Shown.US), 1));
    }

    @Test
    void anEthanolSensorIsTypedInInHertz() {
        Listing table = SensorTables.of(input(new EthanolSensor("fuel", 50, 150)));
        assertEquals(List.of("Share, %", "Output"), table.table().columnNames());
        assertEquals(List.of("50.0 Hz", "100.0 Hz", "150.0 Hz"), Demo.column(table, 1));
    }

    // ITS-90, NIST Monograph 175, type K: 4.096 mV at 100 degrees Celsius
    @Test
    void aThermocoupleIsCheckedInMillivolts() {
        Wiring probe = new Wiring(
                WIRING.rules(),
                WIRING.outputCurrent(),
                WIRING.supply(),
                WIRING.loads(),
                WIRING.pinTask(),
                WIRING.pins(),
                List.of(input(new ThermocoupleSensor("probe", 273.15, 1300))),
                Optional.empty());
        Listing checks = WiringTables.checks(probe);
        assertEquals(List.of("0.000 mV", "4.096 mV"), Demo.column(checks, 3));
        assertEquals(List.of("32.0 \u00b0F", "212.0 \u00b0F"), Demo.column(checks.in(Shown.US), 2));
        assertEquals(List.of("0.0 \u00b0C", "100.0 \u00b0C"), Demo.column(checks.in(Shown.SI), 2));
    }

    private static SensorInput input(Sensor sensor) {
        InputStage threePoints = new InputStage(0.02, false, 12, 5, 3, BreakPoints.Spacing.EVEN_OUTPUT);
        return SensorInput.of(sensor, threePoints, new SensorInput.Tolerances(Double.NaN, 0, 0), SensorRole.OTHER);
    }

    @Test
    void everySensorOfTheBuildHasTwoChecks() {
        assertEquals(
                2 * WIRING.sensors().size(), WiringTables.checks(WIRING).table().rowCount());
    }
}
