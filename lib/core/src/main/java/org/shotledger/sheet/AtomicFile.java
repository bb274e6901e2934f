package org.shotledger.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file so that at any moment either the old or the new content is there, whole. */
public final class AtomicFile {
    private AtomicFile() {}

    /**
     * Replaces a file: writes a temporary one beside it, forces it to the disk, and renames it.
     *
     * @param file the file to make or replace; its folder is made when missing
     * @param text the new content
     * @throws UncheckedIOException when the disk refuses; the old content then stands
     */
    public static void write(Path file, String text) {
        Path target = file.toAbsolutePath();
        Path temporary = null;
        try {
            Files.createDirectories(target.getParent());
            temporary = Files.createTempFile(target.getParent(), "." + target.getFileName(), ".part");
            try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
                ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            move(temporary, target);
        } catch (IOException e) {
            drop(temporary);
            throw new UncheckedIOException("The file " + file + " cannot be written; it is left as it was.", e);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void drop(Path temporary) {
        if (temporary != null) {
            try {
                Files.deleteIfExists(temporary);
            } catch (IOException ignored) {
                // the first failure is the one to report; the part file is harmless
            }
        }
    }
}
