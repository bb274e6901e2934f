package org.shotledger.snippet;

import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which packages and classes the jars and folders of a class path hold.
 *
 * <p>The compiler would open and walk each jar when it starts, which takes longer than all else it does for a short cell. The
 * index answers from one small file that was written when the class path was put together.
 *
 * <p>It is kept as it lies in the file: a stamp, the number of rows, rows sorted by package, names. A row is five integers:
 * place and length of the package's name, number of the class path's entry, place and length of its classes' names.
 */
public final class ClassPathIndex {

    private static final int STAMP_BYTES = Long.BYTES;
    private static final int ROWS_AT = STAMP_BYTES + Integer.BYTES;
    private static final int ROW_BYTES = 5 * Integer.BYTES;

    /** A class and where its bytes are. */
    record Place(Path entry, String binaryName) {}

    private final List<Path> entries;
    private final ByteBuffer data;
    private final int rows;

    private ClassPathIndex(List<Path> entries, byte[] bytes) {
        this.entries = entries;
        this.data = ByteBuffer.wrap(bytes);
        this.rows = data.getInt(STAMP_BYTES);
    }

    /**
     * The index of a class path: read from a file if that file was made for the class path as it is now, else made by reading
     * the jars.
     *
     * @param file where {@link #write} put it; null or missing if nothing was written
     * @param classPath in the form of {@code java.class.path}
     * @return the index
     */
    public static ClassPathIndex of(Path file, String classPath) {
        List<Path> entries = Stream.of(classPath.split(File.pathSeparator))
                .filter(entry -> !entry.isEmpty())
                .map(Path::of)
                .toList();
        long stamp = stamp(entries);
        byte[] written = file == null ? new byte[0] : read(file);
        boolean fits = written.length > ROWS_AT && ByteBuffer.wrap(written).getLong() == stamp;
        return new ClassPathIndex(entries, fits ? written : ClassPathScan.of(entries, stamp));
    }

    private static byte[] read(Path file) {
        try {
            return Files.isRegularFile(file) ? Files.readAllBytes(file) : new byte[0];
        } catch (IOException e) {
            return new byte[0]; // as good as none
        }
    }

    /** Changes with the class path and with each jar on it. */
    private static long stamp(List<Path> entries) {
        long stamp = 1;
        for (Path entry : entries) {
            File file = entry.toFile();
            stamp = 31 * stamp + entry.hashCode();
            stamp = 31 * stamp + file.length();
            stamp = 31 * stamp + file.lastModified();
        }
        return stamp;
    }

    /**
     * Writes this index for later sessions.
     *
     * @param file where to
     * @throws IOException if it cannot be written
     */
    public void write(Path file) throws IOException {
        Path fresh = Files.createTempFile(file.toAbsolutePath().getParent(), "index", ".part");
        Files.write(fresh, data.array());
        Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
    }

    /** The entries of the class path. */
    List<Path> entries() {
        return entries;
    }

    /** The classes of a package, and if asked those of the packages below it. */
    List<Place> list(String packageName, boolean below) {
        List<Place> found = new ArrayList<>();
        byte[] name = packageName.getBytes(StandardCharsets.UTF_8);
        int row = firstAtOrAfter(name);
        while (row < rows && compare(row, name) == 0) {
            add(row++, found);
        }
        if (below) {
            byte[] prefix = packageName.isEmpty() ? name : (packageName + ".").getBytes(StandardCharsets.UTF_8);
            row = packageName.isEmpty() ? row : firstAtOrAfter(prefix);
            while (row < rows && startsWith(row, prefix)) {
                add(row++, found);
            }
        }
        return found;
    }

    /** Where a class is, or null. */
    Place find(String binaryName) {
        int dot = binaryName.lastIndexOf('.');
        return list(dot < 0 ? "" : binaryName.substring(0, dot), false).stream()
                .filter(place -> place.binaryName().equals(binaryName))
                .findFirst()
                .orElse(null);
    }

    private void add(int row, List<Place> found) {
        String packageName = text(field(row, 0), field(row, 1));
        String prefix = packageName.isEmpty() ? "" : packageName + ".";
        Path entry = entries.get(field(row, 2));
        String names = text(field(row, 3), field(row, 4));
        int at = 0;
        for (int end = names.indexOf('\n'); end >= 0; end = names.indexOf('\n', at)) {
            found.add(new Place(entry, prefix + names.substring(at, end)));
            at = end + 1;
        }
    }

    private int firstAtOrAfter(byte[] name) {
        int low = 0;
        int high = rows;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (compare(middle, name) < 0) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private int compare(int row, byte[] name) {
        int from = field(row, 0);
        return Arrays.compareUnsigned(data.array(), from, from + field(row, 1), name, 0, name.length);
    }

    private boolean startsWith(int row, byte[] prefix) {
        int from = field(row, 0);
        int length = Math.min(prefix.length, field(row, 1));
        return Arrays.equals(data.array(), from, from + length, prefix, 0, prefix.length);
    }

    private int field(int row, int number) {
        return data.getInt(ROWS_AT + row * ROW_BYTES + number * Integer.BYTES);
    }

    private String text(int from, int length) {
        return new String(data.array(), from, length, StandardCharsets.UTF_8);
    }
}
