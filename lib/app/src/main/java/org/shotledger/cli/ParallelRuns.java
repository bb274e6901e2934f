package org.shotledger.cli;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Runs each notebook in a process of its own, as many at a time as there are cores, each in its project's folder. */
final class ParallelRuns {

    private final List<String> options;
    private final PrintStream terminal = Main.terminal(FileDescriptor.out);

    ParallelRuns(List<String> options) {
        this.options = options;
    }

    /** The worst exit code of all runs. */
    int run(List<Path> notebooks) throws InterruptedException {
        ExecutorService pool = Executors.newFixedThreadPool(
                Math.min(notebooks.size(), Runtime.getRuntime().availableProcessors()));
        try {
            List<Future<Integer>> runs = new ArrayList<>();
            boolean prefixed = notebooks.size() > 1;
            notebooks.forEach(notebook -> runs.add(pool.submit(() -> one(notebook, prefixed))));
            int worst = 0;
            for (Future<Integer> run : runs) {
                worst = Math.max(worst, run.get());
            }
            return worst;
        } catch (ExecutionException e) {
            throw new IllegalStateException(
                    "a notebook could not be started: " + e.getCause().getMessage(), e);
        } finally {
            pool.shutdownNow();
        }
    }

    private int one(Path notebook, boolean prefixed) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command(notebook))
                .directory(Folders.projectOf(notebook).toFile())
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().close();
        String prefix = prefixed ? notebook.getFileName() + ": " : "";
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            lines.lines().forEach(line -> terminal.println(prefix + line));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return process.waitFor();
    }

    private List<String> command(Path notebook) {
        List<String> command = OwnJava.commandOfSameProgram();
        command.add("-Dshotledger.cwd=" + Folders.fromCommandLine(Path.of("")));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName(), "run"));
        command.addAll(options);
        command.add(notebook.toString());
        return command;
    }
}
