package org.shotledger.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.shotledger.document.DocumentPart;
import org.shotledger.document.Paper;
import org.shotledger.document.Progress;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;
import org.shotledger.sheet.SheetException;
import org.shotledger.units.UnitSystem;
import org.shotledger.view.Issue;
import org.shotledger.view.PlanDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the customer's document of a job sheet. */
@Command(
        name = "document",
        description =
                "Plans a job and writes its document as a page of HTML and as PDF: a page to decide on, a card each for tuner,"
                        + " mechanic and track, the reasons, the ledger.")
final class DocumentCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "JOB", description = "Job sheet, or a folder that holds a job.yaml.")
    private Path job;

    @Option(
            names = "--pages",
            paramLabel = "PAGES",
            description =
                    "Which pages, with commas between them: decision, tuner, mechanic, track, reasons, ledger; all if nothing"
                            + " is said.")
    private String pages;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "a4",
            description = "a4 or letter; a4 if nothing is said.")
    private String paper;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            defaultValue = "us",
            description = "us or si; us if nothing is said.")
    private String units;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "out",
            description = "Where to; out if nothing is said.")
    private Path out;

    @Option(
            names = "--revision",
            paramLabel = "NAME",
            defaultValue = "A",
            description = "Number or letter; A if nothing is said.")
    private String revision;

    @Option(names = "--date", paramLabel = "DATE", description = "As it is to be printed; today if nothing is said.")
    private String date;

    @Option(names = "--for", paramLabel = "NAME", defaultValue = "", description = "Whom it is for.")
    private String customer;

    @Option(names = "--by", paramLabel = "NAME", defaultValue = "", description = "Who made it.")
    private String author;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        Set<DocumentPart> parts;
        Paper sheet;
        UnitSystem system;
        try {
            parts = pages == null ? EnumSet.allOf(DocumentPart.class) : DocumentPart.read(pages);
            sheet = one(Paper.class, "--paper", paper);
            system = one(UnitSystem.class, "--units", units);
        } catch (IllegalArgumentException unknown) {
            err.println(unknown.getMessage());
            return 2;
        }
        try {
            Plan plan = Plan.find(Job.load(Folders.fromCommandLine(job)));
            Issue issue = Issue.first(
                            revision,
                            date == null ? LocalDate.now(ZoneId.systemDefault()).toString() : date)
                    .between(customer, author)
                    .in(system);
            Progress progress = (what, done, of) -> err.println(done + " of " + of + " done; now " + what);
            PlanDocument.of(plan, issue, progress)
                    .pages(parts)
                    .write(Folders.fromCommandLine(out), name(plan.job().name()), sheet, progress)
                    .forEach(file -> spec.commandLine().getOut().println("wrote " + file));
            spec.commandLine().getOut().println(plan.verdictLine());
            return 0;
        } catch (SheetException e) {
            err.println(job + " cannot be planned:");
            e.problems().forEach(problem -> err.println("  " + problem));
            return 1;
        }
    }

    private static <E extends Enum<E>> E one(Class<E> kind, String option, String word) {
        return Arrays.stream(kind.getEnumConstants())
                .filter(value -> value.name().equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(option + " is \"" + word + "\"; choose "
                        + Arrays.stream(kind.getEnumConstants())
                                .map(value -> value.name().toLowerCase(Locale.ROOT))
                                .collect(Collectors.joining(" or "))
                        + "."));
    }

    /** A file's name of a job's: letters and digits, hyphens between. */
    private static String name(String job) {
        String plain =
                job.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return plain.isEmpty() ? "plan" : plain;
    }
}
