package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shotledger.ledger.Entry;
import org.shotledger.ledger.Ledger;
import org.shotledger.limits.Provenance;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** The sources of the invented demonstration job, told by their weight. */
class SourcesTest {
    private static final Path FOLDER = Demo.FOLDER;

    @Test
    void aPublicationStandsOnceWithAllThatItServes() {
        List<String> named = Demo.column(Sources.publications(Demo.PLAN.ledger().entries()), 0);
        assertEquals(named.stream().distinct().toList(), named);
        assertTrue(named.contains("ISO 2533 (1975)"), named.toString());
        assertTrue(named.contains("Heywood, Internal Combustion Engine Fundamentals (1988)"), named.toString());
    }

    @Test
    void aReportNumberIsNotTakenForItsYear() {
        Entry entry = new Entry(
                "k",
                "flow",
                "",
                QuantityKind.RATIO,
                1,
                0,
                "b",
                "AIAA 2013-3636 (2013), fig. 13",
                List.of(),
                Provenance.CALCULATED,
                Optional.empty(),
                Optional.empty(),
                Entry.ROUNDING);
        Listing rows = Sources.publications(Ledger.of(List.of(entry)).entries());
        assertEquals(List.of("AIAA 2013-3636 (2013)"), Demo.column(rows, 0));
        assertEquals(List.of("flow (fig. 13)"), Demo.column(rows, 1));
    }

    @Test
    void everyTableOfTheJobIsListedWithItsOrigin() throws IOException {
        Listing files = Sources.files(Demo.PLAN.car());
        try (var folder = Files.list(FOLDER)) {
            List<String> tables = folder.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".csv") && !name.contains("log"))
                    .sorted()
                    .toList();
            assertEquals(
                    tables, Demo.column(files, 0).stream().distinct().sorted().toList());
        }
        assertTrue(
                Demo.column(files, 2).stream().allMatch(origin -> origin.startsWith("Invented data")), files.toText());
    }

    @Test
    void theLinesNamedHoldTheFigures() throws IOException {
        List<String> sheet = Files.readAllLines(FOLDER.resolve("job.yaml"));
        Listing told = Sources.sheet(Demo.PLAN.ledger().entries());
        List<String> measured = List.of(Demo.column(told, 1)
                .get(Demo.column(told, 0).indexOf("measured"))
                .split("\\D+"));
        assertTrue(measured.stream()
                .filter(number -> !number.isEmpty())
                .map(number -> sheet.get(Integer.parseInt(number) - 1))
                .anyMatch(line -> line.contains("85.3 mm")));
    }

    @Test
    void nothingIsSaidToComeFromElsewhere() {
        for (Entry entry : Demo.PLAN.ledger().entries()) {
            assertFalse(entry.source().matches(".*(see the|own sources).*"), entry.source());
        }
    }
}
