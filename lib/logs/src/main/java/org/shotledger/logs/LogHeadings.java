package org.shotledger.logs;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shotledger.sheet.CsvRows;
import org.shotledger.sheet.CsvRows.Heading;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Problems;
import org.shotledger.units.Excerpt;
import org.shotledger.units.FigureText;
import org.shotledger.units.NearestName;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitException;
import org.shotledger.units.UnitName;
import org.shotledger.units.UnitSystem;

/** Finds out what each column of a log holds; says which it does not know and which are missing. */
final class LogHeadings {
    private static final List<LogChannel> COMPARED = List.of(
            LogChannel.ENGINE_SPEED,
            LogChannel.MANIFOLD_PRESSURE,
            LogChannel.LAMBDA,
            LogChannel.BOTTLE_PRESSURE,
            LogChannel.NITROUS_FUEL_PRESSURE,
            LogChannel.NITROUS_ON);

    private final CsvRows rows;
    private final String file;
    private final LogMapping mapping;
    private final Problems problems;
    private final List<Finding> findings;
    private final ColumnUse[] uses;
    private final Map<LogChannel, String> units = new EnumMap<>(LogChannel.class);

    LogHeadings(CsvRows rows, String file, LogMapping mapping, Problems problems, List<Finding> findings) {
        this.rows = rows;
        this.file = file;
        this.mapping = mapping;
        this.problems = problems;
        this.findings = findings;
        this.uses = new ColumnUse[rows.headings().size()];
    }

    /** The use of each column; null where it has none. */
    ColumnUse[] read() {
        Set<Integer> mapped = new LinkedHashSet<>();
        for (LogColumn column : mapping.columns()) {
            mapped(column, mapped);
        }
        for (Heading heading : rows.headings()) {
            if (!mapped.contains(heading.column())) {
                own(heading);
            }
        }
        if (!units.containsKey(LogChannel.TIME) && problems.count() == 0) {
            problem(
                    0,
                    "time",
                    "",
                    "The log has no time; add a column \"time [s]\", or map one as \"time\" in a file beside the log.");
        }
        missing();
        mixed();
        return uses;
    }

    private void mapped(LogColumn column, Set<Integer> mapped) {
        Optional<Heading> found = rows.headings().stream()
                .filter(h -> h.name().equalsIgnoreCase(column.heading()))
                .findFirst();
        if (found.isEmpty()) {
            List<String> names = rows.headings().stream().map(Heading::name).toList();
            problem(
                    0,
                    column.channel().key(),
                    column.heading(),
                    "The mapping names the column " + Excerpt.quoted(column.heading()) + ", which the log has not; "
                            + NearestName.of(column.heading(), names)
                                    .map(near -> "the nearest name is " + Excerpt.quoted(near))
                                    .orElse("its columns begin with " + Excerpt.of(String.join(", ", names), 120))
                            + ".");
            return;
        }
        Heading heading = found.get();
        if (!mapped.add(heading.column())) {
            problem(
                    heading.column(),
                    column.channel().key(),
                    column.heading(),
                    "The mapping gives the column " + Excerpt.quoted(column.heading())
                            + " to two channels; keep one of them.");
            return;
        }
        use(
                heading,
                column.channel(),
                column.unit().isEmpty() ? heading.unit() : column.unit(),
                column.stoichiometric());
    }

    private void own(Heading heading) {
        Optional<LogChannel> channel = LogChannel.named(heading.name());
        if (channel.isEmpty()) {
            unknown(heading);
        } else if (!units.containsKey(channel.get())) {
            use(heading, channel.get(), heading.unit(), Double.NaN);
        } else if (mapping.columns().stream().noneMatch(c -> c.channel() == channel.get())) {
            problem(
                    heading.column(),
                    channel.get().words(),
                    heading.name(),
                    "The column " + Excerpt.quoted(heading.name()) + " stands twice; keep one of them.");
        }
    }

    private void unknown(Heading heading) {
        String near = NearestName.of(heading.name(), LogChannel.names())
                .map(name -> "the nearest name is \"" + name + "\"")
                .orElse("map it in a file beside the log if it is wanted");
        findings.add(new Finding(
                Finding.Kind.UNKNOWN_COLUMN,
                Excerpt.of(heading.name()),
                Double.NaN,
                Double.NaN,
                1,
                "The column " + Excerpt.quoted(heading.name()) + " (column " + heading.column()
                        + ") is no channel and is left out; " + near + "."));
    }

    private void use(Heading heading, LogChannel channel, String unit, double stoichiometric) {
        units.put(channel, unit);
        boolean gauge = channel.kind() == QuantityKind.ABSOLUTE_PRESSURE && FigureText.saysGauge(unit);
        if (gauge && Double.isNaN(mapping.ambient())) {
            problem(
                    heading.column(),
                    channel.words(),
                    unit,
                    "The column " + Excerpt.quoted(heading.name())
                            + " is a gauge pressure, and nothing says above which ambient; name it in a file beside the log,"
                            + " such as \"ambient: 0.98 bar abs\".");
            return;
        }
        try {
            UnitName name = FigureText.unit(unit, gauge ? QuantityKind.GAUGE_PRESSURE : channel.kind());
            double divisor = Double.isNaN(stoichiometric) ? 1 : stoichiometric;
            uses[heading.column() - 1] = new ColumnUse(channel, name, gauge ? mapping.ambient() : 0, divisor);
        } catch (UnitException e) {
            String example = channel.words() + " [" + channel.kind().unit(UnitSystem.SI) + "]";
            problem(
                    heading.column(),
                    channel.words(),
                    unit,
                    unit.isEmpty()
                            ? "The column " + Excerpt.quoted(heading.name())
                                    + " has no unit; write it in brackets, such as \"" + example
                                    + "\", or name it in a file beside the log."
                            : "In the heading, " + e.getMessage());
        }
    }

    private void missing() {
        List<String> absent = new ArrayList<>(COMPARED.stream()
                .filter(c -> !units.containsKey(c))
                .map(LogChannel::words)
                .toList());
        if (EngineLog.POWERS.stream().noneMatch(units::containsKey)) {
            absent.add("power or torque");
        }
        if (!absent.isEmpty()) {
            findings.add(new Finding(
                    Finding.Kind.MISSING_CHANNEL,
                    String.join(", ", absent),
                    Double.NaN,
                    Double.NaN,
                    absent.size(),
                    "The log has no " + String.join(", no ", absent)
                            + "; what rests on it cannot be compared with a plan."));
        }
    }

    private void mixed() {
        Map<String, Set<String>> byKind = new java.util.TreeMap<>();
        units.forEach((channel, unit) -> {
            if (channel != LogChannel.TIME && !unit.isEmpty()) {
                byKind.computeIfAbsent(channel.kind().dimension().words(), k -> new LinkedHashSet<>())
                        .add(unit);
            }
        });
        byKind.forEach((kind, names) -> {
            if (names.size() > 1) {
                findings.add(new Finding(
                        Finding.Kind.MIXED_UNITS,
                        kind,
                        Double.NaN,
                        Double.NaN,
                        names.size(),
                        "The log states " + kind + " in "
                                + names.stream().map(Excerpt::of).collect(Collectors.joining(" and in "))
                                + "; each column is converted by its own unit, check that each is right."));
            }
        });
    }

    private void problem(int column, String field, String found, String sentence) {
        problems.add(new Problem(file, rows.headingLine(), column, field, found, sentence));
    }
}
