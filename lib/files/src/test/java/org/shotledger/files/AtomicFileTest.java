package org.shotledger.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(ReplaceUnderscores.class)
class AtomicFileTest {
    private static final int KILLS = Integer.getInteger("kills", 12);

    /** More than one writer ever gets to. */
    private static final int FILES_EACH = 100_000;

    private static final int LENGTH = 400_000;

    @TempDir
    private Path folder;

    /** Writes the same file over and over until it is killed. */
    static final class Saver {
        private Saver() {}

        public static void main(String[] arguments) {
            Path file = Path.of(arguments[0]);
            for (int i = Integer.parseInt(arguments[1]); ; i++) {
                AtomicFile.write(file, content(i));
            }
        }
    }

    private static String content(int number) {
        return number + " " + String.valueOf((char) ('a' + number % 26)).repeat(LENGTH) + "\n";
    }

    /** Whatever is killed, and whenever, leaves one whole content; the next write sweeps up what it left besides. */
    @Test
    void killed_at_any_moment_a_writer_leaves_the_old_or_the_new_file() throws Exception {
        Path file = folder.resolve("build.yaml");
        AtomicFile.write(file, content(0));
        SplittableRandom random = new SplittableRandom(20_261_125);
        int parts = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            int first = 1 + kill * FILES_EACH;
            Process writer = start(file, first);
            long before = Files.getLastModifiedTime(file).toMillis();
            while (Files.getLastModifiedTime(file).toMillis() == before && writer.isAlive()) {
                Thread.sleep(1);
            }
            Thread.sleep(random.nextInt(25));
            writer.destroyForcibly().waitFor();
            assertEquals(137, writer.exitValue(), "killed by signal 9, not ended by itself");
            String text = Files.readString(file);
            int number = Integer.parseInt(text.substring(0, text.indexOf(' ')));
            assertEquals(content(number), text, "a part of a file");
            assertTrue(number >= first, "it was killed while it wrote, but the file is older: " + number);
            parts += names().size() - 1;
        }
        AtomicFile.write(file, "end");
        assertEquals(List.of("build.yaml"), names(), "part files met on the way: " + parts);
    }

    private static Process start(Path file, int first) throws IOException, URISyntaxException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xmx64m",
                        "-cp",
                        home(AtomicFile.class) + File.pathSeparator + home(Saver.class),
                        Saver.class.getName(),
                        file.toString(),
                        Integer.toString(first))
                .inheritIO()
                .start();
    }

    private static Path home(Class<?> type) throws URISyntaxException {
        return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void a_file_is_replaced_whole_and_leaves_no_part_behind() throws IOException {
        Path file = folder.resolve("deep/build.yaml");
        AtomicFile.write(file, "old");
        AtomicFile.write(file, "new");
        assertEquals("new", Files.readString(file));
        try (Stream<Path> files = Files.list(file.getParent())) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void a_file_for_its_owner_alone_is_so_from_the_beginning() throws IOException {
        Path file = folder.resolve("connection.json");
        AtomicFile.write(file, "{}".getBytes(StandardCharsets.UTF_8), AtomicFile.Access.OWNER);
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        Path usual = folder.resolve("build.yaml");
        Path made = Files.writeString(folder.resolve("made.txt"), "x");
        AtomicFile.write(usual, "x");
        assertEquals(Files.getPosixFilePermissions(made), Files.getPosixFilePermissions(usual));
    }

    @Test
    void a_disk_that_refuses_leaves_the_old_file() throws IOException {
        Path file = Files.createDirectory(folder.resolve("build.yaml"));
        Files.writeString(file.resolve("inside"), "x");
        assertEquals(
                "The file " + file + " cannot be written; it is left as it was.",
                assertThrows(UncheckedIOException.class, () -> AtomicFile.write(file, "x"))
                        .getMessage());
        assertEquals(List.of("build.yaml"), names());
    }

    /** The reader of a growing file sees the old or the new content at every moment, never a part. */
    @Test
    void whoever_reads_while_a_file_is_written_sees_it_whole() throws Exception {
        Path file = folder.resolve("build.yaml");
        AtomicFile.write(file, content(0));
        Thread writer = new Thread(() -> {
            for (int i = 0; i < 20; i++) {
                AtomicFile.write(file, content(i % 2));
            }
        });
        writer.start();
        while (writer.isAlive()) {
            String seen = Files.readString(file);
            assertTrue(seen.equals(content(0)) || seen.equals(content(1)));
        }
        writer.join();
    }
}
