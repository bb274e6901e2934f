package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.sheet.SheetException;
import org.shotledger.wiring.Load;
import org.shotledger.wiring.PinKind;
import org.shotledger.wiring.PinPlacement;
import org.shotledger.wiring.Wiring;

@DisplayNameGeneration(ReplaceUnderscores.class)
class WiringSheetTest {
    private final String good = Files.readString(DemoSheetTest.DEMO);
    private final Wiring wiring = Job.load(DemoSheetTest.DEMO).car().wiring().orElseThrow();

    WiringSheetTest() throws IOException {}

    @Test
    void a_part_brings_the_current_of_its_own_section() {
        assertEquals(350 / 13.5, load("bottle heater").current(), 1e-9, "heater power over voltage");
        double pump = load("main pump 1").current();
        assertTrue(
                pump > 12 && pump < 13.6,
                "13.5 V line of main-pump.csv at 4.85 bar, less the drop in its wires: " + pump);
    }

    @Test
    void counted_channels_are_pins_of_which_only_the_number_is_known() {
        assertEquals(3, free(PinKind.ANALOGUE));
        assertEquals(3, free(PinKind.LOW_SIDE));
        assertEquals(List.of(), wiring.pins().missing());
        assertTrue(wiring.pins().proven());
        PinPlacement fuel = wiring.pins().of("fuel solenoid");
        assertEquals(List.of("nitrous solenoid"), fuel.sharedWith(), fuel.why());
    }

    private long free(PinKind kind) {
        return wiring.pinTask().pins().stream()
                .filter(pin -> pin.kinds().contains(kind))
                .count();
    }

    @Test
    void every_load_has_a_cable() {
        assertEquals(wiring.loads().size(), wiring.cables().size());
    }

    @Test
    void without_a_word_on_pulsing_outputs_the_used_ones_are_taken_to_pulse() {
        String text = good.replaceFirst("  pulsing-outputs-used: .*\n", "");
        Job job = Job.read(text, DemoSheetTest.DEMO.getParent());
        assertEquals(0, job.car().controller().orElseThrow().pulsingOutputsFree());
        assertEquals(
                "default: taken as used first, the safe side",
                job.car()
                        .origin("controller.pulsing-outputs-used")
                        .orElseThrow()
                        .from());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "bottle-pressure: {channel: input,|bottle-pressure: {channel: inlet,|wiring.signals.bottle-pressure.channel: \"inlet\" is not a choice for \"wiring.signals.bottle-pressure.channel\"; allowed are input, output, pulse, analogue, pull-up, thermocouple, digital, frequency, low-side, high-side, half-bridge.",
                "fuel-solenoid: {current: 9 A,|fuel-solenoid: {current: 9 V,|wiring.loads.fuel-solenoid.current: \"9 V\" is a voltage; a current is wanted, in A, mA.",
                "bottle-heater: {part: bottle-heater,|bottle-heater: {part: bottle-heater, current: 9 A,|wiring.loads.bottle-heater.current: Current and part both stand here; the part brings its own current, keep one of them.",
                "engine-management: {current: 24 A,|engine-management: {current: 240 A,|wiring: The load 'engine management' takes 240.0 A, and 240.0 A at switching on; no blade fuse up to 100 A carries that, so split the load or guard it by a bolted fuse.",
                "warm-resistance: 2.99 kohm|warm-resistance: 99 kohm|wiring.sensors.bottle-temperature: The points of the thermistor bottle temperature do not lie on the curve of one: its resistance must fall as it warms, ever more slowly; check temperatures and resistances.",
                "pulsing-outputs-used: {value: 7,|pulsing-outputs-used: {value: 9,|controller: Of the controller's outputs 8 can pulse, 11 are used and 9 are said to be used of those that can pulse; no part may exceed its whole.",
            })
    void a_wrong_value_is_named_with_what_is_allowed(String from, String to, String message) {
        String bad = good.replaceFirst(Pattern.quote(from), java.util.regex.Matcher.quoteReplacement(to));
        SheetException refused =
                assertThrows(SheetException.class, () -> Job.read(bad, DemoSheetTest.DEMO.getParent()));
        assertEquals(
                message,
                refused.problems().get(0).toString().replaceFirst("^job.yaml, line \\d+(, column \\d+)?, ", ""));
    }

    @Test
    void a_wiring_without_its_supply_says_what_is_missing() {
        String bad = good.replaceFirst("(?s)\nelectrical:.*?\n\n", "\n\n");
        SheetException refused =
                assertThrows(SheetException.class, () -> Job.read(bad, DemoSheetTest.DEMO.getParent()));
        assertTrue(
                refused.getMessage().contains("The wiring leans on the sections \"electrical\" and \"controller\""),
                refused.getMessage());
    }

    private Load load(String name) {
        return wiring.loads().stream()
                .filter(l -> l.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
