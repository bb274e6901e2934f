package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shotledger.document.Conformance;
import org.shotledger.document.CustomerDocument;
import org.shotledger.document.PageCheck;
import org.shotledger.document.Paper;
import org.shotledger.document.PaperCheck;

/** The whole document of the invented demonstration job, on screen and on both papers. */
class DemoDocumentTest {
    private static CustomerDocument document;
    private static byte[] letter;

    @BeforeAll
    static void write() {
        document = Demo.Written.DOCUMENT;
        letter = Demo.Printed.on(Paper.LETTER);
    }

    @Test
    void thePageKeepsWhatAProgramCanJudge() {
        assertEquals(List.of(), PageCheck.faults(document.html()));
    }

    @Test
    void theFirstPageHoldsTheDecisionAndTheSecondEveryCaution() throws Exception {
        String first = PaperCheck.page(letter, 0);
        assertTrue(first.contains("Next step") && first.contains("Closed courses only"), first);
        assertTrue(first.contains("Read and agreed"), first);
        assertTrue(PaperCheck.page(letter, 1).contains("not this document"), "the last caution");
    }

    // the sample of every kind of block is held against the standards on both papers; the whole takes a million checks
    @Test
    void thePdfKeepsItsStandards() throws Exception {
        assertEquals(List.of(), Conformance.broken(letter));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void thePdfKeepsItsRowsAndItsMargins(Paper paper) throws Exception {
        byte[] pdf = Demo.Printed.on(paper);
        assertEquals(List.of(), PaperCheck.cutRows(pdf));
        assertEquals(List.of(), PaperCheck.beyondMargins(pdf));
        assertEquals(List.of(), PaperCheck.leftAlone(pdf));
    }
}
