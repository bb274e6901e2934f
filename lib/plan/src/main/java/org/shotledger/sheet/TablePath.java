package org.shotledger.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.shotledger.units.Excerpt;

/** Keeps the files a sheet names inside the sheet's folder. */
final class TablePath {
    private TablePath() {}

    /** The file meant, or an exception whose message is the sentence to report. */
    static Path inside(Path folder, String named) {
        Path relative;
        try {
            relative = Path.of(named.replace('\\', '/'));
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException(
                    Excerpt.quoted(named) + " is not a file name; name a CSV file in the sheet's folder.");
        }
        Path file = folder.resolve(relative).normalize();
        if (relative.isAbsolute() || named.matches("^[A-Za-z]:.*") || !file.startsWith(folder) || named.isBlank()) {
            throw outside(named);
        }
        if (!Files.isRegularFile(file)) {
            throw new IllegalArgumentException(Excerpt.quoted(named)
                    + " is not in the sheet's folder; put the file beside the sheet or mend the name.");
        }
        try {
            if (!file.toRealPath().startsWith(folder.toRealPath())) {
                throw outside(named);
            }
        } catch (IOException e) {
            throw new IllegalArgumentException(Excerpt.quoted(named) + " cannot be read; check its rights.");
        }
        return file;
    }

    private static IllegalArgumentException outside(String named) {
        return new IllegalArgumentException(
                Excerpt.quoted(named)
                        + " leads out of the sheet's folder; copy the file beside the sheet and name it without a path upwards.");
    }
}
