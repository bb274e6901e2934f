package org.shotledger.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.shotledger.kernel.SelfCheck;
import org.shotledger.runner.RunRequest;
import org.shotledger.runner.Runner;
import org.shotledger.snippet.SessionOptions;
import picocli.CommandLine.Command;

/** Does a little of everything, so that a start-up archive can be made of the classes this needs. */
@Command(name = "warm-up", hidden = true, description = "Runs a small notebook; used while a start-up archive is made.")
final class WarmUpCommand implements Callable<Integer> {

    /** No PDF: its classes make up a third of an archive, which each start maps as a whole. */
    private static final Set<String> FORMATS = Set.of("ipynb", "html");

    private static final String NOTEBOOK = """
            {"cells": [
             {"cell_type": "markdown", "metadata": {}, "source": "# Warm-up"},
             {"cell_type": "code", "metadata": {}, "execution_count": null, "outputs": [],
              "source": "var a = 1;\\nint twice(int x) { return 2 * x; }\\nSystem.out.println(twice(a));\\ntwice(a) + 1"},
             {"cell_type": "code", "metadata": {}, "execution_count": null, "outputs": [],
              "source": "record P(int x) {}\\nvar list = List.of(new P(a));\\nlist"},
             {"cell_type": "code", "metadata": {}, "execution_count": null, "outputs": [], "source": "psi(950)"},
             {"cell_type": "code", "metadata": {"tags": ["raises-exception"]}, "execution_count": null, "outputs": [],
              "source": "twice(1) / 0"}],
             "metadata": {}, "nbformat": 4, "nbformat_minor": 4}
            """;

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (Sessions.index() != null) {
            SessionOptions.of(List.of()).classes().write(Sessions.index());
        }
        Main.commands(new PrintWriter(Writer.nullWriter()), new PrintWriter(Writer.nullWriter()))
                .parseArgs("run", "warm-up.ipynb", "--to", "ipynb");
        Folders.projectOf(Folders.fromCommandLine(Path.of("warm-up.ipynb")));
        SelfCheck.run(Sessions::open, "var warm = 1;\nSystem.out.println(warm);\nwarm + 1");
        Path folder = Files.createTempDirectory("shotledger");
        try {
            Path notebook = folder.resolve("warm-up.ipynb");
            Files.writeString(notebook, NOTEBOOK);
            RunRequest request = new RunRequest(notebook, folder, FORMATS, true, Map.of());
            return new Runner(Sessions::open, line -> {}, Path::toString).run(request) ? 0 : 1;
        } finally {
            delete(folder);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepestFirst) {
                Files.delete(file);
            }
        }
    }
}
