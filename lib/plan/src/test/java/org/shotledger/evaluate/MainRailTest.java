package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.car.Car;
import org.shotledger.car.Injection;
import org.shotledger.commission.JobItem;
import org.shotledger.commission.JobList;
import org.shotledger.curve.Curve;
import org.shotledger.job.Job;
import org.shotledger.job.Starter;
import org.shotledger.ledger.Entry;
import org.shotledger.ledger.Ledger;
import org.shotledger.ledger.Ledgers;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.sheet.SheetException;
import org.shotledger.supply.Pump;
import org.shotledger.supply.PumpGroup;
import org.shotledger.supply.Regulator;

/** A large V8 whose plate nozzle takes its fuel from the main rail: one pressure and one pump limit for both fuels. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class MainRailTest {
    /** Mass share of oxygen in dry air: ISO 2533 composition, rounded as everywhere here. */
    private static final double OXYGEN = 0.2314;
    /** Pressure at which the straight pump of these tests gives nothing, Pa. */
    private static final double SHUT_OFF = 9e5;

    @TempDir
    private static Path folder;

    private static Plan plan;

    @BeforeAll
    static void found() {
        Starter.write(folder.resolve("v8"), "v8", java.util.Map.of(), folder);
        plan = Plan.find(Job.load(folder.resolve("v8")));
    }

    /** The car with one pump whose flow falls in a straight line over pressure, at any voltage, m3/s without pressure. */
    private static Car pumped(double free) {
        Curve flow = Curve.of("pump flow", new double[] {0, SHUT_OFF}, new double[] {free, 0});
        Curve current = Curve.of("pump current", new double[] {0, SHUT_OFF}, new double[] {5, 12});
        Pump pump = new Pump("pump", List.of(new Pump.Line(8, flow, current), new Pump.Line(16, flow, current)));
        Injection old = plan.car().injection();
        return plan.car()
                .with(new Injection(
                        old.injector(),
                        old.count(),
                        new PumpGroup("one", List.of(pump), PumpGroup.Arrangement.PARALLEL, 0),
                        old.voltage()));
    }

    private static OperatingPoint strongest() {
        return plan.stated().strongest().orElseThrow();
    }

    private static OperatingPoint at(Car car, Setup setup) {
        return Evaluate.at(car, setup, plan.job().stated(), strongest().rpm()).orElseThrow();
    }

    private static double density() {
        return plan.car().fuels().main().density(plan.car().fuels().temperature());
    }

    @Test
    void the_plan_reaches_its_power_with_every_limit_kept() {
        assertTrue(plan.verdict() != Verdict.BROKEN, plan.verdictLine());
        assertTrue(plan.reached());
        assertTrue(plan.limits().find("main-pump").isPresent());
        assertEquals(Optional.empty(), plan.limits().find("kit-pump"));
        assertEquals(Optional.empty(), plan.limits().find("fuel-cell"));
    }

    @Test
    void the_main_pumps_are_held_against_both_flows() {
        double free = 3e-4;
        OperatingPoint p = at(pumped(free), plan.setup());
        var kit = plan.car().nitrous();
        double drop = plan.setup()
                .mainRegulator()
                .basePressure(); // the reference is 1: the drop into the plenum is what was set
        double jet = kit.fuel().jetArea(plan.setup().jets().orElseThrow().fuelBore());
        double area = 1 / Math.hypot(1 / jet, 1 / kit.fuel().solenoid().effectiveArea());
        double shot = area * Math.sqrt(2 * density() * drop);
        double injectors = OXYGEN
                * p.charge().mixture().dryAir()
                / (plan.setup().mixture() * plan.car().fuels().main().oxygenDemand());
        assertEquals(shot, p.nitrousFuel().massFlow(), 1e-9 * shot);
        assertEquals(injectors, p.main().massFlow(), 2e-4 * injectors); // the share of oxygen is rounded
        assertEquals(p.main().massFlow() + shot, p.main().pumped(), 1e-9);
        double rise = drop + p.plenumPressure() - p.air().pressure();
        double capacity = density() * free * (1 - rise / SHUT_OFF);
        assertEquals(capacity, p.main().pumpCapacity(), 1e-9 * capacity);
        Limit limit = PointLimits.all(pumped(free), p, "event").stream()
                .filter(l -> l.key().equals("main-pump"))
                .findFirst()
                .orElseThrow();
        assertEquals(injectors + shot, limit.value(), 2e-4 * injectors);
        assertEquals(0.85 * capacity, limit.bound(), 1e-9);
    }

    @Test
    void a_weak_pump_lets_the_rail_fall_for_both() {
        OperatingPoint held = at(pumped(3e-4), plan.setup());
        double rise = held.main().railPressure() - held.air().pressure();
        double enough = held.main().pumped() / density() / (1 - rise / SHUT_OFF);
        double free = 0.9 * enough;
        OperatingPoint p = at(pumped(free), plan.setup());
        double plenum = p.plenumPressure();
        assertEquals(p.main().railPressure(), p.nitrousFuel().railPressure());
        assertTrue(p.nitrousFuel().pumpLimited()
                && p.main().railPressure() < held.main().railPressure() - 1e4);
        double given =
                density() * free * (1 - (p.main().railPressure() - p.air().pressure()) / SHUT_OFF);
        assertEquals(given, p.main().pumped(), 1e-4 * given);
        double share =
                Math.sqrt((p.main().railPressure() - plenum) / (held.main().railPressure() - plenum));
        assertEquals(share * held.nitrousFuel().massFlow(), p.nitrousFuel().massFlow(), 1e-6);
        double metered = p.main().massFlow() / p.charge().mixture().dryAir();
        double wanted = held.main().massFlow() / held.charge().mixture().dryAir();
        assertEquals(share * wanted, metered, 1e-5 * wanted);
        assertTrue(p.lambda() > held.lambda() + 0.01, "leaner: " + held.lambda() + " to " + p.lambda());
        // the injectors are held open as long as before, but for the little air that has changed
        assertEquals(held.main().duty(), p.main().duty(), 0.01);
        Outcome whole = Evaluate.of(pumped(free), plan.setup(), plan.job().stated());
        assertEquals(
                Verdict.BROKEN, whole.limits().find("main-pump").orElseThrow().verdict());
        Ledger ledger = Ledgers.of(whole, plan.job().target());
        recompute(ledger);
        // the rail settles within a pascal
        assertEquals(1e-5, ledger.find("compressor-flow").orElseThrow().tolerance());
    }

    @Test
    void without_nitrous_the_pumps_carry_the_injectors_alone() {
        OperatingPoint off = at(plan.car(), plan.setup().withoutJets());
        assertEquals(off.main().massFlow(), off.main().pumped());
        assertEquals(
                plan.setup().mainRegulator().railPressure(off.air().pressure(), off.plenumPressure()),
                off.nitrousFuel().railPressure());
    }

    @Test
    void one_regulator_moves_the_nitrous_fuel_with_the_main_fuel() {
        Regulator set = plan.setup().mainRegulator();
        Setup higher = plan.setup().withMainRegulator(new Regulator(set.name(), 1.21 * set.basePressure(), 1));
        assertEquals(
                1.1,
                at(pumped(3e-4), higher).nitrousFuel().massFlow()
                        / at(pumped(3e-4), plan.setup()).nitrousFuel().massFlow(),
                1e-9);
        assertEquals(higher.mainRegulator(), higher.nitrousRegulator());
        String said = assertThrows(
                        IllegalArgumentException.class, () -> plan.setup().withNitrousRegulator(set))
                .getMessage();
        assertEquals(
                "The nitrous fuel comes from the main rail and has its pressure; change that one, with withMainRegulator.",
                said);
    }

    @Test
    void every_figure_of_the_ledger_is_made_again() {
        recompute(plan.ledger());
        assertFalse(plan.ledger().find("fuel-pressure").isPresent(), "the pressure stands once");
    }

    /** All but the calibration on the base pull, which knows nothing of the rail. */
    private static void recompute(Ledger ledger) {
        for (Entry entry : ledger.entries()) {
            if (entry.formula().isPresent() && !entry.key().equals("cycle-share")) {
                double again = ledger.recomputed(entry.key()).orElseThrow();
                assertEquals(entry.value(), again, entry.tolerance() * Math.abs(entry.value()), entry.key());
            }
        }
    }

    @Test
    void the_job_list_has_a_branch_and_no_second_supply() {
        List<String> keys = JobList.of(plan).items().stream().map(JobItem::key).toList();
        assertTrue(keys.contains("rail-branch"), keys.toString());
        for (String own : List.of("fuel-cell", "nitrous-fuel-pump", "nitrous-fuel-regulator")) {
            assertFalse(keys.contains(own), own);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cell-volume: 5 L|\"cell-volume\" belongs to a supply of its own, but \"supply: main-rail\" stands here: the fuel comes out of the car's own tank; take it out, or write \"supply: own-cell\".",
                "pumps: {curve: fuel-pump.csv}|\"pumps\" belongs to a supply of its own, but \"supply: main-rail\" stands here: the pumps of \"injection\" give both fuels and would count twice; take it out, or write \"supply: own-cell\".",
                "regulator: {base-pressure: 3 bar, boost-reference: 1}|\"regulator\" belongs to a supply of its own, but \"supply: main-rail\" stands here: the regulator of \"injection\" holds the pressure of both and would count twice; take it out, or write \"supply: own-cell\".",
            })
    void what_belongs_to_an_own_supply_is_refused(String line, String sentence) throws IOException {
        refused("supply: main-rail", "supply: main-rail\n    " + line, sentence);
    }

    @Test
    void another_nitrous_fuel_and_another_pump_are_refused() throws IOException {
        refused(
                "kind: same",
                "kind: methanol",
                "\"nitrous-system.fuel.supply: main-rail\" gives the nitrous system the fuel of the tank; write \"same\" here, or give the"
                        + " nitrous fuel a cell of its own.");
        refused(
                "    bottle-heater: {part: bottle-heater",
                "    extra: {part: nitrous-pump, length: 4 m, on: pass}\n    bottle-heater: {part: bottle-heater",
                "The nitrous fuel comes from the main rail and has no pump of its own; take this load out: the main pump carries both.");
        refused(
                "supply: main-rail",
                "supply: main",
                "\"main\" is not a choice for \"nitrous-system.fuel.supply\"; allowed are own-cell, main-rail.");
    }

    private static void refused(String good, String bad, String sentence) throws IOException {
        String sheet = java.nio.file.Files.readString(folder.resolve("v8/job.yaml"));
        assertTrue(sheet.contains(good), good);
        String message = assertThrows(
                        SheetException.class,
                        () -> Job.read(
                                sheet.replaceFirst(java.util.regex.Pattern.quote(good), bad), folder.resolve("v8")))
                .problems()
                .get(0)
                .sentence();
        assertEquals(sentence, message);
    }

    @Test
    void a_setup_of_another_kind_of_car_is_refused() {
        Job demo = Job.load(Path.of("../../data/whimbrel"));
        assertThrows(
                IllegalArgumentException.class,
                () -> Evaluate.of(plan.car(), demo.setup(), plan.job().stated()));
        assertThrows(IllegalArgumentException.class, () -> Evaluate.of(demo.car(), plan.setup(), demo.stated()));
    }
}
