package org.shotledger.cli;

import java.util.concurrent.Callable;
import org.shotledger.job.SheetFields;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains what a job sheet can state. */
@Command(
        name = "explain",
        description =
                "Explains a field of a job sheet: what it is, its unit and usual range, how to get it, what it changes.")
final class ExplainCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "FIELD",
            arity = "0..1",
            description =
                    "A place in the sheet such as bottle.charge, its last part alone, or a section such as bottle;"
                            + " without it, what there is.")
    private String field;

    @Override
    public Integer call() {
        spec.commandLine().getOut().println(field == null ? SheetFields.sections() : SheetFields.explain(field));
        return 0;
    }
}
