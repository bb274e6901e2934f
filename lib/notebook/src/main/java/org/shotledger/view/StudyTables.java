package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.verdict;
import static org.shotledger.table.Column.words;
import static org.shotledger.units.QuantityKind.COUNT;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;

import java.util.List;
import java.util.Map;
import org.shotledger.study.Candidate;
import org.shotledger.study.Study;
import org.shotledger.table.Listing;
import org.shotledger.units.UnitSystem;

/** Studies of many setups as tables. */
public final class StudyTables {
    private StudyTables() {}

    /**
     * The best combinations of a study.
     *
     * @param study the study
     * @param system the units in which a combination is named
     * @return one row a combination, the best first
     */
    public static Listing best(Study study, UnitSystem system) {
        return candidates("The best combinations: " + study.ranking(), study.best(), system);
    }

    /**
     * The combinations no other one betters in power, margin and nitrous at once.
     *
     * @param study the study
     * @param system the units in which a combination is named
     * @return one row a combination, by power
     */
    public static Listing front(Study study, UnitSystem system) {
        return candidates("The front: none is bettered in power, margin and nitrous at once", study.front(), system);
    }

    private static Listing candidates(String caption, List<Candidate> candidates, UnitSystem system) {
        return Listing.of(
                caption,
                candidates,
                words("Combination", candidate -> candidate.name(system)),
                column("Wheel power", POWER, Candidate::wheelPower),
                column("Nitrous", MASS_FLOW, Candidate::nitrousFlow),
                column("Lambda", RATIO, Candidate::lambda),
                column("Least margin", FRACTION, Candidate::margin),
                words("Closest limit", candidate -> candidate.decides().name()),
                words("in the case", candidate -> candidate.decides().caseName()),
                verdict("Limits", candidate -> candidate.limits().verdict()),
                words("Power asked for", candidate -> candidate.reached() ? "reached" : "not reached"));
    }

    /**
     * Which limits refuse combinations; each combination counts for the limit it breaks most.
     *
     * @param study the study
     * @return one row a limit, the one that refuses most first
     */
    public static Listing refused(Study study) {
        double all = study.space().size();
        return Listing.of(
                "Which limit refuses how many; each counts for the limit it breaks most",
                study.refusedBy().entrySet(),
                words("Limit", Map.Entry::getKey),
                column("Combinations", COUNT, refused -> refused.getValue()),
                column("Share of all", FRACTION, refused -> refused.getValue() / all));
    }
}
