package org.shotledger.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens a real Jupyter that knows the kernel. */
@Command(
        name = "lab",
        description = "Opens Jupyter with the kernel, on this machine only and with a token; makes a private Jupyter if"
                + " there is none and pip can install one.")
final class LabCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "DIR", arity = "0..1", description = "Folder to open; default: notebooks.")
    private Path folder;

    @Option(names = "--no-browser", description = "Print the address instead of opening a browser.")
    private boolean noBrowser;

    @Option(names = "--port", paramLabel = "PORT", defaultValue = "8888", description = "Default: ${DEFAULT-VALUE}.")
    private int port;

    @Override
    public Integer call() throws IOException, InterruptedException {
        Path opened = folder == null ? Folders.home().resolve("notebooks") : Folders.fromCommandLine(folder);
        if (!Files.isDirectory(opened)) {
            throw new IllegalArgumentException(opened + " is not a folder.");
        }
        Optional<Jupyter> jupyter = Jupyter.find();
        if (jupyter.isEmpty()) {
            jupyter = makePrivate();
        }
        if (jupyter.isEmpty()) {
            spec.commandLine()
                    .getErr()
                    .println("There is no JupyterLab or Notebook here, and none could be installed."
                            + " Debian: apt-get install jupyter-notebook; elsewhere: pip install jupyterlab."
                            + " Notebooks run without it: ./shotledger run NOTEBOOK");
            return 1;
        }
        return start(jupyter.get(), opened);
    }

    private Optional<Jupyter> makePrivate() throws IOException, InterruptedException {
        Path environment = Jupyter.privateEnvironment();
        PrintWriter out = spec.commandLine().getOut();
        for (Path python : Jupyter.onPath().toList()) {
            out.println("No Jupyter found: making a private one in " + Folders.shown(environment) + " ...");
            boolean made = Jupyter.succeeds(python.toString(), "-m", "venv", environment.toString())
                    && run(
                                    Jupyter.python(environment).toString(),
                                    "-m",
                                    "pip",
                                    "install",
                                    "-q",
                                    "jupyterlab",
                                    "ipywidgets",
                                    "notebook")
                            == 0;
            if (made) {
                return Jupyter.find();
            }
        }
        return Optional.empty();
    }

    private int start(Jupyter jupyter, Path opened) throws IOException, InterruptedException {
        Path registered = Folders.state().resolve("jupyter-kernels");
        new OwnKernel(Folders.home())
                .install(registered.resolve("share/jupyter/kernels").resolve(KernelSpec.NAME));
        List<String> command = new ArrayList<>(List.of(
                jupyter.python().toString(),
                "-m",
                jupyter.module(),
                "--ip=127.0.0.1",
                "--port=" + port,
                "--notebook-dir=" + opened));
        if (noBrowser) {
            command.add("--no-browser");
        }
        if (isRoot()) {
            command.add("--allow-root");
        }
        ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
        Map<String, String> environment = builder.environment();
        environment.merge(
                "JUPYTER_PATH", registered.resolve("share/jupyter").toString(), (old, own) -> own + ":" + old);
        Process server = builder.start();
        // whoever ends this command means Jupyter too
        Runtime.getRuntime().addShutdownHook(new Thread(server::destroy, "end of Jupyter"));
        return server.waitFor() == 0 ? 0 : 1;
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }

    private static int run(String... command) throws IOException, InterruptedException {
        return new ProcessBuilder(command).inheritIO().start().waitFor();
    }
}
