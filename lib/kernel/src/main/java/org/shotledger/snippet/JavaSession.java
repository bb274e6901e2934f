package org.shotledger.snippet;

import java.io.File;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ScheduledFuture;
import java.util.stream.Collectors;
import javax.tools.StandardJavaFileManager;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SourceCodeAnalysis;

/**
 * The Java of one notebook: declarations, variables and their values.
 *
 * <p>Cells are evaluated by one thread at a time; {@link #interrupt} may be called from any thread.
 */
public final class JavaSession implements AutoCloseable {

    /** Longest cell that is compiled; the compiler would be busy for minutes with a longer one. */
    static final int LONGEST_CELL = 2_000_000;

    private final CellControl control = new CellControl(this::tellUncaught);
    private final Interrupter interrupter = new Interrupter(control);
    private final Map<String, Snippet> declared = new HashMap<>();
    private final SessionOptions options;
    private final Libraries libraries;
    private volatile JShell shell;
    private ClassPathFiles files;
    private Imports imports;
    private Splitter splitter;
    private Origins origins;
    private ErrorText errors;
    private RecentResults results;

    /**
     * Starts a session.
     *
     * @param options class path, and the imports, which are made when a cell first needs one
     */
    public JavaSession(SessionOptions options) {
        this.options = options;
        this.libraries = new Libraries(options.classes());
        begin();
    }

    private void begin() {
        shell = JShell.builder()
                .executionEngine(new CellControlProvider(control), Map.of())
                .fileManager(this::openFiles)
                .compilerOptions("-proc:none", "-Xlint:none", "-parameters")
                .build();
        splitter = new Splitter(shell.sourceCodeAnalysis());
        origins = new Origins(shell, control.linker());
        errors = new ErrorText(origins, options);
        results = new RecentResults(shell, control);
        imports = new Imports(shell, options.imports());
    }

    private ClassPathFiles openFiles(StandardJavaFileManager platform) {
        files = new ClassPathFiles(platform, libraries);
        return files;
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
        Timing timing = Timing.of(source);
        Cell cell = new Cell(label, timing.source());
        Evaluation run = new Evaluation(this, cell, timing);
        try {
            declared.putAll(imports.madeFor(cell.source()));
        } catch (IllegalArgumentException e) {
            run.fail(ErrorText.plain("ImportError", inCompiler(e), e));
            return run.result();
        }
        ScheduledFuture<?> memory = MemoryWatch.start(this::stopFullCell);
        try {
            run.all(splitter.split(cell.source()));
        } catch (Throwable e) {
            // a compiler that overflows or runs out of memory must not take the session with it
            MemoryWatch.release();
            run.mend(e);
        } finally {
            memory.cancel(false);
            control.forgetCall();
        }
        return run.result();
    }

    /**
     * Runs work that a page asks for between two cells; {@link #interrupt} stops it as it stops a cell.
     *
     * @param work what to do; it catches what goes wrong in it
     * @return whether it came to its own end; false when it was stopped, or left behind because nothing stops it
     */
    public boolean run(Runnable work) {
        interrupter.reset();
        return control.run(work);
    }

    /**
     * Starts the compiler anew and declares to it what the session holds; values stay where they are.
     *
     * @param held what is to be there again
     * @return sentences about what could not be kept
     */
    List<String> rebuild(List<Snippet> held) {
        JShell broken = shell;
        files.end();
        Origins known = origins;
        boolean imported = imports.areMade();
        control.linker().restart();
        declared.clear();
        begin();
        if (imported) {
            makeImports();
        }
        List<String> notes = new Rebuild(this, known).declare(held);
        broken.close();
        return notes;
    }

    /** Called in the thread that ends: what is printed there goes to the cell that started it. */
    private void tellUncaught(Thread thread, Throwable thrown) {
        StringBuilder text = new StringBuilder("The thread " + thread.getName() + " ended with an exception.\n");
        errors.thrown(thrown).report().forEach(line -> text.append(line).append('\n'));
        System.err.print(text);
    }

    private void stopFullCell() {
        control.noteMemoryUsedUp();
        try {
            interrupter.interrupt();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /**
     * Stops the running cell and returns when it has stopped. A cell that waits where Java cannot interrupt it is left behind: its
     * evaluation ends with an error that says so, and its thread goes on.
     *
     * @throws InterruptedException if the calling thread is interrupted while it waits
     */
    public void interrupt() throws InterruptedException {
        interrupter.interrupt();
    }

    @Override
    public void close() {
        files.end();
        shell.close();
    }

    /** Where the compiler finds libraries. */
    SessionOptions options() {
        return options;
    }

    /** Lets the cells from here on use what these jars hold. */
    void addToClassPath(List<Path> jars) {
        List<Path> fresh = libraries.add(jars);
        if (!fresh.isEmpty()) {
            shell.addToClasspath(fresh.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator)));
        }
    }

    /** Makes the imports, for what looks at more than one cell's names. */
    void makeImports() {
        declared.putAll(imports.make());
    }

    /** For the other readers of the session's state in this package. */
    SourceCodeAnalysis analysis() {
        return shell.sourceCodeAnalysis();
    }

    /** For the run of a cell. */
    JShell shell() {
        return shell;
    }

    CellControl control() {
        return control;
    }

    Origins origins() {
        return origins;
    }

    ErrorText errors() {
        return errors;
    }

    /** Whether this very declaration is there already: keeping it keeps every value made from it. */
    boolean isDeclared(String source) {
        Snippet same = declared.get(source.strip());
        return same != null && shell.status(same) == Status.VALID;
    }

    /** Notes a result or a declaration. */
    void keep(Snippet snippet) {
        results.add(snippet);
        boolean repeatable = snippet.kind() == Snippet.Kind.METHOD
                || snippet.kind() == Snippet.Kind.TYPE_DECL
                || snippet.kind() == Snippet.Kind.IMPORT;
        if (repeatable) {
            declared.put(snippet.source().strip(), snippet);
        }
    }

    /** What {@code vars()} shows: the variables that cells have named. */
    VariablesTable variables() {
        Map<String, VariablesTable.Row> rows = new HashMap<>();
        shell.variables()
                .filter(v -> shell.status(v) == Status.VALID && !v.name().startsWith("$"))
                .forEach(v -> rows.put(
                        v.name(),
                        VariablesTable.row(
                                v.name(), v.typeName(), control.variables().value(v.name()))));
        return VariablesTable.of(rows);
    }

    static String inCompiler(Throwable e) {
        return "The cell could not be compiled: " + e.getClass().getSimpleName() + " " + ErrorText.safeMessage(e);
    }
}
