package org.shotledger.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.shotledger.build.Build;
import org.shotledger.build.Difference;
import org.shotledger.sheet.SheetException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares two build sheets. */
@Command(
        name = "diff",
        description =
                "Compares two build sheets value by value, in physical terms: 84.5 mm and 3.3268 in are nearly the"
                        + " same; says which reasons changed.")
final class DiffCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "A", description = "Build sheet, or a folder that holds a build.yaml.")
    private Path first;

    @Parameters(index = "1", paramLabel = "B", description = "The sheet to compare it with.")
    private Path second;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Build before = load(first);
        Build after = load(second);
        if (before == null || after == null) {
            return 1;
        }
        List<Difference> differences = before.differences(after);
        differences.forEach(out::println);
        int count = differences.size();
        out.println(count == 0 ? "no difference" : count == 1 ? "one value differs" : count + " values differ");
        return 0;
    }

    private Build load(Path file) {
        try {
            Build build = Build.load(Folders.fromCommandLine(file));
            build.notices().forEach(notice -> spec.commandLine().getErr().println("note: " + notice));
            return build;
        } catch (SheetException e) {
            PrintWriter err = spec.commandLine().getErr();
            err.println(file + " cannot be compared:");
            e.problems().forEach(problem -> err.println("  " + problem));
            return null;
        }
    }
}
