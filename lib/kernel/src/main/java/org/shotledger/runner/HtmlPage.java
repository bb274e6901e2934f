package org.shotledger.runner;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.function.Consumer;
import org.shotledger.display.Display;
import org.shotledger.ipynb.Notebook;
import org.shotledger.ipynb.NotebookCell;
import org.shotledger.ipynb.Output;

/** A notebook as one self-contained HTML page: no script, no network, fit to print. */
final class HtmlPage {

    /** Nothing runs, nothing is fetched: Content Security Policy Level 3, W3C. */
    private static final String POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'; font-src data:;"
            + " base-uri 'none'; form-action 'none'";

    private final Notebook notebook;
    private final boolean showCode;
    private final Consumer<String> say;
    private final StringBuilder page = new StringBuilder();

    private HtmlPage(Notebook notebook, boolean showCode, Consumer<String> say) {
        this.notebook = notebook;
        this.showCode = showCode;
        this.say = say;
    }

    /**
     * The page of a notebook.
     *
     * @param say told what of the notebook the page cannot hold, a sentence each
     */
    static String of(Notebook notebook, String fallbackTitle, boolean showCode, Consumer<String> say) {
        return new HtmlPage(notebook, showCode, say).write(fallbackTitle);
    }

    private String write(String fallbackTitle) {
        page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta http-equiv=\"Content-Security-Policy\" content=\"")
                .append(POLICY)
                .append("\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
                .append(Display.escapeHtml(notebook.title(fallbackTitle)))
                .append("</title>\n<style>\n")
                .append(style())
                .append("</style>\n</head>\n<body>\n<main>\n");
        notebook.cells().forEach(this::cell);
        return page.append("</main>\n</body>\n</html>\n").toString();
    }

    private void cell(NotebookCell cell) {
        if (cell.hasTag(Banner.TAG)) {
            banner(cell);
        } else if (cell.type().equals("markdown")) {
            page.append("<section class=\"text\">\n")
                    .append(SafeHtml.of(Markdown.toHtml(cell.source()), say))
                    .append("</section>\n");
        } else if (cell.isCode()) {
            code(cell);
        }
    }

    private void banner(NotebookCell cell) {
        String anchor = "<a id=\"" + Banner.ANCHOR + "\"></a>";
        boolean mark = cell.source().startsWith(anchor);
        String text = mark ? cell.source().substring(anchor.length()) : cell.source();
        page.append("<div class=\"stopped\" role=\"alert\"")
                .append(mark ? " id=\"" + Banner.ANCHOR + "\"" : "")
                .append(">\n")
                .append(Markdown.toHtml(text))
                .append("</div>\n");
    }

    private void code(NotebookCell cell) {
        boolean failed = cell.outputs().stream().anyMatch(o -> o.type().equals("error"));
        page.append("<section class=\"code").append(failed ? " failed" : "").append("\">\n");
        if (showCode || failed) {
            String number = cell.count() == 0 ? " " : String.valueOf(cell.count());
            page.append("<div class=\"source\"><span class=\"number\" aria-hidden=\"true\">In [")
                    .append(number)
                    .append("]</span><pre><code>")
                    .append(Display.escapeHtml(cell.source()))
                    .append("</code></pre></div>\n");
        }
        cell.outputs().forEach(this::output);
        page.append("</section>\n");
    }

    private void output(Output output) {
        switch (output.type()) {
            case "stream" -> pre(output.text("name"), output.text("text"));
            case "error" -> pre("error", output.traceback());
            default -> data(output);
        }
    }

    private void data(Output output) {
        String html = output.text(Display.HTML);
        String svg = output.text(Display.SVG);
        String png = output.text(Display.PNG);
        String markdown = output.text(Display.MARKDOWN);
        if (!html.isEmpty()) {
            page.append("<div class=\"result\">\n")
                    .append(SafeHtml.of(html, say))
                    .append("\n</div>\n");
        } else if (!svg.isEmpty()) {
            image("image/svg+xml", Base64.getEncoder().encodeToString(svg.getBytes(StandardCharsets.UTF_8)), output);
        } else if (!png.isEmpty()) {
            image(Display.PNG, png.strip(), output);
        } else if (!markdown.isEmpty()) {
            page.append("<div class=\"result\">\n")
                    .append(SafeHtml.of(Markdown.toHtml(markdown), say))
                    .append("</div>\n");
        } else {
            pre("result", output.text(Display.TEXT));
        }
    }

    /** An image of its own keeps the names inside one drawing from meeting those of the next. */
    private void image(String type, String base64, Output output) {
        page.append("<div class=\"result\"><img alt=\"")
                .append(Display.escapeHtml(output.text(Display.TEXT)))
                .append("\" src=\"data:")
                .append(type)
                .append(";base64,")
                .append(base64)
                .append("\"></div>\n");
    }

    private void pre(String kind, String text) {
        page.append("<pre class=\"")
                .append(kind)
                .append("\">")
                .append(Display.escapeHtml(text))
                .append("</pre>\n");
    }

    private static String style() {
        try (InputStream in = HtmlPage.class.getResourceAsStream("page.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
