package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.ledger.Entry;
import org.shotledger.ledger.Ledger;
import org.shotledger.ledger.Ledgers;

/** A chart that was corrected to a standard's air gives the same car as the power that was observed. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PullCorrectionTest {
    private static final String OBSERVED = "wheel-power: 590 hp +/- 15 hp";
    private static final Job PLAIN = Job.load(DemoSheetTest.DEMO);

    /**
     * Home air: 200 m (98,945 Pa by the US Standard Atmosphere 1976), 18 C, half saturated (2,064 Pa at saturation, steam tables).
     * The factors by the standards' own equations, by hand from these figures.
     */
    @ParameterizedTest
    @CsvSource({
        "iso-1585, 0.99930",
        "din-70020, 1.02056",
        "sae-j1349, 0.99931",
        "sae-j607, 1.03918",
    })
    void power_is_taken_back_to_what_was_observed(String standard, double factor) throws IOException {
        Job job = pull("wheel-power: " + String.format(Locale.ROOT, "%.4f", 590 * factor)
                + " hp +/- 15 hp\n  correction: " + standard);
        assertEquals(590 * 745.69987, job.car().basePull().strongest().wheelPower(), 1e-4 * 590 * 745.7);
        assertEquals(
                PLAIN.car().model().factor().value(), job.car().model().factor().value(), 2e-4);
        assertTrue(job.car().basePull().correction().orElseThrow().holds());
    }

    @Test
    void a_stated_factor_is_taken_back_and_stands_in_the_ledger() throws IOException {
        Job job = pull("wheel-power: 649 hp\n  correction-factor: 1.1");
        assertEquals(590 * 745.69987, job.car().basePull().strongest().wheelPower(), 1);
        Ledger ledger = Ledgers.of(Evaluate.of(job.car(), job.setup(), job.stated()), job.target());
        assertEquals(
                649 * 745.69987, ledger.find("base-power-shown").orElseThrow().value(), 1);
        Entry observed = ledger.find("base-power").orElseThrow();
        assertEquals("P_c / 1.1000, the factor of the correction on the air of that day", observed.basis());
        assertEquals(observed.value(), ledger.recomputed("base-power").orElseThrow(), 1e-6);
    }

    @Test
    void a_first_sheet_can_be_told_of_a_corrected_chart(@TempDir Path folder) {
        Starter.write(folder.resolve("plain"), "v8", java.util.Map.of(), folder);
        Starter.write(folder.resolve("corrected"), "v8", java.util.Map.of("correction", "din-70020"), folder);
        double plain =
                Job.load(folder.resolve("plain")).car().basePull().strongest().wheelPower();
        Job corrected = Job.load(folder.resolve("corrected"));
        double factor = corrected.car().basePull().correction().orElseThrow().factor();
        assertTrue(factor > 1.1, "factor " + factor);
        Ledger ledger =
                Ledgers.of(Evaluate.of(corrected.car(), corrected.setup(), corrected.stated()), corrected.target());
        assertTrue(ledger.find("base-power").orElseThrow().basis().endsWith("beyond what the standard itself allows"));
        assertEquals(plain, factor * corrected.car().basePull().strongest().wheelPower(), 1e-9 * plain);
    }

    private static Job pull(String lines) throws IOException {
        return Job.read(Files.readString(DemoSheetTest.DEMO).replace(OBSERVED, lines), DemoSheetTest.DEMO.getParent());
    }
}
