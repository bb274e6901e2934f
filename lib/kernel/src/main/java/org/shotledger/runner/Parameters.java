package org.shotledger.runner;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shotledger.ipynb.Notebook;
import org.shotledger.ipynb.NotebookCell;
import org.shotledger.ipynb.NotebookException;

/** Overrides the values of a notebook's parameter cell in a cell of its own, so that the record shows both. */
final class Parameters {

    static final String TAG = "parameters";
    static final String ADDED_TAG = "added-parameters";

    private Parameters() {}

    /**
     * Adds the overriding cell after the tagged one and removes the one of an earlier run.
     *
     * @throws NotebookException if values are given but no cell is tagged
     */
    static void apply(Notebook notebook, Map<String, String> values, String name) {
        List<NotebookCell> cells = notebook.cells();
        cells.removeIf(cell -> cell.hasTag(ADDED_TAG));
        if (values.isEmpty()) {
            return;
        }
        int at = tagged(cells);
        if (at < 0) {
            throw new NotebookException(name + " has no cell tagged " + TAG + ", so --set "
                    + values.keySet().iterator().next()
                    + " has nowhere to go. Tag the cell that declares the variables.");
        }
        List<String> lines = new ArrayList<>();
        lines.add("// values given for this run");
        values.forEach((key, value) -> lines.add(assignment(cells.get(at), key, value, name)));
        cells.add(at + 1, NotebookCell.of("code", "added-parameters", String.join("\n", lines), ADDED_TAG));
    }

    private static int tagged(List<NotebookCell> cells) {
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).isCode() && cells.get(i).hasTag(TAG)) {
                return i;
            }
        }
        return -1;
    }

    private static String assignment(NotebookCell declared, String key, String value, String name) {
        if (!declared.source().matches("(?s).*\\b" + java.util.regex.Pattern.quote(key) + "\\s*=.*")) {
            throw new NotebookException("The cell tagged " + TAG + " of " + name + " declares no variable " + key
                    + ". It says: " + declared.source().replaceAll("\\s*\n\\s*", " "));
        }
        return key + " = " + literal(declared.source(), key, value) + ";";
    }

    /** A value given for a text is put in quotes unless it already is; anything else is Java as it stands. */
    private static String literal(String source, String key, String value) {
        boolean text = source.matches("(?s).*\\b(String\\s+" + key + "|var\\s+" + key + ")\\s*=\\s*\".*");
        if (!text || value.startsWith("\"")) {
            return value;
        }
        return "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
