package org.shotledger.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.shotledger.files.AtomicFile;
import org.shotledger.logs.LogMapping;
import org.shotledger.logs.MappingProposal;
import org.shotledger.sheet.SheetException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Proposes how the columns of a log are to be read. */
@Command(
        name = "map",
        description =
                "Writes NAME.log.yaml beside a log NAME.csv: which column is which channel, proposed from headings,"
                        + " units and values, each with its reason. Look through it before it counts; what is doubtful"
                        + " stands as a comment.")
final class MapCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "LOG", description = "A log (.csv) whose headings are not ours.")
    private Path log;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Path file = Folders.fromCommandLine(log);
        Path beside = LogMapping.ownFile(file);
        try {
            MappingProposal proposal = MappingProposal.of(file);
            if (Files.exists(beside)) {
                out.println(Folders.shown(beside) + " stands already and is left as it is; the proposal:");
                out.print(proposal.yaml());
                return 1;
            }
            AtomicFile.write(beside, proposal.yaml());
            out.println("wrote " + Folders.shown(beside));
            out.println("Look through it, say which setup was run (setup: step 1), then ./shotledger check " + log);
            return 0;
        } catch (SheetException e) {
            e.problems().forEach(problem -> out.println("  " + problem));
            return 1;
        }
    }
}
