package org.shotledger.snippet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Completes the name of a file in a text: what else a text says, nobody can guess. */
final class PathNames {

    private static final int LIMIT = 200;

    private PathNames() {}

    /** The files whose names go on like the text in front of the cursor. */
    static Completion complete(String text, int cursor) {
        int slash = text.lastIndexOf('/');
        String begun = text.substring(slash + 1);
        List<String> names = text.length() > 1_000 || text.indexOf('\n') >= 0
                ? List.of()
                : names(text.substring(0, slash + 1), begun);
        return new Completion(
                names,
                cursor - begun.length(),
                cursor,
                names.stream().map(n -> "path").toList());
    }

    private static List<String> names(String folder, String begun) {
        try (Stream<Path> files = Files.list(Path.of(folder.isEmpty() ? "." : folder))) {
            return files.filter(file -> file.getFileName().toString().startsWith(begun))
                    .filter(file ->
                            !begun.isEmpty() || !file.getFileName().toString().startsWith("."))
                    .map(file -> file.getFileName() + (Files.isDirectory(file) ? "/" : ""))
                    .sorted()
                    .limit(LIMIT)
                    .toList();
        } catch (IOException | InvalidPathException | SecurityException none) {
            return List.of();
        }
    }
}
