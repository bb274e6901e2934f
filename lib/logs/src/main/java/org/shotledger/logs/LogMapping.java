package org.shotledger.logs;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shotledger.sheet.Found;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Problems;
import org.shotledger.sheet.SheetException;
import org.shotledger.sheet.SheetReading;
import org.shotledger.sheet.SheetSection;
import org.shotledger.sheet.SheetText;
import org.shotledger.sheet.YamlSheet;
import org.shotledger.units.NearestName;
import org.shotledger.units.QuantityKind;

/**
 * How the columns of a log are to be read; written in a file beside it, {@code NAME.log.yaml} for {@code NAME.csv}, or {@code
 * log.yaml} for all logs of a folder:
 *
 * <pre>{@code
 * setup: step 1                # what was run: a step of the step-up plan, "plan", or a job sheet beside the log
 * conditions: event            # the air it was run in, by its name in the sheet; that of the target without it
 * ambient: 0.872 bar abs        # needed where a pressure is gauge
 * lines-before-heading: 3       # what a logger writes before the heading
 * lines-after-heading: 1        # for example a line of units
 * channels:
 *   time: {column: "Time", unit: s}
 *   engine-speed: {column: "Eng Spd", unit: rpm}
 *   lambda: {column: "AFR 1", stoichiometric: 9.8}
 *   manifold-pressure: {column: "MAP", unit: kPa abs}
 * }</pre>
 *
 * <p>Comma, semicolon or tab between the cells, the coding of the text, lines above the headings and a line of units under them need
 * no words: the reader sees them. Nor does the decimal mark; where the file leaves it open, {@code decimal: comma} or {@code decimal:
 * point} settles it. What a sensor was found to read of the truth stands behind its column: {@code lambda: {column: "L1", reads: 1.04}},
 * {@code bottle-pressure: {column: "B", unit: psi gauge, offset: 40 psi}}. {@code nitrous-on: {column: "State", on: "FIRE"}} names a word of its own for on.
 *
 * @param file the file that holds the mapping, as the user named it; empty when there is none
 * @param setup the setup that was run, as the file names it; empty where it does not
 * @param conditions the air it was run in, by its name in the job sheet; empty for that of the target
 * @param ambient pressure around the gauges, Pa absolute; NaN when it is not known
 * @param before lines before the heading that are no table; 0 where they are to be found
 * @param after lines between the heading and the first row; 0 where they are to be found
 * @param decimalComma whether numbers have a decimal comma, where the mapping says it
 * @param columns the channels mapped
 */
