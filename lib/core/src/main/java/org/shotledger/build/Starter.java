package org.shotledger.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shotledger.sheet.AtomicFile;

/** Writes the folder a new job begins with: a commented sheet and its tables, all figures invented and marked so. */
public final class Starter {
    private static final List<String> FILES = List.of(
            "volumetric-efficiency.csv",
            "compressor-map.csv",
            "fuel-pump.csv",
            "nitrous-fuel-pump.csv",
            "injector-dead-time.csv",
            "jets.csv",
            "build.yaml");

    private Starter() {}

    /**
     * Writes the files.
     *
     * @param folder the folder to make or fill
     * @return the files written
     * @throws IllegalArgumentException when one of them exists already; nothing is then written
     */
    public static List<Path> write(Path folder) {
        Map<Path, String> contents = new LinkedHashMap<>();
        for (String file : FILES) {
            Path path = folder.resolve(file);
            if (Files.exists(path)) {
                throw new IllegalArgumentException("The file " + path
                        + " exists already and is not overwritten; name a new folder, or move the file away.");
            }
            contents.put(path, resource(file));
        }
        contents.forEach(AtomicFile::write);
        return new ArrayList<>(contents.keySet());
    }

    private static String resource(String file) {
        try (InputStream in = Starter.class.getResourceAsStream("starter/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
