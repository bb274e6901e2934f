package org.shotledger.fuzz;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.shotledger.ipynb.Notebook;
import org.shotledger.ipynb.NotebookCell;
import org.shotledger.ipynb.NotebookException;
import org.shotledger.ipynb.Output;
import org.shotledger.job.Job;
import org.shotledger.job.TableKind;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.logs.LogMapping;
import org.shotledger.logs.OnInterval;
import org.shotledger.logs.Pull;
import org.shotledger.logs.PullRule;
import org.shotledger.sheet.CsvTable;
import org.shotledger.sheet.Problems;
import org.shotledger.sheet.SheetException;
import org.shotledger.sheet.SheetText;
import org.shotledger.sheet.YamlSheet;
import org.shotledger.units.FigureText;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitException;

/**
 * Every reader of the project as a function of bytes. Whatever the bytes, it answers, or refuses in one sentence with its
 * own exception; anything else is a finding. What was answered must hold what the reader promises.
 */
final class ReaderTargets {
    /** The demonstration's folder, which holds the tables its sheet names. */
    static final Path HERON = Path.of("../../data/whimbrel");

    private static final LogMapping MAPPING =
            LogMapping.read(HERON.resolve("logs").resolve("log.yaml"));
    private static final QuantityKind[] KINDS = QuantityKind.values();
    private static final TableKind[] TABLES = TableKind.values();

    private ReaderTargets() {}

    /** A figure with its unit; the first byte chooses the kind wanted. */
    static void figures(byte[] bytes) {
        QuantityKind kind = KINDS[first(bytes) % KINDS.length];
        String text = rest(bytes);
        try {
            double si = FigureText.read(text, kind).value();
            require(Double.isFinite(si), "not finite: " + si);
            require(si == FigureText.read(text, kind).value(), "another value the second time");
        } catch (UnitException refused) {
            wellSaid(refused.getMessage());
        }
    }

    /** The YAML of a sheet, without its meaning. */
    static void yaml(byte[] bytes) {
        try {
            Problems problems = new Problems();
            Optional<?> root = YamlSheet.read(SheetText.decode(bytes, "f.yaml"), "f.yaml", problems);
            require(root.isPresent() || problems.count() > 0, "neither an answer nor a reason");
            problems.list().forEach(p -> wellSaid(p.sentence()));
        } catch (SheetException refused) {
            wellSaid(refused);
        }
    }

    /** A whole job sheet with the tables of the demonstration. */
    static void sheets(byte[] bytes) {
        try {
            Job build = Job.read(SheetText.decode(bytes, "f.yaml"), HERON);
            require(build.equals(Job.read(build.source().text(), HERON)), "read again it is another build");
        } catch (SheetException refused) {
            wellSaid(refused);
        }
    }

    /** A table; the first byte chooses the kind. */
    static void tables(byte[] bytes) {
        TableKind kind = TABLES[first(bytes) % TABLES.length];
        try {
            CsvTable table = CsvTable.read(new StringReader(rest(bytes)), "f.csv", kind.columns());
            kind.columns().stream()
                    .filter(c -> table.has(c.name()))
                    .forEach(c -> require(
                            Arrays.stream(table.column(c.name())).allMatch(v -> v >= c.low() && v <= c.high()),
                            "out of range"));
            kind.use("f", table);
        } catch (SheetException refused) {
            wellSaid(refused);
        }
    }

    /** A log, by its own headings or by the demonstration's mapping, or a mapping; the first byte chooses. What is read is looked through. */
    static void logs(byte[] bytes) {
        int kind = first(bytes) % 3;
        try {
            if (kind == 2) {
                LogMapping.read(rest(bytes), "f.log.yaml");
                return;
            }
            EngineLog log =
                    EngineLog.read(new StringReader(rest(bytes)), "f.csv", kind == 0 ? LogMapping.NONE : MAPPING);
            LogFindings findings = log.findings();
            require(log.rows() > 0, "a log without rows");
            findings.all().forEach(f -> wellSaid(f.sentence()));
            log.channels().forEach(c -> findings.series(c).at(new double[] {0, 1, 2}, findings.longestStep() / 2));
            lookThrough(findings);
        } catch (SheetException refused) {
            wellSaid(refused);
        }
    }

    private static void lookThrough(LogFindings findings) {
        try {
            OnInterval.in(findings).forEach(on -> wellSaid(on.why()));
            if (findings.log().has(LogChannel.ENGINE_SPEED)) {
                Pull.in(findings, PullRule.USUAL).forEach(pull -> wellSaid(pull.why()));
            }
        } catch (IllegalArgumentException refused) {
            wellSaid(refused.getMessage());
        }
    }

    /** A notebook. */
    static void notebooks(byte[] bytes) {
        try {
            Notebook notebook = Notebook.parse(new String(bytes, StandardCharsets.UTF_8), "f.ipynb");
            notebook.title("f");
            notebook.cells().forEach(ReaderTargets::cell);
            String json = notebook.toJson();
            require(json.equals(Notebook.parse(json, "f.ipynb").toJson()), "read again it is another notebook");
        } catch (NotebookException refused) {
            wellSaid(refused.getMessage());
        }
    }

    private static void cell(NotebookCell cell) {
        require(cell.count() >= 0 && !cell.hasTag("no such tag"), "half a cell");
        require(cell.type() != null && cell.source() != null, "half a cell");
        for (Output output : cell.outputs()) {
            require(output.text("text/plain") != null && output.text("text") != null, "half an output");
            require(!output.type().equals("error") || output.traceback() != null, "half an output");
        }
    }

    /** A file of the project, for a beginning. */
    static String file(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int first(byte[] bytes) {
        return bytes.length == 0 ? 0 : bytes[0] & 0xff;
    }

    private static String rest(byte[] bytes) {
        return bytes.length == 0 ? "" : new String(bytes, 1, bytes.length - 1, StandardCharsets.UTF_8);
    }

    private static void wellSaid(SheetException refused) {
        require(!refused.problems().isEmpty(), "refused without a reason");
        refused.problems().forEach(p -> wellSaid(p.sentence()));
    }

    private static void wellSaid(String message) {
        require(
                message != null
                        && message.strip().endsWith(".")
                        && message.indexOf('\n') < 0
                        && message.length() < 2000,
                "not a sentence: " + message);
    }

    private static void require(boolean kept, String otherwise) {
        if (!kept) {
            throw new AssertionError(otherwise);
        }
    }
}
