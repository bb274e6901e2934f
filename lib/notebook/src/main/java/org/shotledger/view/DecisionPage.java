package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shotledger.document.Cautions;
import org.shotledger.document.DocumentContent;
import org.shotledger.document.Section;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.risk.Faults;
import org.shotledger.setup.Setup;
import org.shotledger.sheet.Problem;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** The first page of the customer's document: what is asked and proposed, the closest limits, what it needs, the next step. */
final class DecisionPage {
    /** A picture of this height leaves the page room for the rest. */
    private static final int HEIGHT = 190;

    private static final int CLOSEST = 3;

    private DecisionPage() {}

    static void write(DocumentContent.Builder builder, Plan plan, Optional<Faults> faults, UnitSystem charts) {
        Listing.Builder rows = Listing.titled("In short").words("Point").words("What there is to say");
        rows.row("Asked", asked(plan));
        rows.row("Proposed", proposed(plan));
        List<Problem> unusual = plan.job().unusual();
        if (!unusual.isEmpty()) {
            rows.row("Unusual in the sheet", said(unusual));
        }
        rows.row("It needs", String.join("; ", needs(plan)) + ".");
        rows.row("Next step", next(plan));
        builder.rows(Section.DECISION, rows.build());
        builder.picture(
                Section.DECISION,
                Charts.power(plan.outcomes(), plan.target().wheelPower(), HEIGHT)
                        .picture(charts));
        builder.rows(Section.DECISION, LimitTables.rows("The " + CLOSEST + " closest limits", plan.closest(CLOSEST)));
        faults.ifPresent(all -> builder.rows(Section.DECISION, FaultAdvice.uncaught(all)));
        if (burnsMethanol(plan)) {
            builder.points(Section.CAUTIONS, List.of(Cautions.METHANOL));
        }
    }

    /** The unusual figures with their sentences; a page has room for a few. */
    private static String said(List<Problem> unusual) {
        String some = unusual.stream().limit(CLOSEST).map(Problem::sentence).collect(Collectors.joining(" "));
        return unusual.size() <= CLOSEST
                ? some
                : some + " And " + (unusual.size() - CLOSEST) + " more: "
                        + unusual.stream().skip(CLOSEST).map(Problem::field).collect(Collectors.joining(", ")) + ".";
    }

    /** What is asked, in one sentence. */
    static String asked(Plan plan) {
        var target = plan.target();
        return Both.of(QuantityKind.POWER, target.wheelPower()) + " at the wheels between "
                + QuantityKind.ROTATION.number(target.rpmLow(), UnitSystem.US) + " and "
                + QuantityKind.ROTATION.text(target.rpmHigh(), UnitSystem.US) + " under the conditions named '"
                + target.conditions() + "'; " + target.passes() + " passes from one bottle, "
                + QuantityKind.TIME.text(target.passSeconds(), UnitSystem.US) + " under nitrous oxide in each.";
    }

    /** What is proposed and what it gives, in one sentence. */
    static String proposed(Plan plan) {
        String gives = plan.stated()
                .strongest()
                .map(best -> Both.of(QuantityKind.POWER, best.wheelPower()) + " at "
                        + QuantityKind.ROTATION.text(best.rpm(), UnitSystem.US) + " from "
                        + Both.of(QuantityKind.GAUGE_PRESSURE, best.gaugePressure()) + " of boost")
                .orElse("no power that the models can tell");
        return gives + jets(plan) + ".";
    }

    private static String jets(Plan plan) {
        if (plan.setup().jets().isEmpty()) {
            return " alone; the nitrous is not used";
        }
        JetPair pair = plan.setup().jets().get();
        int nozzles = plan.car().nitrous().nozzles();
        return " and " + nozzles + (nozzles == 1 ? " nozzle " : " nozzles ")
                + plan.car().nitrous().position().words() + " with jets of "
                + Both.of(QuantityKind.BORE, pair.nitrousBore())
                + " for nitrous oxide and " + Both.of(QuantityKind.BORE, pair.fuelBore()) + " for its fuel";
    }

    /** What must be there before this setup is run. */
    static List<String> needs(Plan plan) {
        List<String> needs = new ArrayList<>();
        Setup setup = plan.setup();
        needs.add("a boost control that holds the table of the setup"
                + (setup.boost().off().equals(setup.boost().armed())
                        ? ""
                        : ", another one with the nitrous armed than with it off"));
        if (setup.jets().isPresent()) {
            needs.add(Both.of(QuantityKind.MASS, setup.bottle().charge()) + " of nitrous oxide by the scale, held at "
                    + Both.of(QuantityKind.TEMPERATURE, setup.bottle().startTemperature()));
            needs.add("spark later by " + QuantityKind.CRANK_ANGLE.text(setup.retard(), UnitSystem.US)
                    + " while it flows, less or more only by the step-up plan");
        }
        plan.limits().broken().forEach(limit -> needs.add("an answer to '" + limit.name() + "': " + figures(limit)));
        return needs;
    }

    private static String figures(Limit limit) {
        return Both.of(limit.kind(), limit.value()) + " against " + Both.of(limit.kind(), limit.bound())
                + (limit.hard() ? "; " + limit.remedy() : "");
    }

    /** What to do now; a setup that breaks a limit is not run. */
    static String next(Plan plan) {
        if (plan.verdict() == Verdict.BROKEN && plan.parts().verdict() != Verdict.BROKEN) {
            return "This setup keeps every limit and gives less than is asked"
                    + plan.stopped()
                            .map(what -> ", as more is stopped by " + what)
                            .orElse("")
                    + ". Change what is asked or what is built and plan anew, or agree on less.";
        }
        if (plan.verdict() == Verdict.BROKEN) {
            return "Do not run this setup: it breaks "
                    + String.join(
                            ", ",
                            plan.limits().broken().stream().map(Limit::name).toList())
                    + ". Change what is asked or what is built, and plan anew.";
        }
        return plan.setup().jets().isEmpty()
                ? "Set the boost table, watch mixture and knock, and raise the boost to it in steps."
                : "Prove the boost table with the bottle closed; then fit the smallest jets of the step-up plan and go"
                        + " on only while every figure read lies inside its band.";
    }

    private static boolean burnsMethanol(Plan plan) {
        return plan.car().fuels().main().name().contains("methanol")
                || plan.car().fuels().nitrous().name().contains("methanol");
    }
}