public record LogMapping(
        String file,
        String setup,
        String conditions,
        double ambient,
        int before,
        int after,
        Optional<Boolean> decimalComma,
        List<LogColumn> columns) {
    private static final Map<String, Boolean> DECIMAL = Map.of("comma", true, "point", false);
    /** No mapping: headings are the names of the channels, with units in brackets. */
    public static final LogMapping NONE = new LogMapping("", "", "", Double.NaN, 0, 0, Optional.empty(), List.of());

    public LogMapping {
        columns = List.copyOf(columns);
    }

    /**
     * The same with the pressure around the gauges, where the file itself does not name it.
     *
     * @param pascals Pa absolute
     * @return the changed mapping; this one when it knows its own
     */
    public LogMapping withAmbient(double pascals) {
        return Double.isNaN(ambient)
                ? new LogMapping(file, setup, conditions, pascals, before, after, decimalComma, columns)
                : this;
    }

    /**
     * The mapping beside a log.
     *
     * @param log the log's file
     * @return {@code NAME.log.yaml}, or {@code log.yaml}, or {@link #NONE}
     * @throws SheetException when it cannot be used
     */
    public static LogMapping beside(Path log) {
        Path own = ownFile(log);
        Path folders = log.resolveSibling("log.yaml");
        if (Files.isRegularFile(own)) {
            return read(own);
        }
        return Files.isRegularFile(folders) ? read(folders) : NONE;
    }

    /**
     * Where the mapping of one log alone lies.
     *
     * @param log the log's file
     * @return {@code NAME.log.yaml} beside it
     */
    public static Path ownFile(Path log) {
        return log.resolveSibling(log.getFileName().toString().replaceFirst("\\.[^.]*$", "") + ".log.yaml");
    }

    /**
     * Reads a mapping.
     *
     * @param file the file
     * @return the mapping
     * @throws SheetException with everything that is wrong
     */
    public static LogMapping read(Path file) {
        String name = file.getFileName().toString();
        return read(SheetText.read(file, name), name);
    }

    /**
     * Reads a mapping from text.
     *
     * @param text the text
     * @param name the file as the user named it
     * @return the mapping
     * @throws SheetException with everything that is wrong
     */
    public static LogMapping read(String text, String name) {
        SheetReading reading = new SheetReading(name, Path.of(""));
        Problems problems = reading.problems();
        LogMapping made = YamlSheet.read(SheetText.check(text, name), name, problems)
                .map(root -> mapping(SheetSection.root(reading, root), reading))
                .orElse(null);
        problems.throwIfAny();
        if (made == null) {
            throw new SheetException(Problem.of(name, "The mapping cannot be used; write a section \"channels\"."));
        }
        return made;
    }

    private static LogMapping mapping(SheetSection root, SheetReading reading) {
        double ambient =
                root.has("ambient") ? root.figure("ambient", QuantityKind.ABSOLUTE_PRESSURE, 0.5e5, 1.1e5) : Double.NaN;
        String setup = root.textOr("setup", "").strip();
        String conditions = root.textOr("conditions", "").strip();
        int before = root.has("lines-before-heading") ? root.count("lines-before-heading", 0, 500) : 0;
        int after = root.has("lines-after-heading") ? root.count("lines-after-heading", 0, 50) : 0;
        Optional<Boolean> comma = root.has("decimal") ? Optional.of(root.choice("decimal", DECIMAL)) : Optional.empty();
        SheetSection channels = root.section("channels");
        List<LogColumn> columns = channels.namedSections().entrySet().stream()
                .map(entry -> column(channels, entry.getKey(), entry.getValue(), reading))
                .flatMap(Optional::stream)
                .toList();
        channels.make(() -> true);
        return root.make(
                () -> new LogMapping(reading.file(), setup, conditions, ambient, before, after, comma, columns));
    }

    private static Optional<LogColumn> column(
            SheetSection channels, String key, SheetSection section, SheetReading reading) {
        Optional<LogChannel> channel = Arrays.stream(LogChannel.values())
                .filter(c -> c.key().equals(key))
                .findFirst();
        if (channel.isEmpty()) {
            List<String> keys =
                    Arrays.stream(LogChannel.values()).map(LogChannel::key).toList();
            channels.report(
                    key,
                    "This is no channel of a log; "
                            + NearestName.of(key, keys)
                                    .map(near -> "the nearest name is \"" + near + "\"; ")
                                    .orElse("")
                            + "known are " + keys.stream().collect(Collectors.joining(", ")) + ".");
            return Optional.empty();
        }
        String heading = section.text("column");
        String unit = section.textOr("unit", "");
        double stoichiometric = channel.get() == LogChannel.LAMBDA && section.has("stoichiometric")
                ? section.figure("stoichiometric", QuantityKind.RATIO, 2, 35)
                : Double.NaN;
        String on = channel.get() == LogChannel.NITROUS_ON ? section.textOr("on", "") : "";
        double reads = section.has("reads") ? section.figure("reads", QuantityKind.RATIO, 0.5, 2) : 1;
        boolean pressure = channel.get().kind() == QuantityKind.ABSOLUTE_PRESSURE;
        double offset = pressure && section.has("offset")
                ? section.figure("offset", QuantityKind.PRESSURE_DIFFERENCE, -20e5, 20e5)
                : 0;
        Found found = reading.found().get(section.path() + ".column");
        int line = found == null ? 0 : found.line();
        return Optional.ofNullable(section.make(() -> new LogColumn(
                channel.get(), heading.strip(), unit.strip(), stoichiometric, on.strip(), reads, offset, line)));
    }
}
