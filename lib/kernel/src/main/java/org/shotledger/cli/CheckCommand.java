package org.shotledger.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.shotledger.build.Check;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Validates build sheets and tables. */
@Command(
        name = "check",
        description =
                "Validates build sheets with the tables they name, and tables by themselves; lists everything that is"
                        + " wrong.")
final class CheckCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            arity = "1..*",
            description = "Build sheets (.yaml), folders that hold a build.yaml, tables (.csv).")
    private List<Path> files;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        int wrong = 0;
        for (Path file : files) {
            Check.Result result = Check.file(Folders.fromCommandLine(file));
            wrong += result.problems().size();
            int count = result.problems().size();
            out.println(file + ": " + (count == 0 ? "good" : count == 1 ? "one problem" : count + " problems"));
            result.notices().forEach(notice -> out.println("  note: " + notice));
            result.problems().forEach(problem -> out.println("  " + problem));
        }
        return wrong == 0 ? 0 : 1;
    }
}
