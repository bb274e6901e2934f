package org.shotledger.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.shotledger.job.Check;
import org.shotledger.logs.LogCheck;
import org.shotledger.sheet.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Validates job sheets, tables and logs. */
@Command(
        name = "check",
        description =
                "Validates job sheets with the tables they name, tables by themselves, and logs; lists everything that is"
                        + " wrong.")
final class CheckCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            arity = "1..*",
            description = "Job sheets (.yaml), folders that hold a job.yaml, tables and logs (.csv), mappings of logs"
                    + " (log.yaml, NAME.log.yaml).")
    private List<Path> files;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        int wrong = 0;
        for (Path file : files) {
            Check.Result result = check(Folders.fromCommandLine(file));
            wrong += result.problems().size();
            int count = result.problems().size();
            out.println(file + ": " + (count == 0 ? "good" : count == 1 ? "one problem" : count + " problems"));
            result.notices().forEach(notice -> out.println("  note: " + notice));
            result.unusual().forEach(unusual -> out.println("  unusual: " + unusual));
            result.problems().forEach(problem -> out.println("  " + problem));
        }
        return wrong == 0 ? 0 : 1;
    }

    /** A log that can be read is good; what is wrong with its values is told as notes. */
    private static Check.Result check(Path file) {
        if (!LogCheck.knows(file)) {
            return Check.file(file);
        }
        LogCheck.Result log = LogCheck.file(file);
        String name = String.valueOf(file.getFileName());
        List<Problem> notes =
                log.findings().stream().map(f -> Problem.of(name, f.sentence())).toList();
        return new Check.Result(log.problems(), notes, List.of());
    }
}
