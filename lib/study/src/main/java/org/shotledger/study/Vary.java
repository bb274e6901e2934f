package org.shotledger.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.shotledger.nitrous.JetLadder;
import org.shotledger.units.Amount;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * One thing that is varied, and the values it takes.
 *
 * @param path {@link #BOOST}, {@link #NITROUS_JET}, {@link #FUEL_JET}, or the place of a field in the build sheet, for example
 *     {@code "bottle.start-temperature"} or {@code "wet-kit.fuel.regulator.boost-reference"}
 * @param settings its values, in the order in which they are gone through
 */
public record Vary(String path, List<Setting> settings) {
    /** Path of the boost that is held, as a gauge pressure. */
    public static final String BOOST = "boost";
    /** Path of the bore of each nitrous-oxide jet. */
    public static final String NITROUS_JET = "jets.nitrous";
    /** Path of the bore of each fuel jet. */
    public static final String FUEL_JET = "jets.fuel";

    static final List<String> OWN_PATHS = List.of(BOOST, NITROUS_JET, FUEL_JET);
    private static final int MOST_SETTINGS = 100_000;
    private static final Pattern FIGURE =
            Pattern.compile("\\s*([-+]?[0-9]*\\.?[0-9]+(?:[eE][-+]?[0-9]+)?)\\s*(.*?)\\s*");

    /** Checks that there is something to vary and that no value stands twice. */
    public Vary {
        settings = List.copyOf(settings);
        if (settings.isEmpty()) {
            throw new StudyException("The axis \"" + path + "\" is empty; give it at least one value.");
        }
        if (settings.size() > MOST_SETTINGS) {
            throw new StudyException("The axis \"" + path + "\" has " + settings.size() + " values; allowed are "
                    + MOST_SETTINGS + ". Use a wider step.");
        }
        if (new LinkedHashSet<>(settings).size() < settings.size()) {
            throw new StudyException("The axis \"" + path + "\" states a value twice ("
                    + settings.stream().map(Setting::text).collect(Collectors.joining(", "))
                    + "); every combination would be counted twice, remove one.");
        }
    }

    /**
     * An axis of values as a build sheet would state them.
     *
     * @param path what is varied
     * @param texts the values, for example {@code "0"}, {@code "1"}, or {@code "24 thou"}
     * @return the axis
     */
    public static Vary of(String path, String... texts) {
        return new Vary(path, Arrays.stream(texts).map(t -> setting(path, t)).toList());
    }

    /**
     * An axis of evenly spaced values.
     *
     * @param path what is varied
     * @param from the first value with its unit, for example {@code "1.0 bar gauge"}
     * @param to the last value in the same unit
     * @param count how many values, 2 or more
     * @return the axis
     */
    public static Vary range(String path, String from, String to, int count) {
        Matcher low = figure(path, from);
        Matcher high = figure(path, to);
        if (!low.group(2).equals(high.group(2))) {
            throw new StudyException("The axis \"" + path + "\" goes from \"" + from + "\" to \"" + to
                    + "\"; write both ends in the same unit.");
        }
        if (count < 2 || count > MOST_SETTINGS) {
            throw new StudyException("The axis \"" + path + "\" asks for " + count + " values; a range has from 2 to "
                    + MOST_SETTINGS + ".");
        }
        double start = Double.parseDouble(low.group(1));
        double end = Double.parseDouble(high.group(1));
        String unit = low.group(2);
        List<Setting> settings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            settings.add(setting(path, (number(start + (end - start) * i / (count - 1)) + " " + unit).strip()));
        }
        return new Vary(path, settings);
    }

    /**
     * The rungs of a jet ladder between two sizes.
     *
     * @param path {@link #NITROUS_JET} or {@link #FUEL_JET}
     * @param ladder the jets that can be had
     * @param from smallest bore, for example {@code "20 thou"}
     * @param to largest bore
     * @return the axis
     */
    public static Vary ladder(String path, JetLadder ladder, String from, String to) {
        double low = setting(path, from).value() * (1 - 1e-9);
        double high = setting(path, to).value() * (1 + 1e-9);
        List<Setting> rungs = DoubleStream.of(ladder.bores())
                .filter(b -> b >= low && b <= high)
                .mapToObj(b -> new Setting(QuantityKind.BORE.text(b, UnitSystem.US), b))
                .toList();
        if (rungs.isEmpty()) {
            throw new StudyException("The axis \"" + path + "\" from " + from + " to " + to
                    + " holds no rung of the ladder (" + ladder + "); widen it.");
        }
        return new Vary(path, rungs);
    }

    private static Setting setting(String path, String text) {
        if (!OWN_PATHS.contains(path)) {
            return new Setting(text.strip(), Double.NaN);
        }
        QuantityKind kind = path.equals(BOOST) ? QuantityKind.GAUGE_PRESSURE : QuantityKind.BORE;
        try {
            double value = Amount.read(text, kind).si();
            if (!(value > 0)) {
                throw new StudyException("The axis \"" + path + "\" holds \"" + text + "\"; it must be above zero.");
            }
            return new Setting(text.strip(), value);
        } catch (IllegalArgumentException e) {
            throw new StudyException("The axis \"" + path + "\" holds a value that cannot be used: " + e.getMessage());
        }
    }

    private static Matcher figure(String path, String text) {
        Matcher matcher = FIGURE.matcher(text);
        if (!matcher.matches() || !Double.isFinite(Double.parseDouble(matcher.group(1)))) {
            throw new StudyException("The axis \"" + path + "\" has the end \"" + text
                    + "\"; write a finite number and its unit, for example \"1.2 bar gauge\".");
        }
        return matcher;
    }

    private static String number(double value) {
        String plain = String.format(Locale.ROOT, "%.9f", value);
        return plain.replaceFirst("\\.?0+$", "").replaceFirst("^-0$", "0");
    }
}
