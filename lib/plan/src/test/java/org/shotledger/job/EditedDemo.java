package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;

/** The demonstration's sheet as someone might have changed it, and its tables in another folder. */
final class EditedDemo {
    /** Where its tables lie. */
    static final Path FOLDER = DemoSheetTest.DEMO.getParent();

    private EditedDemo() {}

    /** @param edits what is replaced and by what, in turns; what is not in the sheet fails */
    static String text(String... edits) throws IOException {
        String text = Files.readString(DemoSheetTest.DEMO);
        for (int i = 0; i < edits.length; i += 2) {
            assertTrue(text.contains(edits[i]), edits[i]);
            text = text.replace(edits[i], edits[i + 1]);
        }
        return text;
    }

    static Job job(String... edits) throws IOException {
        return Job.read(text(edits), FOLDER);
    }

    static void copyTables(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<Path> tables =
                    files.filter(file -> file.toString().endsWith(".csv")).toList();
            for (Path table : tables) {
                Files.copy(table, folder.resolve(table.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }
}
