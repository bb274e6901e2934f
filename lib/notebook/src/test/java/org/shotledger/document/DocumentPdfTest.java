package org.shotledger.document;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The document as PDF: what stands in it, its standards, its paper. */
class DocumentPdfTest {
    private static final CustomerDocument DOCUMENT = CustomerDocument.of(SampleDocument.content());
    private static byte[] letter;
    private static byte[] a4;

    @BeforeAll
    static void set() {
        letter = DOCUMENT.pdf(Paper.LETTER);
        a4 = DOCUMENT.pdf(Paper.A4);
    }

    @Test
    void thePdfHasTheTextAndTheSectionsAndEveryFontEmbedded() throws Exception {
        try (PDDocument document = Loader.loadPDF(letter)) {
            String text = new PDFTextStripper().getText(document);
            for (Section section : SampleDocument.content().sections().keySet()) {
                assertTrue(text.contains(section.heading()), section.heading());
            }
            assertTrue(text.contains("<script>alert('x')</script>"), "user text");
            for (PDPage page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                }
            }
        }
    }

    @Test
    void thePdfIsTaggedAndNamesItsLanguageAndItsStandard() throws Exception {
        try (PDDocument document = Loader.loadPDF(letter)) {
            var catalog = document.getDocumentCatalog();
            assertTrue(catalog.getMarkInfo().isMarked());
            assertEquals("en", catalog.getLanguage());
            assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 0.5, "Letter is 8.5 in wide, 612 points");
            ByteArrayOutputStream xmp = new ByteArrayOutputStream();
            catalog.getMetadata().exportXMPMetadata().transferTo(xmp);
            assertTrue(xmp.toString(StandardCharsets.UTF_8).contains("pdfaid:part"), "no PDF/A mark");
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void thePdfConformsToItsStandards(Paper paper) throws Exception {
        assertEquals(List.of(), Conformance.broken(on(paper)));
    }

    @Test
    void everyChartIsToldInWordsByItsTag() throws Exception {
        try (PDDocument document = Loader.loadPDF(letter)) {
            List<String> told = new ArrayList<>();
            figures(document.getDocumentCatalog().getStructureTreeRoot(), told);
            List<String> meant = SampleDocument.content().sections().values().stream()
                    .flatMap(List::stream)
                    .filter(Block.Picture.class::isInstance)
                    .map(block -> ((Block.Picture) block).chart())
                    .map(chart -> chart.title() + ". " + chart.alt())
                    .toList();
            assertEquals(meant, told);
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void noRowIsCutAndNothingRunsBeyondTheMargins(Paper paper) throws Exception {
        assertEquals(List.of(), PaperCheck.cutRows(on(paper)));
        assertEquals(List.of(), PaperCheck.beyondMargins(on(paper)));
        assertEquals(List.of(), PaperCheck.leftAlone(on(paper)));
    }

    @Test
    void thePaperCheckSeesACutRowAndLettersBeyondAMargin() throws Exception {
        String row = "<tr><td>" + "many words on end<br/>".repeat(80) + "</td></tr>";
        String page = "<html lang=\"en\"><head><title>t</title><style>@page { size: A4; margin: 15mm 14mm 15mm 14mm }"
                + " html { font-family: 'Liberation Sans' } body { margin: 0 }</style></head><body><table>" + row
                + "</table>"
                + "<p>" + "w".repeat(100) + "</p></body></html>";
        byte[] bad = Pdf.of(page);
        assertEquals(List.of("row on pages [1, 2]"), PaperCheck.cutRows(bad));
        List<String> beyond = PaperCheck.beyondMargins(bad);
        // a w is 0.722 em wide, 8.7 points at 12: 59 of them fit into 182 mm
        assertEquals("page 2: " + "w".repeat(41), beyond.get(0));
    }

    @Test
    void thePaperCheckSeesAHeadingAtTheFootOfItsPage() throws Exception {
        String page = "<html lang=\"en\"><head><title>t</title><style>@page { size: A4; margin: 18mm 16mm 20mm 16mm }"
                + " html { font-family: 'Liberation Sans' } body { margin: 0 } h2 { margin: 0; font-size: 12pt }</style></head>"
                + "<body><div style=\"height: 250mm\"></div><h2>Alone</h2><p style=\"page-break-before: always\">text</p></body></html>";
        assertEquals(List.of("H2 on page 1, what follows on page 2"), PaperCheck.leftAlone(Pdf.of(page)));
    }

    @Test
    void theSamePageGivesTheSameBytes() {
        assertArrayEquals(letter, DOCUMENT.pdf(Paper.LETTER));
    }

    private static byte[] on(Paper paper) {
        return paper == Paper.A4 ? a4 : letter;
    }

    private static void figures(PDStructureNode node, List<String> told) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (element.getStructureType().equals("Figure")) {
                    told.add(element.getAlternateDescription());
                }
                figures(element, told);
            }
        }
    }
}
