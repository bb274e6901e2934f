package org.shotledger.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes a file so that at any moment either the old or the new content is there, whole, even when the process is killed.
 *
 * <p>The content goes into a hidden part file beside the target, which is forced to the disk and renamed. The part file of a
 * process that was killed meanwhile is removed by the next write of the same file.
 */
public final class AtomicFile {
    private static final AtomicLong COUNTER = new AtomicLong();
    private static final Set<StandardOpenOption> NEW = Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);

    private AtomicFile() {}

    /** Who may read the file. */
    public enum Access {
        /** Whoever may read what this user makes. */
        USUAL,
        /** This user alone, from the first byte on; where the file system knows no such rights, as usual. */
        OWNER
    }

    /**
     * Replaces a file.
     *
     * @param file the file to make or replace; its folder is made when missing
     * @param text the new content, written as UTF-8
     * @throws UncheckedIOException when the disk refuses; the old content then stands
     */
    public static void write(Path file, String text) {
        write(file, text.getBytes(StandardCharsets.UTF_8), Access.USUAL);
    }

    /**
     * Replaces a file.
     *
     * @param file the file to make or replace; its folder is made when missing
     * @param content the new content
     * @param access who may read it
     * @throws UncheckedIOException when the disk refuses; the old content then stands
     */
    public static void write(Path file, byte[] content, Access access) {
        Path target = file.toAbsolutePath();
        Path part = target.resolveSibling("." + target.getFileName() + "."
                + ProcessHandle.current().pid() + "-" + COUNTER.incrementAndGet() + ".part");
        try {
            Files.createDirectories(target.getParent());
            sweep(target);
            try (FileChannel channel = FileChannel.open(part, NEW, attributes(target, access))) {
                ByteBuffer bytes = ByteBuffer.wrap(content);
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            move(part, target);
        } catch (IOException e) {
            drop(part);
            throw new UncheckedIOException("The file " + file + " cannot be written; it is left as it was.", e);
        }
    }

    private static FileAttribute<?>[] attributes(Path target, Access access) {
        boolean rights = target.getFileSystem().supportedFileAttributeViews().contains("posix");
        return access == Access.OWNER && rights
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    /** Removes what killed processes left of this file. */
    private static void sweep(Path target) throws IOException {
        Pattern name = Pattern.compile(Pattern.quote("." + target.getFileName()) + "\\.(\\d{1,10})-\\d+\\.part");
        try (DirectoryStream<Path> parts =
                Files.newDirectoryStream(target.getParent(), f -> f.toString().endsWith(".part"))) {
            for (Path part : parts) {
                Matcher matcher = name.matcher(part.getFileName().toString());
                if (matcher.matches()
                        && ProcessHandle.of(Long.parseLong(matcher.group(1))).isEmpty()) {
                    drop(part);
                }
            }
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void drop(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException ignored) {
            // the first failure is the one to report; the part file is harmless
        }
    }
}
