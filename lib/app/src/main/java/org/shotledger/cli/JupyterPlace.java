package org.shotledger.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which of Jupyter's folders is meant; the user's own if nothing is said. */
final class JupyterPlace {

    @Option(names = "--user", description = "For this user, whatever Python is active; the default.")
    private boolean user;

    @Option(names = "--prefix", paramLabel = "DIR", description = "Below an environment's folder.")
    private Path prefix;

    @Option(names = "--sys-prefix", description = "In the Python environment that is active.")
    private boolean active;

    /** Jupyter's folder of one kernel. */
    Path folder(String kernel) throws IOException, InterruptedException {
        boolean own = user || (prefix == null && !active);
        Path data = own ? userData() : below(active ? activePython() : Folders.fromCommandLine(prefix));
        return data.resolve("kernels").resolve(kernel);
    }

    private static Path below(Path prefix) {
        return prefix.resolve("share").resolve("jupyter");
    }

    private static Path activePython() throws IOException, InterruptedException {
        Path python = Jupyter.onPath()
                .findFirst()
                .orElseThrow(() -> new IOException("--sys-prefix asks python3 for its folder, and there is no python3"
                        + " on the path. Give the folder with --prefix."));
        Optional<String> folder = Jupyter.says(python.toString(), "-c", "import sys; print(sys.prefix)");
        return Path.of(folder.orElseThrow(
                () -> new IOException(python + " does not tell its folder. Give the folder with --prefix.")));
    }

    /** Where Jupyter looks for what belongs to the user. */
    static Path userData() {
        String set = System.getenv("JUPYTER_DATA_DIR");
        if (set != null && !set.isEmpty()) {
            return Path.of(set);
        }
        Path home = Folders.ofUser();
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        if (system.contains("mac")) {
            return home.resolve("Library").resolve("Jupyter");
        }
        if (system.contains("win")) {
            return Path.of(System.getenv("APPDATA")).resolve("jupyter");
        }
        String shared = System.getenv("XDG_DATA_HOME");
        return (shared == null || shared.isEmpty() ? home.resolve(".local").resolve("share") : Path.of(shared))
                .resolve("jupyter");
    }
}
