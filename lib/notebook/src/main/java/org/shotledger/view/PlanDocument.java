package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.chart.ChartPicture;
import org.shotledger.document.Cautions;
import org.shotledger.document.CustomerDocument;
import org.shotledger.document.DocumentContent;
import org.shotledger.document.Progress;
import org.shotledger.document.Reference;
import org.shotledger.document.Revision;
import org.shotledger.document.Section;
import org.shotledger.evaluate.DayOutcome;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.plan.Plan;
import org.shotledger.spread.Supply;
import org.shotledger.table.Shown;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Says a plan in the order of the customer document. */
public final class PlanDocument {
    private PlanDocument() {}

    /**
     * The document of a plan, in US units and without a revision.
     *
     * @param plan the plan
     * @return the document
     */
    public static CustomerDocument of(Plan plan) {
        return CustomerDocument.of(content(plan, UnitSystem.US, Progress.NONE).build());
    }

    /**
     * An issue of the document of a plan.
     *
     * @param plan the plan
     * @param issue for whom, which revision, in which units, and what came before
     * @return the document
     */
    public static CustomerDocument of(Plan plan, Issue issue) {
        return of(plan, issue, Progress.NONE);
    }

    /**
     * An issue of the document of a plan, with word of how far it is.
     *
     * @param plan the plan
     * @param issue for whom, which revision, in which units, and what came before
     * @param progress hears what begins
     * @return the document
     * @throws java.util.concurrent.CancellationException when the thread was interrupted
     */
    public static CustomerDocument of(Plan plan, Issue issue, Progress progress) {
        DocumentContent.Builder builder =
                content(plan, issue.charts(), progress).between(issue.customer(), issue.author());
        List<String> told = new ArrayList<>(issue.reasons());
        issue.previous().ifPresent(before -> {
            told.addAll(Changes.sentences(before, plan));
            builder.rows(Section.REVISIONS, Changes.plan(before, plan));
            builder.rows(Section.REVISIONS, Changes.sheet(before, plan));
        });
        builder.revision(new Revision(issue.number(), issue.date(), told));
        issue.history().forEach(builder::revision);
        return CustomerDocument.of(builder.build());
    }

    /**
     * The content of that document, for those who want to add to it.
     *
     * @param plan the plan
     * @param units units of charts and tables; what is set by hand shows both
     * @param progress hears what begins
     * @return a builder that already holds every section the plan can fill
     * @throws java.util.concurrent.CancellationException when the thread was interrupted
     */
    public static DocumentContent.Builder content(Plan plan, UnitSystem units, Progress progress) {
        DocumentContent.Builder builder = DocumentContent.titled(
                        "A power plan for " + plan.job().name(), plan.verdict(), summary(plan))
                .in(units == UnitSystem.US ? Shown.US : Shown.SI);
        if (plan.car().invented()) {
            builder.notice("Invented data for a demonstration; not a real car or part.");
        }
        Evidence found = Evidence.of(plan, progress);
        DecisionPage.write(builder, found, units);
        Cards.write(builder, found, units);
        builder.say(Section.TARGET, DecisionPage.asked(plan));
        builder.rows(Section.TARGET, OutcomeTables.cases(plan.job().cases()));
        setup(builder, plan, units);
        limits(builder, plan, units);
        outcomes(builder, plan, units);
        pass(builder, plan, units);
        alternatives(builder, plan, units);
        found.faults()
                .ifPresent(faults ->
                        RiskSection.write(builder, faults, found.drift().orElseThrow(), units));
        found.stepUp().ifPresent(steps -> {
            StepUpSection.flowTests(builder, found.advice());
            StepUpSection.write(builder, steps, units);
        });
        WiringSection.write(builder, plan, units);
        builder.rows(Section.REASONING, LedgerTables.appendix(plan.ledger()));
        builder.rows(Section.REASONING, LedgerTables.letters(plan.ledger()));
        Sources.write(builder, plan);
        return builder.signedBy("engine builder", "customer");
    }

    private static String summary(Plan plan) {
        return (plan.reached() ? "The power asked for is reached" : "The power asked for is not reached")
                + plan.stopped().map(what -> "; more is stopped by " + what).orElse("")
                + plan.closest(1).stream()
                        .findFirst()
                        .map(first -> "; the closest limit of this setup is " + first.name() + " in the case '"
                                + first.caseName() + "' (" + first.place() + "), " + room(first) + ".")
                        .orElse(".");
    }

    private static String room(Limit limit) {
        String share = QuantityKind.FRACTION.text(Math.abs(limit.relativeMargin()), UnitSystem.US);
        return limit.relativeMargin() < 0 ? "broken by " + share : share + " left";
    }

    private static void setup(DocumentContent.Builder builder, Plan plan, UnitSystem charts) {
        ChartPicture boost = Charts.boost(plan, charts);
        builder.say(
                Section.SETUP,
                "Everything that is set by hand stands on the cards, in both units: " + Reference.to(Section.TUNER)
                        + ", "
                        + Reference.to(Section.MECHANIC) + ", " + Reference.to(Section.TRACK)
                        + ". Every figure that follows is worked out for it; " + Reference.to(boost)
                        + " shows the boost table.");
        builder.picture(Section.SETUP, boost);
        if (plan.setup().jets().isPresent()) {
            builder.picture(Section.SETUP, FlowCharts.overBottlePressure(plan.stated(), charts));
            builder.say(
                    Section.SETUP,
                    "The band around the nitrous oxide is where its flow lies nine times out of ten; the hatched one"
                            + " is a fuel jet off its size by "
                            + Both.of(QuantityKind.BORE, Supply.USUAL_BORE_TOLERANCE)
                            + ", common practice, no source.");
            nitrous(builder, plan, charts);
        }
    }

