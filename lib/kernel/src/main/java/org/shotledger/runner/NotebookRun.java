package org.shotledger.runner;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.shotledger.display.Display;
import org.shotledger.display.HasVerdict;
import org.shotledger.ipynb.MimeJson;
import org.shotledger.ipynb.Notebook;
import org.shotledger.ipynb.NotebookCell;
import org.shotledger.ipynb.Output;
import org.shotledger.snippet.CellError;
import org.shotledger.snippet.CellResult;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.OutputRouter;

/** Executes the cells of one notebook in order, up to the first that fails. */
final class NotebookRun {

    private static final int SECONDS_WIDTH = 6;

    private final JavaSession session;
    private final CellRecorder recorder;
    private final Consumer<String> progress;
    private String verdict;

    NotebookRun(JavaSession session, OutputRouter router, Consumer<String> progress) {
        this.session = session;
        this.recorder = new CellRecorder(router);
        this.progress = progress;
    }

    RunReport execute(Notebook notebook) {
        Display.install(recorder);
        List<NotebookCell> code =
                notebook.cells().stream().filter(NotebookCell::isCode).toList();
        code.forEach(NotebookCell::clear);
        try {
            for (int i = 0; i < code.size(); i++) {
                CellError error = cell(code.get(i), i + 1, code.size());
                if (error != null && !code.get(i).hasTag("raises-exception")) {
                    return new RunReport(Optional.of(code.get(i)), error, Optional.ofNullable(verdict));
                }
            }
        } finally {
            Display.install(null);
        }
        return new RunReport(Optional.empty(), null, Optional.ofNullable(verdict));
    }

    private CellError cell(NotebookCell cell, int number, int total) {
        long start = System.nanoTime();
        List<Output> outputs = recorder.begin();
        CellResult result = session.evaluate(cell.source(), "In [" + number + "]");
        record(result, number);
        recorder.end();
        cell.finish(number, outputs);
        progress.accept("[" + number + "/" + total + "] " + seconds(System.nanoTime() - start) + " s  "
                + firstLine(cell.source()));
        return result.error();
    }

    /** Two decimals, right-aligned; a general formatter takes as long for the first number as a cell does. */
    private static String seconds(long nanos) {
        String text =
                BigDecimal.valueOf(nanos, 9).setScale(2, RoundingMode.HALF_UP).toPlainString();
        return " ".repeat(Math.max(0, SECONDS_WIDTH - text.length())) + text;
    }

    private void record(CellResult result, int number) {
        result.notes().forEach(note -> recorder.add(Output.stream("stderr", note + "\n")));
        if (result.hasValue()) {
            recorder.add(Output.result(MimeJson.of(result.value()), number));
            if (result.value() instanceof HasVerdict judged) {
                verdict = judged.verdictLine();
            }
        }
        if (result.error() != null) {
            CellError error = result.error();
            recorder.add(Output.error(error.name(), error.message(), error.report()));
        }
    }

    private static String firstLine(String source) {
        String line = source.lines()
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .findFirst()
                .orElse("(empty)");
        return line.length() <= 70 ? line : line.substring(0, 69) + "…";
    }
}
