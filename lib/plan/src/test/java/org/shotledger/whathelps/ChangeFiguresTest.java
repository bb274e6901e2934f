package org.shotledger.whathelps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.car.Origin;
import org.shotledger.job.Job;
import org.shotledger.sheet.Found;
import org.shotledger.units.Amount;
import org.shotledger.units.FigureText;
import org.shotledger.units.QuantityKind;

/** What a step makes of a figure of the sheet, and which parts a catalogue offers next; all by hand. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ChangeFiguresTest {
    private static final Path CATALOGUE = Path.of("../../data/catalogue");

    private static Origin stated(String text, QuantityKind kind, double value) {
        return new Origin("a.path", text, kind, value, Double.NaN, "", "measured", "job.yaml", 7, Found.Meant.UNSAID);
    }

    private static Origin bore(double metres) {
        return stated("a bore", QuantityKind.BORE, metres);
    }

    private static List<Optional<String>> texts(Change change, Origin old) {
        return change.steps().stream().map(step -> step.from(old)).toList();
    }

    /** 4.1 x 1.25 = 5.125; a stated band does not belong to the new figure; of 10/3 five digits are left. */
    @ParameterizedTest
    @CsvSource({
        "4.1 mm, 1.25, 5.125 mm",
        "1130 cc/min +/- 2 %, 1.2, 1356 cc/min",
        "2e3 Pa, 1.3, 2600 Pa",
        "-4 C, 1.5, -6 C",
        "2, 1.5, 3",
        "3.3333333 bar gauge, 1, 3.3333 bar gauge"
    })
    void a_factor_multiplies_the_figure_in_its_own_unit(String was, double factor, String becomes) {
        Change change = Change.times("words", "a.path", Cost.PUMP, factor);
        assertEquals(List.of(Optional.of(becomes)), texts(change, stated(was, QuantityKind.RATIO, 1)));
        assertEquals("words", change.words());
        assertEquals("a.path", change.path());
        assertEquals(Cost.PUMP, change.cost());
    }

    @Test
    void what_is_added_is_added_in_the_unit_of_the_sheet() {
        Change change = Change.plus("words", "a.path", Cost.SETTING, 2, -4);
        assertEquals(
                List.of(Optional.of("0 C"), Optional.of("-6 C")),
                texts(change, stated("-2 C", QuantityKind.TEMPERATURE, 271.15)));
        assertEquals(
                List.of(Optional.of("methanol"), Optional.of("gasoline")),
                texts(Change.to("words", "a.path", Cost.FUEL, "methanol", "gasoline"), bore(1e-3)));
    }

    /** Other ways the reader of figures takes: 1/8 in = 3.175 mm, drill 52 = 0.0635 in = 1.6129 mm; x 2 and to a thousandth of one. */
    @ParameterizedTest
    @CsvSource({
        "1/8 in, 3.175e-3, 6.350 mm",
        "drill 52, 1.6129e-3, 3.226 mm",
        "3 +/- 0.1 mm, 3e-3, 6 mm",
        "3 mm \u00b1 2 %, 3e-3, 6 mm"
    })
    void a_factor_multiplies_what_a_drill_or_a_quotient_stands_for(String was, double metres, String becomes) {
        Origin old = stated(was, QuantityKind.BORE, metres);
        assertEquals(metres, read(was, QuantityKind.BORE), 1e-9);
        assertEquals(List.of(Optional.of(becomes)), texts(Change.times("words", "a.path", Cost.PUMP, 2), old));
    }

    @Test
    void a_word_is_not_moved_by_a_figure_and_a_change_needs_steps() {
        Change change = Change.times("words", "a.path", Cost.SETTING, 2);
        String said = assertThrows(
                        IllegalArgumentException.class,
                        () -> change.steps().get(0).from(stated("methanol", null, Double.NaN)))
                .getMessage();
        assertEquals(
                "The value at \"a.path\" is \"methanol\"; a change by a figure needs a number with its unit there.",
                said);
        assertThrows(IllegalArgumentException.class, () -> Change.times("words", "a.path", Cost.SETTING));
    }

    /** Sizes of 3, 5 and 8 mm in any order: above 3 mm stand 5 and 8, above 5 only 8, above 8 none. */
    @Test
    void the_next_sizes_are_those_above_the_part_that_is_built_in() {
        List<Amount> sizes = List.of(amount(8e-3), amount(3e-3), amount(5e-3));
        Change change = Change.larger("words", "a.path", Cost.SMALL_PART, sizes, 2);
        assertEquals(2, change.steps().size());
        assertSizes(change, 2e-3, 3e-3, 5e-3);
        assertSizes(change, 3e-3, 5e-3, 8e-3);
        assertSizes(change, 5e-3, 8e-3);
        assertSizes(change, 8e-3);
    }

    /** Read from the files of the catalogue: holes by their use, tubes by their bore, injectors by their flow. */
    @Test
    void parts_of_the_catalogue_are_told_apart_by_their_use() {
        List<Change> parts = CommonChanges.withParts(CATALOGUE);
        assertSizes(at(parts, "nitrous-system.nitrous.solenoid.bore"), 2.0e-3, 2.6e-3, 3.6e-3);
        assertSizes(at(parts, "nitrous-system.fuel.solenoid.bore"), 2.0e-3, 2.4e-3, 3.3e-3);
        assertSizes(at(parts, "nitrous-system.nitrous.hose-bore"), 6.5e-3, 7.9e-3, 10.3e-3);
        double flow = 1e-6 / 60;
        Origin injector = stated("750 cc/min", QuantityKind.VOLUME_FLOW, 750 * flow);
        List<Optional<String>> next = texts(at(parts, "injection.injector.flow"), injector);
        assertEquals(1050 * flow, read(next.get(0).orElseThrow(), QuantityKind.VOLUME_FLOW), 1e-9 * flow);
        assertEquals(1650 * flow, read(next.get(1).orElseThrow(), QuantityKind.VOLUME_FLOW), 1e-9 * flow);
        for (int i = 0; i < parts.size(); i++) {
            Change usual = CommonChanges.ALL.get(i);
            assertEquals(usual.words(), parts.get(i).words());
            assertEquals(usual.cost(), parts.get(i).cost());
            if (!usual.path().endsWith("bore") && !usual.path().endsWith("injector.flow")) {
                assertSame(usual, parts.get(i));
            }
        }
    }

    @Test
    void only_what_the_sheet_states_can_be_changed() throws IOException {
        Job job = Job.load(Path.of("../../data/whimbrel"));
        assertTrue(Change.times("words", "nitrous-system.nitrous.solenoid.bore", Cost.PUMP, 2)
                .fits(job));
        assertFalse(Change.times("words", "nitrous-system.second-solenoid", Cost.PUMP, 2)
                .fits(job));
        Path folder = Path.of("../../data/whimbrel");
        String silent = Files.readString(folder.resolve("job.yaml")).replaceFirst("nitrous-retard: .*", "");
        Change retard = Change.plus("words", "tune.nitrous-retard", Cost.SETTING, 2);
        assertTrue(retard.fits(job));
        assertFalse(retard.fits(Job.read(silent, folder)));
    }

    @Test
    void costs_have_words_of_their_own() {
        assertEquals("a small part", Cost.SMALL_PART.words());
        assertEquals("a charge cooler", Cost.COOLER.words());
    }

    private static Change at(List<Change> changes, String path) {
        return changes.stream().filter(c -> c.path().equals(path)).findFirst().orElseThrow();
    }

    private static Amount amount(double metres) {
        return new Amount(QuantityKind.BORE, metres);
    }

    private static double read(String text, QuantityKind kind) {
        return FigureText.read(text, kind).value();
    }

    private static void assertSizes(Change change, double builtIn, double... next) {
        List<Optional<String>> texts = texts(change, bore(builtIn));
        for (int i = 0; i < texts.size(); i++) {
            if (i < next.length) {
                assertEquals(next[i], read(texts.get(i).orElseThrow(), QuantityKind.BORE), 1e-12);
            } else {
                assertTrue(texts.get(i).isEmpty(), texts.toString());
            }
        }
    }
}
