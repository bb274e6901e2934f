package org.shotledger.sheet;

import java.util.Comparator;
import java.util.Optional;
import java.util.TreeSet;
import org.shotledger.sheet.SheetNode.Entry;
import org.shotledger.sheet.SheetNode.Mapping;

/**
 * Changes to a sheet's text that leave everything else as it stands: comments, order, digits, and the number of lines, so that
 * a message still names the line the writer knows.
 */
public final class SheetEdits {
    private final String text;
    private final Mapping root;
    private final TreeSet<Edit> edits = new TreeSet<>(Comparator.comparingInt(Edit::from));

    /** A piece of the text, in code points, and what comes in its stead. */
    private record Edit(int from, int to, String with) {}

    /**
     * Begins with a text.
     *
     * @param text the YAML text
     * @param root what {@link YamlSheet} read from it
     */
    public SheetEdits(String text, Mapping root) {
        this.text = text;
        this.root = root;
    }

    /**
     * Gives a value another name.
     *
     * @param path its place, for example {@code "bottle.charge"}
     * @param name the new name of its last part
     * @return the line of the value, or empty when it does not stand in the sheet
     */
    public Optional<Integer> rename(String path, String name) {
        return find(path).map(entry -> {
            edits.add(new Edit(entry.keyAt().offset(), entry.keyEnd(), name));
            return entry.keyAt().line();
        });
    }

    /**
     * Writes a value anew.
     *
     * @param path its place
     * @param value the new value as YAML
     * @return the line of the value, or empty when it does not stand in the sheet
     */
    public Optional<Integer> set(String path, String value) {
        return find(path).map(entry -> {
            edits.add(new Edit(entry.value().at().offset(), entry.value().end(), value));
            return entry.keyAt().line();
        });
    }

    /**
     * Takes a value out: its lines stay as comments, or, where it stands in braces beside others, it goes.
     *
     * @param path its place
     * @return the line of the value, or empty when it does not stand in the sheet
     */
    public Optional<Integer> retire(String path) {
        Optional<Entry> entry = find(path);
        entry.ifPresent(e -> {
            int start = text.offsetByCodePoints(0, e.keyAt().offset());
            int line = text.lastIndexOf('\n', start - 1) + 1;
            int end = text.offsetByCodePoints(0, e.value().end());
            if (text.substring(line, start).isBlank()) {
                comment(start, end);
            } else {
                cut(e, end);
            }
        });
        return entry.map(e -> e.keyAt().line());
    }

    private void comment(int start, int end) {
        for (int at = start; at >= 0 && at < end; at = nextWord(at, end)) {
            int point = text.codePointCount(0, at);
            edits.add(new Edit(point, point, "# "));
        }
    }

    /** The first character of the next line that is not blank, or -1. */
    private int nextWord(int from, int end) {
        int at = text.indexOf('\n', from);
        while (at >= 0 && at < end && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at < 0 || at >= end ? -1 : at;
    }

    private void cut(Entry entry, int end) {
        int after = end;
        while (after < text.length() && (text.charAt(after) == ' ' || text.charAt(after) == ',')) {
            after++;
        }
        edits.add(new Edit(entry.keyAt().offset(), text.codePointCount(0, after), ""));
    }

    private Optional<Entry> find(String path) {
        SheetNode node = root;
        Optional<Entry> found = Optional.empty();
        for (String key : path.split("\\.", -1)) {
            found = node instanceof Mapping mapping ? mapping.find(key) : Optional.empty();
            if (found.isEmpty()) {
                return found;
            }
            node = found.get().value();
        }
        return found;
    }

    /**
     * The text with all changes.
     *
     * @return the new text
     */
    public String text() {
        StringBuilder changed = new StringBuilder(text);
        for (Edit edit : edits.descendingSet()) {
            changed.replace(text.offsetByCodePoints(0, edit.from), text.offsetByCodePoints(0, edit.to), edit.with);
        }
        return changed.toString();
    }
}
