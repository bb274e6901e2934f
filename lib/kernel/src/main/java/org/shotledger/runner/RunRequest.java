package org.shotledger.runner;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;

/**
 * One notebook to run.
 *
 * @param notebook the file
 * @param out folder for the results
 * @param formats of {@code ipynb}, {@code html}, {@code pdf}
 * @param showCode whether pages show the code
 * @param values values for the notebook's parameters, name to Java expression
 */
public record RunRequest(Path notebook, Path out, Set<String> formats, boolean showCode, Map<String, String> values) {

    /** What can be written. */
    public static final Set<String> FORMATS = Set.of("ipynb", "html", "pdf");

    public RunRequest {
        formats = Set.copyOf(formats);
        values = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(values));
    }
}
