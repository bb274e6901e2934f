package org.shotledger.snippet;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.lang.model.SourceVersion;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import jdk.jshell.SourceCodeAnalysis.Suggestion;

/** Helps the person who writes a cell: completes, explains, and tells whether a cell is whole. */
public final class Assistant {

    private static final int LIMIT = 200;

    /** Packages in front of class names, which say nothing that the reader does not know. */
    private static final Pattern PACKAGES = Pattern.compile("\\b(?:[a-z]\\w*\\.)+(?=[A-Z])");

    /** From JDK 25 on the compiler writes a record's components behind its name, also in front of a member. */
    private static final Pattern COMPONENTS = Pattern.compile("\\([^()]*\\)(?=\\.\\w)");

    private static final Set<String> FROM_OBJECT =
            Set.of("equals(", "getClass()", "hashCode()", "notify()", "notifyAll()", "toString()", "wait(", "class");

    private final JavaSession session;
    private final LibraryDocs docs;
    private final Words words;

    /**
     * An assistant.
     *
     * @param session whose names are known
     * @param words what the product adds
     */
    public Assistant(JavaSession session, Words words) {
        this.session = session;
        this.docs = new LibraryDocs(session.options());
        this.words = words;
    }

    /**
     * What can stand at the cursor.
     *
     * @param source the cell
     * @param cursor position in UTF-16 units
     * @return continuations: of the expected type first, then the preferred names, then the rest by name
     */
    public Completion complete(String source, int cursor) {
        if (source.length() > JavaSession.LONGEST_CELL) {
            return Completion.none(cursor);
        }
        int around = TextLiterals.around(source, cursor);
        if (around >= 0) {
            return source.charAt(around) == '"'
                    ? PathNames.complete(source.substring(around + 1, cursor), cursor, words.inTexts())
                    : Completion.none(cursor);
        }
        session.makeImports();
        int[] anchor = {cursor};
        int start = snippetStart(source, cursor);
        List<Suggestion> found =
                session.analysis().completionSuggestions(source.substring(start), cursor - start, anchor);
        if (found.isEmpty()) {
            return Completion.none(cursor);
        }
        List<String> matches = found.stream()
                .sorted(Comparator.comparing((Suggestion s) -> !s.matchesType())
                        .thenComparing(s -> !words.preferred().contains(name(s)))
                        .thenComparing(s -> FROM_OBJECT.contains(s.continuation()))
                        .thenComparing(Suggestion::continuation))
                .map(Suggestion::continuation)
                .collect(Collectors.toCollection(LinkedHashSet::new))
                .stream()
                .limit(LIMIT)
                .toList();
        List<String> kinds = matches.stream().map(Assistant::kind).toList();
        return new Completion(matches, start + anchor[0], cursor, kinds);
    }

    /** Told by how it is written, as everybody who reads Java tells it. */
    private static String kind(String match) {
        if (match.contains("(")) {
            return "function";
        }
        if (SourceVersion.isKeyword(match)) {
            return "keyword";
        }
        boolean type = Character.isUpperCase(match.charAt(0)) && !match.equals(match.toUpperCase(Locale.ROOT));
        return type ? "class" : match.endsWith(".") ? "module" : "instance";
    }

    private static String name(Suggestion suggestion) {
        return suggestion.continuation().replaceAll("\\(.*", "");
    }

    /**
     * What stands at the cursor: declaration and, where its source is known, its documentation.
     *
     * @param source the cell
     * @param cursor position in UTF-16 units
     * @return text, or nothing if nothing is known
     */
    public Optional<String> explain(String source, int cursor) {
        if (source.length() > JavaSession.LONGEST_CELL) {
            return Optional.empty();
        }
        session.makeImports();
        int start = snippetStart(source, cursor);
        int end = cursor;
        while (end < source.length() && Character.isJavaIdentifierPart(source.charAt(end))) {
            end++;
        }
        String before = source.substring(start, end);
        List<Documentation> found = documentation(before);
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(found.stream().map(this::text).distinct().collect(Collectors.joining("\n\n")));
    }

    private List<Documentation> documentation(String before) {
        List<Documentation> found = session.analysis().documentation(before, before.length(), true);
        if (found.isEmpty()) {
            // the name of a method is explained once its parenthesis is open
            found = session.analysis().documentation(before + "(", before.length() + 1, true);
        }
        return found;
    }

    private String text(Documentation documentation) {
        String signature = COMPONENTS.matcher(documentation.signature()).replaceAll("");
        String shown = PACKAGES.matcher(signature).replaceAll("");
        return docs.of(signature)
                .or(() -> Optional.ofNullable(documentation.javadoc()).map(LibraryDocs::plain))
                .map(text -> shown + "\n\n" + text)
                .orElse(shown);
    }

    /** Where the snippet with the cursor starts, so that what stands before it need not be understood. */
    private int snippetStart(String source, int cursor) {
        int start = 0;
        String rest = source.substring(0, cursor);
        while (!rest.isBlank()) {
            SourceCodeAnalysis.CompletionInfo info = session.analysis().analyzeCompletion(rest);
            String remaining = info.remaining();
            boolean last = remaining == null || remaining.isBlank() || remaining.length() >= rest.length();
            if (last || !info.completeness().isComplete()) {
                return start;
            }
            start = cursor - info.remaining().length();
            rest = info.remaining();
        }
        return start;
    }

    /**
     * Whether a cell can be run as it is.
     *
     * @param source the cell
     * @return {@code complete}, {@code incomplete} or {@code invalid}
     */
    public String completeness(String source) {
        if (source.length() > JavaSession.LONGEST_CELL) {
            return "invalid";
        }
        String rest = source;
        while (true) {
            SourceCodeAnalysis.CompletionInfo info = session.analysis().analyzeCompletion(rest);
            switch (info.completeness()) {
                case DEFINITELY_INCOMPLETE, CONSIDERED_INCOMPLETE -> {
                    return "incomplete";
                }
                case UNKNOWN -> {
                    return "invalid";
                }
                case EMPTY -> {
                    return "complete";
                }
                default -> {
                    if (info.remaining().isBlank()) {
                        return "complete";
                    }
                    rest = info.remaining();
                }
            }
        }
    }
}
