package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.nitrous.FlowTested;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;

/** What a flow test weighed, timed and read, in SI by hand; a half-width over the root of three is a standard deviation. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class FlowTestFiguresTest {
    private static final double ROOT = Math.sqrt(3);
    private static final double PSI = 6894.757293168;
    private static final String NITROUS =
            "kind: nitrous#jets: 43 thou#seconds: 10 s +/- 0.2 s#before: 24 kg +/- 20 g#after: 23.3 kg +/- 10 g#bottle-pressure: 900 psi gauge +/- 15 psi";
    private static final String FUEL =
            "kind: fuel#jets: 22 thou#liquid: water#seconds: 30 s#volume: 1.0 L#flowing-pressure: 3.5 bar gauge";

    private final Job demo = Job.load(DemoSheetTest.DEMO);

    private FlowTested told(String test) {
        return demo.adding("flow-tests:\n  one:\n    " + test.replace("#", "\n    ") + "\n")
                .flowTests()
                .get(0);
    }

    @Test
    void a_bottle_on_a_scale() {
        FlowTested told = told(NITROUS);
        assertEquals(0.7, told.test().mass(), 1e-9);
        assertEquals(Math.hypot(0.020, 0.010) / ROOT, told.test().massDeviation(), 1e-9);
        assertEquals(10, told.test().seconds());
        assertEquals(0.2 / ROOT, told.test().secondsDeviation(), 1e-9);
        assertEquals(43 * 25.4e-6, told.bore(), 1e-12);
        assertEquals(6, told.nozzles());
        assertEquals(900 * PSI + demo.air("event").pressure(), told.pressure(), 1);
    }

    /** 10 g of a scale and 0.3 s of a watch: what counts where the sheet states no band. */
    @Test
    void without_bands_the_usual_instruments_count() {
        FlowTested told =
                told(NITROUS.replace(" +/- 0.2 s", "").replace(" +/- 20 g", "").replace(" +/- 10 g", ""));
        assertEquals(Math.sqrt(2) * 0.010 / ROOT, told.test().massDeviation(), 1e-9);
        assertEquals(0.3 / ROOT, told.test().secondsDeviation(), 1e-9);
        assertTrue(told(NITROUS.replace(" +/- 15 psi", "")).stateDeviation()
                > told(NITROUS).stateDeviation());
    }

    /** A pressure that falls counts with its mean; the air is that of the place that is named. */
    @Test
    void a_pressure_that_falls_and_a_place_that_is_named() {
        FlowTested fell = told(NITROUS + "#bottle-pressure-after: 800 psi gauge");
        assertEquals(850 * PSI + demo.air("event").pressure(), fell.pressure(), 1);
        // 100 psi from end to end, spread evenly: over the root of twelve, 28.9 psi, beside 8.7 psi of the gauge
        assertTrue(fell.stateDeviation() > 2.5 * told(NITROUS).stateDeviation());
        assertEquals(
                900 * PSI + demo.air("home").pressure(),
                told(NITROUS + "#conditions: home").pressure(),
                1);
        assertEquals(4, told(NITROUS.replace("23.3", "23.5") + "#nozzles: 4").nozzles());
        // without a gauge: nitrous oxide at 20 degC boils under 50.6 bar
        assertEquals(
                50.6e5,
                told(NITROUS.replace("bottle-pressure: 900 psi gauge +/- 15 psi", "bottle-temperature: 20 degC"))
                        .pressure(),
                0.5e5);
    }

    /** Water: 998.2 kg/m3 at 20 degC, 992.2 at 40 degC (handbook). 10 mL and 0.3 s; 3 % of a gauge. */
    @ParameterizedTest
    @CsvSource({"'', 0.9982", "'#temperature: 40 degC', 0.9922", "'#temperature: 4 degC', 0.99997"})
    void water_in_a_measuring_cylinder(String more, double mass) {
        FlowTested told = told(FUEL + more);
        assertEquals(mass, told.test().mass(), 3e-5);
        assertEquals(mass * 1e-2 / ROOT, told.test().massDeviation(), 1e-5);
        assertEquals(30, told.test().seconds());
        assertEquals(3.5e5 + demo.air("event").pressure(), told.pressure(), 1);
    }

    /** The fuel itself, at the temperature of the fuels where none is said: 78 % ethanol of 789 and 745 kg/m3. */
    @Test
    void fuel_in_a_measuring_cylinder() {
        double plain = told(FUEL.replace("water", "fuel")).test().mass();
        assertEquals(0.775, plain, 0.01);
        assertEquals(
                plain,
                told(FUEL.replace("water", "fuel") + "#temperature: 25 degC")
                        .test()
                        .mass(),
                1e-12);
        assertTrue(told(FUEL.replace("water", "fuel") + "#temperature: 40 degC")
                        .test()
                        .mass()
                < plain);
        double wide = told(FUEL + "#nozzles: 6").stateDeviation();
        assertTrue(
                told(FUEL.replace("3.5 bar gauge", "3.5 bar gauge +/- 0.5 bar")).stateDeviation() > wide);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "after: 23.3 kg +/- 10 g|after: 24 kg|after: The bottle weighs no less after the discharge than before it; exchange or mend \"before\" and \"after\".",
                "bottle-pressure: 900 psi gauge +/- 15 psi|bottle-pressure: 900 psi gauge#bottle-pressure-after: 620 psi gauge|bottle-pressure-after: The bottle lost more than 30 % of its pressure: its liquid was gone before the end and vapour came out; test again with a fuller bottle or fewer seconds.",
                "jets: 43 thou|jets: 43 thou#conditions: away|conditions: \"away\" is not among the conditions of the sheet; it has event, home.",
                "bottle-pressure: 900|bottle-pressure: 1060|bottle-pressure: \"1060 psi gauge +/- 15 psi\" is not plausible",
            })
    void what_no_test_can_have_shown_is_refused(String from, String to, String message) {
        Problem first = assertThrows(SheetException.class, () -> told(NITROUS.replace(from, to)))
                .problems()
                .get(0);
        String said = first.field().replace("flow-tests.one.", "") + ": " + first.sentence();
        assertEquals(message, said.substring(0, Math.min(said.length(), message.length())));
    }

    /** At 30 degC nitrous oxide boils under 63.1 bar (handbook): a gauge cannot show 60.0 in a bottle that holds liquid. */
    @Test
    void a_pressure_below_that_of_boiling_is_refused_and_one_above_it_is_not() {
        String warm = NITROUS.replace(
                "bottle-pressure: 900 psi gauge +/- 15 psi", "bottle-temperature: 30 degC#bottle-pressure: ");
        Problem first = assertThrows(SheetException.class, () -> told(warm + "58 bar abs"))
                .problems()
                .get(0);
        assertEquals("flow-tests.one.bottle-pressure", first.field());
        assertTrue(
                first.sentence()
                        .matches(
                                "At 30\\.0 degC a bottle with liquid in it has 63\\.\\d+ bar abs, more than the pressure stated; one of"
                                        + " the two is read wrong, or there was no liquid\\."),
                first.sentence());
        assertEquals(70e5, told(warm + "70 bar abs").pressure(), 1);
    }
}
