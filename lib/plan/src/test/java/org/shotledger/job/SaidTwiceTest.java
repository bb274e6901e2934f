package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.sheet.SheetException;

/** A sheet that says one thing in two ways is refused: neither is dropped in silence. */
class SaidTwiceTest {
    @ParameterizedTest
    @CsvSource({
        "parts:\\n, parts:\\n  nitrous-per-lb: 6\\n, parts.nitrous-per-lb",
        "parts:\\n, parts:\\n  fuel-per-gallon: 5\\n, parts.fuel-per-gallon",
        "conditions: home\\n  rpm, conditions: home\\n  correction: din-70020\\n  correction-factor: 1.03\\n  rpm, base-pull.correction-factor",
        "format: 3\\n, format: 3\\nsetup:\\n  boost: 17 psi gauge\\n  boost-tolerance: 1 psi\\n, setup.boost-tolerance",
    })
    void one_of_them_is_to_be_kept(String here, String both, String field) throws IOException {
        String text = Files.readString(DemoSheetTest.DEMO);
        String twice = text.replace(here.replace("\\n", "\n"), both.replace("\\n", "\n"));
        SheetException refused =
                assertThrows(SheetException.class, () -> Job.read(twice, DemoSheetTest.DEMO.getParent()));
        assertEquals(field, refused.problems().get(0).field(), refused.getMessage());
        assertEquals(1, refused.problems().size(), refused.getMessage());
    }
}
