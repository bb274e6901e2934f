package org.shotledger.snippet;

import com.sun.source.doctree.BlockTagTree;
import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.StartElementTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.util.SimpleDocTreeVisitor;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A documentation comment as plain text of a width that a reader's tooltip holds. */
final class DocText {

    private static final int WIDTH = 90;
    private static final Map<String, String> ENTITIES =
            Map.of("lt", "<", "gt", ">", "amp", "&", "nbsp", " ", "quot", "\"", "deg", "\u00b0", "times", "\u00d7");
    private static final String BREAK = "\u2029";

    private DocText() {}

    static String of(DocCommentTree comment) {
        List<String> lines = new ArrayList<>(wrap(inline(comment.getFullBody()), ""));
        for (DocTree tag : comment.getBlockTags()) {
            lines.addAll(block(tag));
        }
        return String.join("\n", lines);
    }

    /** What a record's comment says of one component. */
    static Optional<String> ofComponent(DocCommentTree comment, String name) {
        return comment.getBlockTags().stream()
                .filter(tag -> tag instanceof ParamTree param
                        && param.getName().getName().contentEquals(name))
                .map(tag -> String.join("\n", wrap(inline(((ParamTree) tag).getDescription()), "")))
                .findFirst();
    }

    private static List<String> block(DocTree tag) {
        if (tag instanceof ParamTree param) {
            return wrap(param.getName() + ": " + inline(param.getDescription()), "  ");
        }
        if (tag instanceof ReturnTree result) {
            return wrap("returns " + inline(result.getDescription()), "  ");
        }
        if (tag instanceof ThrowsTree thrown) {
            return wrap("throws " + thrown.getExceptionName() + " " + inline(thrown.getDescription()), "  ");
        }
        return tag instanceof BlockTagTree ? List.of() : wrap(tag.toString(), "  ");
    }

    private static String inline(List<? extends DocTree> parts) {
        StringBuilder text = new StringBuilder();
        parts.forEach(part -> text.append(part.accept(PLAIN, null)));
        return text.toString();
    }

    private static List<String> wrap(String text, String indent) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split(BREAK, -1)) {
            StringBuilder line = new StringBuilder(indent);
            for (String word : paragraph.strip().split("\\s+", -1)) {
                if (line.length() + word.length() > WIDTH) {
                    lines.add(line.toString().stripTrailing());
                    line = new StringBuilder(indent).append(indent);
                }
                line.append(word).append(' ');
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private static final SimpleDocTreeVisitor<String, Void> PLAIN = new SimpleDocTreeVisitor<>("") {
        @Override
        public String visitText(TextTree text, Void unused) {
            return text.getBody();
        }

        @Override
        public String visitLiteral(LiteralTree literal, Void unused) {
            return literal.getBody().getBody();
        }

        @Override
        public String visitLink(LinkTree link, Void unused) {
            return link.getLabel().isEmpty()
                    ? link.getReference().getSignature().replace('#', '.').replaceFirst("^\\.", "")
                    : inline(link.getLabel());
        }

        @Override
        public String visitEntity(EntityTree entity, Void unused) {
            return ENTITIES.getOrDefault(entity.getName().toString(), entity.toString());
        }

        @Override
        public String visitStartElement(StartElementTree element, Void unused) {
            return switch (element.getName().toString()) {
                case "p" -> BREAK + BREAK;
                case "sup" -> "^";
                case "sub" -> "_";
                case "li" -> BREAK + "- ";
                case "pre", "br", "tr", "dt", "dd" -> BREAK;
                default -> "";
            };
        }
    };
}
