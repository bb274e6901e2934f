package org.shotledger.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.display.Display;
import org.shotledger.limits.Verdict;
import org.shotledger.units.QuantityKind;

class ListingTest {
    // 550 ft lbf/s = 745.69987 W (mechanical horsepower); 1 in = 25.4 mm (yard and pound agreement, 1959)
    private static final Listing JETS = Listing.titled("Jets <&>")
            .words("Pair")
            .figures("Hole", QuantityKind.BORE)
            .figures("Power", QuantityKind.POWER)
            .mixed("First limit")
            .words("Verdict")
            .row("one", 1.5748e-3, 745_699.87158, new Cell.Figure(125e5, QuantityKind.ABSOLUTE_PRESSURE), Verdict.TIGHT)
            .row("<b>two", 1.27e-3, Double.NaN, new Cell.Figure(0.85, QuantityKind.FRACTION), Verdict.BROKEN)
            .build();

    @Test
    void textStandsAlignedInTheUnitsAskedFor() {
        assertEquals("""
                Jets <&>
                Pair    Hole, thou  Power, hp     First limit  Verdict
                ------  ----------  ---------  --------------  --------
                one           62.0       1000  1813.0 psi abs  \u25b2 tight
                <b>two        50.0          -          85.0 %  \u25a0 broken""", JETS.in(Shown.US).toText());
    }

    @Test
    void aSmallFigureKeepsTwoDigitsThatCount() {
        Listing small = Listing.titled("t")
                .words("a")
                .mixed("b")
                .row("leak", new Cell.Figure(0.0016, QuantityKind.MASS))
                .row("usual", new Cell.Figure(4.5, QuantityKind.MASS))
                .row("none", new Cell.Figure(0, QuantityKind.MASS))
                .row("freezing", new Cell.Figure(273.16, QuantityKind.TEMPERATURE))
                .row("cooler", new Cell.Figure(-0.04, QuantityKind.TEMPERATURE_DIFFERENCE, true))
                .build();
        assertEquals(
                List.of("0.0035 lb", "9.92 lb", "0.00 lb", "32.0 \u00b0F", "-0.072 \u00b0F difference"),
                words(small.in(Shown.US)));
        assertEquals(
                List.of("0.0016 kg", "4.500 kg", "0.000 kg", "0.0 \u00b0C", "-0.040 K"), words(small.in(Shown.SI)));
    }

    private static List<String> words(Listing listing) {
        return listing.table().stringColumn(1).asList();
    }

    @Test
    void bothUnitSystemsStandSideBySide() {
        String html = JETS.toHtml();
        assertTrue(html.contains("Hole, thou</th>") && html.contains("Hole, mm</th>"), html);
        assertTrue(html.contains("1813.0 psi abs</span> <span style=\"white-space:nowrap\">(125.00 bar abs)"), html);
    }

    @Test
    void wordsAreEscapedAndHeadersHaveTheirScope() {
        String html = JETS.in(Shown.SI).toHtml();
        assertTrue(html.contains("<caption>Jets &lt;&amp;&gt;</caption>"), html);
        assertTrue(
                html.contains(
                        "<th scope=\"row\" style=\"text-align:left\"><span style=\"white-space:nowrap\">&lt;b&gt;two</span></th>"),
                html);
        assertEquals(5, html.split("<th scope=\"col\"", -1).length - 1);
        assertTrue(html.contains("data-head=\"Hole, mm\""), html);
    }

    @Test
    void aVerdictIsToldByWordAndShape() {
        assertTrue(JETS.toHtml().contains("<span class=\"verdict broken\">\u25a0 broken</span>"));
    }

    @Test
    void tablesawGetsNumbersAndUnitsInTheColumnNames() {
        var table = JETS.in(Shown.SI).table();
        assertEquals(List.of("Pair", "Hole, mm", "Power, kW", "First limit", "Verdict"), table.columnNames());
        assertEquals(1.5748, table.doubleColumn("Hole, mm").get(0), 1e-12);
        assertTrue(table.doubleColumn("Power, kW").isMissing(1));
    }

    @Test
    void aTablesawTableRendersInANotebook() {
        var bundle = Display.bundle(JETS.in(Shown.US).table());
        String html = (String) bundle.get(Display.HTML);
        assertTrue(html.contains("&lt;b&gt;two"), html);
        assertTrue(((String) bundle.get(Display.TEXT)).contains("Hole, thou"));
    }

    @Test
    void aRowThatDoesNotFitIsRefused() {
        var builder = Listing.titled("t").words("a").figures("b", QuantityKind.MASS);
        assertEquals(
                "A row of the table 't' has 1 cells; the table has 2 columns.",
                assertThrows(IllegalArgumentException.class, () -> builder.row("x"))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> builder.row("x", List.of()));
    }
}
