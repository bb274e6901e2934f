package org.shotledger.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.shotledger.build.Build;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Validates build sheets and the tables they name. */
@Command(name = "check", description = "Validates build sheets and the tables they name; lists what is wrong.")
final class CheckCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Build sheets (YAML).")
    private List<Path> files;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        int wrong = 0;
        for (Path file : files) {
            try {
                Build.load(Folders.fromCommandLine(file));
                out.println(file + ": good");
            } catch (IllegalArgumentException e) {
                wrong++;
                out.println(e.getMessage());
            }
        }
        return wrong == 0 ? 0 : 1;
    }
}
