package org.shotledger.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.Gson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.ipynb.Notebook;
import org.shotledger.ipynb.NotebookCell;
import org.shotledger.ipynb.NotebookException;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.SessionOptions;

class RunnerTest {

    @TempDir
    private Path folder;

    private final List<String> said = new ArrayList<>();

    private Path notebook(String name) throws IOException {
        try (var in = RunnerTest.class.getResourceAsStream(name)) {
            Path file = folder.resolve(name);
            Files.write(file, in.readAllBytes());
            return file;
        }
    }

    private boolean run(Path notebook, Map<String, String> values) throws IOException {
        Runner runner = new Runner(
                () -> new JavaSession(SessionOptions.of(List.of("import org.shotledger.display.*;"))),
                said::add,
                file -> file.getFileName().toString());
        return runner.run(
                new RunRequest(notebook, folder.resolve("out"), Set.of("ipynb", "html", "pdf"), true, values));
    }

    private Notebook written(String name) {
        return Notebook.read(folder.resolve("out").resolve(name), name);
    }

    @Test
    void whatACellPrintsBelongsToItEvenWithoutAResult() throws IOException {
        Path file = folder.resolve("prints.ipynb");
        Files.writeString(file, """
                {"cells": [
                 {"cell_type": "code", "id": "a", "metadata": {}, "execution_count": null, "outputs": [],
                  "source": "System.out.printf(\\"first%n\\");"},
                 {"cell_type": "code", "id": "b", "metadata": {}, "execution_count": null, "outputs": [],
                  "source": "1 + 1"}],
                 "metadata": {}, "nbformat": 4, "nbformat_minor": 5}
                """);
        assertTrue(run(file, Map.of()), said::toString);
        List<NotebookCell> cells = written("prints.ipynb").cells();
        assertEquals("first\n", cells.get(0).outputs().get(0).text("text"));
        assertEquals(1, cells.get(1).outputs().size());
    }

    @Test
    void anExecutedNotebookAPageAndAPdfAreWritten() throws IOException {
        assertTrue(run(notebook("good.ipynb"), Map.of()));
        List<NotebookCell> cells = written("good.ipynb").cells();
        assertEquals("780 hp\n", cells.get(2).outputs().get(0).text("text"));
        assertEquals("1560", cells.get(2).outputs().get(1).text("text/plain"));
        String html = Files.readString(folder.resolve("out/good.html"));
        assertTrue(html.contains("a &lt; b"), html);
        assertFalse(html.contains("<script"), html);
        assertTrue(html.contains("<table>"), html);
        byte[] pdf = Files.readAllBytes(folder.resolve("out/good.pdf"));
        assertEquals("%PDF", new String(pdf, 0, 4, StandardCharsets.US_ASCII));
        assertTrue(said.contains("verdict: holds: a < b"), said::toString);
    }

    @Test
    void givenValuesGoIntoACellOfTheirOwnAfterTheTaggedOne() throws IOException {
        assertTrue(run(notebook("good.ipynb"), Map.of("power", "800")));
        List<NotebookCell> cells = written("good.ipynb").cells();
        assertTrue(cells.get(1).source().contains("780"));
        assertTrue(cells.get(2).source().contains("power = 800;"));
        assertEquals("1600", cells.get(3).outputs().get(1).text("text/plain"));
        NotebookException unknown =
                assertThrows(NotebookException.class, () -> run(notebook("good.ipynb"), Map.of("torque", "1")));
        assertTrue(unknown.getMessage().contains("torque"), unknown.getMessage());
    }

    @Test
    void aFailingNotebookIsStillWrittenWithABannerThatLinksToTheCell() throws IOException {
        assertFalse(run(notebook("bad.ipynb"), Map.of()));
        List<NotebookCell> cells = written("bad.ipynb").cells();
        assertTrue(
                cells.get(0).source().contains("(#failing-cell)"), cells.get(0).source());
        assertEquals("error", cells.get(3).outputs().get(0).type());
        assertEquals(0, cells.get(4).count());
        String html = Files.readString(folder.resolve("out/bad.html"));
        assertTrue(html.contains("id=\"failing-cell\""), html);
        assertTrue(said.contains("stopped at In [2]:"), said::toString);
        // run again: the old banner goes
        assertFalse(run(folder.resolve("out/bad.ipynb"), Map.of()));
        long banners = written("bad.ipynb").cells().stream()
                .filter(cell -> cell.hasTag(Banner.TAG))
                .count();
        assertEquals(2, banners);
    }

