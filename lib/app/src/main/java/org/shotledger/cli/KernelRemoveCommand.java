package org.shotledger.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Takes the kernel off Jupyter's list. */
@Command(name = "remove", description = "Takes the kernel off Jupyter's list.")
final class KernelRemoveCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @ArgGroup
    private JupyterPlace place = new JupyterPlace();

    @Option(
            names = "--name",
            paramLabel = "NAME",
            defaultValue = KernelSpec.NAME,
            description = "The name given to install; default: ${DEFAULT-VALUE}.")
    private String name = KernelSpec.NAME;

    @Override
    public Integer call() throws IOException, InterruptedException {
        Path folder = place.folder(name);
        boolean removed = KernelSpec.remove(folder);
        spec.commandLine().getOut().println(removed ? "removed " + folder : "there was none in " + folder);
        return 0;
    }
}
