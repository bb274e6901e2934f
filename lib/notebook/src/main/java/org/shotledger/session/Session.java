package org.shotledger.session;

import java.nio.file.Path;
import java.util.List;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Ledger;
import org.shotledger.document.CustomerDocument;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;
import org.shotledger.view.BudgetDocument;
import org.shotledger.view.Issue;
import org.shotledger.view.Tables;
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
            "org.shotledger.budget.*",
            "org.shotledger.build.*",
            "org.shotledger.delivery.*",
            "org.shotledger.document.*",
            "org.shotledger.fluid.*",
            "org.shotledger.fuel.*",
            "org.shotledger.logs.*",
            "org.shotledger.reconcile.*",
            "org.shotledger.relief.*",
            "org.shotledger.spread.*",
            "org.shotledger.confidence.*",
            "org.shotledger.stepup.*",
            "org.shotledger.study.*",
            "org.shotledger.risk.*",
            "org.shotledger.table.*",
            "org.shotledger.chart.*",
            "org.shotledger.units.*",
            "org.shotledger.view.*",
            "org.shotledger.view.Tables", // the build sheet has tables, too
            "org.shotledger.nitrous.*",
            "org.shotledger.wiring.*",
            "static org.shotledger.session.Session.*",
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
     * Finds a file of the data folder, whichever folder the notebook stands in.
     *
     * @param path path below the folder that holds {@code data}, for example {@code "data/heron/build.yaml"}
     * @return the file
     * @throws IllegalArgumentException when it is not there; the message names the folders looked into
     */
    public static Path file(String path) {
        return DataFiles.find(path, Path.of(""));
    }

    /**
     * The verdict on a budget in one line; the headless runner prints it when a notebook is done.
     *
     * @param budget the budget
     * @return wish, split, jets and the limit that bites first
     */
    public static VerdictLine verdict(Budget budget) {
        return new VerdictLine(budget.limits().verdict(), budget.verdictLine());
    }

    /**
     * Why a figure of a budget is what it is.
     *
     * @param budget the budget
     * @param key the key of the figure, for example {@code "nitrous-flow"}
     * @return the figure and everything it rests on, in the units of the session
     */
    public static Listing why(Budget budget, String key) {
        return why(budget.ledger(), key);
    }

    /**
     * Why a figure of a ledger is what it is.
     *
     * @param ledger the ledger
     * @param key the key of the figure
     * @return the figure and everything it rests on, in the units of the session
     */
    public static Listing why(Ledger ledger, String key) {
        return Tables.why(ledger, key).in(Viewing.units());
    }

    /**
     * The customer document of a budget.
     *
     * @param budget the budget
     * @return the document; write it with {@code write(folder, name, paper)}
     */
    public static CustomerDocument document(Budget budget) {
        return BudgetDocument.of(budget);
    }

    /**
     * An issue of the customer document of a budget.
     *
     * @param budget the budget
     * @param issue for whom, which revision, in which units, and what came before
     * @return the document
     */
    public static CustomerDocument document(Budget budget, Issue issue) {
        return BudgetDocument.of(budget, issue);
    }
}
