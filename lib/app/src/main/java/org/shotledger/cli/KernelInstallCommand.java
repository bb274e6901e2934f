package org.shotledger.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Registers the kernel. */
@Command(name = "install", description = "Registers the kernel with Jupyter, for this user or below a prefix.")
final class KernelInstallCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(names = "--prefix", paramLabel = "DIR", description = "An environment's folder instead of the user's own.")
    private Path prefix;

    @Override
    public Integer call() throws IOException {
        Path folder = KernelSpec.folder(prefix == null ? null : Folders.fromCommandLine(prefix));
        KernelSpec.write(folder, Folders.home());
        PrintWriter out = spec.commandLine().getOut();
        out.println("registered in " + folder);
        out.println("Choose the kernel \"Java (Shotledger)\" in Jupyter, or start one with ./shotledger lab.");
        return 0;
    }
}
