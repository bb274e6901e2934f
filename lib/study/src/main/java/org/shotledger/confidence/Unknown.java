package org.shotledger.confidence;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shotledger.build.Build;
import org.shotledger.build.Origin;
import org.shotledger.units.NearestName;

/**
 * Something about a plan that is not known exactly.
 *
 * @param path a field of the build sheet, {@link #BOOST}, {@link #NITROUS_JET} or {@link #FUEL_JET}
 * @param unit unit in which the distribution counts, as the sheet writes it; empty for a factor or a pure number
 * @param distribution for a field the value itself, for boost the error of its control in bar, for a jet the factor on its bore
 * @param effort what it takes to halve the uncertainty, in any unit that is the same for all, for example hours; above zero
 */
public record Unknown(String path, String unit, Distribution distribution, double effort) {
    /** The boost that is really held: an error in bar added to the planned one at every speed. */
    public static final String BOOST = "boost";
    /** The bore of all nitrous jets: a factor, near 1. */
    public static final String NITROUS_JET = "jets.nitrous";
    /** The bore of all fuel jets: a factor, near 1. */
    public static final String FUEL_JET = "jets.fuel";

    private static final List<String> OWN = List.of(BOOST, NITROUS_JET, FUEL_JET);
    private static final Pattern FIGURE = Pattern.compile("\\s*([-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)\\s*(.*?)\\s*");

    /** Checks the effort. */
    public Unknown {
        if (!(effort > 0 && Double.isFinite(effort))) {
            throw new IllegalArgumentException(
                    "The effort to know \"" + path + "\" better is " + effort + "; give a finite number above zero.");
        }
    }

    /**
     * Everything the sheet states with {@code +/-}, each as a rectangular distribution of that half-width (JCGM 100:2008, 4.3.7).
     *
     * @param build the build
     * @return the unknowns in the order of the sheet, each with an effort of 1
     */
    public static List<Unknown> stated(Build build) {
        return build.origins().values().stream()
                .filter(o -> o.uncertainty() > 0)
                .map(o -> stated(build, o))
                .toList();
    }

    private static Unknown stated(Build build, Origin origin) {
        Matcher value = figure(origin.path(), withoutBand(origin));
        double number = Double.parseDouble(value.group(1));
        String unit = value.group(2);
        double next = build.with(origin.path(), text(number * 1.001, unit))
                .origin(origin.path())
                .orElseThrow()
                .value();
        double perSi = 0.001 * number / (next - origin.value());
        double half = origin.uncertainty() * Math.sqrt(3) * perSi;
        return new Unknown(origin.path(), unit, Distribution.uniform(number - half, number + half), 1);
    }

    /**
     * A field of the sheet with any distribution.
     *
     * @param build the build
     * @param path the field, for example {@code "bottle.start-temperature"}
     * @param distribution distribution of its number, in the unit in which the sheet states it
     * @return the unknown with an effort of 1
     * @throws IllegalArgumentException when the sheet has no such field; the nearest name is offered
     */
    public static Unknown field(Build build, String path, Distribution distribution) {
        Origin origin = build.origin(path)
                .orElseThrow(() -> new IllegalArgumentException("\"" + path
                        + "\" is not a field of the build sheet of " + build.name() + "."
                        + NearestName.of(path, build.origins().keySet())
                                .map(n -> " Did you mean \"" + n + "\"?")
                                .orElse(" Name a field as it stands in the sheet.")));
        return new Unknown(path, figure(path, withoutBand(origin)).group(2), distribution, 1);
    }

    /**
     * Boost or a jet with any distribution.
     *
     * @param path {@link #BOOST}, {@link #NITROUS_JET} or {@link #FUEL_JET}
     * @param distribution error in bar, or factor on the bore
     * @return the unknown with an effort of 1
     */
    public static Unknown own(String path, Distribution distribution) {
        if (!OWN.contains(path)) {
            throw new IllegalArgumentException(
                    "\"" + path + "\" is none of " + OWN + "; for a field of the sheet use field.");
        }
        return new Unknown(path, path.equals(BOOST) ? "bar" : "", distribution, 1);
    }

    /**
     * The same with another effort.
     *
     * @param other effort to halve its uncertainty
     * @return the changed unknown
     */
    public Unknown withEffort(double other) {
        return new Unknown(path, unit, distribution, other);
    }

    /** The value as the sheet would state it. */
    String text(double number) {
        return text(number, unit);
    }

    /**
     * The range that holds it nine times out of ten.
     *
     * @return path and range in words
     */
    public String range() {
        return path + ", " + band();
    }

    /**
     * The same for a chart or a table.
     *
     * @return for example {@code "base pull, wheel power: 576.5 to 603.5 hp"}
     */
    public String words() {
        String name = switch (path) {
            case BOOST -> "boost held, error";
            case NITROUS_JET -> "nitrous jets, bore times";
            case FUEL_JET -> "fuel jets, bore times";
            default -> path.replace(".", ", ").replace('-', ' ');
        };
        return name + ": " + band();
    }

    private String band() {
        return String.format(
                        Locale.ROOT, "%.4g to %.4g %s", distribution.quantile(0.05), distribution.quantile(0.95), unit)
                .strip();
    }

    private static String text(double number, String unit) {
        return (String.format(Locale.ROOT, "%.12g", number) + " " + unit).strip();
    }

    private static String withoutBand(Origin origin) {
        int band = origin.text().indexOf("+/-");
        return band < 0 ? origin.text() : origin.text().substring(0, band);
    }

    private static Matcher figure(String path, String text) {
        Matcher matcher = FIGURE.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("The field \"" + path + "\" stands as \"" + text
                    + "\"; only a number with a unit can have a distribution.");
        }
        return matcher;
    }
}
