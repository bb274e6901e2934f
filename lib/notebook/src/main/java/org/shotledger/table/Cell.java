package org.shotledger.table;

import java.util.Locale;
import org.shotledger.display.Units;
import org.shotledger.limits.Verdict;
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
     * @param change whether it is a change, which is shown with its sign
     */
    record Figure(double value, QuantityKind kind, boolean change) implements Cell {
        /** Digits that may be added to those the trade reads, for figures that would else be shown as nothing. */
        private static final int MORE_DIGITS = 4;

        /**
         * A quantity as it is.
         *
         * @param value the value, SI; not-a-number is shown as a dash
         * @param kind what it measures
         */
        public Figure(double value, QuantityKind kind) {
            this(value, kind, false);
        }

        /**
         * The number with its unit.
         *
         * @param system the unit system
         * @return for example {@code "65.50 bar gauge"}
         */
        String full(UnitSystem system) {
            if (Double.isNaN(value)) {
                return "-";
            }
            String number = (change && value > 0 ? "+" : "") + digits(system);
            String unit = kind.unit(system);
            return unit.isEmpty() ? number : number + " " + Units.printed(unit);
        }

        /** At least two digits that count: a leak of 0.0036 lb is not 0.00 lb. Whole numbers and temperatures stay as they are. */
        private String digits(UnitSystem system) {
            String usual = kind.number(value, system);
            int decimals = usual.length() - 1 - usual.indexOf('.');
            double shown = Math.abs(kind.shown(value, system));
            if (usual.indexOf('.') < 0 || kind == QuantityKind.TEMPERATURE || shown * Math.pow(10, decimals) >= 9.5) {
                return usual;
            }
            int needed = (int) Math.ceil(1 - Math.log10(shown));
            return shown == 0 || needed > decimals + MORE_DIGITS
                    ? usual
                    : String.format(Locale.ROOT, "%." + needed + "f", kind.shown(value, system));
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
