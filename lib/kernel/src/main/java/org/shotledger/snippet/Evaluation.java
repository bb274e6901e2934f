package org.shotledger.snippet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.regex.Pattern;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.UnresolvedReferenceException;
import org.shotledger.fetch.Fetched;

/** The run of one cell. */
final class Evaluation {

    private static final Set<SubKind> SHOWN =
            Set.of(SubKind.TEMP_VAR_EXPRESSION_SUBKIND, SubKind.VAR_VALUE_SUBKIND, SubKind.OTHER_EXPRESSION_SUBKIND);

    private static final Pattern VARIABLES = Pattern.compile("\\s*vars\\s*\\(\\s*\\)\\s*;?\\s*");

    private final JavaSession session;
    private final CellControl control;
    private final Cell cell;
    private final Timing timing;
    private final Aftermath aftermath;
    private CellError error;
    private Set<String> typeNames = Set.of();
    private boolean hasValue;
    private Object value;

    Evaluation(JavaSession session, Cell cell, Timing timing) {
        this.timing = timing;
        this.session = session;
        this.control = session.control();
        this.cell = cell;
        this.aftermath = new Aftermath(session, cell);
    }

    CellResult result() {
        return new CellResult(hasValue && error == null, error == null ? value : null, error, aftermath.notes());
    }

    void fail(CellError reason) {
        error = reason;
    }

    /** The compiler failed in the middle of something. */
    void mend(Throwable failure) {
        fail(
                failure instanceof OutOfMemoryError
                        ? aftermath.outOfMemory()
                        : ErrorText.plain(
                                failure.getClass().getSimpleName(), JavaSession.inCompiler(failure), failure));
        aftermath.rebuild(null, List.of());
    }

    void all(List<Piece> pieces) {
        Piece last = pieces.isEmpty() ? null : pieces.get(pieces.size() - 1);
        // a cell that does not parse to its end is not begun
        List<Piece> run = last != null && !last.complete() ? List.of(last) : pieces;
        typeNames = TypeNames.in(run);
        long start = System.nanoTime();
        for (Piece piece : run) {
            if (error == null) {
                timed(piece);
            }
        }
        if (timing.isWhole()) {
            aftermath.note("This cell took " + Timing.text(System.nanoTime() - start) + ".");
        }
        CellError unfinished = aftermath.settle(error != null);
        error = error == null ? unfinished : error;
    }

    private void timed(Piece piece) {
        long start = System.nanoTime();
        one(piece);
        int begin = offset(piece);
        if (timing.isAsked(piece, begin)) {
            aftermath.note("Line " + cell.lineAt(begin) + " took " + Timing.text(System.nanoTime() - start)
                    + ", compiling included.");
        }
    }

    private void one(Piece piece) {
        hasValue = false;
        value = null;
        if (control.isStopRequested()) {
            fail(control.isMemoryUsedUp() ? aftermath.outOfMemory() : interrupted());
            return;
        }
        if (session.isDeclared(piece.source())) {
            return;
        }
        if (VARIABLES.matcher(piece.source()).matches() && !isMethod("vars")) {
            hasValue = true;
            value = session.variables();
            return;
        }
        Optional<String> coordinates = DependencyCall.in(piece.source());
        if (coordinates.isPresent() && !isMethod(DependencyCall.NAME)) {
            addLibrary(coordinates.get());
            return;
        }
        CellError tooLong = TextLiterals.tooLong(cell, piece);
        if (tooLong != null) {
            fail(tooLong);
            return;
        }
        List<SnippetEvent> events = eval(piece);
        if (main(events).filter(this::isToBeTriedAgain).isPresent()) {
            aftermath.drop(typeNames, events);
            typeNames = Set.of();
            events = eval(piece);
        }
        List<SnippetEvent> done = events;
        main(done).ifPresent(main -> take(main, done, piece));
    }

    private boolean isMethod(String name) {
        return session.shell().methods().anyMatch(m -> m.name().equals(name));
    }

