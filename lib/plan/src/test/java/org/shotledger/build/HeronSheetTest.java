package org.shotledger.build;

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

/** The shipped demonstration sheet, against the scenario it is to describe. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class HeronSheetTest {
    static final Path HERON = Path.of("../../data/heron/build.yaml");
    private static final double HP = 745.69987158227022;

    private final Build build = Build.load(HERON);

    @Test
    void the_sheet_says_what_the_scenario_says() {
        assertTrue(build.invented());
        assertEquals(2.894e-3, build.engine().displacement(), 1e-6);
        assertEquals(780 * HP, build.target().wheelPower(), 1e-6);
        assertEquals(3, build.target().passes());
        assertEquals(590 * HP, build.basePull().wheelPower(), 1e-6);
        assertEquals(15 * HP / Math.sqrt(3), build.basePull().uncertainty(), 1e-6, "band of JCGM 100, 4.3.7");
        assertEquals(160e5, build.limits().peakPressure());
        assertEquals(900, build.limits().crankTorque());
        assertEquals(4.5359237, build.bottle().charge(), 1e-12);
        assertEquals(118_000, build.turbo().map().maximumRpm());
        assertEquals(2, build.injection().pumps().pumps().size());
        assertEquals(1.02, build.engine().volumetricEfficiency().at(6200));
    }

    @Test
    void air_at_the_event_is_thinner_than_at_home() {
        // ISO 2533 table 1: 87 176 Pa at 1250 m geometric (interpolated 87 718 at 1200, 86 639 at 1300)
        assertEquals(87_180, build.air("event").pressure(), 60);
        assertEquals(98_945, build.air("home").pressure(), 60);
    }

    @Test
    void the_map_has_its_best_point_surge_and_choke_where_the_scenario_puts_them() {
        var map = build.turbo().map();
        assertEquals(0.76, map.locate(0.40, 2.8).efficiency(), 0.005);
        assertEquals(0.19, map.surgeFlow(2.6), 0.002);
        assertEquals(0.60, map.chokeFlow(118_000), 1e-9);
        assertTrue(Compressor.at(map, 0.5, 291, 97_500, 2.96e5).place().efficiency() > 0.6);
    }

    @Test
    void every_figure_has_its_place_and_reason() {
        Origin bore = build.origin("engine.bore").orElseThrow();
        assertEquals("84.5 mm +/- 0.02 mm", bore.text());
        assertEquals("measured", bore.standing());
        String line = lines().get(bore.line() - 1);
        assertTrue(line.contains("bore:"), line);
        assertEquals("bore gauge (build.yaml, line " + bore.line() + ")", bore.source());
        assertEquals(
                "common practice",
                build.origin("limits.piston-speed").orElseThrow().standing());
        assertEquals(
                "dynamometer sheet of the base pull",
                build.origin("base-pull.lambda").orElseThrow().from(),
                "taken over from the section");
    }

    @Test
    void saved_and_loaded_again_the_build_is_the_same(@TempDir Path folder) throws Exception {
        Path copy = folder.resolve("job/build.yaml");
        build.save(copy);
        Build again = Build.load(folder.resolve("job"));
        assertEquals(build, again);
        assertEquals(List.of(), build.differences(again));
        assertEquals(Files.readString(HERON), Files.readString(copy), "comments and digits stay");
    }

    @Test
    void a_table_that_vanished_since_the_sheet_was_read_stops_the_saving(@TempDir Path folder) throws Exception {
        build.save(folder.resolve("a/build.yaml"));
        Build copy = Build.load(folder.resolve("a"));
        Path jets = folder.resolve("a/jets.csv");
        Files.delete(jets);
        assertEquals(
                "The table " + jets + " cannot be read any more; nothing was written.",
                assertThrows(java.io.UncheckedIOException.class, () -> copy.save(folder.resolve("b/build.yaml")))
                        .getMessage());
        assertTrue(Files.notExists(folder.resolve("b")));
    }

    @Test
    void one_value_is_changed_and_the_rest_stays() {
        Build changed =
                build.with("wet-kit.fuel.regulator.boost-reference", "0").with("engine.bore", "3.3268 in");
        assertEquals(0, changed.wetKit().fuel().regulator().boostReference());
        assertEquals(0.08450072, changed.engine().bore(), 1e-12);
        assertTrue(changed.source().text().contains("# 1 follows the boost, 0 does not; compare both"));
        assertEquals(
                List.of(
                        "engine.bore: 84.5 mm +/- 0.02 mm -> 3.3268 in (+0.0 %); reason: measured: bore gauge -> assumed: changed"
                                + " from 84.5 mm +/- 0.02 mm, no reason given",
                        "wet-kit.fuel.regulator.boost-reference: 1 -> 0 (-100.0 %); reason: assumed -> assumed: changed from 1,"
                                + " no reason given"),
                build.differences(changed).stream().map(Difference::toString).toList());
    }

    @Test
    void a_changed_figure_does_not_carry_the_reason_of_the_old_one() {
        for (Build changed : List.of(
                build.with("engine.bore", "85 mm", "measured", "bored out: \"first oversize\""),
                build.with("engine.bore", "84.9 mm")
                        .with("engine.bore", "85 mm", "measured", "bored out: \"first oversize\""))) {
            Origin bore = changed.origin("engine.bore").orElseThrow();
            assertEquals("bored out: \"first oversize\"", bore.from());
            assertEquals("measured", bore.standing());
            assertEquals(0.085, bore.value(), 1e-12);
            assertTrue(changed.source()
                    .text()
                    .contains(
                            "  bore: {value: 85 mm, from: \"bored out: \\\"first oversize\\\"\", standing: measured}"));
        }
    }

    @Test
    void a_reason_is_written_into_a_block_as_well_as_into_braces() {
        String block = build.source()
                .text()
                .replace(
                        "  rod-length: {value: 145 mm, from: rod drawing}",
                        "  rod-length:\n    value: 145 mm\n    standing: measured # twice");
        Build changed = Build.read(block, HERON.getParent()).with("engine.rod-length", "146 mm");
        assertTrue(
                changed.source()
                        .text()
                        .contains(
                                "    value: 146 mm\n    from: \"changed from 145 mm, no reason given\"\n    standing: assumed # twice"));
        assertEquals(
                "assumed", changed.origin("engine.rod-length").orElseThrow().standing());
    }

    @Test
    void the_same_figure_in_another_unit_is_no_difference() {
        assertEquals(
                List.of(),
                build.differences(build.with("bottle.charge", "4.5359237 kg").with("vehicle.mass", "1540000 g")));
    }

    @Test
    void a_temperature_has_no_relative_change() {
        assertEquals(
                List.of(
                        "bottle.start-temperature: 32 degC -> 27 degC; reason: assumed -> assumed: changed from 32 degC, no reason"
                                + " given"),
                build.differences(build.with("bottle.start-temperature", "27 degC")).stream()
                        .map(Difference::toString)
                        .toList());
    }

    @Test
    void a_changed_band_reason_or_table_is_a_difference_too() throws Exception {
        String text = Files.readString(HERON)
                .replace("84.5 mm +/- 0.02 mm, from: bore gauge", "84.5 mm +/- 0.05 mm, from: bore gauge")
                .replace("from: crankshaft drawing", "from: measured on the crankshaft, standing: measured")
                .replace("dead-time-table: injector-dead-time.csv", "dead-time: 1.0 ms");
        assertEquals(
                List.of(
                        "engine.bore: 84.5 mm +/- 0.02 mm -> 84.5 mm +/- 0.05 mm (+0.0 %)",
                        "engine.stroke: still 86.0 mm; reason: assumed: crankshaft drawing -> measured: measured on the"
                                + " crankshaft",
                        "injection.injector.dead-time-table (table): differs",
                        "injection.injector.dead-time: (not stated) -> 1.0 ms; reason: (not stated) -> assumed"),
                build.differences(Build.read(text, HERON.getParent())).stream()
                        .map(Difference::toString)
                        .filter(line -> !line.startsWith("injection.injector.dead-time-table: "))
                        .sorted()
                        .toList());
    }

    /** 100 lb/h over 684 kg/m3: 100 * 0.45359237 / 3600 / 684 m3/s (exact pound, 1959). */
    @Test
    void an_injector_rated_by_mass_is_taken_at_its_test_density() throws Exception {
        String text = Files.readString(HERON).replace("flow: {value: 1050 cc/min +/- 2 %", "flow: {value: 100 lb/h");
        assertEquals(
                100 * 0.45359237 / 3600 / 684,
                Build.read(text, HERON.getParent()).injection().injector().staticFlow(),
                1e-15);
    }

    @Test
    void a_heater_may_be_switched_by_pressure() throws Exception {
        String text =
                Files.readString(HERON).replace("  heater-off-temperature: 32 degC", "  heater-off-pressure: 900 psig");
        double pressure = 900 * 6894.757293168 + build.air("event").pressure();
        assertEquals(
                pressure,
                org.shotledger.fluid.NitrousOxide.saturationPressure(
                        Build.read(text, HERON.getParent()).bottle().heaterOff()),
                1e-6 * pressure);
    }

    private static List<String> lines() {
        try {
            return Files.readAllLines(HERON);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