    /** How well the nitrous flow is known, what it does over the bottle's pressure, and what limits it. */
    private static void nitrous(DocumentContent.Builder builder, Plan plan, UnitSystem charts) {
        if (plan.stated().withNitrous().isEmpty()) {
            return;
        }
        plan.outside().forEach(sentence -> builder.say(Section.SETUP, "Outside what was measured: " + sentence));
        builder.picture(Section.SETUP, FlowCharts.againstSquareRoot(plan.stated(), charts));
        builder.say(Section.SETUP, FlowCharts.whyFlatter(plan.stated()));
        builder.rows(Section.SETUP, FlowTables.limiting(plan.stated()));
        builder.rows(Section.SETUP, FlowTables.changes(plan.stated()));
        if (!plan.job().flowTests().isEmpty()) {
            builder.rows(Section.SETUP, FlowTables.tests(plan.job().flowTests()));
            builder.points(Section.SETUP, Cautions.flowTest());
        }
    }

    static void limits(DocumentContent.Builder builder, Plan plan, UnitSystem charts) {
        builder.say(Section.LIMITS, plan.verdictLine());
        ChartPicture margins = Charts.of(plan.limits(), charts);
        builder.say(Section.LIMITS, "The closest limits as bars: " + Reference.to(margins) + ".");
        builder.rows(Section.LIMITS, LimitTables.of(plan.limits()));
        builder.picture(Section.LIMITS, margins);
        builder.rows(Section.LIMITS, LimitTables.reasons(plan.limits()));
        builder.points(Section.LIMITS, LimitTables.hard(plan.limits()));
        List<String> risks = plan.limits().all().stream()
                .filter(limit -> limit.verdict() != Verdict.HOLDS)
                .map(limit -> limit.name() + " is " + limit.verdict().word() + " in the case '" + limit.caseName()
                        + "'; beyond it: " + limit.consequence() + ".")
                .toList();
        if (!risks.isEmpty()) {
            builder.points(Section.LIMITS, risks);
        }
    }

    private static void outcomes(DocumentContent.Builder builder, Plan plan, UnitSystem charts) {
        builder.say(
                Section.OUTCOMES,
                "One setup, " + plan.outcomes().size()
                        + " cases; the first is that of the target, and the verdict is the worst.");
        builder.rows(Section.OUTCOMES, OutcomeTables.outcomes(plan.outcomes()));
        builder.picture(Section.OUTCOMES, Charts.map(plan.stated(), charts));
        builder.rows(Section.OUTCOMES, OutcomeTables.of(plan.stated()));
        String cold = ColdChargeNotes.of(plan.outcomes());
        if (!cold.isEmpty()) {
            builder.say(Section.OUTCOMES, cold);
        }
        if (plan.setup().jets().isPresent()) {
            builder.picture(Section.OUTCOMES, EngineCharts.cylinder(plan.stated(), charts));
        }
    }

    private static void pass(DocumentContent.Builder builder, Plan plan, UnitSystem charts) {
        if (plan.stated().pass().isEmpty()) {
            return;
        }
        PassOutcome pass = plan.stated().pass().get();
        builder.say(Section.PASS, passes(plan, pass));
        builder.picture(Section.PASS, Charts.of(pass, plan.car().limits().bottlePressureLow(), charts));
        builder.rows(Section.PASS, OutcomeTables.of(pass));
        builder.picture(Section.PASS, Charts.mixture(plan, charts));
        builder.rows(Section.PASS, BottleViews.filling(plan));
        List<PassOutcome> passes = plan.passes();
        builder.picture(Section.PASS, DayCharts.mixture(passes, charts));
        builder.picture(Section.PASS, DayCharts.power(passes, charts));
        builder.points(Section.PASS, BottleViews.warnings(plan));
        plan.day().ifPresent(day -> day(builder, plan, day));
    }

    private static void day(DocumentContent.Builder builder, Plan plan, DayOutcome day) {
        builder.say(
                Section.PASS,
                "The day with "
                        + Both.of(
                                QuantityKind.TEMPERATURE,
                                plan.stated().at().air().temperature()) + " in the air and "
                        + Math.round(plan.job().day().rest() / 60) + " minutes between passes: "
                        + String.join(" ", DayViews.sentences(day)));
        DayViews.tables(day).forEach(table -> builder.rows(Section.PASS, table));
        builder.say(Section.PASS, Cautions.BOTTLE);
    }

    private static String passes(Plan plan, PassOutcome pass) {
        int asked = plan.target().passes();
        int given = Math.min(pass.wholePasses(), asked);
        return "One filling gives " + given + " of the " + asked + " passes asked, "
                + Both.of(QuantityKind.MASS, pass.massUsed()) + " in the first; the bottle is brought back to its start"
                + " temperature between them."
                + (given < asked ? " For the rest: a second bottle, less power, or shorter passes." : "");
    }

    private static void alternatives(DocumentContent.Builder builder, Plan plan, UnitSystem charts) {
        if (plan.alternatives().isEmpty()) {
            return;
        }
        builder.rows(Section.ALTERNATIVES, PlanTables.alternatives(plan.alternatives()));
        builder.picture(Section.ALTERNATIVES, Charts.alternatives(plan, charts));
    }
}
