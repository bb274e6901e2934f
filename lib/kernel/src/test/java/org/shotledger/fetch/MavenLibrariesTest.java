package org.shotledger.fetch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MavenLibrariesTest {

    @TempDir
    Path folder;

    private RepositoryFolder shelf;

    @BeforeEach
    void fill() throws IOException {
        shelf = new RepositoryFolder(folder).withSettings().withTwo();
    }

    private Fetched fetch(String coordinates) throws FetchException {
        return MavenLibraries.of(shelf.settings(), null).fetch(coordinates);
    }

    @Test
    void aLibraryComesWithWhatItNeedsFromWhereTheSettingsSay() throws FetchException, IOException {
        assertEquals(
                "invented:flange:1 can be used from here on, with 2 jars. Fetched from workshop: invented:flange:1,"
                        + " invented:bolt:1.",
                fetch("invented:flange:1").sentence());
        assertEquals(java.util.List.of("bolt-1.jar", "flange-1.jar"), shelf.local(".jar"));
    }

    @Test
    void whatIsThereIsNotFetchedAgain() throws FetchException, IOException {
        fetch("invented:bolt:1");
        assertTrue(fetch("invented:flange:1").sentence().endsWith("Fetched from workshop: invented:flange:1."));
        Files.move(folder.resolve("shelf"), folder.resolve("gone"));
        assertEquals(
                "invented:flange:1 can be used from here on, with 2 jars. Nothing was fetched: the local repository had"
                        + " everything.",
                fetch("invented:flange:1").sentence());
    }

    @Test
    void theLocalRepositoryOfTheSettingsIsUsed() throws FetchException, IOException {
        Path elsewhere = folder.resolve("elsewhere");
        Path file = shelf.settings().resolve("settings.xml");
        Files.writeString(
                file,
                Files.readString(file)
                        .replace("<settings>", "<settings><localRepository>" + elsewhere + "</localRepository>"));
        assertTrue(fetch("invented:bolt:1").jars().get(0).file().startsWith(elsewhere));
    }

    @Test
    void whatNobodyHasIsSaid() {
        String message = assertThrows(FetchException.class, () -> fetch("invented:gasket:1"))
                .getMessage();
        assertTrue(message.startsWith("invented:gasket:1 cannot be had: "), message);
        assertTrue(message.contains("workshop"), message);
        assertTrue(message.contains("Check the coordinates"), message);
    }

    @Test
    void whatIsNoLibraryIsSaid() {
        String message = assertThrows(FetchException.class, () -> fetch("bolt")).getMessage();
        assertTrue(message.startsWith("\"bolt\" is no library: write group:artifact:version"), message);
    }

    @Test
    void settingsThatCannotBeReadAreSaid() throws IOException {
        Files.writeString(shelf.settings().resolve("settings.xml"), "<settings><mirrors>");
        String message = assertThrows(FetchException.class, () -> fetch("invented:bolt:1"))
                .getMessage();
        assertTrue(message.startsWith("Maven's settings cannot be read: "), message);
    }
}
