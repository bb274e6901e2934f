package org.shotledger.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpaceTest {

    @Test
    void the_size_is_known_before_anything_runs_and_every_index_names_its_values() {
        Space space = Heron.wide();
        assertEquals(2L * 6 * 15 * 27 * 18 * 6, space.size());
        Combination last = space.at(space.size() - 1);
        assertEquals("8 deg", last.settings().get(0).text());
        assertEquals("4 bar", last.settings().get(5).text());
        assertEquals(50e-3 * 0.0254, last.jets().nitrousBore(), 1e-12);
        assertEquals("31.0 thou", last.settings().get(4).text());
        assertEquals(1.6e5, last.gaugePressure(), 1e-6);
        assertEquals(8, last.build(space.build()).tune().nitrousRetard(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({
        "bottle.start-temprature, 20 degC, Did you mean \"bottle.start-temperature\"",
        "jets.nitrus, 20 thou, Did you mean \"jets.nitrous\"",
        "bottle.start-temperature, 20 bar, cannot",
        "bottle.start-temperature, NaN degC, cannot",
        "limits.peak-pressure, Infinity bar abs, cannot",
        "engine.volumetric-efficiency, nowhere.csv, cannot"
    })
    void what_cannot_be_varied_is_named_in_one_sentence(String path, String value, String expected) {
        StudyException e = assertThrows(
                StudyException.class,
                () -> Space.of(
                        Heron.BUILD,
                        Vary.of(Vary.BOOST, "1 bar gauge"),
                        Vary.of(Vary.NITROUS_JET, "30 thou"),
                        Vary.of(Vary.FUEL_JET, "20 thou"),
                        Vary.of(path, value)));
        assertTrue(e.getMessage().contains(path) && e.getMessage().contains(expected), e.getMessage());
    }

    @Test
    void an_empty_axis_a_repeated_value_and_an_end_that_is_no_number_are_refused() {
        assertRefused("is empty", () -> Vary.of(Vary.BOOST));
        assertRefused("states a value twice", () -> Vary.of(Vary.BOOST, "1 bar gauge", "1 bar gauge"));
        assertRefused("finite number", () -> Vary.range(Vary.BOOST, "NaN bar gauge", "2 bar gauge", 3));
        assertRefused("finite number", () -> Vary.range(Vary.BOOST, "1 bar gauge", "1e999 bar gauge", 3));
        assertRefused("same unit", () -> Vary.range(Vary.BOOST, "1 bar gauge", "20 psi gauge", 3));
        assertRefused(
                "no rung", () -> Vary.ladder(Vary.FUEL_JET, Heron.BUILD.wetKit().ladder(), "1 thou", "2 thou"));
        assertRefused("above zero", () -> Vary.of(Vary.NITROUS_JET, "0 thou"));
        assertRefused("no axis \"jets.nitrous\"", () -> Space.of(Heron.BUILD, Vary.of(Vary.BOOST, "1 bar gauge")));
    }

    @Test
    void a_million_million_combinations_are_refused_with_their_number_and_how_to_cut_them() {
        StudyException e = assertThrows(
                StudyException.class,
                () -> Space.of(
                        Heron.BUILD,
                        Vary.range(Vary.BOOST, "0.5 bar gauge", "1.8 bar gauge", 1000),
                        Vary.range(Vary.NITROUS_JET, "20 thou", "40 thou", 10000),
                        Vary.range(Vary.FUEL_JET, "10 thou", "30 thou", 1000),
                        Vary.range("bottle.start-temperature", "20 degC", "35 degC", 100)));
        assertTrue(
                e.getMessage().contains("1,000,000,000,000 combinations")
                        && e.getMessage().contains("longest axis is \"jets.nitrous\""),
                e.getMessage());
    }

    private static void assertRefused(String words, org.junit.jupiter.api.function.Executable attempt) {
        StudyException e = assertThrows(StudyException.class, attempt);
        assertTrue(e.getMessage().contains(words), e.getMessage());
    }
}
