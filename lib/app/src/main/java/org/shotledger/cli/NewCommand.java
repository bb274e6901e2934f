package org.shotledger.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.shotledger.job.Starter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins a job's folder. */
@Command(
        name = "new",
        description = "Writes a folder to begin a job with: a commented job sheet and its tables, every figure invented"
                + " and marked so.")
final class NewCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "DIR", description = "A folder that does not exist yet, or an empty one.")
    private Path folder;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Starter.write(Folders.fromCommandLine(folder)).forEach(file -> out.println("wrote " + Folders.shown(file)));
        out.println("Every figure in it is invented: put in your own, then ./shotledger check " + folder);
        return 0;
    }
}
