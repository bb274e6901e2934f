package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.boost.Compressor;
import org.shotledger.car.Origin;

/** The shipped demonstration sheet, against the scenario it is to describe. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class DemoSheetTest {
    static final Path DEMO = Path.of("../../data/whimbrel/job.yaml");
    private static final double HP = 745.69987158227022;

    private final Job job = Job.load(DEMO);

    @Test
    void the_sheet_says_what_the_scenario_says() {
        assertTrue(job.car().invented());
        assertEquals(2.901e-3, job.car().engine().displacement(), 1e-6);
        assertEquals(720 * HP, job.target().wheelPower(), 1e-6);
        assertEquals(3, job.target().passes());
        assertEquals(590 * HP, job.car().basePull().strongest().wheelPower(), 1e-6);
        assertEquals(15.0 / 590 / Math.sqrt(3), job.car().basePull().uncertainty(), 1e-9, "band of JCGM 100, 4.3.7");
        assertEquals(160e5, job.car().limits().peakPressure());
        assertEquals(900, job.car().limits().crankTorque());
        assertEquals(7.71107029, job.setup().bottle().charge(), 1e-12);
        assertEquals(118_000, job.car().turbo().map().maximumRpm());
        assertEquals(2, job.car().injection().pumps().pumps().size());
        assertEquals(1.02, job.car().engine().volumetricEfficiency().at(6200));
    }

    @Test
    void air_at_the_event_is_thinner_than_at_home() {
        // ISO 2533 table 1: 87 176 Pa at 1250 m geometric (interpolated 87 718 at 1200, 86 639 at 1300)
        assertEquals(87_180, job.air("event").pressure(), 60);
        assertEquals(98_945, job.air("home").pressure(), 60);
    }

    @Test
    void the_map_has_its_best_point_surge_and_choke_where_the_scenario_puts_them() {
        var map = job.car().turbo().map();
        assertEquals(0.76, map.locate(0.40, 2.8).efficiency(), 0.005);
        assertEquals(0.19, map.surgeFlow(2.6), 0.002);
        assertEquals(0.60, map.chokeFlow(118_000), 1e-9);
        assertTrue(Compressor.at(map, 0.5, 291, 97_500, 2.96e5).place().efficiency() > 0.6);
    }

    @Test
    void every_figure_has_its_place_and_reason() {
        Origin bore = job.car().origin("engine.bore").orElseThrow();
        assertEquals("85.3 mm +/- 0.02 mm", bore.text());
        assertEquals("measured", bore.provenance());
        String line = lines().get(bore.line() - 1);
        assertTrue(line.contains("bore:"), line);
        assertEquals("bore gauge (job.yaml, line " + bore.line() + ")", bore.source());
        assertEquals(
                "common practice",
                job.car().origin("limits.piston-speed").orElseThrow().provenance());
        assertEquals(
                "dynamometer sheet of the base pull",
                job.car().origin("base-pull.lambda").orElseThrow().from(),
                "taken over from the section");
    }

    @Test
    void saved_and_loaded_again_the_job_is_the_same(@TempDir Path folder) throws Exception {
        Path copy = folder.resolve("job/job.yaml");
        job.save(copy);
        Job again = Job.load(folder.resolve("job"));
        assertEquals(job.target(), again.target());
        assertEquals(job.setup(), again.setup());
        assertEquals(job.cases(), again.cases());
        assertEquals(List.of(), job.differences(again));
        assertEquals(Files.readString(DEMO), Files.readString(copy), "comments and digits stay");
    }

    @Test
    void a_table_that_vanished_since_the_sheet_was_read_stops_the_saving(@TempDir Path folder) throws Exception {
        job.save(folder.resolve("a/job.yaml"));
        Job copy = Job.load(folder.resolve("a"));
        Path jets = folder.resolve("a/jets.csv");
        Files.delete(jets);
        assertEquals(
                "The table " + jets + " cannot be read any more; nothing was written.",
                assertThrows(java.io.UncheckedIOException.class, () -> copy.save(folder.resolve("b/job.yaml")))
                        .getMessage());
        assertTrue(Files.notExists(folder.resolve("b")));
    }

    @Test
    void one_value_is_changed_and_the_rest_stays() {
        Job changed =
                job.with("nitrous-system.fuel.regulator.boost-reference", "0").with("engine.bore", "3.3583 in");
        assertEquals(0, changed.setup().nitrousRegulator().boostReference());
        assertEquals(0.08530082, changed.car().engine().bore(), 1e-12);
        assertTrue(changed.source().text().contains("# 1 follows the boost, 0 does not; compare both"));
        assertEquals(
                List.of(
                        "nitrous-system.fuel.regulator.boost-reference: 1 -> 0 (-100.0 %); reason: assumed -> assumed: changed from 1,"
                                + " no reason given",
                        "engine.bore: 85.3 mm +/- 0.02 mm -> 3.3583 in (+0.0 %); reason: measured: bore gauge -> assumed: changed"
                                + " from 85.3 mm +/- 0.02 mm, no reason given"),
                job.differences(changed).stream().map(SheetDifference::toString).toList());
    }

    @Test
    void a_changed_figure_does_not_carry_the_reason_of_the_old_one() {
        for (Job changed : List.of(
                job.with("engine.bore", "85 mm", "measured", "bored out: \"first oversize\""),
                job.with("engine.bore", "84.9 mm")
                        .with("engine.bore", "85 mm", "measured", "bored out: \"first oversize\""))) {
            Origin bore = changed.car().origin("engine.bore").orElseThrow();
            assertEquals("bored out: \"first oversize\"", bore.from());
            assertEquals("measured", bore.provenance());
            assertEquals(0.085, bore.value(), 1e-12);
            assertTrue(
                    changed.source()
                            .text()
                            .contains(
                                    "  bore: {value: 85 mm, from: \"bored out: \\\"first oversize\\\"\", provenance: measured}"));
        }
    }

    @Test
    void a_reason_is_written_into_a_block_as_well_as_into_braces() {
        String block = job.source()
                .text()
                .replace(
                        "  rod-length: {value: 147 mm, from: rod drawing}",
                        "  rod-length:\n    value: 147 mm\n    provenance: measured # twice");
        Job changed = Job.read(block, DEMO.getParent()).with("engine.rod-length", "146 mm");
        assertTrue(
                changed.source()
                        .text()
                        .contains(
                                "    value: 146 mm\n    from: \"changed from 147 mm, no reason given\"\n    provenance: assumed # twice"));
        assertEquals(
                "assumed",
                changed.car().origin("engine.rod-length").orElseThrow().provenance());
    }

    @Test
    void the_same_figure_in_another_unit_is_no_difference() {
        assertEquals(
                List.of(),
                job.differences(job.with("bottle.charge", "7.71107029 kg").with("vehicle.mass", "1540000 g")));
    }

    @Test
    void a_temperature_has_no_relative_change() {
        assertEquals(
                List.of(
                        "bottle.start-temperature: 30 degC -> 27 degC; reason: assumed -> assumed: changed from 30 degC, no reason"
                                + " given"),
                job.differences(job.with("bottle.start-temperature", "27 degC")).stream()
                        .map(SheetDifference::toString)
                        .toList());
    }

    @Test
    void a_changed_band_reason_or_table_is_a_difference_too() throws Exception {
        String text = Files.readString(DEMO)
                .replace("85.3 mm +/- 0.02 mm, from: bore gauge", "85.3 mm +/- 0.05 mm, from: bore gauge")
                .replace("from: crankshaft drawing", "from: measured on the crankshaft, provenance: measured")
                .replace("dead-time-table: injector-dead-time.csv", "dead-time: 1.0 ms");
        assertEquals(
                List.of(
                        "engine.bore: 85.3 mm +/- 0.02 mm -> 85.3 mm +/- 0.05 mm (+0.0 %)",
                        "engine.stroke: still 84.6 mm; reason: assumed: crankshaft drawing -> measured: measured on the"
                                + " crankshaft",
                        "injection.injector.dead-time-table (table): differs",
                        "injection.injector.dead-time: (not stated) -> 1.0 ms; reason: (not stated) -> assumed"),
                job.differences(Job.read(text, DEMO.getParent())).stream()
                        .map(SheetDifference::toString)
                        .filter(line -> !line.startsWith("injection.injector.dead-time-table: "))
                        .sorted()
                        .toList());
    }

    /** 100 lb/h over 684 kg/m3: 100 * 0.45359237 / 3600 / 684 m3/s (exact pound, 1959). */
    @Test
    void an_injector_rated_by_mass_is_taken_at_its_test_density() throws Exception {
        String text = Files.readString(DEMO).replace("flow: {value: 1130 cc/min +/- 2 %", "flow: {value: 100 lb/h");
        assertEquals(
                100 * 0.45359237 / 3600 / 684,
                Job.read(text, DEMO.getParent()).car().injection().injector().staticFlow(),
                1e-15);
    }

    @Test
    void a_heater_may_be_switched_by_pressure() throws Exception {
        String text =
                Files.readString(DEMO).replace("  heater-off-temperature: 30 degC", "  heater-off-pressure: 900 psig");
        double pressure = 900 * 6894.757293168 + job.air("event").pressure();
        assertEquals(
                pressure,
                org.shotledger.fluid.NitrousOxide.saturationPressure(
                        Job.read(text, DEMO.getParent()).car().bottle().heaterOff()),
                1e-6 * pressure);
    }

    private static List<String> lines() {
        try {
            return Files.readAllLines(DEMO);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
