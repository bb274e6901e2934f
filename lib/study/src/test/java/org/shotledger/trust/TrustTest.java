package org.shotledger.trust;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What README says of trust is what the models do; write it anew with {@code -Dwrite.trust=true}. */
class TrustTest {
    private static final Path README = Path.of("../../README.md");
    private static final String BEGIN = "<!-- trust: made by TrustTest -->\n";
    private static final String END = "<!-- end of trust -->\n";
    private static final List<Family> FAMILIES = Trust.all(Path.of("../../data"));

    @Test
    void readmeHoldsTheComputedFigures() throws IOException {
        String text = Files.readString(README);
        int begin = text.indexOf(BEGIN) + BEGIN.length();
        int end = text.indexOf(END);
        assertTrue(begin > BEGIN.length() && end >= begin, "the marks of the table stand in README");
        String table = "\n" + Trust.markdown(FAMILIES) + "\n";
        if (Boolean.getBoolean("write.trust")) {
            Files.writeString(README, text.substring(0, begin) + table + text.substring(end));
        } else {
            assertEquals(table, text.substring(begin, end));
        }
    }

    @Test
    void nineInTenFiguresLieInsideTheBandOfEveryFamily() {
        for (Family family : FAMILIES) {
            assertTrue(family.inside() >= 0.9, family.name() + ": " + family.inside());
        }
    }

    @Test
    void everyFigureOfAPublishedFamilyIsMet() {
        for (Family family : FAMILIES) {
            if (!family.name().startsWith("flow, holes") && !family.name().startsWith("bottles")) {
                assertEquals(1, family.inside(), family.name() + ": " + family.worst());
            }
        }
    }

    @Test
    void theBandOfAnUnknownHoleIsWider() {
        assertTrue(width(FAMILIES.get(2)) > width(FAMILIES.get(1)));
    }

    private static double width(Family family) {
        return family.figures().stream()
                .mapToDouble(
                        figure -> Math.log(figure.band().high() / figure.band().low()))
                .average()
                .orElseThrow();
    }
}
