package org.shotledger.snippet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Completes the name of a file in a text, or a word of the product's: what else a text says, nobody can guess. */
final class PathNames {

    private static final int LIMIT = 200;

    private PathNames() {}

    /** The words that go on like the text in front of the cursor; if there is none, the files whose names do. */
    static Completion complete(String text, int cursor, Supplier<List<String>> words) {
        List<String> fitting = text.isBlank()
                ? List.of()
                : words.get().stream()
                        .filter(word -> word.startsWith(text))
                        .limit(LIMIT)
                        .toList();
        return fitting.isEmpty() ? files(text, cursor) : completion(fitting, text, cursor, "text");
    }

    private static Completion files(String text, int cursor) {
        int slash = text.lastIndexOf('/');
        String begun = text.substring(slash + 1);
        List<String> names = text.length() > 1_000 || text.indexOf('\n') >= 0
                ? List.of()
                : names(text.substring(0, slash + 1), begun);
        return completion(names, begun, cursor, "path");
    }

    private static Completion completion(List<String> found, String begun, int cursor, String kind) {
        return new Completion(
                found,
                cursor - begun.length(),
                cursor,
                found.stream().map(one -> kind).toList());
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
