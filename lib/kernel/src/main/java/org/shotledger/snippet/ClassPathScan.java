package org.shotledger.snippet;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Reads the jars and folders of a class path and writes the bytes of a {@link ClassPathIndex}. */
final class ClassPathScan {

    private static final String CLASS = ".class";

    /** Classes inside methods: no other class can name them. */
    private static final Pattern LOCAL = Pattern.compile("\\$\\d");

    /** The classes of one package in one entry; names are ended by a line feed each. */
    private record Row(String packageName, int entry, String classes) {}

    private ClassPathScan() {}

    static byte[] of(List<Path> entries, long stamp) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            Map<String, StringBuilder> found = new TreeMap<>();
            classFiles(entries.get(i)).forEach(path -> collect(path, found));
            for (Map.Entry<String, StringBuilder> one : found.entrySet()) {
                rows.add(new Row(one.getKey(), i, one.getValue().toString()));
            }
        }
        rows.sort(Comparator.comparing(Row::packageName).thenComparing(Row::entry));
        return bytes(rows, stamp);
    }

    private static byte[] bytes(List<Row> rows, long stamp) {
        int head = Long.BYTES + Integer.BYTES + rows.size() * 5 * Integer.BYTES;
        ByteBuffer table = ByteBuffer.allocate(head).putLong(stamp).putInt(rows.size());
        ByteArrayOutputStream names = new ByteArrayOutputStream();
        for (Row row : rows) {
            putText(row.packageName(), head, table, names);
            table.putInt(row.entry());
            putText(row.classes(), head, table, names);
        }
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(table.array());
        all.writeBytes(names.toByteArray());
        return all.toByteArray();
    }

    private static void putText(String text, int head, ByteBuffer table, ByteArrayOutputStream names) {
        byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
        table.putInt(head + names.size()).putInt(encoded.length);
        names.writeBytes(encoded);
    }

    private static void collect(String path, Map<String, StringBuilder> found) {
        int slash = path.lastIndexOf('/');
        String packageName = slash < 0 ? "" : path.substring(0, slash).replace('/', '.');
        found.computeIfAbsent(packageName, key -> new StringBuilder())
                .append(path, slash + 1, path.length() - CLASS.length())
                .append('\n');
    }

    private static List<String> classFiles(Path entry) {
        try {
            if (Files.isDirectory(entry)) {
                try (Stream<Path> files = Files.walk(entry)) {
                    return files.map(file -> entry.relativize(file).toString().replace(File.separatorChar, '/'))
                            .filter(ClassPathScan::isNameable)
                            .toList();
                }
            }
            if (Files.isRegularFile(entry)) {
                try (ZipFile jar = new ZipFile(entry.toFile())) {
                    return jar.stream()
                            .map(ZipEntry::getName)
                            .filter(ClassPathScan::isNameable)
                            .toList();
                }
            }
        } catch (IOException e) {
            return List.of(); // the compiler ignores what it cannot read, and so does this
        }
        return List.of();
    }

    private static boolean isNameable(String path) {
        return path.endsWith(CLASS)
                && !path.startsWith("META-INF/")
                && !path.endsWith("module-info" + CLASS)
                && !LOCAL.matcher(path).find();
    }
}