    private void addLibrary(String coordinates) {
        try {
            Optional<Fetched> library = DependencyCall.fetch(coordinates, control);
            if (library.isEmpty()) {
                fail(interrupted());
                return;
            }
            session.addToClassPath(
                    library.get().jars().stream().map(Fetched.Jar::file).toList());
            aftermath.note(library.get().sentence());
        } catch (ExecutionException e) {
            fail(ErrorText.plain("DependencyError", ErrorText.safeMessage(e.getCause()), e.getCause()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            fail(interrupted());
        }
    }

    private List<SnippetEvent> eval(Piece piece) {
        control.forgetCall();
        control.variables().begin();
        return session.shell().eval(piece.source());
    }

    private static Optional<SnippetEvent> main(List<SnippetEvent> events) {
        return events.stream()
                .filter(e -> e.causeSnippet() == null && e.status() != Status.OVERWRITTEN)
                .findFirst();
    }

    /** Types that name each other are refused next to older versions of themselves, and taken where there are none. */
    private boolean isToBeTriedAgain(SnippetEvent main) {
        boolean type = !TypeNames.in(main.snippet().source()).isEmpty();
        return type && main.status() == Status.REJECTED && typeNames.size() > 1;
    }

    private void take(SnippetEvent main, List<SnippetEvent> events, Piece piece) {
        Snippet snippet = main.snippet();
        int offset = offset(snippet, piece);
        session.origins().add(snippet, cell, offset);
        Call call = control.lastCall();
        List<Diag> problems = session.shell().diagnostics(snippet).toList();
        boolean waits = main.status() == Status.RECOVERABLE_NOT_DEFINED || main.status() == Status.RECOVERABLE_DEFINED;
        if (main.status() == Status.REJECTED) {
            fail(session.errors().compiling(problems, cell, piece, offset));
        } else if (call != null && control.isMemoryUsedUp()) {
            fail(aftermath.outOfMemory());
        } else if (call != null && (call.isStopped() || control.isStopRequested())) {
            fail(call.isAbandoned() ? leftBehind() : interrupted());
        } else if (main.exception() instanceof UnresolvedReferenceException e) {
            fail(aftermath.calledTooEarly(e.getSnippet()));
        } else if (call != null && call.thrown() != null) {
            fail(session.errors().thrown(call.thrown()));
        } else if (waits
                && session.shell()
                        .unresolvedDependencies((DeclarationSnippet) snippet)
                        .findAny()
                        .isEmpty()) {
            fail(session.errors().compiling(problems, cell, piece, offset));
        } else if (waits) {
            aftermath.wait((DeclarationSnippet) snippet, offset);
        } else if (!isThere(snippet, call)) {
            fail(Unmade.reason(cell, offset));
        } else {
            keep(snippet, call);
        }
        if (error != null && (isBroken(problems) || (main.status() == Status.VALID && !isThere(snippet, call)))) {
            aftermath.rebuild(snippet, events);
        } else {
            aftermath.add(main, events, error != null);
        }
    }

    private int offset(Snippet snippet, Piece piece) {
        int found = cell.source().indexOf(snippet.source(), piece.offset());
        return found < 0 ? offset(piece) : found;
    }

    /** Where the text of a piece begins. */
    private int offset(Piece piece) {
        int first = piece.offset();
        while (first < cell.source().length()
                && Character.isWhitespace(cell.source().charAt(first))) {
            first++;
        }
        return first;
    }

    /** What is too large for a class leaves the compiler in disorder: whatever comes next would fail, too. */
    private static boolean isBroken(List<Diag> problems) {
        return problems.stream().anyMatch(problem -> problem.getCode().startsWith("compiler.err.limit"));
    }

    /** Whether the compiler really made what it says is valid: it does not notice what is too large for a class. */
    private boolean isThere(Snippet snippet, Call call) {
        return switch (snippet.kind()) {
            case IMPORT, ERRONEOUS -> true;
            case METHOD, TYPE_DECL ->
                control.linker()
                        .isLoaded(session.shell()
                                .sourceCodeAnalysis()
                                .wrapper(snippet)
                                .fullClassName());
            default -> call != null;
        };
    }

    private void keep(Snippet snippet, Call call) {
        hasValue = SHOWN.contains(snippet.subKind());
        value = hasValue && call != null ? call.value() : null;
        if (value == System.out || value == System.err) { // what printf gives back is no result
            hasValue = false;
            value = null;
        }
        if (snippet.subKind() == SubKind.VAR_DECLARATION_SUBKIND) {
            control.variables().reset(((DeclarationSnippet) snippet).name());
        }
        session.keep(snippet);
    }

    private CellError interrupted() {
        return ErrorText.plain("Interrupted", "Stopped on request; the cell did not finish.", null);
    }

    private static CellError leftBehind() {
        return ErrorText.plain(
                "Interrupted",
                "This cell waits where Java cannot stop it, so it was left behind: its thread goes on until what it waits for"
                        + " comes, and the next cells run. Restart the kernel to end it.",
                null);
    }
}
