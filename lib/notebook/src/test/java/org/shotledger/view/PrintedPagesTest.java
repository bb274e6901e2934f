package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.document.CustomerDocument;
import org.shotledger.document.DocumentPart;
import org.shotledger.document.Paper;
import org.shotledger.document.PaperCheck;
import org.shotledger.document.Progress;
import org.shotledger.job.Job;
import org.shotledger.job.Starter;
import org.shotledger.plan.Plan;
import org.shotledger.units.UnitSystem;

/** What lies on which sheet: one page to decide on, one page a card, letters that can be read, contents that lead somewhere. */
class PrintedPagesTest {
    /** Letters of nine points, less what rounding in a file takes: the least that is asked of every page. */
    private static final double LEAST_LETTERS = 8.95;

    private static final Set<DocumentPart> SHEETS = EnumSet.range(DocumentPart.DECISION, DocumentPart.TRACK);

    @Test
    void decisionAndCardsOfTheDemonstrationAreAPageEach() throws Exception {
        holds(Demo.Written.DOCUMENT);
        holds(document(Demo.PLAN, UnitSystem.SI));
    }

    @ParameterizedTest
    @ValueSource(strings = {"v8", "five-cylinder"})
    void decisionAndCardsOfOtherCarsAreAPageEach(String car, @TempDir Path folder) throws Exception {
        Starter.write(folder.resolve(car), car, Map.of(), folder);
        Plan plan = Plan.find(Job.load(folder.resolve(car)));
        holds(document(
                plan, UnitSystem.US)); // words and tables are the same in both, charts differ in their units alone
    }

    private static void holds(CustomerDocument whole) throws Exception {
        for (Paper paper : Paper.values()) {
            // each begins on a page of its own, so that one too long shows in the number of all
            byte[] together = whole.pages(SHEETS).pdf(paper);
            assertEquals(SHEETS.size(), count(together), "pages on " + paper);
            assertEquals(List.of(), PaperCheck.beyondMargins(together));
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everyLetterOfTheWholeDocumentCanBeRead(Paper paper) throws Exception {
        byte[] pdf = Demo.Printed.on(paper);
        assertTrue(PaperCheck.leastLetters(pdf) >= LEAST_LETTERS, PaperCheck.leastLetters(pdf) + " points");
    }

    @Test
    void theContentsLeadToTheirPages() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(Demo.Printed.on(Paper.A4))) {
            assertTrue(pdf.getNumberOfPages() > 6);
            PDPage contents = pdf.getPage(1);
            List<Integer> pages = new ArrayList<>();
            for (var annotation : contents.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink link) {
                    var to = link.getAction() instanceof PDActionGoTo action
                            ? action.getDestination()
                            : link.getDestination();
                    pages.add(1 + ((PDPageDestination) to).retrievePageNumber());
                }
            }
            assertFalse(pages.isEmpty(), "no link on the page of contents");
            assertEquals(pages.stream().sorted().toList(), pages, "in the order of reading");
            assertTrue(pages.get(pages.size() - 1) > 6);
        }
    }

    @Test
    void aShortChoiceHasNoContentsAndNamesWhatItLeavesOut() throws Exception {
        byte[] pdf = Demo.Written.DOCUMENT.pages("track, decision").pdf(Paper.A4);
        assertEquals(2, count(pdf));
        assertTrue(PaperCheck.page(pdf, 0).contains("the whole document"), PaperCheck.page(pdf, 0));
        assertTrue(PaperCheck.page(pdf, 1).contains("Card for the track"), PaperCheck.page(pdf, 1));
        assertFalse(PaperCheck.page(pdf, 0).contains("What stands where"));
    }

    @Test
    void everyCardHasItsOwnCautions() throws Exception {
        Map<DocumentPart, String> said = Map.of(
                DocumentPart.DECISION, "suffocate without warning",
                DocumentPart.TUNER, "lean engine under nitrous oxide is destroyed",
                DocumentPart.MECHANIC, "Liquid burns skin by cold",
                DocumentPart.TRACK, "suffocate without warning");
        byte[] pdf = Demo.Written.DOCUMENT.pages(SHEETS).pdf(Paper.A4);
        int at = 0;
        for (DocumentPart part : SHEETS) {
            String page = PaperCheck.page(pdf, at++);
            assertTrue(page.contains(said.get(part)), page);
        }
    }

    @Test
    void anUnknownPageGetsOneSentence() {
        assertEquals(
                "The document has no page \"cover\"; choose from decision, tuner, mechanic, track, reasons, ledger, with commas"
                        + " between them, or leave the choice out for all of them.",
                assertThrows(IllegalArgumentException.class, () -> Demo.Written.DOCUMENT.pages("decision,cover"))
                        .getMessage());
    }

    @Test
    void aDocumentThatIsStoppedLeavesNoFile(@TempDir Path folder) {
        List<String> heard = new ArrayList<>();
        Progress stops = (what, done, of) -> {
            heard.add(what);
            Thread.currentThread().interrupt();
        };
        CancellationException stopped = assertThrows(
                CancellationException.class,
                () -> Demo.Written.DOCUMENT.write(folder.resolve("out"), "plan", Paper.A4, stops));
        assertTrue(Thread.interrupted(), "the interrupt stays for the caller");
        assertEquals(List.of("the page"), heard);
        assertTrue(stopped.getMessage().contains("no file was changed"), stopped.getMessage());
        assertFalse(folder.resolve("out").toFile().exists());
    }

    private static CustomerDocument document(Plan plan, UnitSystem system) {
        return PlanDocument.of(
                plan,
                Issue.first("A", "2026-06-20")
                        .between("the owner of the car", "its engine builder")
                        .in(system));
    }

    private static int count(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }
}
