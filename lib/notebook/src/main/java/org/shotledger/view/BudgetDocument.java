package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.budget.BottleDay;
import org.shotledger.budget.Budget;
import org.shotledger.budget.JetChoice;
import org.shotledger.budget.Limit;
import org.shotledger.budget.Verdict;
import org.shotledger.budget.Wish;
import org.shotledger.document.CustomerDocument;
import org.shotledger.document.DocumentContent;
import org.shotledger.document.Revision;
import org.shotledger.document.Section;
import org.shotledger.stepup.StepUp;
import org.shotledger.table.Shown;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Says a budget in the order of the customer document. */
public final class BudgetDocument {
    private BudgetDocument() {}

    /**
     * The document of a budget, with charts in US units and without a revision.
     *
     * @param budget the budget
     * @return the document
     */
    public static CustomerDocument of(Budget budget) {
        return CustomerDocument.of(content(budget, UnitSystem.US).build());
    }

    /**
     * An issue of the document of a budget.
     *
     * @param budget the budget
     * @param issue for whom, which revision, in which units, and what came before
     * @return the document
     */
    public static CustomerDocument of(Budget budget, Issue issue) {
        DocumentContent.Builder builder = content(budget, issue.charts()).between(issue.customer(), issue.author());
        List<String> told = new ArrayList<>(issue.reasons());
        issue.previous().ifPresent(before -> {
            told.addAll(Changes.sentences(before, budget));
            builder.rows(Section.REVISIONS, Changes.plan(before, budget));
            builder.rows(Section.REVISIONS, Changes.sheet(before, budget));
        });
        builder.revision(new Revision(issue.number(), issue.date(), told));
        issue.history().forEach(builder::revision);
        return CustomerDocument.of(builder.build());
    }

    /**
     * The content of that document, for those who want to add to it.
     *
     * @param budget the budget
     * @param charts units of the charts; tables show both systems
     * @return a builder that already holds every section the budget can fill
     */
    public static DocumentContent.Builder content(Budget budget, UnitSystem charts) {
        DocumentContent.Builder builder = DocumentContent.titled(
                "A power budget for " + budget.build().name(), budget.limits().verdict(), summary(budget));
        if (budget.build().invented()) {
            builder.notice("Invented data for a demonstration; not a real car or part.");
        }
        BottleDay day = BottleDay.of(budget);
        StepUp steps = StepUp.of(budget);
        builder.say(Section.WISH, wish(budget.wish()));
        recommendation(builder, budget, charts);
        split(builder, budget, charts);
        jets(builder, budget, steps, charts);
        margins(builder, budget, charts);
        builder.points(Section.RISKS, risks(budget));
        RiskSection.write(builder, budget, charts);
        StepUpSection.write(builder, steps, charts);
        bottle(builder, budget, day, charts);
        WiringSection.write(builder, budget, day);
        builder.rows(Section.REASONING, Tables.of(budget.ledger()));
        Sources.write(builder, budget);
        return builder.signedBy("engine builder", "customer");
    }

    private static String summary(Budget budget) {
        JetChoice.Option chosen = budget.jets().chosen();
        return Both.of(QuantityKind.POWER, budget.peak().wheelPower()) + " at the wheels at "
                + QuantityKind.ROTATION.text(budget.peak().rpm(), UnitSystem.US) + " from "
                + Both.of(QuantityKind.GAUGE_PRESSURE, budget.peak().gaugePressure()) + " of boost and "
                + budget.jets().nozzles() + (budget.jets().nozzles() == 1 ? " nozzle" : " nozzles")
                + " with a nitrous jet of "
                + Both.of(QuantityKind.BORE, chosen.pair().nitrousBore()) + " and a fuel jet of "
                + Both.of(QuantityKind.BORE, chosen.pair().fuelBore())
                + budget.limits()
                        .first()
                        .map(first -> "; the first limit is " + first.name() + " with "
                                + QuantityKind.FRACTION.text(first.relativeMargin(), UnitSystem.US) + " left.")
                        .orElse(".");
    }

    private static String wish(Wish wish) {
        return Both.of(QuantityKind.POWER, wish.wheelPower()) + " at the wheels between "
                + QuantityKind.ROTATION.number(wish.rpmLow(), UnitSystem.US) + " and "
                + QuantityKind.ROTATION.text(wish.rpmHigh(), UnitSystem.US) + " under the conditions named '"
                + wish.conditions() + "'; " + wish.passes() + " passes from one bottle, "
                + QuantityKind.TIME.text(wish.passSeconds(), UnitSystem.US) + " under nitrous oxide in each.";
    }

    private static void recommendation(DocumentContent.Builder builder, Budget budget, UnitSystem charts) {
        var alone = budget.boostAlone().best();
        builder.say(
                Section.RECOMMENDATION,
                "Boost alone stops at " + Both.of(QuantityKind.POWER, alone.wheelPower()) + " at "
                        + QuantityKind.ROTATION.text(alone.rpm(), UnitSystem.US) + "; no more is allowed by: "
                        + alone.stoppedBy() + ". The rest of the wish needs nitrous oxide.");
        if (budget.bottle().passes() < budget.wish().passes()) {
            builder.say(
                    Section.RECOMMENDATION,
                    "One bottle gives " + budget.bottle().passes() + " of the "
                            + budget.wish().passes()
                            + " passes asked: take a second bottle, or ask for less power or shorter passes.");
        }
        builder.rows(Section.RECOMMENDATION, Tables.candidates(budget.candidates()));
        builder.picture(
                Section.RECOMMENDATION,
                Charts.of(budget.candidates(), budget.peak().gaugePressure(), charts));
    }

    private static void split(DocumentContent.Builder builder, Budget budget, UnitSystem charts) {
        builder.picture(Section.SPLIT, Charts.of(budget.split(), charts));
        builder.rows(Section.SPLIT, Tables.of(budget.split()).in(Shown.US));
        builder.rows(Section.SPLIT, Tables.of(budget.split()).in(Shown.SI));
    }

    private static void jets(DocumentContent.Builder builder, Budget budget, StepUp steps, UnitSystem charts) {
        builder.rows(Section.JETS, SettingsTable.of(budget, steps));
        builder.rows(Section.JETS, Tables.of(budget.jets()));
        builder.picture(Section.JETS, FlowCharts.overBottlePressure(budget, charts));
        builder.say(
                Section.JETS,
                "The band around the nitrous oxide holds nine in ten holes of the jets' class, by what measured holes miss when their own"
                        + " source is left out; a flow test narrows it. The hatched one is a fuel jet half a thou"
                        + " (0.013 mm) off its size, common practice, no source.");
    }

    private static void margins(DocumentContent.Builder builder, Budget budget, UnitSystem charts) {
        builder.picture(Section.MARGINS, Charts.of(budget.limits(), charts));
        builder.rows(Section.MARGINS, Tables.of(budget.limits()));
        builder.picture(Section.MARGINS, EngineCharts.cylinder(budget, charts));
    }

    private static void bottle(DocumentContent.Builder builder, Budget budget, BottleDay day, UnitSystem charts) {
        builder.rows(Section.BOTTLE, Tables.of(budget.bottle()));
        builder.rows(Section.BOTTLE, BottleViews.filling(budget, day));
        builder.points(Section.BOTTLE, BottleViews.warnings(budget));
        builder.rows(Section.BOTTLE, BottleViews.passes(day));
        builder.picture(Section.BOTTLE, BottleViews.pass(budget, charts));
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
}
