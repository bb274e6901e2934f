package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

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

/** The whole document of the invented demo build, on screen and on both papers. */
class HeronDocumentTest {
    private static CustomerDocument document;
    private static String html;

    @BeforeAll
    static void write() {
        document = BudgetDocument.of(Heron.BUDGET, Issue.first("A", "2026-06-20"));
        html = document.html();
    }

    @Test
    void thePageKeepsWhatAProgramCanJudge() {
        assertEquals(List.of(), PageCheck.faults(html));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void thePdfKeepsItsStandardsItsRowsAndItsMargins(Paper paper) throws Exception {
        byte[] pdf = document.pdf(paper);
        assertEquals(List.of(), Conformance.broken(pdf));
        assertEquals(List.of(), PaperCheck.cutRows(pdf));
        assertEquals(List.of(), PaperCheck.beyondMargins(pdf));
    }
}
