package org.shotledger.relief;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shotledger.build.Build;
import org.shotledger.build.Origin;

/**
 * One thing that may be changed on a build, with the steps to try.
 *
 * @param words the change in the words of the trade, for example {@code "another nitrous fuel pump beside the first"}
 * @param path the value it changes in the build sheet
 * @param cost rank of its cost, 1 for a setting, rising with money and labour; only the order counts
 * @param steps what to make of the value, the smallest step first
 */
public record Change(String words, String path, int cost, List<Step> steps) {
    private static final int DIGITS = 5;
    private static final Pattern FIGURE =
            Pattern.compile("\\s*([-+]?[0-9.]+(?:[eE][-+]?\\d+)?)\\s*(.*?)\\s*(?:\\+/-.*)?");

    /** Copies the steps. */
    public Change {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("The change \"" + words + "\" has no steps; give at least one.");
        }
    }

    /** What becomes of a value. */
    public interface Step {
        /**
         * The new text.
         *
         * @param old the value as the sheet states it
         * @return the value as the sheet would state it after the step
         */
        String from(Origin old);
    }

    /**
     * A change that multiplies a figure.
     *
     * @param words the change in the words of the trade
     * @param path the value it changes
     * @param cost rank of its cost
     * @param factors the factors to try
     * @return the change
     */
    public static Change times(String words, String path, int cost, double... factors) {
        List<Step> steps = new ArrayList<>();
        for (double factor : factors) {
            steps.add(old -> figure(old, factor, 0));
        }
        return new Change(words, path, cost, steps);
    }

    /**
     * A change that adds to a figure in the unit in which the sheet states it.
     *
     * @param words the change in the words of the trade
     * @param path the value it changes
     * @param cost rank of its cost
     * @param added what to add, to try in this order
     * @return the change
     */
    public static Change plus(String words, String path, int cost, double... added) {
        List<Step> steps = new ArrayList<>();
        for (double more : added) {
            steps.add(old -> figure(old, 1, more));
        }
        return new Change(words, path, cost, steps);
    }

    /**
     * A change to another word or figure.
     *
     * @param words the change in the words of the trade
     * @param path the value it changes
     * @param cost rank of its cost
     * @param texts the new values, to try in this order
     * @return the change
     */
    public static Change to(String words, String path, int cost, String... texts) {
        return new Change(
                words,
                path,
                cost,
                Arrays.stream(texts).map(text -> (Step) old -> text).toList());
    }

    /**
     * Whether the sheet states the value.
     *
     * @param build the build
     * @return true when the change can be tried on it
     */
    public boolean fits(Build build) {
        return build.origin(path).filter(o -> o.line() > 0).isPresent();
    }

    private static String figure(Origin old, double factor, double more) {
        Matcher m = FIGURE.matcher(old.text());
        if (!m.matches()) {
            throw new IllegalArgumentException("The value at \"" + old.path() + "\" is \"" + old.text()
                    + "\"; a change by a figure needs a number with its unit there.");
        }
        double value = Double.parseDouble(m.group(1)) * factor + more;
        String number = BigDecimal.valueOf(value)
                .round(new MathContext(DIGITS))
                .stripTrailingZeros()
                .toPlainString();
        return (number + " " + m.group(2)).trim();
    }
}
