package org.shotledger.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shotledger.units.UnitSystem;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ChartPictureTest {

    private static final List<ChartPicture> PICTURES = Samples.all(UnitSystem.US);

    static List<ChartPicture> pictures() {
        return PICTURES;
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void everyDrawingNamesItselfToAReaderWhoCannotSeeIt(ChartPicture picture) throws Exception {
        Element svg = parse(picture.svg()).getDocumentElement();
        assertEquals("img", svg.getAttribute("role"));
        assertEquals(picture.title() + ". " + picture.alt(), svg.getAttribute("aria-label"));
        assertEquals(picture.title(), svg.getElementsByTagName("title").item(0).getTextContent());
    }

    /** Arithmetic of W3C Filter Effects Module Level 1, feColorMatrix: type hueRotate by 180 degrees, then each channel taken from one. */
    @Test
    void inADarkNotebookLightAndDarkChangePlacesAndHuesStay() throws Exception {
        Element svg = parse(PICTURES.get(0).svg()).getDocumentElement();
        Element matrix = (Element) svg.getElementsByTagName("feColorMatrix").item(0);
        String id = ((Element) matrix.getParentNode()).getAttribute("id");
        assertEquals(
                "body[data-jp-theme-light=\"false\"] svg#" + svg.getAttribute("id") + "{filter:url(#" + id + ")}",
                svg.getElementsByTagName("style").item(0).getTextContent());
        String[] values = matrix.getAttribute("values").split(" ", -1);
        double[] weights = {0.213, 0.715, 0.072};
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                // the specification's sum for 180 degrees, whose cosine is -1 and whose sine is 0
                double turned = 2 * weights[column] - (row == column ? 1 : 0);
                assertEquals(-turned, Double.parseDouble(values[5 * row + column]), 5e-4);
            }
            assertEquals(1, Double.parseDouble(values[5 * row + 4]));
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void titleAxesAndLegendAreRealText(ChartPicture picture) throws Exception {
        List<String> words = words(picture);
        var chart = picture.chart();
        assertTrue(words.contains(chart.getTitle()), () -> chart.getTitle() + " not in " + words);
        assertTrue(words.contains(chart.getXAxisTitle()), () -> chart.getXAxisTitle() + " not in " + words);
        chart.getSeriesMap().values().stream()
                .filter(series -> series.isShowInLegend())
                .forEach(series ->
                        assertTrue(words.contains(series.getLabel()), () -> series.getLabel() + " not in " + words));
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void noWordLeavesTheDrawing(ChartPicture picture) throws Exception {
        Document document = parse(picture.svg());
        NodeList texts = document.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            if (!transforms(text).contains("rotate")) {
                assertTrue(left(text) >= 0, text.getTextContent());
                assertTrue(left(text) < 760, text.getTextContent());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void theSameChartIsDrawnTheSameTwice(ChartPicture picture) {
        ChartPicture again = Samples.all(UnitSystem.US).stream()
                .filter(other -> other.key().equals(picture.key()))
                .findFirst()
                .orElseThrow();
        assertEquals(picture.svg(), again.svg());
    }

    @Test
    void idsDoNotMeetOnAPage() {
        Set<String> ids = new HashSet<>();
        for (ChartPicture picture : pictures()) {
            Matcher matcher = Pattern.compile(" id=\"([^\"]+)\"").matcher(picture.svg());
            while (matcher.find()) {
                assertTrue(ids.add(matcher.group(1)), matcher.group(1));
            }
        }
        assertFalse(ids.isEmpty());
    }

    @Test
    void curvesDifferByDashAndNotByColourAlone() {
        String svg = Samples.cylinder().picture(UnitSystem.SI).svg();
        assertTrue(svg.contains("stroke-dasharray=\"9,4\""), svg);
    }

    @Test
    void noPowerWithNitrousIsDrawnWhereNoneFlows() {
        var series =
                Samples.power().picture(UnitSystem.US).chart().getSeriesMap().get("with nitrous oxide");
        assertEquals(5800, series.getXData()[0]);
        assertEquals(7800, series.getXData()[series.getXData().length - 1]);
    }

    @Test
    void theAxisOfSpeedEndsWhereTheCurvesEnd() {
        var styler = Samples.power().picture(UnitSystem.US).chart().getStyler();
        assertEquals(3000, styler.getXAxisMin());
        assertEquals(8000, styler.getXAxisMax());
    }

    @Test
    void axesFollowTheUnitSystem() throws Exception {
        assertTrue(words(Samples.power().picture(UnitSystem.US)).contains("Power at the wheels, hp"));
        assertTrue(words(Samples.power().picture(UnitSystem.SI)).contains("Power at the wheels, kW"));
    }

    @Test
    void aDrawingStaysSmallAndFetchesNothing() {
        for (ChartPicture picture : pictures()) {
            String svg = picture.svg();
            assertTrue(svg.length() < 80_000, () -> picture.key() + " has " + svg.length() + " characters");
            assertFalse(svg.contains("href"), picture.key());
        }
    }

    @Test
    void aPngHasTheWidthAskedFor() throws Exception {
        byte[] png = Samples.tornado().picture(UnitSystem.SI).png(400);
        assertEquals(400, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
    }

    @Test
    void aPictureWithoutAlternativeTextIsRefused() {
        var refused = assertThrows(
                IllegalArgumentException.class, () -> new ChartPicture("a", "title", " ", 680, pixels -> null));
        assertEquals(
                "The chart 'a' lacks a title or an alternative text; give both, so that it can be read out.",
                refused.getMessage());
    }

    @Test
    void aCurveWithMissingValuesIsRefused() {
        Plot plot = Plot.of("p", "t", "a", Samples.axis(), Samples.axis());
        var refused = assertThrows(
                IllegalArgumentException.class, () -> plot.line("flow", new double[] {1, 2}, new double[] {1}));
        assertTrue(refused.getMessage().contains("has 2 abscissae and 1 values"), refused.getMessage());
    }

    @Test
    void aChartWithoutACurveIsRefused() {
        Plot plot = Plot.of("p", "t", "a", Samples.axis(), Samples.axis());
        assertThrows(IllegalStateException.class, plot::picture);
    }

    private static List<String> words(ChartPicture picture) throws Exception {
        List<String> words = new ArrayList<>();
        NodeList texts = parse(picture.svg()).getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            words.add(texts.item(i).getTextContent());
        }
        return words;
    }

    private static String transforms(Element text) {
        String parent = text.getParentNode() instanceof Element e ? e.getAttribute("transform") : "";
        return parent + text.getAttribute("transform");
    }

    private static double left(Element text) {
        Matcher moved = Pattern.compile("matrix\\(1,0,0,1,([-0-9.]+),").matcher(transforms(text));
        double x = Double.parseDouble(text.getAttribute("x"));
        return moved.find() ? x + Double.parseDouble(moved.group(1)) : x;
    }

    private static Document parse(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }
}
