package org.shotledger.view;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;
import org.shotledger.budget.BoostAlone;
import org.shotledger.budget.BottlePlan;
import org.shotledger.budget.Budget;
import org.shotledger.budget.JetChoice;
import org.shotledger.budget.Ledger;
import org.shotledger.budget.Limits;
import org.shotledger.budget.Split;
import org.shotledger.display.Display;
import org.shotledger.display.DisplayRenderer;
import org.shotledger.display.Displayable;
import org.shotledger.table.Shown;

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

    /** Shows limits. */
    public static final class OfLimits extends ResultRenderer<Limits> {
        /** Made by the service loader. */
        public OfLimits() {
            super(Limits.class, (limits, shown) -> Tables.of(limits).in(shown));
        }
    }

    /** Shows a ledger. */
    public static final class OfLedger extends ResultRenderer<Ledger> {
        /** Made by the service loader. */
        public OfLedger() {
            super(Ledger.class, (ledger, shown) -> Tables.of(ledger).in(shown));
        }
    }

    /** Shows a split. */
    public static final class OfSplit extends ResultRenderer<Split> {
        /** Made by the service loader. */
        public OfSplit() {
            super(
                    Split.class,
                    (split, shown) -> View.of(
                            Charts.of(split, shown.first()), Tables.of(split).in(shown)));
        }
    }

    /** Shows a choice of jets. */
    public static final class OfJets extends ResultRenderer<JetChoice> {
        /** Made by the service loader. */
        public OfJets() {
            super(JetChoice.class, (jets, shown) -> Tables.of(jets).in(shown));
        }
    }

    /** Shows what boost gives by itself. */
    public static final class OfBoost extends ResultRenderer<BoostAlone> {
        /** Made by the service loader. */
        public OfBoost() {
            super(BoostAlone.class, (boost, shown) -> Tables.of(boost).in(shown));
        }
    }

    /** Shows a bottle plan. */
    public static final class OfBottle extends ResultRenderer<BottlePlan> {
        /** Made by the service loader. */
        public OfBottle() {
            super(
                    BottlePlan.class,
                    (bottle, shown) -> View.of(Tables.of(bottle).in(shown), Charts.of(bottle, shown.first())));
        }
    }

    /** Shows a whole budget: its verdict, the split, the jets, the limits. */
    public static final class OfBudget extends ResultRenderer<Budget> {
        /** Made by the service loader. */
        public OfBudget() {
            super(
                    Budget.class,
                    (budget, shown) -> View.of(
                            new Sentence(budget.verdictLine()),
                            Charts.of(budget.split(), shown.first()),
                            Tables.of(budget.jets()).in(shown),
                            Tables.of(budget.limits()).in(shown)));
        }
    }
}
