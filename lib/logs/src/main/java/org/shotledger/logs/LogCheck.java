package org.shotledger.logs;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shotledger.sheet.CsvRows;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;

/** Checks logs and their mappings from the command line: which files are such, and everything that is to be said of them. */
public final class LogCheck {
    private LogCheck() {}

    /**
     * What came of checking one file.
     *
     * @param problems why it cannot be used; empty when it can
     * @param findings what a reader of a usable log should know; empty for a mapping
     */
    public record Result(List<Problem> problems, List<Finding> findings) {

        public Result {
            problems = List.copyOf(problems);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Tells whether a file is a log or the mapping of one.
     *
     * @param file any file
     * @return true for {@code log.yaml} and {@code *.log.yaml}, for a table with such a mapping that names a column of it as time, and
     *     for a table with a column "time", or whose headings and values show a time and an engine speed
     */
    public static boolean knows(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (!Files.isRegularFile(file)) {
            return false;
        }
        return name.equals("log.yaml") || name.endsWith(".log.yaml") || (name.endsWith(".csv") && isLog(file));
    }

    private static boolean isLog(Path file) {
        LogMapping mapping;
        try {
            mapping = LogMapping.beside(file);
        } catch (SheetException unusable) {
            return Files.isRegularFile(LogMapping.ownFile(file));
        }
        String time = mapping.columns().stream()
                .filter(c -> c.channel() == LogChannel.TIME)
                .map(LogColumn::heading)
                .findFirst()
                .orElse(LogChannel.TIME.words());
        try (BufferedReader text = LogText.open(file)) {
            LogLayout layout = LayoutSearch.of(LogSample.of(text), mapping.before(), mapping.after());
            try (CsvRows rows = CsvRows.open(text, name(file), layout.delimiter(), layout.before())) {
                boolean named = LogHeadings.of(rows.headings(), layout).stream()
                        .anyMatch(h -> h.name().equalsIgnoreCase(time));
                return named || (mapping.columns().isEmpty() && looksLikeOne(file));
            }
        } catch (SheetException | IOException | UncheckedIOException unusable) {
            return false;
        }
    }

    /** Whether a table whose headings nobody has mapped shows a time and an engine speed. */
    private static boolean looksLikeOne(Path file) {
        List<LogChannel> shown = MappingProposal.of(file).channels().stream()
                .filter(p -> p.confidence() != Certainty.DOUBTFUL)
                .map(p -> p.column().channel())
                .toList();
        return shown.contains(LogChannel.TIME) && shown.contains(LogChannel.ENGINE_SPEED);
    }

    /**
     * Checks a log or a mapping.
     *
     * @param file a file that {@link #knows} says yes to
     * @return what is wrong with it
     */
    public static Result file(Path file) {
        try {
            if (name(file).toLowerCase(Locale.ROOT).endsWith(".yaml")) {
                LogMapping.read(file);
                return new Result(List.of(), List.of());
            }
            LogFindings findings = EngineLog.read(file).findings();
            List<Finding> all = new ArrayList<>(findings.all());
            all.addAll(LaterSteps.missed(findings, PullRule.USUAL));
            return new Result(List.of(), all);
        } catch (SheetException e) {
            return new Result(e.problems(), List.of());
        }
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
