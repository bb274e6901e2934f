package org.shotledger.snippet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.UnresolvedReferenceException;

/**
 * The Java of one notebook: declarations, variables and their values.
 *
 * <p>Cells are evaluated by one thread at a time; {@link #interrupt} may be called from any thread.
 */
public final class JavaSession implements AutoCloseable {

    /** Longest cell that is compiled; the compiler would be busy for minutes with a longer one. */
    static final int LONGEST_CELL = 2_000_000;

    private static final Set<SubKind> SHOWN =
            Set.of(SubKind.TEMP_VAR_EXPRESSION_SUBKIND, SubKind.VAR_VALUE_SUBKIND, SubKind.OTHER_EXPRESSION_SUBKIND);

    private final CellControl control = new CellControl();
    private final Interrupter interrupter = new Interrupter(control);
    private final Map<String, Snippet> declared = new HashMap<>();
    private final SessionOptions options;
    private final JShell shell;
    private final Imports imports;
    private final Splitter splitter;
    private final Origins origins;
    private final ErrorText errors;
    private final RecentResults results;

    /**
     * Starts a session.
     *
     * @param options class path, and the imports, which are made when a cell first needs one
     */
    public JavaSession(SessionOptions options) {
        this.options = options;
        shell = JShell.builder()
                .executionEngine(new CellControlProvider(control), Map.of())
                .fileManager(platform -> new ClassPathFiles(platform, options.classes()))
                .compilerOptions("-proc:none", "-Xlint:none", "-parameters")
                .build();
        splitter = new Splitter(shell.sourceCodeAnalysis());
        origins = new Origins(shell);
        errors = new ErrorText(origins, options);
        results = new RecentResults(shell, control);
        imports = new Imports(shell, options.imports());
    }

    /**
     * Runs a cell.
     *
     * @param source Java: declarations, statements, expressions
     * @param label how the reader knows the cell, such as {@code In [4]}
     * @return how it ended; errors of the cell, {@link Error}s among them, are returned, not thrown
     */
    public CellResult evaluate(String source, String label) {
        interrupter.reset();
        if (source.length() > LONGEST_CELL) {
            String sentence = label + " has " + source.length() + " characters; a cell may have " + LONGEST_CELL
                    + ". Read large data from a file instead.";
            return new CellResult(false, null, ErrorText.plain("CellTooLong", sentence, null), List.of());
        }
        Cell cell = new Cell(label, source);
        Evaluation run = new Evaluation(cell);
        try {
            declared.putAll(imports.madeFor(source));
            run.all();
        } catch (Throwable e) {
            // a compiler that overflows or runs out of memory must not take the session with it
            run.fail(ErrorText.plain(e.getClass().getSimpleName(), inCompiler(e), e));
        } finally {
            control.forgetCall();
        }
        return run.result();
    }

    /**
     * Stops the running cell and returns when it has stopped or cannot be stopped.
     *
     * @param say told one sentence if the cell goes on running
     * @throws InterruptedException if the calling thread is interrupted while it waits
     */
    public void interrupt(Consumer<String> say) throws InterruptedException {
        interrupter.interrupt(say);
    }

    /**
     * Whether the newest evaluation was asked to stop.
     *
     * @return true from a call of {@link #interrupt} to the start of the next evaluation
     */
    public boolean isInterrupted() {
        return interrupter.isRequested();
    }

    @Override
    public void close() {
        shell.close();
    }

    /** Where the compiler finds libraries. */
    SessionOptions options() {
        return options;
    }

    /** Makes the imports, for what looks at more than one cell's names. */
    void makeImports() {
        declared.putAll(imports.make());
    }

    /** For the other readers of the session's state in this package. */
    SourceCodeAnalysis analysis() {
        return shell.sourceCodeAnalysis();
    }

    private static String inCompiler(Throwable e) {
        return "The cell could not be compiled: " + e.getClass().getSimpleName() + " " + ErrorText.safeMessage(e);
    }

    /** The run of one cell. */
    private final class Evaluation {
        private final Cell cell;
        private final List<String> notes = new ArrayList<>();
        private CellError error;
        private boolean hasValue;
        private Object value;

        Evaluation(Cell cell) {
            this.cell = cell;
        }

        CellResult result() {
            return new CellResult(hasValue && error == null, error == null ? value : null, error, notes);
        }

        void fail(CellError reason) {
            error = reason;
        }

        void all() {
            List<Piece> pieces = splitter.split(cell.source());
            Piece last = pieces.isEmpty() ? null : pieces.get(pieces.size() - 1);
            if (last != null && !last.complete()) {
                one(last); // does not compile: nothing of the cell is run
                return;
            }
            for (Piece piece : pieces) {
                one(piece);
                if (error != null) {
                    return;
                }
            }
        }

