package org.shotledger.view;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.shotledger.table.Listing;
import org.shotledger.wiring.Pin;
import org.shotledger.wiring.PinKind;
import org.shotledger.wiring.PinPlacement;
import org.shotledger.wiring.PinPlan;
import org.shotledger.wiring.PinRemedy;
import org.shotledger.wiring.PinSignal;
import org.shotledger.wiring.PinTask;
import org.shotledger.wiring.SafetyChain;
import org.shotledger.wiring.SafetyFinding;

/** Signals on pins, what would free one, and the safety chain, as tables. */
public final class PinTables {
    private PinTables() {}

    /**
     * Where every signal is.
     *
     * @param plan signals set on pins
     * @return one row a signal, in the order of the sheet
     */
    public static Listing of(PinPlan plan) {
        return listing(plan, plan.placements(), "");
    }

    /** What purchases change, told from the plan without them. */
    static Listing changes(PinPlan before, PinPlan after) {
        List<PinPlacement> moved = after.placements().stream()
                .filter(one -> before.placements().stream()
                        .noneMatch(
                                was -> was.signal().name().equals(one.signal().name())
                                        && where(was).equals(where(one))
                                        && was.why().equals(one.why())))
                .toList();
        return listing(after, moved, "; what is not listed stays as above");
    }

    private static Listing listing(PinPlan plan, List<PinPlacement> placements, String besides) {
        String bought = plan.price() > 0
                        || plan.placements().stream().anyMatch(p -> p.option().isPresent())
                ? ", with the cheapest purchases (" + price(plan.price()) + ")"
                : ", nothing bought";
        Listing.Builder rows = Listing.titled("Signals on the controller's free pins" + bought
                        + (plan.proven()
                                ? "; every way was weighed, none is better"
                                : "; the search was cut off, not proven best")
                        + besides)
                .words("Signal")
                .words("Need")
                .words("Asks for")
                .words("Pin")
                .words("Why");
        for (PinPlacement one : placements) {
            rows.row(
                    one.signal().name(), one.signal().importance().words(), kinds(one.signal()), where(one), one.why());
        }
        return rows.build();
    }

    /** The pin by name; a signal without one, or with another way that needs none, is said so. */
    static String where(PinPlacement one) {
        if (!one.placed()) {
            return "none";
        }
        return one.pin().map(Pin::name).orElse("needs none");
    }

    static String kinds(PinSignal signal) {
        return signal.need().kinds().stream().sorted().map(PinKind::words).collect(Collectors.joining(" or "));
    }

    /**
     * What would give a pin to signals that have none, one purchase at a time.
     *
     * @param task signals, pins and what may be bought
     * @return one row a purchase, the cheapest first; empty when every signal has its pin or nothing that may be bought helps
     */
    public static Listing remedies(PinTask task) {
        Listing.Builder rows = Listing.titled("What gives a pin to signals that have none, one purchase at a time")
                .words("Purchase")
                .words("Price")
                .words("Provides for");
        for (PinRemedy remedy : PinRemedy.all(task)) {
            rows.row(
                    remedy.what(),
                    price(remedy.price()),
                    remedy.provides().stream().map(PinSignal::name).collect(Collectors.joining(", ")));
        }
        return rows.build();
    }

    static String price(double price) {
        return price == 0 ? "not given" : String.format(Locale.ROOT, "%.2f", price);
    }

    /**
     * The rules of the safety chain.
     *
     * @param chain what lets nitrous flow and what cuts it
     * @return one row a rule
     */
    public static Listing of(SafetyChain chain) {
        Listing.Builder rows = Listing.titled("Safety chain, one fault at a time")
                .words("Rule")
                .words("Holds")
                .words("Because");
        for (SafetyFinding finding : chain.findings()) {
            rows.row(finding.rule(), finding.holds() ? "yes" : "no", finding.because());
        }
        return rows.build();
    }
}
