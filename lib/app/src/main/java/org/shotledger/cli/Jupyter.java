package org.shotledger.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A Jupyter that this machine can start.
 *
 * @param python the interpreter it runs under
 * @param module {@code jupyterlab} or {@code notebook}
 */
record Jupyter(Path python, String module) {

    private static final long ASK_SECONDS = 20;
    private static final List<String> MODULES = List.of("jupyterlab", "notebook");

    /** The first that works: the project's private one, then those of the path. */
    static Optional<Jupyter> find() throws IOException, InterruptedException {
        List<Path> pythons = Stream.concat(Stream.of(python(privateEnvironment())), onPath())
                .filter(Files::isExecutable)
                .distinct()
                .toList();
        for (Path python : pythons) {
            for (String module : MODULES) {
                if (succeeds(python.toString(), "-c", "import " + module)) {
                    return Optional.of(new Jupyter(python, module));
                }
            }
        }
        return Optional.empty();
    }

    /** Where a private Jupyter is or would be put. */
    static Path privateEnvironment() {
        return Folders.state().resolve("jupyter");
    }

    static Path python(Path environment) {
        return environment.resolve("bin").resolve("python");
    }

    static Stream<Path> onPath() {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Stream.of(path.split(java.io.File.pathSeparator))
                .filter(folder -> !folder.isEmpty())
                .map(folder -> Path.of(folder, "python3"))
                .filter(Files::isExecutable);
    }

    static boolean succeeds(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        process.getOutputStream().close();
        if (!process.waitFor(ASK_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            return false;
        }
        return process.exitValue() == 0;
    }

    /** First line a command prints, if it can be run. */
    static Optional<String> says(String... command) throws InterruptedException {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            process.getOutputStream().close();
            String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return process.waitFor() == 0 ? text.lines().findFirst() : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
