package org.shotledger.chart;

import java.util.Locale;
import java.util.function.Function;

/** Writes the numbers along an axis: as many decimals as they need, thousands apart, the true minus sign. */
final class TickText {
    private TickText() {}

    static String of(Function<Double, String> own, double value) {
        return own != null ? own.apply(value) : of(value);
    }

    static String of(double value) {
        double clean = Math.rint(value * 1e6) / 1e6;
        if (clean == 0) {
            return "0";
        }
        String text = Math.abs(clean) >= 10_000
                ? String.format(Locale.ROOT, "%,.0f", clean)
                : String.format(Locale.ROOT, "%.6f", clean).replaceFirst("\\.?0+$", "");
        return text.replace('-', '\u2212');
    }
}
