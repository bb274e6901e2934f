package org.shotledger.document;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import org.shotledger.chart.ChartPicture;
import org.shotledger.display.Display;

/** Sets a document's content into the one template there is; the engine escapes every text. */
final class Template {
    private static final String NAME = "document.ftlh";

    private Template() {}

    /** Paper of the PDF, or none for a page that prints on either. */
    static String set(DocumentContent content, String paper) {
        StringWriter out = new StringWriter();
        try {
            Engine.IT.getTemplate(NAME).process(model(content, paper), out);
        } catch (IOException e) {
            throw new UncheckedIOException("The document template cannot be read from the class path.", e);
        } catch (TemplateException e) {
            throw new IllegalStateException("The document cannot be set: " + e.getMessageWithoutStackTop(), e);
        }
        return out.toString();
    }

    private static Map<String, Object> model(DocumentContent content, String paper) {
        Map<String, Object> model = new HashMap<>();
        model.put("title", content.title());
        model.put("customer", content.customer());
        model.put("author", content.author());
        model.put("notice", content.notice());
        model.put("summary", content.summary());
        model.put("verdict", content.verdict().word());
        model.put("paper", paper);
        model.put("sections", sections(content, !paper.isEmpty()));
        model.put("signatures", content.signatures());
        model.put("revisions", revisions(content));
        return model;
    }

    private static List<Map<String, Object>> sections(DocumentContent content, boolean pdf) {
        List<Map<String, Object>> sections = new ArrayList<>();
        for (Section section : Section.values()) {
            List<Block> blocks = content.sections().getOrDefault(section, List.of());
            boolean own = (section == Section.SIGN_OFF && !content.signatures().isEmpty())
                    || (section == Section.REVISIONS && !content.revisions().isEmpty());
            if (!blocks.isEmpty() || own) {
                sections.add(Map.of(
                        "anchor", section.anchor(),
                        "heading", section.heading(),
                        "blocks",
                                blocks.stream().map(block -> block(block, pdf)).toList()));
            }
        }
        return sections;
    }

    private static Map<String, Object> block(Block block, boolean pdf) {
        if (block instanceof Block.Paragraph paragraph) {
            return Map.of("kind", "paragraph", "words", paragraph.words());
        }
        if (block instanceof Block.Points points) {
            return Map.of("kind", "points", "points", points.points());
        }
        if (block instanceof Block.Rows rows) {
            return Map.of("kind", "markup", "markup", rows.listing().toHtml());
        }
        ChartPicture chart = ((Block.Picture) block).chart();
        return Map.of("kind", "picture", "markup", pdf ? told(chart) : chart.toHtml());
    }

    /** The PDF's tag of a picture takes its words from an attribute that a page may give to images only. */
    private static String told(ChartPicture chart) {
        String words = Display.escapeHtml(chart.title() + ". " + chart.alt());
        return chart.toHtml().replaceFirst("<svg ", Matcher.quoteReplacement("<svg alt=\"" + words + "\" "));
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
