package org.shotledger.job;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.shotledger.sheet.SheetNode;
import org.shotledger.sheet.SheetNode.Entry;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.sheet.SheetNode.Scalar;

/**
 * One value of a sheet's text written anew. A figure loses the reason and the provenance of the old one with it: a bore gauge that read
 * 84.5 mm says nothing of 85 mm.
 */
final class Rewrite {
    /** How a reason ends that a program wrote because nobody gave one. */
    static final String NO_REASON = "no reason given";

    private final String text;
    private final Map<Integer, Edit> edits = new TreeMap<>(Comparator.reverseOrder());

    /** How a value is known, and why it stands there. */
    record Reason(String provenance, String from) {}

    /** A piece of text instead of another; indices in code points. */
    private record Edit(int end, String words) {}

    private Rewrite(String text) {
        this.text = text;
    }

    /**
     * Writes a value.
     *
     * @param text the sheet
     * @param node the value, alone or in a mapping with its reason
     * @param value the new value
     * @param reason why it stands there; empty to leave reasons as they are
     * @return the changed sheet; empty when the node is not a single value
     */
    static Optional<String> of(String text, SheetNode node, String value, Optional<Reason> reason) {
        Rewrite rewrite = new Rewrite(text);
        if (node instanceof Mapping mapping
                && mapping.find("value").map(Entry::value).orElse(null) instanceof Scalar old) {
            rewrite.reasoned(mapping, old, value, reason);
        } else if (node instanceof Scalar old) {
            String words = reason.map(why -> "{value: " + quoted(value) + ", provenance: " + quoted(why.provenance)
                            + ", from: " + inQuotes(why.from) + "}")
                    .orElse(quoted(value));
            rewrite.put(old, words);
        } else {
            return Optional.empty();
        }
        return Optional.of(rewrite.text());
    }

    /**
     * Adds a value to a section that has none of that name, as its first.
     *
     * @param text the sheet
     * @param section the section
     * @param key the value's name
     * @param value the value
     * @param reason why it stands there
     * @return the changed sheet; empty when the section has no value at all
     */
    static Optional<String> adding(String text, Mapping section, String key, String value, Reason reason) {
        if (section.entries().isEmpty()) {
            return Optional.empty();
        }
        SheetNode.Place first = section.entries().get(0).keyAt();
        String gap = section.flow() ? ", " : "\n" + " ".repeat(first.column() - 1);
        String words = key + ": {value: " + quoted(value) + ", provenance: " + quoted(reason.provenance) + ", from: "
                + inQuotes(reason.from) + "}" + gap;
        StringBuilder out = new StringBuilder(text);
        out.insert(text.offsetByCodePoints(0, first.offset()), words);
        return Optional.of(out.toString());
    }

    private void reasoned(Mapping mapping, Scalar old, String value, Optional<Reason> reason) {
        StringBuilder more = new StringBuilder();
        if (reason.isPresent()) {
            int indent = mapping.find("value").orElseThrow().keyAt().column() - 1;
            String gap = mapping.flow() ? ", " : "\n" + " ".repeat(indent);
            state(mapping, "provenance", quoted(reason.get().provenance), gap, more);
            state(mapping, "from", inQuotes(reason.get().from), gap, more);
        }
        put(old, quoted(value) + more);
    }

    /** Replaces what stands there, or adds it behind the value. */
    private void state(Mapping mapping, String key, String words, String gap, StringBuilder more) {
        Optional<Entry> there = mapping.find(key);
        if (there.isPresent()) {
            put(there.get().value(), words);
        } else {
            more.append(gap).append(key).append(": ").append(words);
        }
    }

    /** A value that is empty ends at its colon, a block of words only before the next line that is not of it. */
    private void put(SheetNode old, String words) {
        int begin = old.at().offset();
        String there = text.substring(text.offsetByCodePoints(0, begin), text.offsetByCodePoints(0, old.end()));
        String kept = there.stripTrailing();
        int end = begin + kept.codePointCount(0, kept.length());
        edits.put(begin, new Edit(end, kept.isEmpty() ? " " + words : words));
    }

    private String text() {
        StringBuilder out = new StringBuilder(text);
        edits.forEach((begin, edit) ->
                out.replace(text.offsetByCodePoints(0, begin), text.offsetByCodePoints(0, edit.end), edit.words));
        return out.toString();
    }

    /** A value that plain YAML would read otherwise goes into quotes. */
    private static String quoted(String value) {
        return value.matches("[A-Za-z0-9.+-][A-Za-z0-9.+/%() _-]*") ? value : inQuotes(value);
    }

    private static String inQuotes(String words) {
        return "\"" + words.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
