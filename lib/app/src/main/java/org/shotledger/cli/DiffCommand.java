package org.shotledger.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.shotledger.job.Job;
import org.shotledger.job.SheetDifference;
import org.shotledger.sheet.SheetException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares two job sheets. */
@Command(
        name = "diff",
        description = "Compares two job sheets value by value, in physical terms: 84.5 mm and 3.3268 in are nearly the"
                + " same; says which reasons changed.")
final class DiffCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "A", description = "Job sheet, or a folder that holds a job.yaml.")
    private Path first;

    @Parameters(index = "1", paramLabel = "B", description = "The sheet to compare it with.")
    private Path second;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Job before = load(first);
        Job after = load(second);
        if (before == null || after == null) {
            return 1;
        }
        List<SheetDifference> differences = before.differences(after);
        differences.forEach(out::println);
        int count = differences.size();
        out.println(count == 0 ? "no difference" : count == 1 ? "one value differs" : count + " values differ");
        return 0;
    }

    private Job load(Path file) {
        try {
            Job job = Job.load(Folders.fromCommandLine(file));
            job.notices().forEach(notice -> spec.commandLine().getErr().println("note: " + notice));
            return job;
        } catch (SheetException e) {
            PrintWriter err = spec.commandLine().getErr();
            err.println(file + " cannot be compared:");
            e.problems().forEach(problem -> err.println("  " + problem));
            return null;
        }
    }
}
