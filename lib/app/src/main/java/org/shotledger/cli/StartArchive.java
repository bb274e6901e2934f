package org.shotledger.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * An archive of loaded classes that makes the launcher start faster.
 *
 * @param file where the launcher looks for it
 */
record StartArchive(Path file) {

    private static final int FIRST_WITH_AOT_CACHE = 25;

    /** The launcher's own, for this Java. */
    static StartArchive ofLauncher() {
        return new StartArchive(Path.of(System.getProperty("shotledger.archive", "none")));
    }

    boolean exists() {
        return Files.isRegularFile(file);
    }

    long bytes() throws IOException {
        return Files.size(file);
    }

    /** Whether this Java accepts it for these jars: asked of a Java that must use it or stop. */
    boolean fits() throws IOException, InterruptedException {
        boolean cache = Runtime.version().feature() >= FIRST_WITH_AOT_CACHE;
        List<String> command = OwnJava.command();
        command.addAll(List.of(
                cache ? "-XX:AOTMode=on" : "-Xshare:on",
                (cache ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=") + file,
                "-cp",
                System.getProperty("java.class.path"),
                "-version"));
        return Jupyter.succeeds(command.toArray(String[]::new));
    }
}
