package org.shotledger.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.shotledger.display.Displayable;
import org.shotledger.document.CustomerDocument;
import org.shotledger.document.DocumentPart;
import org.shotledger.evaluate.Outcome;
import org.shotledger.explore.Explorer;
import org.shotledger.job.Job;
import org.shotledger.ledger.Ledgers;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;
import org.shotledger.view.FeedView;
import org.shotledger.view.Issue;
import org.shotledger.view.LedgerTables;
import org.shotledger.view.PlanDocument;
import org.shotledger.view.VerdictLine;
import org.shotledger.view.Viewing;

/** Short names for a notebook, to be imported as statics. */
public final class Session {

    /**
     * What a kernel imports when a session starts; one line of Java each, without the word import and the semicolon.
     *
     * <p>Whole packages: the compiler looks up each class named one by one again for every cell.
     */
    public static final List<String> IMPORTS = List.of(
            "org.shotledger.bottle.*",
            "org.shotledger.car.*",
            "org.shotledger.causes.*",
            "org.shotledger.commission.*",
            "org.shotledger.confidence.*",
            "org.shotledger.controls.*",
            "org.shotledger.delivery.*",
            "org.shotledger.document.*",
            "org.shotledger.evaluate.*",
            "org.shotledger.flow.*",
            "org.shotledger.fluid.*",
            "org.shotledger.fuel.*",
            "org.shotledger.job.*",
            "org.shotledger.ledger.*",
            "org.shotledger.limits.*",
            "org.shotledger.logs.*",
            "org.shotledger.nitrous.*",
            "org.shotledger.plan.*",
            "org.shotledger.reconcile.*",
            "org.shotledger.revision.*",
            "org.shotledger.risk.*",
            "org.shotledger.setup.*",
            "org.shotledger.spread.*",
            "org.shotledger.stepup.*",
            "org.shotledger.study.*",
            "org.shotledger.table.*",
            "org.shotledger.track.*",
            "org.shotledger.trust.*",
            "org.shotledger.chart.*",
            "org.shotledger.units.*",
            "org.shotledger.view.*",
            "org.shotledger.whathelps.*",
            "org.shotledger.wiring.*",
            "org.shotledger.workshop.*",
            "org.shotledger.evaluate.Outcome", // two rooms may know one word; these are the ones a cell means
            "org.shotledger.plan.Plan",
            "static org.shotledger.controls.Controls.*",
            "static org.shotledger.explore.Sliders.*",
            "static org.shotledger.session.Session.*",
            "static org.shotledger.table.Column.*",
            "static org.shotledger.units.Quantities.*",
            "java.util.*");

    private Session() {}

    /**
     * Chooses the units in which results are shown from now on.
     *
     * @param shown US, SI, or both side by side
     * @return one sentence that says what was chosen
     */
    public static String units(Shown shown) {
        Viewing.choose(shown);
        return switch (shown) {
            case US -> "Results are shown in US units.";
            case SI -> "Results are shown in SI units.";
            case BOTH -> "Results are shown in US and SI units side by side.";
        };
    }

    /**
     * What can be typed here.
     *
     * @return a page of help
     */
    public static Help help() {
        return Help.page();
    }

    /**
     * Explains a field of the job sheet.
     *
     * @param field its place, such as {@code "bottle.charge"}, the last part of it alone, or a section such as {@code "bottle"}
     * @return what it is, its unit and usual range, how to get it and what it changes
     * @throws IllegalArgumentException when there is no such field; the message names the nearest
     */
    public static FieldHelp help(String field) {
        return FieldHelp.of(field);
    }

    /**
     * Finds a file of the data folder, whichever folder the notebook stands in.
     *
     * @param path path below the folder that holds {@code data}, for example {@code "data/whimbrel/job.yaml"}
     * @return the file
     * @throws IllegalArgumentException when it is not there; the message names the folders looked into
     */
    public static Path file(String path) {
        return DataFiles.find(path, Path.of(""));
    }

    /**
     * The verdict on a plan in one line; the headless runner prints it when a notebook is done.
     *
     * @param plan the plan
     * @return target, boost, jets and the limit that is closest
     */
    public static VerdictLine verdict(Plan plan) {
        return new VerdictLine(plan.verdict(), plan.verdictLine());
    }

    /**
     * What a setup does in every case of a job, held against its target.
     *
     * @param job the job
     * @param setup what is set
     * @return the plan with that setup, without alternatives
     */
    public static Plan analyse(Job job, Setup setup) {
        return Plan.of(job, setup);
    }

    /**
     * Why a figure of a plan is what it is.
     *
     * @param plan the plan
     * @param key the key of the figure, for example {@code "nitrous-flow"}
     * @return the figure and everything it rests on, in the units of the session
     */
    public static Listing why(Plan plan, String key) {
        return LedgerTables.why(plan.ledger(), key).in(Viewing.units());
    }

    /**
     * Why a figure of an outcome is what it is.
     *
     * @param outcome the outcome
     * @param key the key of the figure
     * @return the figure and everything it rests on, in the units of the session
     */
    public static Listing why(Outcome outcome, String key) {
        return LedgerTables.why(Ledgers.of(outcome), key).in(Viewing.units());
    }

    /**
     * The nitrous side of a plan as a whole: flow over bottle pressure with its band, which part chokes with each jet, and how far a half-blocked
     * filter, a long hose and a missed purge move the flow.
     *
     * @param plan the plan
     * @return pictures and tables, in the units of the session
     */
    public static Displayable feed(Plan plan) {
        return FeedView.of(plan, Viewing.units());
    }

    /**
     * A plan under sliders: target power, boost, jets, fuel pressure, bottle, fuel, weather and spark, with verdict, power, the closest
     * limits and the pass, worked out at each move.
     *
     * @param plan the plan to begin with
     */
    public static void explore(Plan plan) {
        Explorer.show(plan);
    }

    /**
     * The plan for a job under sliders.
     *
     * @param job the job, which is planned first
     */
    public static void explore(Job job) {
        Explorer.show(Plan.find(job));
    }

    /**
     * The customer document of a plan.
     *
     * @param plan the plan
     * @return the document; write it with {@code write(folder, name, paper)}
     */
    public static CustomerDocument document(Plan plan) {
        return PlanDocument.of(plan);
    }

    /**
     * An issue of the customer document of a plan.
     *
     * @param plan the plan
     * @param issue for whom, which revision, in which units, and what came before
     * @return the document
     */
    public static CustomerDocument document(Plan plan, Issue issue) {
        return PlanDocument.of(plan, issue);
    }

    /**
     * Some pages of the customer document of a plan.
     *
     * @param plan the plan
     * @param issue for whom, which revision, in which units, and what came before
     * @param pages which pages, with commas between them: decision, tuner, mechanic, track, reasons, ledger
     * @return the document
     * @throws IllegalArgumentException when a page is not known; the message lists them
     */
    public static CustomerDocument document(Plan plan, Issue issue, String pages) {
        Set<DocumentPart> chosen = DocumentPart.read(pages);
        return PlanDocument.of(plan, issue).pages(chosen);
    }
}
