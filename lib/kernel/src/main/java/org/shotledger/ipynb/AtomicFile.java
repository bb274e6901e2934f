package org.shotledger.ipynb;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes files under a temporary name and renames them, so that nobody ever sees half of one. */
public final class AtomicFile {

    private AtomicFile() {}

    /**
     * Writes a whole file.
     *
     * @param file where; missing folders are made
     * @param content its bytes
     * @throws IOException if it cannot be written; an older file is then still whole
     */
    public static void write(Path file, byte[] content) throws IOException {
        Path target = file.toAbsolutePath();
        Files.createDirectories(target.getParent());
        Path temporary = target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".tmp");
        try {
            Files.write(temporary, content);
            move(temporary, target);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
