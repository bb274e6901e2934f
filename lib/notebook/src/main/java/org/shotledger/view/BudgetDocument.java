package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.budget.Budget;
import org.shotledger.budget.JetChoice;
import org.shotledger.budget.Limit;
import org.shotledger.budget.Verdict;
import org.shotledger.budget.Wish;
import org.shotledger.chart.ChartPicture;
import org.shotledger.document.CustomerDocument;
import org.shotledger.document.DocumentContent;
import org.shotledger.document.Section;
import org.shotledger.table.Shown;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Says a budget in the order of the customer document. */
public final class BudgetDocument {
    private BudgetDocument() {}

    /**
     * The document of a budget.
     *
     * @param budget the budget
     * @return the document
     */
    public static CustomerDocument of(Budget budget) {
        return CustomerDocument.of(content(budget).build());
    }

    /**
     * The content of that document, for those who want to add to it.
     *
     * @param budget the budget
     * @return a builder that already holds every section the budget can fill
     */
    public static DocumentContent.Builder content(Budget budget) {
        DocumentContent.Builder builder = DocumentContent.titled(
                "A power budget for " + budget.build().name(), budget.limits().verdict(), summary(budget));
        if (budget.build().invented()) {
            builder.notice("Invented data for a demonstration; not a real car or part.");
        }
        builder.say(Section.WISH, wish(budget.wish()));
        recommendation(builder, budget);
        UnitSystem system = UnitSystem.US;
        builder.picture(Section.SPLIT, Charts.of(budget.split(), system));
        builder.rows(Section.SPLIT, Tables.of(budget.split()).in(Shown.US));
        builder.rows(Section.SPLIT, Tables.of(budget.split()).in(Shown.SI));
        builder.rows(Section.JETS, Tables.of(budget.jets()));
        builder.picture(Section.MARGINS, Charts.of(budget.limits(), system));
        builder.rows(Section.MARGINS, Tables.of(budget.limits()));
        builder.points(Section.RISKS, risks(budget));
        builder.rows(Section.BOTTLE, Tables.of(budget.bottle()));
        ChartPicture emptying = Charts.of(budget.bottle(), system);
        builder.picture(Section.BOTTLE, emptying);
        builder.reasoning(budget.ledger(), Tables.of(budget.ledger()));
        builder.points(Section.CAUTIONS, Budget.CAUTIONS);
        return builder.signedBy("engine builder", "customer");
    }

    private static String summary(Budget budget) {
        JetChoice.Option chosen = budget.jets().chosen();
        return both(QuantityKind.POWER, budget.peak().wheelPower()) + " at the wheels at "
                + QuantityKind.ROTATION.text(budget.peak().rpm(), UnitSystem.US) + " from "
                + both(QuantityKind.GAUGE_PRESSURE, budget.peak().gaugePressure()) + " of boost and "
                + budget.jets().nozzles() + (budget.jets().nozzles() == 1 ? " nozzle" : " nozzles")
                + " with a nitrous jet of "
                + both(QuantityKind.BORE, chosen.pair().nitrousBore()) + " and a fuel jet of "
                + both(QuantityKind.BORE, chosen.pair().fuelBore())
                + budget.limits()
                        .first()
                        .map(first -> "; the first limit is " + first.name() + " with "
                                + QuantityKind.FRACTION.text(first.relativeMargin(), UnitSystem.US) + " left.")
                        .orElse(".");
    }

    private static String wish(Wish wish) {
        return both(QuantityKind.POWER, wish.wheelPower()) + " at the wheels between "
                + QuantityKind.ROTATION.number(wish.rpmLow(), UnitSystem.US) + " and "
                + QuantityKind.ROTATION.text(wish.rpmHigh(), UnitSystem.US) + " under the conditions named '"
                + wish.conditions() + "'; " + wish.passes() + " passes from one bottle, "
                + QuantityKind.TIME.text(wish.passSeconds(), UnitSystem.US) + " under nitrous oxide in each.";
    }

    private static void recommendation(DocumentContent.Builder builder, Budget budget) {
        var alone = budget.boostAlone().best();
        builder.say(
                Section.RECOMMENDATION,
                "Boost alone stops at " + both(QuantityKind.POWER, alone.wheelPower()) + " at "
                        + QuantityKind.ROTATION.text(alone.rpm(), UnitSystem.US) + "; no more is allowed by: "
                        + alone.stoppedBy() + ". The rest of the wish needs nitrous oxide.");
        builder.rows(Section.RECOMMENDATION, Tables.candidates(budget.candidates()));
    }

    /** What each tight or broken limit would do; the limits know it. */
    private static List<String> risks(Budget budget) {
        List<String> risks = new ArrayList<>();
        for (Limit limit : budget.limits().all()) {
            if (limit.verdict() != Verdict.HOLDS) {
                risks.add(limit.name() + " is " + limit.verdict().word() + ": " + limit.consequence());
            }
        }
        return risks;
    }

    private static String both(QuantityKind kind, double value) {
        String us = kind.text(value, UnitSystem.US);
        String si = kind.text(value, UnitSystem.SI);
        return us.equals(si) ? us : us + " (" + si + ")";
    }
}
