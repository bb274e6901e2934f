package org.shotledger.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.fuel.Fuels;
import org.shotledger.job.Job;
import org.shotledger.job.Starter;
import org.shotledger.plan.Plan;
import org.shotledger.study.Axis;
import org.shotledger.study.Difference;
import org.shotledger.study.Space;
import org.shotledger.study.Study;
import org.shotledger.supply.Regulator;

/** What goes wrong in the main rail goes wrong in both fuels at once: both pass orifices into one plenum (Bernoulli). */
@DisplayNameGeneration(ReplaceUnderscores.class)
class MainRailFaultsTest {
    @TempDir
    private static Path folder;

    private static Plan plan;
    private static Scenario sound;
    private static BoostLine line;

    @BeforeAll
    static void found() {
        Starter.write(folder.resolve("v8"), "v8", Map.of(), folder);
        plan = Plan.find(Job.load(folder.resolve("v8")));
        sound = Scenario.of(plan);
        BoostLine.Stop stop = BoostLine.of(plan).stops().get(0);
        line = BoostLine.at(stop.rpm(), stop.plenumPressure());
    }

    private static OperatingPoint peak(Scenario s) {
        return Simulation.run(s, line).peak().orElseThrow();
    }

    /** Main fuel for each kilogram of air. */
    private static double metered(OperatingPoint p) {
        return p.main().massFlow() / p.charge().mixture().dryAir();
    }

    private static void bothLeanBy(double share, Scenario fault) {
        OperatingPoint before = peak(sound);
        OperatingPoint after = peak(fault);
        assertEquals(
                share, after.nitrousFuel().massFlow() / before.nitrousFuel().massFlow(), 1e-6);
        assertEquals(share, metered(after) / metered(before), 1e-6);
        assertTrue(after.lambda() > before.lambda());
    }

    @Test
    void a_sagging_rail_leans_both_fuels_with_the_root_of_its_pressure() {
        bothLeanBy(Math.sqrt(0.7), sound.withFuelPressure(0.7 * sound.fuelPressure()));
    }

    @Test
    void a_lost_boost_reference_leans_both_fuels() {
        Regulator set = plan.setup().mainRegulator();
        OperatingPoint p = peak(sound);
        double drop = set.basePressure() - (p.plenumPressure() - p.air().pressure());
        bothLeanBy(
                Math.sqrt(drop / set.basePressure()),
                sound.withRegulator(new Regulator(set.name(), set.basePressure(), 0)));
    }

    @Test
    void a_filter_in_the_branch_takes_from_the_nozzle_alone() {
        double jet = plan.car().nitrous().fuel().jetArea(sound.jets().fuelBore());
        Scenario clogged = sound.withFuelRestriction(jet);
        assertEquals(metered(peak(sound)), metered(peak(clogged)), 1e-9);
        assertTrue(peak(clogged).nitrousFuel().massFlow()
                < 0.95 * peak(sound).nitrousFuel().massFlow());
    }

    @Test
    void a_low_voltage_that_leaves_the_pumps_short_leans_both() {
        Plan weak = Plan.of(plan.job().with("injection.pumps.count", "1"), plan.setup());
        OperatingPoint held = peak(Scenario.of(weak));
        OperatingPoint fallen = peak(Scenario.of(weak).withVoltage(10));
        assertTrue(fallen.nitrousFuel().pumpLimited(), "the pump still gives " + fallen.main());
        double share = fallen.nitrousFuel().massFlow() / held.nitrousFuel().massFlow();
        assertTrue(share < 0.99, "share " + share);
        assertEquals(share, metered(fallen) / metered(held), 1e-5);
    }

    @Test
    void a_wrong_fuel_in_the_tank_is_in_both() {
        Scenario wrong = sound.withMainFuel(Fuels.METHANOL);
        assertEquals(Fuels.METHANOL, wrong.fuels().nitrous());
        assertEquals(Fuels.METHANOL, wrong.fuels().main());
    }

    @Test
    void the_usual_faults_are_those_of_a_rail() {
        List<String> names = CommonFaults.of(sound).stream().map(Fault::name).toList();
        assertTrue(names.containsAll(
                List.of("main tank empty at the pickup", "main fuel filter clogs", "rail loses its boost reference")));
        assertFalse(names.stream().anyMatch(name -> name.contains("cell")), names.toString());
        assertEquals(names.size(), Faults.of(plan).effects().size());
    }

    @Test
    void the_search_leaves_the_pressure_of_the_rail() {
        RobustJetting robust = RobustJetting.of(plan);
        assertEquals(sound.fuelPressure(), robust.meeting().fuelPressure());
        robust.byNitrousJet().forEach(choice -> assertEquals(sound.fuelPressure(), choice.fuelPressure()));
        assertTrue(ArmingConditions.of(plan)
                .find("fuel-pressure")
                .orElseThrow()
                .name()
                .contains("main rail"));
    }

    @Test
    void a_study_varies_jets_and_refuses_a_pressure_of_its_own() {
        Space space = Space.of(plan).ladder(Axis.FUEL_JET, "30 thou", "36 thou");
        Difference tables = Study.of(plan.job(), space).difference();
        assertEquals(0, tables.verdicts());
        assertTrue(tables.margin() < 0.01 && tables.power() < 0.005 && tables.lambda() < 0.005, tables.toString());
        assertThrows(
                IllegalArgumentException.class,
                () -> Space.of(plan).vary(Axis.FUEL_PRESSURE, "3 bar gauge", "4 bar gauge"));
    }
}