    @Test
    void nothingIsLeftBehindUnderATemporaryName() throws IOException {
        run(notebook("good.ipynb"), Map.of());
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            assertEquals(
                    List.of("good.html", "good.ipynb", "good.pdf"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void aFileThatIsNoNotebookIsRefusedInOneSentence() throws IOException {
        Path file = folder.resolve("text.ipynb");
        Files.writeString(file, "not json");
        NotebookException refusal = assertThrows(NotebookException.class, () -> run(file, Map.of()));
        assertTrue(refusal.getMessage().startsWith("text.ipynb is not a notebook"), refusal.getMessage());
        assertThrows(NotebookException.class, () -> run(folder.resolve("missing.ipynb"), Map.of()));
        assertFalse(Files.exists(folder.resolve("out")));
    }

    private Path withCells(String markdown, String code) throws IOException {
        Path file = folder.resolve("made.ipynb");
        Files.writeString(file, """
                {"cells": [
                 {"cell_type": "markdown", "id": "a", "metadata": {}, "source": %s},
                 {"cell_type": "code", "id": "b", "metadata": {}, "execution_count": null, "outputs": [],
                  "source": %s}],
                 "metadata": {}, "nbformat": 4, "nbformat_minor": 5}
                """.formatted(new Gson().toJson(markdown), new Gson().toJson(code)));
        return file;
    }

    @Test
    void aPageIsCompleteInItselfAndSaysWhatItLeavesOut() throws IOException {
        assertTrue(run(
                withCells(
                        "![a turbine](http://example.org/t.png) ![local](../x.png) [in](#a) [web](https://example.org)"
                                + " [file](file:///etc) ![dot](data:image/png;base64,iVBORw0KGgo=)",
                        "Display.show(new Displayable() { public String toText() { return \"t\"; } public String"
                                + " toHtml() { return \"<script>1</script><b onclick='x()'>bold</b><img src=x.svg"
                                + " alt=drawing>\"; } });"),
                Map.of()));
        String html = Files.readString(folder.resolve("out/made.html"));
        assertTrue(html.contains("http-equiv=\"Content-Security-Policy\" content=\"default-src 'none';"), html);
        assertFalse(html.contains("t.png\"") || html.contains("x.svg\"") || html.contains("<script"), html);
        assertFalse(html.contains("<b onclick") || html.contains("file:///etc\""), html);
        assertTrue(html.contains("[image: a turbine]") && html.contains("[image: drawing]"), html);
        assertTrue(html.contains("href=\"https://example.org\"") && html.contains("href=\"#a\""), html);
        assertTrue(html.contains("src=\"data:image/png;base64,"), html);
        assertTrue(said.stream().anyMatch(line -> line.contains("http://example.org/t.png")), said::toString);
    }

    @Test
    void aPdfIsMadeWhateverItsImagesHold() throws IOException {
        String odd = Base64.getEncoder()
                .encodeToString(
                        "<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M oops\"/><rect width=\"-5%%\"/></svg>"
                                .getBytes(StandardCharsets.UTF_8));
        assertTrue(run(
                withCells(
                        "![odd](data:image/svg+xml;base64," + odd + ") ![none](data:image/svg+xml;base64,AAAA)"
                                + " ![broken](data:image/png;base64,AAAA)",
                        "1"),
                Map.of()));
        byte[] pdf = Files.readAllBytes(folder.resolve("out/made.pdf"));
        assertEquals("%PDF", new String(pdf, 0, 4, StandardCharsets.US_ASCII));
        assertTrue(said.stream().anyMatch(line -> line.contains("none")), said::toString);
    }

    @Test
    void aPlaceThatCannotBeWrittenIsNamedBeforeAnyCellRuns() throws IOException {
        Files.writeString(folder.resolve("out"), "a file");
        IOException refusal = assertThrows(IOException.class, () -> run(notebook("good.ipynb"), Map.of()));
        assertTrue(refusal.getMessage().contains("is a file"), refusal.getMessage());
        assertEquals(List.of(), said);
    }

    @Test
    void anExitOfACellStopsTheRunWhichIsWritten() throws IOException {
        assertFalse(run(withCells("# Exit", "System.exit(5);"), Map.of()));
        assertTrue(said.stream().anyMatch(line -> line.contains("System.exit(5)")), said::toString);
        assertEquals(
                "error", written("made.ipynb").cells().get(3).outputs().get(0).type());
    }
}
