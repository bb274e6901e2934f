package org.shotledger.ipynb;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;

/** Text in a notebook file: one string, or a list of lines that keep their ends. */
final class Multiline {

    private Multiline() {}

    static String read(JsonElement element) {
        if (element == null || element.isJsonNull()) {
            return "";
        }
        if (element.isJsonPrimitive()) {
            return element.getAsString();
        }
        StringBuilder text = new StringBuilder();
        element.getAsJsonArray().forEach(line -> text.append(line.isJsonPrimitive() ? line.getAsString() : line));
        return text.toString();
    }

    static JsonArray write(String text) {
        JsonArray lines = new JsonArray();
        int start = 0;
        while (start < text.length()) {
            int end = text.indexOf('\n', start);
            int next = end < 0 ? text.length() : end + 1;
            lines.add(text.substring(start, next));
            start = next;
        }
        return lines;
    }
}
