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
     * @param band how far it is known, SI, of either side; not-a-number where that is not told. No digit is shown that the band
     *     leaves open: the band itself keeps two (JCGM 100, 7.2.6)
     */
    record Figure(double value, QuantityKind kind, boolean change, double band) implements Cell {
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
         * A quantity whose band is not told.
         *
         * @param value the value, SI; not-a-number is shown as a dash
         * @param kind what it measures
         * @param change whether it is a change, which is shown with its sign
         */
        public Figure(double value, QuantityKind kind, boolean change) {
            this(value, kind, change, Double.NaN);
        }

        /** The number alone, for a column whose head has the unit. */
        String number(UnitSystem system) {
            return coarse(system) ? rounded(kind.shown(value, system), needed(system)) : kind.number(value, system);
        }

        private boolean banded() {
            return Double.isFinite(band) && band > 0 && Double.isFinite(value);
        }

        /** Whether the band leaves open digits that the trade reads. */
        private boolean coarse(UnitSystem system) {
            String usual = kind.number(value, system);
            int most = usual.indexOf('.') < 0 ? 0 : usual.length() - 1 - usual.indexOf('.');
            return banded() && needed(system) < most;
        }

        /** Decimals that the two digits of the band need. */
        private int needed(UnitSystem system) {
            return Math.max(0, (int) (1 - Math.floor(Math.log10(shownBand(system)))));
        }

        private double shownBand(UnitSystem system) {
            return Math.abs(kind.shown(value + band, system) - kind.shown(value, system));
        }

        private static String rounded(double value, int decimals) {
            return String.format(Locale.ROOT, "%." + decimals + "f", value);
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
            String number = (change && value > 0 ? "+" : "")
                    + (coarse(system) ? number(system) : digits(system))
                    + (banded() ? " \u00b1 " + rounded(shownBand(system), needed(system)) : "");
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
