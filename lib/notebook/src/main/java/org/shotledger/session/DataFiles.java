package org.shotledger.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Where a notebook's files are: beside it, or in a folder above it. */
final class DataFiles {
    private DataFiles() {}

    static Path find(String path, Path from) {
        Path wanted = Path.of(path);
        if (wanted.isAbsolute() && Files.exists(wanted)) {
            return wanted;
        }
        List<Path> tried = new ArrayList<>();
        for (Path folder = from.toAbsolutePath(); folder != null; folder = folder.getParent()) {
            Path file = folder.resolve(wanted).normalize();
            if (Files.exists(file)) {
                return file;
            }
            tried.add(folder);
        }
        throw new IllegalArgumentException("There is no file '" + path + "' in " + tried.get(0)
                + " or any folder above it; check the name, or give the whole path.");
    }
}
