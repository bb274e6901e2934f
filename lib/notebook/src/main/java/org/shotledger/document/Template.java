package org.shotledger.document;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import org.shotledger.chart.ChartPicture;
import org.shotledger.display.Display;

/** Sets a document's content into the one template there is; the engine escapes every text. */
final class Template {
    private static final String NAME = "document.ftlh";

    private Template() {}

    /** One page for a screen, which prints on any paper. */
    static String page(DocumentContent content, Set<DocumentPart> parts) {
        return set(new Copy(content, parts, "", false));
    }

    /** Sheets of paper. */
    static String print(DocumentContent content, Set<DocumentPart> parts, Paper paper, boolean contents) {
        return set(new Copy(content, parts, paper.css(), contents));
    }

    /** What is to be set: no paper stands for a screen. */
    private record Copy(DocumentContent content, Set<DocumentPart> parts, String paper, boolean contents) {
        boolean pdf() {
            return !paper.isEmpty();
        }

        /** The full list of cautions goes with whatever has none of its own. */
        boolean prints(Section section) {
            return parts.contains(section.part())
                    || (section == Section.CAUTIONS && parts.contains(DocumentPart.LEDGER));
        }

        /** The sections that have something to print, in the order of reading. */
        List<Section> sections() {
            return Arrays.stream(Section.values())
                    .filter(this::prints)
                    .filter(section -> !blocks(section).isEmpty()
                            || (section == Section.DECISION
                                    && !content.signatures().isEmpty())
                            || (section == Section.REVISIONS
                                    && !content.revisions().isEmpty()))
                    .toList();
        }

        List<Block> blocks(Section section) {
            return content.sections().getOrDefault(section, List.of());
        }

        /** Pictures by their keys, numbered as they are read. */
        Map<String, Integer> figures() {
            Map<String, Integer> numbers = new LinkedHashMap<>();
            for (Section section : sections()) {
                for (Block block : blocks(section)) {
                    if (block instanceof Block.Picture picture) {
                        numbers.put(picture.chart().key(), numbers.size() + 1);
                    }
                }
            }
            return numbers;
        }
    }

    private static String set(Copy copy) {
        StringWriter out = new StringWriter();
        try {
            Engine.IT.getTemplate(NAME).process(model(copy), out);
        } catch (IOException e) {
            throw new UncheckedIOException("The document template cannot be read from the class path.", e);
        } catch (TemplateException e) {
            throw new IllegalStateException("The document cannot be set: " + e.getMessageWithoutStackTop(), e);
        }
        Map<String, String> headings = new LinkedHashMap<>();
        copy.sections().forEach(section -> headings.put(section.anchor(), section.heading()));
        return Reference.linked(out.toString(), headings, copy.figures());
    }

    private static Map<String, Object> model(Copy copy) {
        DocumentContent content = copy.content();
        Map<String, Object> model = new HashMap<>();
        model.put("title", content.title());
        model.put("customer", content.customer());
        model.put("author", content.author());
        model.put("notice", content.notice());
        model.put("summary", content.summary());
        model.put("verdict", content.verdict().word());
        model.put("paper", copy.paper());
        model.put("running", running(content));
        model.put("contents", copy.contents());
        model.put("whole", copy.parts().contains(DocumentPart.DECISION));
        model.put("sections", sections(copy));
        model.put("signatures", content.signatures());
        model.put("revisions", revisions(content));
        return model;
    }

    /** What stands above every sheet, so that a card that lies about by itself says whose it is; in the quotes of a style sheet. */
    private static String running(DocumentContent content) {
        String revision = content.revisions().stream()
                .findFirst()
                .map(newest -> ", revision " + newest.number() + ", " + newest.date())
                .orElse("");
        return (content.title() + revision).replaceAll("[\\\\\"<>&\n\r]", " ");
    }

    private static List<Map<String, Object>> sections(Copy copy) {
        Map<String, Integer> figures = copy.figures();
        List<Map<String, Object>> sections = new ArrayList<>();
        for (Section section : copy.sections()) {
            sections.add(Map.of(
                    "anchor",
                    section.anchor(),
                    "heading",
                    section.heading(),
                    "sheet",
                    section.part().page(),
                    "blocks",
                    copy.blocks(section).stream()
                            .map(block -> block(block, copy, figures))
                            .toList()));
        }
        return sections;
    }

    private static Map<String, Object> block(Block block, Copy copy, Map<String, Integer> figures) {
        if (block instanceof Block.Paragraph paragraph) {
            return Map.of("kind", "paragraph", "words", paragraph.words());
        }
        if (block instanceof Block.Fact fact) {
            return Map.of("kind", "fact", "name", fact.name(), "words", fact.words());
        }
        if (block instanceof Block.Points points) {
            return Map.of("kind", "points", "points", points.points());
        }
        if (block instanceof Block.Rows rows) {
            return Map.of("kind", "markup", "markup", rows.listing().toHtml());
        }
        ChartPicture chart = ((Block.Picture) block).chart();
        String figure = numbered(chart, figures.get(chart.key()));
        return Map.of("kind", "picture", "markup", copy.pdf() ? told(figure, chart) : inTwoWidths(figure, chart));
    }

    private static String numbered(ChartPicture chart, int number) {
        return chart.toHtml()
                .replaceFirst("<figure ", "<figure id=\"" + chart.key() + "-figure\" ")
                .replaceFirst("<figcaption>", "<figcaption><strong>Figure " + number + ".</strong> ");
    }

    /** The same drawing laid out for a telephone too: the style sheet shows the one that fits. */
    private static String inTwoWidths(String figure, ChartPicture chart) {
        String narrow = "<div class=\"narrow\"><p><strong>" + Display.escapeHtml(chart.title()) + "</strong></p>"
                + chart.narrow() + "</div>";
        return figure.replace(chart.svg(), "<div class=\"broad\">" + chart.svg() + "</div>" + narrow);
    }

    /** The PDF's tag of a picture takes its words from an attribute that a page may give to images only. */
    private static String told(String figure, ChartPicture chart) {
        String words = Display.escapeHtml(chart.title() + ". " + chart.alt());
        return figure.replaceFirst("<svg ", Matcher.quoteReplacement("<svg alt=\"" + words + "\" "));
    }

    private static List<Map<String, Object>> revisions(DocumentContent content) {
        List<Map<String, Object>> revisions = new ArrayList<>();
        for (Revision revision : content.revisions()) {
            revisions.add(Map.of(
                    "number", revision.number(), "date", revision.date(), "differences", revision.differences()));
        }
        return revisions;
    }

    /** Made at the first document, not at the start of a session. */
    private static final class Engine {
        static final Configuration IT = make();

        private static Configuration make() {
            Configuration engine = new Configuration(Configuration.VERSION_2_3_34);
            engine.setClassForTemplateLoading(Template.class, "");
            engine.setDefaultEncoding("UTF-8");
            engine.setLocale(Locale.ROOT);
            engine.setOutputFormat(HTMLOutputFormat.INSTANCE);
            engine.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
            engine.setLogTemplateExceptions(false);
            return engine;
        }
    }
}
