package org.shotledger.snippet;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis.SnippetWrapper;

/** Remembers which cell and which line each snippet came from, to name places as a notebook's reader knows them. */
final class Origins {

    private record Origin(Cell cell, int line) {}

    private final Map<String, Origin> bySnippet = new HashMap<>();
    private final JShell shell;
    private final Linker linker;

    Origins(JShell shell, Linker linker) {
        this.shell = shell;
        this.linker = linker;
    }

    /** Notes that a snippet starts at an offset of a cell. */
    void add(Snippet snippet, Cell cell, int offset) {
        bySnippet.put(snippet.id(), new Origin(cell, cell.lineAt(offset)));
    }

    /** Notes that a snippet is what another was under an earlier compiler. */
    void adopt(Snippet snippet, Snippet earlier, Origins known) {
        Origin origin = known.bySnippet.get(earlier.id());
        if (origin != null) {
            bySnippet.put(snippet.id(), origin);
        }
    }

    /** The place of a stack frame, if it lies in a cell. */
    Optional<Place> place(StackTraceElement frame) {
        if (!isInCell(frame)) {
            return Optional.empty();
        }
        String outer = Linker.outer(frame.getClassName());
        return shell.snippets()
                .filter(s -> bySnippet.containsKey(s.id()))
                .map(s -> locate(s, outer, frame))
                .flatMap(Optional::stream)
                .reduce((first, last) -> last);
    }

    static boolean isInCell(StackTraceElement frame) {
        return frame.getClassName().startsWith("REPL.$JShell$");
    }

    private Optional<Place> locate(Snippet snippet, String className, StackTraceElement frame) {
        SnippetWrapper wrapper = shell.sourceCodeAnalysis().wrapper(snippet);
        if (!linker.actualName(wrapper.fullClassName()).equals(className)) {
            return Optional.empty();
        }
        int line = sourceLine(wrapper, frame.getLineNumber() + linker.lineShift(className));
        if (line < 0) {
            return Optional.empty();
        }
        Origin origin = bySnippet.get(snippet.id());
        return Optional.of(origin.cell().place(origin.line() + line));
    }

    /**
     * Line of the snippet, from 0, that was compiled as the given line, from 1, of its wrapper; -1 if none was. An expression's value
     * is kept by a statement that begins above it, and that line is what the compiler notes.
     */
    private static int sourceLine(SnippetWrapper wrapper, int wrappedLine) {
        String wrapped = wrapper.wrapped();
        String source = wrapper.source();
        int line = 0;
        int nearest = -1;
        int distance = Integer.MAX_VALUE;
        for (int at = 0; at < source.length(); at++) {
            // a declaration with a value is taken apart, so that one line can become several: any of them will do
            int below = lineOf(wrapped, wrapper.sourceToWrappedPosition(at)) - wrappedLine;
            boolean said = !Character.isWhitespace(source.charAt(at));
            if (said && below == 0) {
                return line;
            }
            if (said && below > 0 && below < distance) {
                nearest = line;
                distance = below;
            }
            if (source.charAt(at) == '\n') {
                line++;
            }
        }
        return nearest;
    }

    private static int lineOf(String text, int position) {
        int end = Math.max(0, Math.min(position, text.length()));
        return 1 + (int) text.chars().limit(end).filter(c -> c == '\n').count();
    }
}