        private void one(Piece piece) {
            hasValue = false;
            value = null;
            if (interrupter.isRequested()) {
                fail(interrupted());
                return;
            }
            Snippet same = declared.get(piece.source().strip());
            if (same != null && shell.status(same) == Status.VALID) {
                return; // the same declaration again: keeping it keeps every value made from it
            }
            control.forgetCall();
            take(shell.eval(piece.source()), piece);
        }

        private void take(List<SnippetEvent> events, Piece piece) {
            SnippetEvent main = events.stream()
                    .filter(e -> e.causeSnippet() == null)
                    .findFirst()
                    .orElse(null);
            if (main == null) {
                return;
            }
            Snippet snippet = main.snippet();
            int offset = Math.max(piece.offset(), cell.source().indexOf(snippet.source(), piece.offset()));
            origins.add(snippet, cell, offset);
            noteLosses(events, snippet);
            settle(main, piece, offset);
        }

        private void settle(SnippetEvent main, Piece piece, int offset) {
            Snippet snippet = main.snippet();
            Call call = control.lastCall();
            if (main.status() == Status.REJECTED) {
                fail(errors.compiling(shell.diagnostics(snippet).toList(), cell, piece, offset));
            } else if (call != null && (call.isStopped() || interrupter.isRequested())) {
                fail(interrupted());
            } else if (main.exception() instanceof UnresolvedReferenceException e) {
                fail(calledTooEarly(e));
            } else if (call != null && call.thrown() != null) {
                fail(errors.thrown(call.thrown()));
            } else if (main.status() == Status.RECOVERABLE_NOT_DEFINED || main.status() == Status.RECOVERABLE_DEFINED) {
                unresolved((DeclarationSnippet) snippet, offset);
            } else {
                keep(snippet, call);
            }
            if (error != null && snippet.kind() == Snippet.Kind.VAR && main.status() == Status.VALID) {
                shell.drop(snippet); // rather no variable than one that silently holds 0 or null
            }
        }

        private void keep(Snippet snippet, Call call) {
            hasValue = SHOWN.contains(snippet.subKind());
            value = hasValue && call != null ? call.value() : null;
            if (value == System.out || value == System.err) { // what printf gives back is no result
                hasValue = false;
                value = null;
            }
            results.add(snippet);
            boolean repeatable = snippet.kind() == Snippet.Kind.METHOD
                    || snippet.kind() == Snippet.Kind.TYPE_DECL
                    || snippet.kind() == Snippet.Kind.IMPORT;
            if (repeatable) {
                declared.put(snippet.source().strip(), snippet);
            }
        }

        private void unresolved(DeclarationSnippet snippet, int offset) {
            List<String> missing = shell.unresolvedDependencies(snippet).toList();
            String sentence = snippet.name() + " needs " + String.join(", ", missing) + ", not declared yet";
            if (snippet.kind() == Snippet.Kind.METHOD) {
                notes.add(sentence + "; it can be called once that is declared.");
                return;
            }
            List<String> lines = new ArrayList<>();
            Place place = cell.placeAt(offset);
            lines.add(place.heading() + ": " + sentence + ".");
            lines.addAll(place.excerpt());
            Stream<String> details = shell.diagnostics(snippet).map(d -> "  " + d.getMessage(Locale.ROOT));
            details.forEach(lines::add);
            fail(new CellError("CompileError", sentence, lines, null));
        }

        private void noteLosses(List<SnippetEvent> events, Snippet main) {
            for (String name : control.finishCarrying(
                    shell.sourceCodeAnalysis().wrapper(main).fullClassName())) {
                notes.add("The value of " + name + " is lost: it was made from an earlier version of what this cell"
                        + " declares. Run the cell that makes " + name + " again.");
            }
            for (SnippetEvent event : events) {
                boolean gone = event.causeSnippet() != null
                        && event.snippet().kind() == Snippet.Kind.VAR
                        && event.previousStatus() == Status.VALID
                        && event.status() != Status.VALID
                        && event.status() != Status.OVERWRITTEN
                        && event.status() != Status.DROPPED;
                if (gone) {
                    String name = ((DeclarationSnippet) event.snippet()).name();
                    notes.add(name + " does not fit what this cell declares and cannot be used any more."
                            + " Run the cell that makes " + name + " again.");
                }
            }
        }

        private CellError calledTooEarly(UnresolvedReferenceException e) {
            List<String> missing = shell.unresolvedDependencies(e.getSnippet()).toList();
            String sentence = e.getSnippet().name() + " cannot be used yet: it needs " + String.join(", ", missing)
                    + ", which no cell has declared.";
            return ErrorText.plain("CompileError", sentence, null);
        }

        private CellError interrupted() {
            return ErrorText.plain("Interrupted", "Stopped on request; the cell did not finish.", null);
        }
    }
}
