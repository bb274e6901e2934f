package org.shotledger.runner;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.shotledger.files.AtomicFile;
import org.shotledger.ipynb.Notebook;
import org.shotledger.ipynb.NotebookException;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.OutputRouter;

/** Runs one notebook from file to files. */
public final class Runner {

    private final Supplier<JavaSession> sessions;
    private final Consumer<String> say;
    private final Function<Path, String> shown;

    /**
     * A runner.
     *
     * @param sessions makes the session of a notebook
     * @param say told progress and results, a line each
     * @param shown how to call a file in these lines
     */
    public Runner(Supplier<JavaSession> sessions, Consumer<String> say, Function<Path, String> shown) {
        this.sessions = sessions;
        this.say = say;
        this.shown = shown;
    }

    /**
     * Runs a notebook and writes its files, also when a cell fails.
     *
     * @param request what to run and what to write
     * @return true if each cell ran
     * @throws NotebookException if the file is no notebook or a value has nowhere to go; nothing is written then
     * @throws IOException if a result cannot be written, which is found out before the first cell runs where that is possible
     */
    public boolean run(RunRequest request) throws IOException {
        Notebook notebook = Notebook.read(request.notebook(), shown.apply(request.notebook()));
        Banner.remove(notebook.cells());
        Parameters.apply(notebook, request.values(), shown.apply(request.notebook()));
        OutFolder.check(request.out(), shown.apply(request.out()));
        RunReport report = execute(notebook);
        report.failing()
                .ifPresent(cell ->
                        Banner.add(notebook.cells(), cell, report.error().message()));
        List<Path> written = write(notebook, request);
        report(report, written);
        return report.ok();
    }

    private RunReport execute(Notebook notebook) {
        try (OutputRouter router = new OutputRouter((stream, text) -> {});
                JavaSession session = sessions.get()) {
            return new NotebookRun(session, router, say).execute(notebook);
        }
    }

    private List<Path> write(Notebook notebook, RunRequest request) throws IOException {
        String name = request.notebook().getFileName().toString().replaceFirst("\\.ipynb$", "");
        List<Path> written = new ArrayList<>();
        if (request.formats().contains("ipynb")) {
            Path file = request.out().resolve(name + ".ipynb");
            notebook.write(file);
            written.add(file);
        }
        if (request.formats().equals(Set.of("ipynb"))) {
            return written;
        }
        String html = HtmlPage.of(notebook, name, request.showCode(), say);
        if (request.formats().contains("html")) {
            written.add(save(request, name + ".html", html.getBytes(StandardCharsets.UTF_8)));
        }
        if (request.formats().contains("pdf")) {
            written.add(save(request, name + ".pdf", PdfPage.of(html, say)));
        }
        return written;
    }

    private static Path save(RunRequest request, String name, byte[] content) {
        Path file = request.out().resolve(name);
        AtomicFile.write(file, content, AtomicFile.Access.USUAL);
        return file;
    }

    private void report(RunReport report, List<Path> written) {
        written.forEach(file -> say.accept("wrote " + shown.apply(file)));
        report.verdict().ifPresent(line -> say.accept("verdict: " + line));
        report.failing().ifPresent(cell -> {
            say.accept("stopped at In [" + cell.count() + "]:");
            report.error().report().forEach(line -> say.accept("  " + line));
        });
    }
}
