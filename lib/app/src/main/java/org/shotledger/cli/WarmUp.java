package org.shotledger.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.shotledger.kernel.SelfCheck;
import org.shotledger.runner.RunRequest;
import org.shotledger.runner.Runner;
import org.shotledger.snippet.SessionOptions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Does a little of what kernels and headless runs do, so that a start-up archive can be made of the classes this needs. */
@Command(
        name = "warm-up",
        hidden = true,
        description = "Loads what a start-up archive is to hold; for the launcher alone.")
final class WarmUp implements Callable<Integer> {

    /** A declaration, output, a type, and a value of the library's, which makes the imports. */
    private static final String CELL = """
            var warm = 1;
            int twice(int x) { return 2 * x; }
            record Pair(int first, int second) {}
            System.out.println(new Pair(warm, twice(warm)));
            psi(950)
            """;

    @Parameters(paramLabel = "NOTEBOOK")
    private Path notebook;

    @Parameters(paramLabel = "DIR", description = "Folder for the executed notebook.")
    private Path out;

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (Sessions.index() != null) {
            Files.createDirectories(Folders.state());
            SessionOptions.of(List.of()).classes().write(Sessions.index());
        }
        boolean served = SelfCheck.run(Sessions::open, CELL).equals(Optional.of("ok"));
        RunRequest request = new RunRequest(notebook, out, Set.of("ipynb"), true, Map.of());
        return served && new Runner(Sessions::open, line -> {}, Folders::shown).run(request) ? 0 : 1;
    }
}
