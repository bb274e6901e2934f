package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;

/** One bad sheet for each message: the good sheet with one line changed, the whole message asserted. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class BadSheetTest {
    private static final Path FOLDER = DemoSheetTest.DEMO.getParent();
    private static final String GOOD = read(DemoSheetTest.DEMO);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "stroke: {value: 84.6 mm,|stroke: {value: 84.6 kg,|engine.stroke: \"84.6 kg\" is a mass; a length is wanted, in mm, in, thou, m, ft, cm, um, km, mi.",
                "stroke: {value: 84.6 mm,|stroke: {value: 84.6,|engine.stroke: \"84.6\" has no unit; write a length such as \"84.6 mm\" or \"84.6 in\".",
                "stroke: {value: 84.6 mm,|stroke: {value: 860 mm,|engine.stroke: \"860 mm\" is not plausible for \"engine.stroke\"; allowed is 30 to 180 mm.",
                "stroke: {value|strok: {value|engine.stroke: \"engine.stroke\" is missing; write a length from 30 to 180 mm.",
                "rod-length: {value: 147 mm,|rod-length: {val: 147 mm,|engine.rod-length: \"engine.rod-length\" has no value; write a length from 50 to 300 mm.",
                "cylinders: 6|cylinders: 6.5|engine.cylinders: A whole number is wanted from 1 to 16.",
                "cylinders: 6|cylinders: six|engine.cylinders: \"six\" does not begin with a number; write a number and a unit, such as \"84.5 mm\".",
                "boost: 1.85 bar gauge +/- 0.03 bar|boost: 1.85 bar|base-pull.boost: \"1.85 bar\" does not say which pressure; write \"1.85 bar gauge\" or \"1.85 bar abs\".",
                "kind: same|kind: alcohol|fuels.nitrous.kind: \"alcohol\" is not a choice for \"fuels.nitrous.kind\"; allowed are ethanol-blend, gasoline, methanol, ethanol, same.",
                "kind: same|kind: metanol|fuels.nitrous.kind: \"metanol\" is not a choice for \"fuels.nitrous.kind\"; the nearest name is \"methanol\"; allowed are ethanol-blend, gasoline, methanol, ethanol, same.",
                "provenance: published|provenance: certain|injection.injector.test-density.provenance: \"certain\" is not a provenance; allowed are measured, published, calculated, common practice, estimated, assumed.",
                "conditions: event|conditions: elsewhere|target.conditions: \"elsewhere\" is not among the conditions of the sheet; it has event, home.",
                "rpm-low: 5800 rpm|rpm-low: 7900 rpm|target.rpm-high: \"rpm-high\" is not above \"rpm-low\"; exchange or mend them.",
                "curve: main-pump.csv|curve: absent.csv|injection.pumps.curve: \"absent.csv\" is not in the sheet's folder; put the file beside the sheet or mend the name.",
                "curve: main-pump.csv|curve: ../../pom.xml|injection.pumps.curve: \"../../pom.xml\" leads out of the sheet's folder; copy the file beside the sheet and name it without a path upwards.",
                "curve: main-pump.csv|curve: /etc/passwd|injection.pumps.curve: \"/etc/passwd\" leads out of the sheet's folder; copy the file beside the sheet and name it without a path upwards.",
                "gears: [3.71,|gears: [3.71 mm,|vehicle.gears[0]: \"3.71 mm\" is a length; a pure number is wanted, without a unit or in %.",
                "outputs-used: 11|outputs-used: 15|controller: The controller has 16 inputs of which 13 are used, and 14 outputs of which 15 are used and 8 can pulse; no part may exceed its whole.",
                "format: 3|format: 7|format: The sheet has format 7, newer than the 3 this program reads; use a newer program.",
                "format: 3|invented-note: x|format: The sheet does not say its format; write \"format: 3\" as its first line.",
                "charge: 17 lb|charge: 45 lb|bottle.charge: A charge of 45.00 lb (20.412 kg) stands in 12.600 L of \"water-capacity\" as liquid under more than any cylinder bears; 49 CFR 173.304a allows 18.89 lb (8.568 kg), change the charge or the bottle.",
                "gears: [3.71, 2.24, 1.58, 1.21, 1.00, 0.81]|gears: 3.71|vehicle.gears: \"vehicle.gears\" is not a list; write figures in square brackets, each from 0.3 to 10.",
                "gears: [3.71,|gears: [[3.71],|vehicle.gears[0]: A plain figure is wanted here.",
                "layout: rear drive, manual|layout: {words: rear drive}|driveline.layout: \"driveline.layout\" has no value; write a few words.",
                "compressor:|compresor:|turbo.compressor: The section \"turbo.compressor\" is missing; add it.",
                "inlet-loss:|inlet-loss: 15 mbar#  other:|turbo.inlet-loss: \"turbo.inlet-loss\" is not a section; write its values on the lines below, indented.",
                "from: crankshaft drawing}|because: drawing}|engine.stroke: \"because\" is not known beside a value; known are value, from, provenance, sure, note.",
                "bore: {value: 85.3 mm +/- 0.02 mm,|bore: {value: [85.3 mm],|engine.bore: \"value\" must be a plain figure or word.",
                "curve: main-pump.csv|curve: |injection.pumps.curve: \"injection.pumps.curve\" has no value; name a CSV file beside the sheet.",
                "relief-pressure: {value: 3000 psi gauge|relief-pressure: {val: 3000 psi gauge|bottle.relief-pressure: \"bottle.relief-pressure\" has no value; write a pressure from 80 to 300 bar abs.",
                "relief-pressure: {value: 3000 psi gauge|relief-pressure: {value: 3000 psi|bottle.relief-pressure: \"3000 psi\" does not say which pressure; write \"3000 psi gauge\" or \"3000 psi abs\".",
                "start-temperature: 30 degC|start-temperature: 30 degC#  start-pressure: 900 psi gauge|bottle.start-temperature: \"start-temperature\" and \"start-pressure\" both stand here; a bottle with liquid in it has one pressure for each temperature, keep one of them.",
                "heater-off-temperature: 30 degC|heater-off-temperature: 36 degC|bottle.heater-off-temperature: The heater turns off at 36.0 degC, where the bottle holds 71.86 bar abs; limits.bottle-pressure-high allows 69.82 bar abs, lower the setting.",
                "flow: {value: 1130 cc/min +/- 2 %|flow: {value: 1130 cc/min at 3 bar|injection.injector.flow: \"1130 cc/min at 3 bar\" says under which condition it holds; write \"1130 cc/min\" and the condition as a value of its own beside it, for an injector \"test-pressure\".",
                "nitrous-lambda: {value: 0.78|nitrous-ratio: {value: 5}#  nitrous-lambda: {value: 0.78|tune.nitrous-ratio: The mixture with nitrous is asked for in more than one way; keep one of nitrous-lambda, nitrous-ratio and nitrous-circuit-lambda.",
                "invented: yes|invented: maybe|invented: \"maybe\" is not a choice for \"invented\"; allowed are no, yes, false, true.",
            })
    void a_wrong_value_is_named_with_what_is_allowed(String good, String bad, String message) {
        List<Problem> problems =
                problems(GOOD.replaceFirst(java.util.regex.Pattern.quote(good), bad.replace('#', '\n')));
        String found = problems.get(0).toString();
        assertEquals(message, found.replaceFirst("^job.yaml, line \\d+(, column \\d+)?, ", ""));
        assertTrue(problems.get(0).line() > 0);
    }

    @Test
    void an_unknown_name_is_given_with_its_place_and_the_nearest_one() {
        List<Problem> problems = problems(GOOD.replace("  red-line: 8000 rpm", "  redline: 8000 rpm"));
        assertEquals(2, problems.size());
        assertEquals(
                "\"engine.red-line\" is missing; write a rotational speed from 1000 to 20000 rpm.",
                problems.get(0).sentence());
        assertEquals(
                "\"redline\" is not known in \"engine\"; the nearest name is \"red-line\"; known are friction, nitrous-work,"
                        + " name, cylinders, bore, stroke, rod-length, compression-ratio, red-line,"
                        + " volumetric-efficiency.",
                problems.get(1).sentence());
        int line = lineOf("  redline", GOOD.replace("  red-line: 8000 rpm", "  redline: 8000 rpm"));
        assertEquals(line, problems.get(1).line());
        assertEquals(3, problems.get(1).column());
    }

    @Test
    void a_name_that_stands_twice_is_reported_with_both_places() {
        List<Problem> problems = problems(GOOD.replace("  cylinders: 6", "  cylinders: 6\n  cylinders: 8"));
        int first = lineOf("  cylinders: 6", GOOD);
        assertEquals(
                "job.yaml, line " + (first + 1)
                        + ", column 3, cylinders: \"cylinders\" stands here a second time, first" + " on line " + first
                        + "; keep one of them.",
                problems.get(0).toString());
    }

    @Test
    void all_problems_are_reported_at_once() {
        String bad = GOOD.replace("stroke: {value: 84.6 mm,", "stroke: {value: 84.6 kg,")
                .replace("wheel-power: {value: 720 hp,", "wheel-power: {value: 720,")
                .replace("mass: 1540 kg", "mass: 1540 kgs")
                .replace("driveline:", "drivetrain:");
        List<String> fields = problems(bad).stream().map(Problem::field).toList();
        assertEquals(List.of("target.wheel-power", "engine.stroke", "driveline", "vehicle.mass", "drivetrain"), fields);
        String message =
                assertThrows(SheetException.class, () -> Job.read(bad, FOLDER)).getMessage();
        assertTrue(message.startsWith("5 problems:\n  job.yaml, line "), message);
    }

    /** What leans on a section that cannot be read is not called unknown for it. */
    @Test
    void a_wrong_wiring_does_not_make_the_readings_wrong() {
        List<Problem> problems = problems(GOOD.replace("output-current: 4 A", "output-current: 4 V"));
        assertEquals(
                List.of("wiring.output-current"),
                problems.stream().map(Problem::field).toList());
        assertEquals(
                List.of("readings.engine-off.throtle"),
                problems(GOOD.replace("    throttle: 0.5 %", "    throtle: 0.5 %")).stream()
                        .map(Problem::field)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a: &x 1| Anchors and aliases are not read in a sheet; write the value out.",
                "a: *x| Anchors and aliases are not read in a sheet; write the value out.",
                "a: !!java.net.URL [x]| Tags are not read in a sheet; write the bare value.",
                "a: [[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]]| The sheet nests deeper than 16 levels; check the indentation and brackets.",
                "just words| The file holds no sections; write lines such as \"engine:\" with values below.",
                "a: b: c| This is not YAML (mapping values are not allowed here); check the indentation and the colons here, and put text that holds \": \" or \" #\" in quotes.",
            })
    void what_a_sheet_may_not_hold_is_refused(String text, String message) {
        assertEquals(message, problems(text).get(0).sentence());
    }

    @Test
    void an_alias_bomb_is_refused_at_its_first_anchor() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x,x,x,x,x,x,x,x]\n");
        for (int i = 1; i < 30; i++) {
            bomb.append("a" + i + ": &a" + i + " [" + ("*a" + (i - 1) + ",").repeat(8) + "]\n");
        }
        assertEquals(1, problems(bomb.toString()).size());
    }

    @Test
    void nul_bytes_binary_and_long_files_are_refused(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("job.yaml");
        Files.write(file, new byte[] {'a', ':', '\n', 0});
        assertEquals("The character U+0000 does not belong into a text; remove it.", sentence(file));
        Files.write(file, new byte[] {(byte) 0xc3, 0x28});
        assertEquals("The file is not UTF-8 text; save it as UTF-8.", sentence(file));
        Files.write(file, new byte[(1 << 20) + 1]);
        assertEquals("The file has 1048577 bytes; a sheet may have 1048576. Move tables to CSV.", sentence(file));
        assertEquals("There is no such file; check the name and the folder.", sentence(folder.resolve("missing.yaml")));
    }

    @Test
    void a_byte_order_mark_and_windows_line_ends_do_not_matter() {
        Job job = Job.read("\uFEFF" + GOOD.replace("\n", "\r\n"), FOLDER);
        assertEquals(List.of(), job.differences(Job.load(DemoSheetTest.DEMO)));
    }

    @Test
    void a_link_that_leads_out_of_the_folder_is_refused(@TempDir Path folder) throws IOException {
        Path job = Files.createDirectory(folder.resolve("job"));
        Path outside = Files.writeString(folder.resolve("jets.csv"), "bore [thou]\n20\n");
        Files.createSymbolicLink(job.resolve("jets.csv"), outside);
        List<Problem> problems =
                assertThrows(SheetException.class, () -> Job.read(GOOD, job)).problems();
        assertTrue(
                problems.stream()
                        .anyMatch(p -> p.sentence().startsWith("\"jets.csv\" leads out of the sheet's folder")),
                problems.toString());
    }

    @Test
    void a_value_that_does_not_stand_in_the_sheet_cannot_be_changed() {
        Job job = Job.read(GOOD, FOLDER);
        assertEquals(
                "The sheet job.yaml states no value at \"engine.colour\"; write one there first, or name one that stands"
                        + " in it.",
                assertThrows(IllegalArgumentException.class, () -> job.with("engine.colour", "red"))
                        .getMessage());
        assertThrows(SheetException.class, () -> job.with("engine.stroke", "86 kg"));
    }

    private static String sentence(Path file) {
        return assertThrows(SheetException.class, () -> Job.load(file))
                .problems()
                .get(0)
                .sentence();
    }

    private static List<Problem> problems(String text) {
        return assertThrows(SheetException.class, () -> Job.read(text, FOLDER)).problems();
    }

    private static int lineOf(String start, String text) {
        return (int) text.substring(0, text.indexOf("\n" + start)).lines().count() + 1;
    }

    private static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
