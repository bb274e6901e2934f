package org.shotledger.snippet;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a session starts with.
 *
 * @param imports import declarations every cell gets, such as {@code import static java.lang.Math.*;}
 * @param classPath where the compiler looks for libraries, in the form of {@code java.class.path}
 */
public record SessionOptions(List<String> imports, String classPath) {

    /** Jars a notebook has no use for; each one left out saves the compiler an index. */
    private static final Set<String> MACHINERY = Set.of(
            "batik",
            "commonmark",
            "fontbox",
            "gson",
            "jackson",
            "jeromq",
            "jnacl",
            "openhtmltopdf",
            "pdfbox",
            "picocli",
            "serializer",
            "snakeyaml",
            "xalan",
            "xml-apis",
            "xmlgraphics",
            "xmpbox");

    /** Copies the imports. */
    public SessionOptions {
        imports = List.copyOf(imports);
    }

    /**
     * Options for this process's own class path, without the jars no notebook needs.
     *
     * @param imports import declarations every cell gets
     * @return the options
     */
    public static SessionOptions of(List<String> imports) {
        String path = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(SessionOptions::isForNotebooks)
                .collect(Collectors.joining(File.pathSeparator));
        return new SessionOptions(imports, path);
    }

    private static boolean isForNotebooks(String entry) {
        Path file = Path.of(entry).getFileName();
        return file != null && MACHINERY.stream().noneMatch(file.toString()::startsWith);
    }
}
