package org.shotledger.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.shotledger.display.Display;
import org.shotledger.display.DisplayRenderer;
import org.shotledger.display.Displayable;
import org.shotledger.document.Cautions;
import org.shotledger.evaluate.DayOutcome;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.plan.Attainable;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.table.Shown;
import org.shotledger.whathelps.WhatHelps;

/**
 * Shows a result in the units of the session. The nested classes are what the service loader finds, one a type.
 *
 * @param <T> the type of the result
 */
public abstract class ResultRenderer<T> implements DisplayRenderer<T> {
    private final Class<T> type;
    private final BiFunction<T, Shown, Displayable> look;

    ResultRenderer(Class<T> type, BiFunction<T, Shown, Displayable> look) {
        this.type = type;
        this.look = look;
    }

    @Override
    public final Class<T> type() {
        return type;
    }

    @Override
    public final Map<String, Object> render(T value) {
        Displayable shown = look.apply(value, Viewing.units());
        Map<String, Object> forms = new LinkedHashMap<>();
        forms.put(Display.TEXT, shown.toText());
        forms.put(Display.HTML, shown.toHtml());
        return forms;
    }

    /** What of the flows is an extrapolation, in words behind a verdict. */
    private static String outside(Plan plan) {
        return plan.outside().isEmpty() ? "" : " Outside what was measured: " + String.join(" ", plan.outside());
    }

    /** Shows limits. */
    public static final class OfLimits extends ResultRenderer<Limits> {
        /** Made by the service loader. */
        public OfLimits() {
            super(Limits.class, (limits, shown) -> LimitTables.of(limits).in(shown));
        }
    }

    /** Shows one limit, or a list of them, as a table with units. */
    public static final class OfLimit extends ResultRenderer<Limit> {
        /** Made by the service loader. */
        public OfLimit() {
            super(
                    Limit.class,
                    (limit, shown) -> LimitTables.of(new Limits(List.of(limit))).in(shown));
        }

        @Override
        public Map<String, Object> renderAll(List<Limit> values) {
            return new OfLimits().render(new Limits(values));
        }
    }

    /** Shows a setup: the settings, and the boost over engine speed. */
    public static final class OfSetup extends ResultRenderer<Setup> {
        /** Made by the service loader. */
        public OfSetup() {
            super(
                    Setup.class,
                    (setup, shown) -> View.of(
                            SetupTables.of(setup).in(shown),
                            SetupTables.boost(setup).in(shown)));
        }
    }

    /** Shows an outcome: power over engine speed as chart and table, then its limits. */
    public static final class OfOutcome extends ResultRenderer<Outcome> {
        /** Made by the service loader. */
        public OfOutcome() {
            super(
                    Outcome.class,
                    (outcome, shown) -> View.of(
                            Charts.of(outcome, shown.first()),
                            OutcomeTables.of(outcome).in(shown),
                            LimitTables.of(outcome.limits()).in(shown),
                            new Sentence(ColdChargeNotes.of(List.of(outcome)))));
        }
    }

    /** Shows a pass. */
    public static final class OfPass extends ResultRenderer<PassOutcome> {
        /** Made by the service loader. */
        public OfPass() {
            super(
                    PassOutcome.class,
                    (pass, shown) -> View.of(
                            Charts.of(pass, Double.NaN, shown.first()),
                            OutcomeTables.of(pass).in(shown)));
        }
    }

    /** Shows a day with the bottles. */
    public static final class OfDay extends ResultRenderer<DayOutcome> {
        /** Made by the service loader. */
        public OfDay() {
            super(
                    DayOutcome.class,
                    (day, shown) -> View.of(
                            new Sentence(String.join(" ", DayViews.sentences(day))),
                            View.of(DayViews.tables(day).stream()
                                    .map(table -> table.in(shown))
                                    .toArray(Displayable[]::new)),
                            new Sentence(Cautions.BOTTLE)));
        }
    }

    /** Shows the most power there is. */
    public static final class OfAttainable extends ResultRenderer<Attainable> {
        /** Made by the service loader. */
        public OfAttainable() {
            super(Attainable.class, (most, shown) -> PlanTables.of(most).in(shown));
        }
    }

    /** Shows what would help. */
    public static final class OfHelps extends ResultRenderer<WhatHelps> {
        /** Made by the service loader. */
        public OfHelps() {
            super(WhatHelps.class, (helps, shown) -> PlanTables.of(helps).in(shown));
        }
    }

    /** Shows a whole plan: its verdict, power over engine speed, the setup, every case and every limit. */
    public static final class OfPlan extends ResultRenderer<Plan> {
        /** Made by the service loader. */
        public OfPlan() {
            super(
                    Plan.class,
                    (plan, shown) -> View.of(
                            new Sentence(plan.verdictLine() + outside(plan)),
                            Charts.of(plan, shown.first()),
                            SetupTables.of(plan.setup()).in(shown),
                            OutcomeTables.outcomes(plan.outcomes()).in(shown),
                            LimitTables.of(plan.limits()).in(shown),
                            new Sentence(ColdChargeNotes.of(plan.outcomes())),
                            new Sentence(Cautions.SHORT)));
        }
    }
}
