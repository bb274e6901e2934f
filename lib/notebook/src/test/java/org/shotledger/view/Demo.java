package org.shotledger.view;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.shotledger.document.CustomerDocument;
import org.shotledger.document.Paper;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;
import org.shotledger.table.Listing;

/** The invented demonstration job planned once for all tests that look at its tables and charts. */
final class Demo {
    static final Path FOLDER = Path.of("../../data/whimbrel");
    /** Its plan. */
    static final Plan PLAN = Plan.find(Job.load(FOLDER));

    private Demo() {}

    /** The document of the plan, written once for all tests that look at it: a second issue, after the plan of less power. */
    static final class Written {
        /** What the first issue was for. */
        static final Plan BEFORE = Plan.find(PLAN.job()
                .with("bottle.start-temperature", "28 degC", "measured", "a cooler <bottle>")
                .with("target.wheel-power", "680 hp"));
        /** Why there is a second one. */
        static final String REASON = "The customer wants more power.";

        static final CustomerDocument DOCUMENT =
                PlanDocument.of(PLAN, Issue.first("A", "2026-06-20").next(BEFORE, "B", "2026-07-04", REASON));

        private Written() {}
    }

    /** That document on paper, set once for all tests that look at it. */
    static final class Printed {
        private static final Map<Paper, byte[]> WHOLE = new EnumMap<>(Paper.class);

        private Printed() {}

        static byte[] on(Paper paper) {
            return WHOLE.computeIfAbsent(paper, Written.DOCUMENT::pdf);
        }
    }

    /** The words or numbers of one column, from the top. */
    static List<String> column(Listing listing, int index) {
        var column = listing.table().column(index);
        return IntStream.range(0, column.size()).mapToObj(column::getString).toList();
    }

    /** The cell of a column in the row that a word names. */
    static String cell(Listing listing, String row, int index) {
        int at = column(listing, 0).indexOf(row);
        if (at < 0) {
            throw new IllegalArgumentException("no row " + row + " in " + column(listing, 0));
        }
        return column(listing, index).get(at);
    }
}
