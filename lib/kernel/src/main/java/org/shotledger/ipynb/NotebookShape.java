package org.shotledger.ipynb;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.math.BigDecimal;
import java.util.function.Predicate;

/** Looks whether JSON has the parts of a notebook of format 4, so that whoever uses them need not ask again. */
final class NotebookShape {
    private final String name;

    private NotebookShape(String name) {
        this.name = name;
    }

    /** Refuses what is not a notebook, naming the part that is wrong. */
    static void check(JsonObject root, String name) {
        if (whole(root.get("nbformat")) != 4) {
            throw new NotebookException(name + " is not a notebook of format 4 (nbformat is "
                    + shown(root.get("nbformat")) + "). Open it in Jupyter and save it again.");
        }
        new NotebookShape(name).notebook(root);
    }

    private void notebook(JsonObject root) {
        want(!root.has("nbformat_minor") || whole(root.get("nbformat_minor")) >= 0, "nbformat_minor", "a whole number");
        optional(root, "metadata", JsonElement::isJsonObject, "metadata", "an object");
        want(root.has("cells") && root.get("cells").isJsonArray(), "cells", "a list");
        JsonArray cells = root.getAsJsonArray("cells");
        for (int i = 0; i < cells.size(); i++) {
            String cell = "cells[" + i + "]";
            want(cells.get(i).isJsonObject(), cell, "an object");
            cell(cells.get(i).getAsJsonObject(), cell);
        }
    }

    private void cell(JsonObject cell, String where) {
        want(isText(cell.get("cell_type")), where + ".cell_type", "a text");
        optional(cell, "id", NotebookShape::isText, where + ".id", "a text");
        optional(cell, "source", NotebookShape::isLines, where + ".source", "a text or a list of texts");
        optional(cell, "metadata", JsonElement::isJsonObject, where + ".metadata", "an object");
        JsonElement tags =
                cell.has("metadata") ? cell.getAsJsonObject("metadata").get("tags") : null;
        want(tags == null || (tags.isJsonArray() && isLines(tags)), where + ".metadata.tags", "a list of texts");
        JsonElement count = cell.get("execution_count");
        want(
                count == null || count.isJsonNull() || whole(count) >= 0,
                where + ".execution_count",
                "a whole number or null");
        optional(cell, "outputs", JsonElement::isJsonArray, where + ".outputs", "a list");
        if (cell.has("outputs")) {
            JsonArray outputs = cell.getAsJsonArray("outputs");
            for (int i = 0; i < outputs.size(); i++) {
                String output = where + ".outputs[" + i + "]";
                want(outputs.get(i).isJsonObject(), output, "an object");
                output(outputs.get(i).getAsJsonObject(), output);
            }
        }
    }

    private void output(JsonObject output, String where) {
        want(isText(output.get("output_type")), where + ".output_type", "a text");
        optional(output, "data", JsonElement::isJsonObject, where + ".data", "an object");
        boolean error = output.get("output_type").getAsString().equals("error");
        JsonElement lines = output.get("traceback");
        want(
                !error || (lines != null && lines.isJsonArray() && isLines(lines)),
                where + ".traceback",
                "a list of texts");
    }

    private void optional(JsonObject object, String key, Predicate<JsonElement> fits, String where, String wanted) {
        want(!object.has(key) || fits.test(object.get(key)), where, wanted);
    }

    private void want(boolean kept, String where, String wanted) {
        if (!kept) {
            throw new NotebookException(
                    name + " is not a notebook: \"" + where + "\" must be " + wanted + ". Restore or mend it.");
        }
    }

    private static boolean isText(JsonElement element) {
        return element != null
                && element.isJsonPrimitive()
                && element.getAsJsonPrimitive().isString();
    }

    private static boolean isLines(JsonElement element) {
        if (element.isJsonArray()) {
            for (JsonElement line : element.getAsJsonArray()) {
                if (!isText(line)) {
                    return false;
                }
            }
            return true;
        }
        return isText(element);
    }

    /** The whole number that stands there, or -1. */
    private static int whole(JsonElement element) {
        if (element == null
                || !element.isJsonPrimitive()
                || !element.getAsJsonPrimitive().isNumber()) {
            return -1;
        }
        String digits = element.getAsString();
        if (digits.length() > 12) {
            return -1;
        }
        try {
            return new BigDecimal(digits).intValueExact();
        } catch (ArithmeticException | NumberFormatException e) {
            return -1;
        }
    }

    private static String shown(JsonElement element) {
        String text = String.valueOf(element).replaceAll("\\p{Cntrl}", " ");
        return text.length() > 40 ? text.substring(0, 37) + "..." : text;
    }
}
