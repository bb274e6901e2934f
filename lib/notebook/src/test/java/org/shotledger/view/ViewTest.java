package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.shotledger.budget.BottlePlan;
import org.shotledger.budget.Entry;
import org.shotledger.budget.JetChoice;
import org.shotledger.budget.Ledger;
import org.shotledger.limits.Limits;
import org.shotledger.budget.Split;
import org.shotledger.budget.SplitCandidate;
import org.shotledger.budget.Standing;
import org.shotledger.limits.Verdict;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.Samples;
import org.shotledger.display.Display;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.table.Shown;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

class ViewTest {
    private static final double HP = 745.69987158227022;
    private static final JetPair PAIR = new JetPair(1.5748e-3, 0.7874e-3);

    @AfterEach
    void backToUs() {
        Viewing.choose(Shown.US);
    }

    @Test
    void limitsShowTheirMarginsVerdictsAndConsequences() {
        String text =
                Tables.of(new Limits(Samples.margins().limits())).in(Shown.US).toText();
        assertTrue(text.contains("1711.4 psi abs  at most"), text);
        assertTrue(text.contains("\u25a0 broken"), text);
    }

    @Test
    void aBareResultFollowsTheUnitsOfTheSession() {
        Limits limits = new Limits(Samples.margins().limits());
        assertTrue(text(limits).contains("1711.4 psi abs"));
        Viewing.choose(Shown.SI);
        assertTrue(text(limits).contains("118.00 bar abs"));
        assertFalse(text(limits).contains("psi"));
    }

    @Test
    void aSplitShowsItselfAsAChartAndATable() {
        String html = (String) Display.bundle(split()).get(Display.HTML);
        assertTrue(html.contains("<svg") && html.contains("Power at the wheels, hp"), "chart");
        assertTrue(html.contains("<table") && html.contains("Nitrous adds, hp"), "table");
    }

    @Test
    void theSplitChartTellsThePeakInWords() {
        ChartPicture picture = Charts.of(split(), UnitSystem.US);
        assertEquals(
                "Together at most 800 hp at 7000 rpm, of which boost gives 560 hp and nitrous oxide 240 hp; asked for: 780 hp.",
                picture.alt());
    }

    @Test
    void jetsAreShownInThousandthsOfAnInchAndInMillimetres() {
        var option = new JetChoice.Option(PAIR, 0.0363, 0.0071, 5.1, 0.81, 780 * HP, 0.04, "injector duty");
        String html = Tables.of(new JetChoice(1, PAIR, List.of(option))).toHtml();
        assertTrue(html.contains("Nitrous jet, thou (mm)"), html);
        assertTrue(html.contains("62.0</span>") && html.contains("(1.575)</span>"), html);
    }

    @Test
    void whyGoesDownToTheInputs() {
        Ledger ledger = Ledger.of(List.of(
                entry("pressure", "bottle pressure", List.of()),
                entry("other", "something else", List.of()),
                entry("flow", "nitrous flow", List.of("pressure"))));
        String text = Tables.why(ledger, "flow").toText();
        assertTrue(text.startsWith("Why: nitrous flow"), text);
        assertTrue(text.contains("bottle pressure"), text);
        assertFalse(text.contains("something else"), text);
    }

    @Test
    void theBottleChartMarksTheEndOfLiquid() {
        var plan = new BottlePlan(
                4.54,
                297,
                54e5,
                21,
                3.6,
                3,
                List.of(
                        new BottlePlan.Moment(0, 297, 54e5, 4.3, 0.036, 0.81, 580e3),
                        new BottlePlan.Moment(21, 285, 41e5, 0, 0.030, 0.77, 540e3)));
        ChartPicture picture = Charts.of(plan, UnitSystem.SI);
        assertTrue(picture.alt().endsWith("liquid ends after 21.00 s."), picture.alt());
        assertTrue(picture.svg().contains(">liquid ends<"), "mark");
        assertTrue(text(plan).contains("full passes"), "table");
    }

    @Test
    void aWayBetteredInBothStandsOffTheFront() {
        List<SplitCandidate> ways = List.of(
                way(1.2e5, 0.040, 0.02), way(1.4e5, 0.035, 0.05), way(1.6e5, 0.030, 0.04), way(1.8e5, 0.025, -0.01));
        assertTrue(Charts.of(ways, 1.4e5, UnitSystem.SI)
                .alt()
                .startsWith("1 combinations break a limit, 1 are bettered by another one, 2 stand on the front"));
    }

    private static String text(Object value) {
        return (String) Display.bundle(value).get(Display.TEXT);
    }

    private static Split split() {
        return new Split(
                780 * HP,
                5800,
                7800,
                new ActivationWindow(5800, 7800),
                List.of(point(5000, 400, 0), point(7000, 560, 240), point(8000, 500, 0)));
    }

    private static Split.Point point(double rpm, double boost, double nitrous) {
        return new Split.Point(rpm, 1.4e5, boost * HP, nitrous * HP, 800, 0.8, 110e5, 0.1, "injector duty");
    }

    private static SplitCandidate way(double boost, double flow, double margin) {
        return new SplitCandidate(
                boost,
                7000,
                560 * HP,
                flow * 6000 * HP,
                PAIR,
                flow,
                margin,
                "injector duty",
                margin < 0 ? Verdict.BROKEN : Verdict.HOLDS);
    }

    private static Entry entry(String key, String name, List<String> inputs) {
        return new Entry(
                key, name, "", QuantityKind.MASS_FLOW, 0.036, 0.002, "equation", "table", inputs, Standing.CALCULATED);
    }
}
