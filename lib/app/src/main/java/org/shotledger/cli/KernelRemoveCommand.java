package org.shotledger.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Takes the kernel off Jupyter's list. */
@Command(name = "remove", description = "Takes the kernel off Jupyter's list.")
final class KernelRemoveCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(names = "--prefix", paramLabel = "DIR", description = "The prefix given to install.")
    private Path prefix;

    @Override
    public Integer call() throws IOException {
        Path folder = KernelSpec.folder(prefix == null ? null : Folders.fromCommandLine(prefix));
        boolean removed = KernelSpec.remove(folder);
        spec.commandLine().getOut().println(removed ? "removed " + folder : "there was none in " + folder);
        return 0;
    }
}
