package org.shotledger.snippet;

import java.nio.file.Path;
import java.util.List;

/**
 * What a session starts with.
 *
 * @param imports import declarations every cell gets, such as {@code import static java.lang.Math.*;}
 * @param classes where the compiler finds libraries
 * @param library the package of the library the notebooks are about, such as {@code org.shotledger}: what it refuses is told without
 *     a trace, and its documentation is shown where its jars carry their sources; empty for none
 */
public record SessionOptions(List<String> imports, ClassPathIndex classes, String library) {

    public SessionOptions {
        imports = List.copyOf(imports);
    }

    /**
     * Options for this process's own class path.
     *
     * @param imports import declarations every cell gets
     * @return the options
     */
    public static SessionOptions of(List<String> imports) {
        return of(imports, null, "");
    }

    /**
     * The same for one library, with the class path's index at hand, which is faster.
     *
     * @param imports import declarations every cell gets
     * @param index file with the index of these jars; null if there is none
     * @param library the package of the library the notebooks are about; empty for none
     * @return the options
     */
    public static SessionOptions of(List<String> imports, Path index, String library) {
        return new SessionOptions(imports, ClassPathIndex.of(index, System.getProperty("java.class.path")), library);
    }

    /** Whether a class is the library's. */
    boolean isOfLibrary(String className) {
        return !library.isEmpty() && className.startsWith(library + ".");
    }
}
