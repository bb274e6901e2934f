package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;

/** A folder for a new job: filled whole or not at all, and nothing of the user's is touched. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class StarterTest {
    private static final List<String> FILES = List.of(
            "compressor-map.csv",
            "fuel-pump.csv",
            "injector-dead-time.csv",
            "jets.csv",
            "nitrous-fuel-pump.csv",
            "volumetric-efficiency.csv",
            "job.yaml");

    @Test
    void the_files_come_by_name_and_the_sheet_last(@TempDir Path folder) throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertEquals(FILES.stream().map(empty::resolve).toList(), Starter.write(empty));
        Path made = folder.resolve("new");
        assertEquals(FILES.stream().map(made::resolve).toList(), Starter.write(made));
        assertEquals(Files.readString(empty.resolve("job.yaml")), Files.readString(made.resolve("job.yaml")));
        assertTrue(Files.readString(made.resolve("job.yaml")).contains("\nwiring:\n"));
        assertEquals(List.of("empty", "new"), names(folder));
    }

    @Test
    void what_is_there_stays_untouched(@TempDir Path folder) throws IOException {
        Path note = Files.writeString(folder.resolve("note.txt"), "mine");
        for (Path taken : List.of(folder, note)) {
            assertEquals(
                    "There is something in " + taken
                            + " already and nothing is overwritten; name a new or an empty folder.",
                    assertThrows(IllegalArgumentException.class, () -> Starter.write(taken))
                            .getMessage());
        }
        assertEquals("mine", Files.readString(note));
        assertEquals(List.of("note.txt"), names(folder));
    }

    @Test
    void a_wrong_figure_leaves_nothing_behind(@TempDir Path folder) throws IOException {
        Path made = folder.resolve("new");
        Path empty = Files.createDirectory(folder.resolve("empty"));
        for (Path goal : List.of(made, empty)) {
            assertThrows(
                    IllegalArgumentException.class, () -> Starter.write(goal, "v8", Map.of("bore", "83 kg"), folder));
        }
        assertEquals(List.of("empty"), names(folder));
        assertEquals(List.of(), names(empty));
        assertEquals(
                "There is no car \"v12\" to begin like; there are five-cylinder, v8, given-jets.",
                assertThrows(IllegalArgumentException.class, () -> Starter.write(made, "v12", Map.of(), folder))
                        .getMessage());
    }

    @Test
    void figures_are_read_as_they_are_written() {
        assertEquals(
                Map.of("bore", "83 mm", "cylinders", "5"), Starter.figures("bore: 83 mm\ncylinders: 5\n", "few.yaml"));
        Problem first = assertThrows(
                        SheetException.class, () -> Starter.figures("bore: 83 mm\nstroke: [1, 2]\n", "few.yaml"))
                .problems()
                .get(0);
        assertEquals(
                List.of("few.yaml", 2, 1, "stroke"),
                List.of(first.file(), first.line(), first.column(), first.field()));
        assertTrue(first.sentence().startsWith("A plain figure or word is wanted here; known are "), first.sentence());
        assertThrows(SheetException.class, () -> Starter.figures("bore: [", "few.yaml"));
        assertTrue(Starter.figures().keySet().containsAll(List.of("bore", "stroke", "injector")));
        assertThrows(
                UnsupportedOperationException.class, () -> Starter.figures().clear());
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names =
                    files.map(f -> f.getFileName().toString()).sorted().toList();
            assertFalse(names.stream().anyMatch(n -> n.endsWith(".part")), names.toString());
            return names;
        }
    }
}
