package org.shotledger.table;

import org.shotledger.budget.Verdict;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** What stands in one place of a table. */
public sealed interface Cell {

    /**
     * Words.
     *
     * @param words the words, unescaped
     */
    record Text(String words) implements Cell {}

    /**
     * A quantity.
     *
     * @param value the value, SI; not-a-number is shown as a dash
     * @param kind what it measures
     */
    record Figure(double value, QuantityKind kind) implements Cell {

        /**
         * The number with its unit.
         *
         * @param system the unit system
         * @return for example {@code "65.50 bar gauge"}
         */
        String full(UnitSystem system) {
            return Double.isNaN(value) ? "-" : Units.printed(kind.text(value, system));
        }
    }

    /**
     * A verdict, shown by word and shape.
     *
     * @param verdict the verdict
     */
    record Judged(Verdict verdict) implements Cell {

        /**
         * Shape and word.
         *
         * @return for example {@code "\u25cf holds"}
         */
        String words() {
            return shape() + " " + verdict.word();
        }

        private String shape() {
            return switch (verdict) {
                case HOLDS -> "\u25cf";
                case TIGHT -> "\u25b2";
                case BROKEN -> "\u25a0";
            };
        }
    }
}
