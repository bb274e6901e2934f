package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.document.Revision;
import org.shotledger.plan.Plan;
import org.shotledger.units.UnitSystem;

/**
 * One issue of a customer document: who it is for, its number and date, what came before it, and the units of its charts.
 *
 * @param number number or letter of this revision
 * @param date its date as it is to be printed, given from outside so that a document can be made again to the byte
 * @param customer for whom it is made; may be empty
 * @param author who made it; may be empty
 * @param charts units of the charts; tables show both systems
 * @param reasons why this revision was made, in the author's words
 * @param previous the plan of the revision before, from which the differences are told
 * @param history the revisions before this one, the newest first
 */
public record Issue(
        String number,
        String date,
        String customer,
        String author,
        UnitSystem charts,
        List<String> reasons,
        Optional<Plan> previous,
        List<Revision> history) {

    public Issue {
        reasons = List.copyOf(reasons);
        history = List.copyOf(history);
    }

    /**
     * A first issue with charts in US units.
     *
     * @param number number or letter
     * @param date its date as it is to be printed
     * @return the issue
     */
    public static Issue first(String number, String date) {
        return new Issue(number, date, "", "", UnitSystem.US, List.of("First issue."), Optional.empty(), List.of());
    }

    /**
     * Says for whom and by whom.
     *
     * @param forWhom the customer
     * @param byWhom the author
     * @return the changed issue
     */
    public Issue between(String forWhom, String byWhom) {
        return new Issue(number, date, forWhom, byWhom, charts, reasons, previous, history);
    }

    /**
     * Chooses the units of the charts.
     *
     * @param system the units
     * @return the changed issue
     */
    public Issue in(UnitSystem system) {
        return new Issue(number, date, customer, author, system, reasons, previous, history);
    }

    /**
     * The issue that follows this one.
     *
     * @param plan the plan that this issue was made of
     * @param nextNumber number or letter of the next
     * @param nextDate its date as it is to be printed
     * @param why why it was made, one sentence each
     * @return the next issue, which tells what changed
     */
    public Issue next(Plan plan, String nextNumber, String nextDate, String... why) {
        List<Revision> before = new ArrayList<>();
        before.add(new Revision(number, date, reasons));
        before.addAll(history);
        return new Issue(nextNumber, nextDate, customer, author, charts, List.of(why), Optional.of(plan), before);
    }
}
