package org.shotledger.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.shotledger.files.AtomicFile;

/** Writes the folder a new job begins with: a commented sheet and its tables, all figures invented and marked so. */
public final class Starter {
    /** The sheet comes last: a folder is a job only when it holds one. */
    private static final List<String> FILES = List.of(
            "volumetric-efficiency.csv",
            "compressor-map.csv",
            "fuel-pump.csv",
            "nitrous-fuel-pump.csv",
            "injector-dead-time.csv",
            "jets.csv",
            JobReader.USUAL_NAME);

    private Starter() {}

    /**
     * Writes the files, all or none: a new folder is filled under another name and renamed.
     *
     * @param folder the folder to make, or an empty one to fill
     * @return the files written, the sheet last
     * @throws IllegalArgumentException when there is something there already; nothing is then written
     * @throws UncheckedIOException when the disk refuses; nothing then stays
     */
    public static List<Path> write(Path folder) {
        Path goal = folder.toAbsolutePath().normalize();
        boolean there = Files.exists(goal);
        if (there && !isEmptyFolder(goal)) {
            throw new IllegalArgumentException("There is something in " + folder
                    + " already and nothing is overwritten; name a new or an empty folder.");
        }
        Path filled = there
                ? goal
                : goal.resolveSibling(
                        "." + goal.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            FILES.forEach(file -> AtomicFile.write(filled.resolve(file), resource(file)));
            if (!there) {
                Files.move(filled, goal);
            }
        } catch (IOException | UncheckedIOException e) {
            remove(filled, there);
            throw new UncheckedIOException(
                    "The folder " + folder + " cannot be written; nothing was left there.", new IOException(e));
        }
        return FILES.stream().map(folder::resolve).toList();
    }

    private static boolean isEmptyFolder(Path path) {
        try (Stream<Path> files = Files.list(path)) {
            return files.findAny().isEmpty();
        } catch (IOException e) {
            return false; // a file, or a folder that does not show what it holds
        }
    }

    private static void remove(Path folder, boolean keepFolder) {
        List<Path> parts = new ArrayList<>();
        FILES.forEach(file -> parts.add(folder.resolve(file)));
        if (!keepFolder) {
            parts.add(folder);
        }
        for (Path part : parts) {
            try {
                Files.deleteIfExists(part);
            } catch (IOException ignored) {
                // the first failure is the one to report
            }
        }
    }

    private static String resource(String file) {
        try (InputStream in = Starter.class.getResourceAsStream("starter/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
