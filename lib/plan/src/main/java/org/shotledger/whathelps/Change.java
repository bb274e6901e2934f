package org.shotledger.whathelps;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.shotledger.car.Car;
import org.shotledger.car.Origin;
import org.shotledger.job.Job;
import org.shotledger.units.Amount;
import org.shotledger.units.UnitSystem;

/**
 * One thing that may be changed on a job, with the steps to try.
 *
 * @param words the change in the words of the trade, for example {@code "another nitrous fuel pump beside the first"}
 * @param path the value it changes in the sheet
 * @param cost what it costs
 * @param steps what to make of the value, the smallest step first
 */
public record Change(String words, String path, Cost cost, List<Step> steps) {
    private static final int DIGITS = 5;
    private static final String NUMBER = "([-+]?[0-9.]+(?:[eE][-+]?\\d+)?)";
    /** Number, unit, and the unit of a band behind it, which speaks for both where the number has none. */
    private static final Pattern FIGURE =
            Pattern.compile("\\s*" + NUMBER + "\\s*([^+/\\d].*?)?\\s*(?:\\+/-\\s*" + NUMBER + "\\s*(.*?)\\s*)?");

    /** What a relief disc stands for nobody moves by an entry in a sheet. */
    private static final Set<String> HARD =
            Set.of("limits.relief-share", "bottle.relief-pressure", "bottle.hottest-soak");

    /** Copies the steps; refuses what would move a limit that nobody may move. */
    public Change {
        if (HARD.contains(path)) {
            throw new IllegalArgumentException("The change \"" + words + "\" would move \"" + path
                    + "\", a limit that is not to be moved; change the part, the charge or the target.");
        }
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
         * @return the value as the sheet would state it after the step; empty where there is no such step
         */
        Optional<String> from(Origin old);
    }

    /**
     * A change that multiplies a figure.
     *
     * @param words the change in the words of the trade
     * @param path the value it changes
     * @param cost what it costs
     * @param factors the factors to try
     * @return the change
     */
    public static Change times(String words, String path, Cost cost, double... factors) {
        List<Step> steps = new ArrayList<>();
        for (double factor : factors) {
            steps.add(old -> Optional.of(figure(old, factor, 0)));
        }
        return new Change(words, path, cost, steps);
    }

    /**
     * A change that adds to a figure in the unit in which the sheet states it.
     *
     * @param words the change in the words of the trade
     * @param path the value it changes
     * @param cost what it costs
     * @param added what to add, to try in this order
     * @return the change
     */
    public static Change plus(String words, String path, Cost cost, double... added) {
        List<Step> steps = new ArrayList<>();
        for (double more : added) {
            steps.add(old -> Optional.of(figure(old, 1, more)));
        }
        return new Change(words, path, cost, steps);
    }

    /**
     * A change to another word or figure.
     *
     * @param words the change in the words of the trade
     * @param path the value it changes
     * @param cost what it costs
     * @param texts the new values, to try in this order
     * @return the change
     */
    public static Change to(String words, String path, Cost cost, String... texts) {
        return new Change(
                words,
                path,
                cost,
                Arrays.stream(texts)
                        .map(text -> (Step) old -> Optional.of(text))
                        .toList());
    }

    /**
     * A change to the next larger parts of a catalogue.
     *
     * @param words the change in the words of the trade
     * @param path the value it changes
     * @param cost what it costs
     * @param sizes the sizes that can be had, in any order
     * @param steps how many sizes up to try, at least 1
     * @return the change
     */
    public static Change larger(String words, String path, Cost cost, List<Amount> sizes, int steps) {
        List<Amount> rising =
                sizes.stream().sorted(Comparator.comparingDouble(Amount::value)).toList();
        return new Change(
                words,
                path,
                cost,
                IntStream.range(0, steps)
                        .mapToObj(i -> (Step) old -> rising.stream()
                                .filter(size -> size.value() > old.value())
                                .skip(i)
                                .findFirst()
                                .map(size -> size.kind().text(size.value(), UnitSystem.SI)))
                        .toList());
    }

    /**
     * Whether the sheet states the value.
     *
     * @param job the job
     * @return true when the change can be tried on it
     */
    public boolean fits(Job job) {
        return stated(job.car()).isPresent();
    }

    /** The value in the sheet; empty where it says nothing, be there a default or not. */
    Optional<Origin> stated(Car car) {
        return car.origin(path).filter(o -> o.line() > 0 && o.stated());
    }

    /** A drill's number or a quotient has no number of its own to move: what is multiplied there is what it stands for. */
    private static String figure(Origin old, double factor, double more) {
        Matcher m = FIGURE.matcher(old.text().replace('\u2212', '-').replace("\u00b1", "+/-"));
        if (m.matches()) {
            return (digits(Double.parseDouble(m.group(1)) * factor + more) + " " + unit(m)).trim();
        }
        if (old.kind() == null || more != 0) {
            throw new IllegalArgumentException("The value at \"" + old.path() + "\" is \"" + old.text()
                    + "\"; a change by a figure needs a number with its unit there.");
        }
        return old.kind().text(old.value() * factor, UnitSystem.SI);
    }

    private static String unit(Matcher figure) {
        if (figure.group(2) != null) {
            return figure.group(2);
        }
        String band = figure.group(4);
        return band == null || band.equals("%") ? "" : band;
    }

    private static String digits(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(DIGITS))
                .stripTrailingZeros()
                .toPlainString();
    }
}
