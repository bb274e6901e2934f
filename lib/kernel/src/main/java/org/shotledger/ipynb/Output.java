package org.shotledger.ipynb;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.List;

/**
 * One output of a code cell, as it is in the file.
 *
 * @param json the output's JSON
 */
public record Output(JsonObject json) {

    /**
     * Printed text.
     *
     * @param stream {@code stdout} or {@code stderr}
     * @param text the text
     * @return the output
     */
    public static Output stream(String stream, String text) {
        JsonObject json = typed("stream");
        json.addProperty("name", stream);
        json.add("text", Multiline.write(text));
        return new Output(json);
    }

    /**
     * A cell's value.
     *
     * @param data its forms
     * @param count the cell's number
     * @return the output
     */
    public static Output result(JsonObject data, int count) {
        JsonObject json = shown("execute_result", data);
        json.addProperty("execution_count", count);
        return new Output(json);
    }

    /**
     * Something shown while the cell ran.
     *
     * @param data its forms
     * @return the output
     */
    public static Output display(JsonObject data) {
        return new Output(shown("display_data", data));
    }

    /**
     * Why the cell failed.
     *
     * @param name kind of error
     * @param message one sentence
     * @param report lines for a person
     * @return the output
     */
    public static Output error(String name, String message, List<String> report) {
        JsonObject json = typed("error");
        json.addProperty("ename", name);
        json.addProperty("evalue", message);
        JsonArray lines = new JsonArray();
        report.forEach(lines::add);
        json.add("traceback", lines);
        return new Output(json);
    }

    /**
     * The kind of output.
     *
     * @return {@code stream}, {@code display_data}, {@code execute_result} or {@code error}
     */
    public String type() {
        return json.get("output_type").getAsString();
    }

    /**
     * The content under a field or MIME type.
     *
     * @param key {@code text}, {@code name}, or a MIME type of the data
     * @return the text, empty if there is none
     */
    public String text(String key) {
        JsonElement data = json.get("data");
        JsonElement found = data != null && data.getAsJsonObject().has(key)
                ? data.getAsJsonObject().get(key)
                : json.get(key);
        return found == null || found.isJsonObject() ? "" : Multiline.read(found);
    }

    /**
     * The lines of an error.
     *
     * @return the lines, joined
     */
    public String traceback() {
        StringBuilder text = new StringBuilder();
        json.getAsJsonArray("traceback")
                .forEach(line -> text.append(line.getAsString()).append('\n'));
        return text.toString();
    }

    private static JsonObject shown(String type, JsonObject data) {
        JsonObject json = typed(type);
        JsonObject split = new JsonObject();
        data.entrySet().forEach(e -> {
            boolean text = e.getKey().startsWith("text/") || e.getKey().endsWith("+xml");
            split.add(e.getKey(), text ? Multiline.write(e.getValue().getAsString()) : e.getValue());
        });
        json.add("data", split);
        json.add("metadata", new JsonObject());
        return json;
    }

    private static JsonObject typed(String type) {
        JsonObject json = new JsonObject();
        json.addProperty("output_type", type);
        return json;
    }
}
