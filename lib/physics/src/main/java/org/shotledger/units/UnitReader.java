package org.shotledger.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds the unit a writer named, for the kind of quantity that is wanted. */
final class UnitReader {
    private static final Map<String, List<String>> AMBIGUOUS = Map.of(
            "gal", List.of("US gal", "imp gal"),
            "gal/h", List.of("US gal/h", "imp gal/h"),
            "gal/min", List.of("US gal/min", "imp gal/min"),
            "gph", List.of("US gal/h", "imp gal/h"),
            "gpm", List.of("US gal/min", "imp gal/min"),
            "oz", List.of("oz avdp", "US fl oz", "imp fl oz"),
            "fl oz", List.of("US fl oz", "imp fl oz"),
            "lb/gal", List.of("lb/US gal"),
            "mil", List.of("thou", "mm"));

    private static final Pattern GAUGE = Pattern.compile("\\b(psi|bar)g\\b");
    private static final Pattern ABSOLUTE = Pattern.compile("\\b(psi|bar)a\\b");
    private static final Pattern OVER = Pattern.compile("\\s*/\\s*");
    private static final Pattern SPACES = Pattern.compile("\\s+");

    private UnitReader() {}

    /** The unit of {@code written}, fit for {@code kind}; {@code quoted} is the whole figure for the message. */
    static UnitName read(String written, QuantityKind kind, String number, String quoted) {
        String text = normal(written);
        String reference = reference(text);
        String bare = reference.isEmpty() ? text : text.substring(0, text.lastIndexOf(' '));
        refuseAmbiguous(bare, kind, number, quoted);
        UnitName unit = bare.isEmpty() ? null : UnitTable.get().find(bare);
        if (unit == null) {
            throw bare.isEmpty()
                    ? missing(kind, number, quoted)
                    : bare.contains(" at ") ? conditional(bare, number, quoted) : unknown(bare, kind, quoted);
        }
        if (unit.dimension() != kind.dimension()) {
            throw new UnitException(quoted + " is " + unit.dimension().words() + "; "
                    + kind.dimension().words() + " is wanted, " + units(kind) + ".");
        }
        checkReference(unit, reference, kind, number, quoted);
        return kind == QuantityKind.TEMPERATURE_DIFFERENCE
                ? new UnitName(unit.name(), unit.dimension(), unit.factor(), 0, List.of())
                : unit;
    }

    static String normal(String unit) {
        String plain = unit.strip()
                .replace('·', ' ')
                .replace('*', ' ')
                .replace("²", "2")
                .replace("³", "3")
                .replace("^", "")
                .replace("℃", "degC")
                .replace("℉", "degF")
                .replace("°", "deg");
        String gauge = GAUGE.matcher(plain).replaceAll("$1 gauge");
        String abs = ABSOLUTE.matcher(gauge).replaceAll("$1 abs");
        String over = OVER.matcher(abs).replaceAll("/");
        return SPACES.matcher(over).replaceAll(" ");
    }

    private static String reference(String unit) {
        if (unit.endsWith(" gauge")) {
            return "gauge";
        }
        if (unit.endsWith(" abs") || unit.endsWith(" absolute")) {
            return "abs";
        }
        return unit.endsWith(" difference") ? "difference" : "";
    }

    private static void refuseAmbiguous(String unit, QuantityKind kind, String number, String quoted) {
        List<String> choices = AMBIGUOUS.get(unit);
        if (choices == null) {
            return;
        }
        List<String> fitting = choices.stream()
                .filter(c -> UnitTable.get().find(c).dimension() == kind.dimension())
                .toList();
        throw new UnitException(quoted + " does not say which \"" + unit + "\"; write "
                + choices(number, fitting.isEmpty() ? choices : fitting) + ".");
    }

