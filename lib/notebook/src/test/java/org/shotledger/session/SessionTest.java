package org.shotledger.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.table.Shown;
import org.shotledger.view.Viewing;

class SessionTest {

    /** Runs in a machine of its own, to see which classes it loads. */
    static final class Start {
        private Start() {}

        public static void main(String[] arguments) {
            System.out.println(Session.units(Shown.BOTH));
            System.out.println(Session.help().toText().length());
        }
    }

    @AfterEach
    void backToUs() {
        Viewing.choose(Shown.US);
    }

    @Test
    void theChoiceOfUnitsHoldsForTheSession() {
        assertEquals("Results are shown in SI units.", Session.units(Shown.SI));
        assertEquals(Shown.SI, Viewing.units());
    }

    @Test
    void helpShowsWhatToTypeForEveryStaticOfTheSession() {
        String help = Session.help().toText();
        for (String name :
                new String[] {"units(", "file(", "why(", "document(", "analyse(", "feed(", "explore(", "controls("}) {
            assertTrue(help.contains(name), name);
        }
        assertTrue(Session.help().toHtml().contains("plan.setup()"));
    }

    @Test
    void aDataFileIsFoundFromAFolderBelow(@TempDir Path root) throws Exception {
        Path file = root.resolve("data/car/job.yaml");
        Files.createDirectories(file.getParent());
        Files.writeString(file, "x");
        Path below = Files.createDirectories(root.resolve("notebooks/deep"));
        assertEquals(file, DataFiles.find("data/car/job.yaml", below));
    }

    @Test
    void aMissingDataFileIsNamedWithTheFolder(@TempDir Path root) {
        var missing = assertThrows(IllegalArgumentException.class, () -> DataFiles.find("no/such/file.yaml", root));
        assertTrue(
                missing.getMessage().startsWith("There is no file 'no/such/file.yaml' in " + root),
                missing.getMessage());
    }

    @Test
    void everyImportOfTheSessionNamesSomethingThatExists() throws Exception {
        for (String line : Session.IMPORTS) {
            String name = line.replace("static ", "").replaceFirst("\\.\\*$", "");
            if (line.startsWith("static ") || !line.endsWith(".*")) {
                Class.forName(name, false, getClass().getClassLoader());
            } else if (name.startsWith("org.shotledger")) {
                assertNotNull(getClass().getClassLoader().getResource(name.replace('.', '/')), name);
            }
        }
    }

    @Test
    void startingASessionLoadsNoDrawingLibrary() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-verbose:class",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Start.class.getName())
                .redirectErrorStream(true)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), out);
        for (String heavy :
                new String[] {"org.knowm", "tech.tablesaw", "tech.units", "org.apache.batik", "freemarker."}) {
            assertFalse(out.contains("] " + heavy), () -> heavy + " was loaded");
        }
    }
}
