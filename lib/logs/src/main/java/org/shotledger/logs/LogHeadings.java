package org.shotledger.logs;

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
    private final CsvRows rows;
    private final String file;
    private final LogMapping mapping;
    private final LogLayout layout;
    private final Problems problems;
    private final List<Finding> findings;
    private final List<Heading> headings;
    private final ColumnUse[] uses;
    private final Map<LogChannel, String> units = new EnumMap<>(LogChannel.class);

    LogHeadings(
            CsvRows rows,
            String file,
            LogMapping mapping,
            LogLayout layout,
            Problems problems,
            List<Finding> findings) {
        this.rows = rows;
        this.file = file;
        this.mapping = mapping;
        this.layout = layout;
        this.problems = problems;
        this.findings = findings;
        this.headings = of(rows.headings(), layout);
        this.uses = new ColumnUse[headings.size()];
    }

    /** The headings with the units that stand in square or other brackets or in a line under them. */
    static List<Heading> of(List<Heading> written, LogLayout layout) {
        return written.stream()
                .map(h -> {
                    String[] parted =
                            h.unit().isEmpty() ? UnitsRow.parted(h.name()) : new String[] {h.name(), h.unit()};
                    String unit = parted[1].isEmpty() ? layout.unit(h.column()) : parted[1];
                    return new Heading(parted[0], unit, h.column());
                })
                .toList();
    }

    /** The use of each column; null where it has none. */
    ColumnUse[] read() {
        Set<Integer> mapped = new LinkedHashSet<>();
        for (LogColumn column : mapping.columns()) {
            mapped(column, mapped);
        }
        for (Heading heading : headings) {
            if (!mapped.contains(heading.column())) {
                own(heading);
            }
        }
        if (!units.containsKey(LogChannel.TIME) && problems.count() == 0) {
            noTime();
        }
        missing();
        mixed();
        return uses;
    }

    private void noTime() {
        if (mapping.columns().isEmpty()) {
            problem(
                    0,
                    "time",
                    "",
                    "The log has no time; name a column \"time [s]\", or say in a mapping beside the log which of its"
                            + " columns ("
                            + names() + ") is the time; a mapping can be proposed from the headings.");
        } else {
            problems.add(new Problem(
                    mapping.file(),
                    0,
                    0,
                    "channels.time",
                    "",
                    "The mapping names no column as time; add \"time: {column: ...}\" with one of the columns of "
                            + file + " (" + names() + ")."));
        }
    }

    private String names() {
        return Excerpt.of(String.join(", ", headings.stream().map(Heading::name).toList()), 120);
    }

    private void mapped(LogColumn column, Set<Integer> mapped) {
        Optional<Heading> found = headings.stream()
                .filter(h -> h.name().equalsIgnoreCase(column.heading()) || writtenSo(h, column.heading()))
                .findFirst();
        if (found.isEmpty()) {
            problem(
                    column,
                    "column",
                    column.heading(),
                    "The mapping names the column " + Excerpt.quoted(column.heading()) + ", which the log " + file
                            + " has not; "
                            + NearestName.of(
                                            column.heading(),
                                            headings.stream().map(Heading::name).toList())
                                    .map(near -> "the nearest name is " + Excerpt.quoted(near))
                                    .orElse("its columns begin with " + names())
                            + ".");
            return;
        }
        Heading heading = found.get();
        if (!mapped.add(heading.column())) {
            problem(
                    column,
                    "column",
                    column.heading(),
                    "The mapping gives the column " + Excerpt.quoted(column.heading())
                            + " to two channels; keep one of them.");
            return;
        }
        use(heading, column, column.unit().isEmpty() ? heading.unit() : column.unit());
    }

    private boolean writtenSo(Heading heading, String wanted) {
        Heading written = rows.headings().get(heading.column() - 1);
        return written.name().equalsIgnoreCase(wanted)
                || (written.name() + " [" + written.unit() + "]").equalsIgnoreCase(wanted);
    }

    private void own(Heading heading) {
        Optional<LogChannel> channel = LogChannel.named(heading.name());
        if (channel.isEmpty()) {
            unknown(heading);
        } else if (!units.containsKey(channel.get())) {
            use(heading, LogColumn.of(channel.get(), heading.name(), "", Double.NaN), heading.unit());
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

    private void use(Heading heading, LogColumn column, String written) {
        LogChannel channel = column.channel();
        boolean clock = channel == LogChannel.TIME
                && (UnitsRow.isClock(written) || layout.clocks().contains(heading.column()));
        String unit = clock ? "s" : LogUnits.usual(written);
        units.put(channel, unit);
        boolean gauge = channel.kind() == QuantityKind.ABSOLUTE_PRESSURE && FigureText.saysGauge(unit);
        if (gauge && Double.isNaN(mapping.ambient())) {
            problem(
                    heading,
                    column,
                    unit,
                    "The column " + Excerpt.quoted(heading.name())
                            + " is a gauge pressure, and nothing says above which ambient; name it in a file beside"
                            + " the log, such as \"ambient: 0.98 bar abs\".");
            return;
        }
        try {
            UnitName name = FigureText.unit(unit, gauge ? QuantityKind.GAUGE_PRESSURE : channel.kind());
            uses[heading.column() - 1] = new ColumnUse(
                    channel,
                    name,
                    (gauge ? mapping.ambient() : 0) - column.offset(),
                    column.reads() * (Double.isNaN(column.stoichiometric()) ? 1 : column.stoichiometric()),
                    mapping.decimalComma().orElse(layout.comma(heading.column())),
                    column.on(),
                    new Clock());
            undecided(heading, channel);
        } catch (UnitException e) {
            refuseUnit(heading, column, unit, e);
        }
    }

    private void refuseUnit(Heading heading, LogColumn column, String unit, UnitException e) {
        LogChannel channel = column.channel();
        String example = channel.words() + " [" + channel.kind().unit(UnitSystem.SI) + "]";
        problem(
                heading,
                column,
                unit,
                unit.isEmpty()
                        ? "The column " + Excerpt.quoted(heading.name())
                                + " has no unit; write it in brackets, such as \"" + example
                                + "\", or name it in a file beside the log."
                        : "In the heading, " + e.getMessage());
    }

    private void undecided(Heading heading, LogChannel channel) {
        if (layout.undecided().contains(heading.column())
                && mapping.decimalComma().isEmpty()) {
            findings.add(new Finding(
                    Finding.Kind.DECIMAL_UNDECIDED,
                    channel.words(),
                    Double.NaN,
                    Double.NaN,
                    1,
                    "Numbers of " + Excerpt.quoted(heading.name())
                            + " such as 4,201 or 4.201 can be thousands or decimals and nothing in the file tells;"
                            + " they are read with a decimal " + (layout.comma(heading.column()) ? "comma" : "point")
                            + ", say \"decimal: comma\" or \"decimal: point\" in the mapping."));
        }
    }

    /** What is wrong with a heading: at the mapping where that names the column, else at the heading. */
    private void problem(Heading heading, LogColumn column, String found, String sentence) {
        if (column.line() > 0) {
            problem(column, "unit", found, sentence.replace("In the heading, ", ""));
        } else {
            problem(heading.column(), column.channel().words(), found, sentence);
        }
    }

    private void problem(LogColumn column, String field, String found, String sentence) {
        problems.add(new Problem(
                mapping.file(), column.line(), 0, "channels." + column.channel().key() + "." + field, found, sentence));
    }

    private void missing() {
        for (LogNeed need : LogNeed.values()) {
            if (need.usual() && need.channels().stream().noneMatch(units::containsKey)) {
                findings.add(new Finding(
                        Finding.Kind.MISSING_CHANNEL,
                        need.words(),
                        Double.NaN,
                        Double.NaN,
                        1,
                        "The log has no " + need.words() + ": " + need.without() + "."));
            }
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