    private static void checkReference(
            UnitName unit, String reference, QuantityKind kind, String number, String quoted) {
        String u = unit.name();
        switch (kind) {
            case GAUGE_PRESSURE -> {
                if (reference.isEmpty()) {
                    throw which(number, u, quoted);
                }
                require(reference.equals("gauge"), quoted, "a gauge pressure", number + " " + u + " gauge");
            }
            case ABSOLUTE_PRESSURE -> {
                if (reference.isEmpty() && !u.equals("hPa") && !u.equals("Pa")) {
                    throw which(number, u, quoted);
                }
                require(
                        reference.isEmpty() || reference.equals("abs"),
                        quoted,
                        "an absolute pressure",
                        number + " " + u + " abs");
            }
            case PRESSURE_DIFFERENCE ->
                require(
                        reference.isEmpty() || reference.equals("difference"),
                        quoted,
                        "a difference of two pressures",
                        number + " " + u);
            case TEMPERATURE_DIFFERENCE ->
                require(
                        u.equals("K") || reference.equals("difference"),
                        quoted,
                        "a difference of two temperatures",
                        number + " " + u + " difference");
            default ->
                require(
                        reference.isEmpty(),
                        quoted,
                        kind.dimension().words() + " without \"" + reference + "\"",
                        number + " " + u);
        }
    }

    private static UnitException which(String number, String unit, String quoted) {
        return new UnitException(quoted + " does not say which pressure; write "
                + choices(number, List.of(unit + " gauge", unit + " abs")) + ".");
    }

    private static void require(boolean kept, String quoted, String wanted, String example) {
        if (!kept) {
            throw new UnitException(quoted + " is of another kind; " + wanted + " is wanted, written like \"" + example
                    + "\" (convert the number if it was meant otherwise).");
        }
    }

    private static UnitException missing(QuantityKind kind, String number, String quoted) {
        List<String> names = names(kind);
        List<String> examples = names.subList(0, Math.min(2, names.size()));
        return new UnitException(quoted + " has no unit; write "
                + kind.dimension().words() + " such as " + choices(number, examples) + ".");
    }

    private static UnitException conditional(String unit, String number, String quoted) {
        String alone = (number + " " + unit.substring(0, unit.indexOf(" at "))).strip();
        return new UnitException(quoted + " says under which condition it holds; write \"" + alone
                + "\" and the condition as a value of its own beside it, for an injector \"test-pressure\".");
    }

    private static UnitException unknown(String unit, QuantityKind kind, String quoted) {
        List<String> spellings = new ArrayList<>();
        for (UnitName known : UnitTable.get().of(kind.dimension())) {
            spellings.add(known.name());
            spellings.addAll(known.spellings());
        }
        spellings.removeIf(String::isEmpty);
        Optional<String> nearest = NearestName.of(unit, spellings);
        return new UnitException(quoted + " has the unknown unit \"" + unit + "\"; "
                + nearest.map(name -> "the nearest name is \"" + name + "\"; ").orElse("")
                + kind.dimension().words() + " is written " + units(kind) + ".");
    }

    private static String choices(String number, List<String> units) {
        return units.stream().map(u -> "\"" + (number + " " + u).strip() + "\"").collect(Collectors.joining(" or "));
    }

    private static String units(QuantityKind kind) {
        return kind.dimension() == Dimension.NUMBER ? "without a unit or in %" : "in " + String.join(", ", names(kind));
    }

    /** The names for a kind, the customary ones first, with the words a kind of pressure needs. */
    static List<String> names(QuantityKind kind) {
        String suffix = switch (kind) {
            case GAUGE_PRESSURE -> " gauge";
            case ABSOLUTE_PRESSURE -> " abs";
            default -> "";
        };
        return UnitTable.get().of(kind.dimension()).stream()
                .map(unit -> suffixed(unit.name(), suffix, kind))
                .filter(name -> !name.isEmpty())
                .toList();
    }

    private static String suffixed(String unit, String suffix, QuantityKind kind) {
        if (kind == QuantityKind.TEMPERATURE_DIFFERENCE && !unit.equals("K")) {
            return unit + " difference";
        }
        return unit + suffix;
    }
}
