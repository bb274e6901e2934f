package org.shotledger.ipynb;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;

/**
 * One cell of a notebook; a view of its JSON, which it changes in place.
 *
 * @param json the cell's JSON
 */
public record NotebookCell(JsonObject json) {

    /**
     * A new cell.
     *
     * @param type {@code code} or {@code markdown}
     * @param id unique in the notebook, letters, digits and hyphens
     * @param source its text
     * @param tag a tag for its metadata
     * @return the cell, without outputs
     */
    public static NotebookCell of(String type, String id, String source, String tag) {
        JsonObject json = new JsonObject();
        json.addProperty("cell_type", type);
        json.addProperty("id", id);
        JsonObject metadata = new JsonObject();
        JsonArray tags = new JsonArray();
        tags.add(tag);
        metadata.add("tags", tags);
        json.add("metadata", metadata);
        json.add("source", Multiline.write(source));
        NotebookCell cell = new NotebookCell(json);
        if (cell.isCode()) {
            cell.clear();
        }
        return cell;
    }

    /**
     * Whether this cell is run.
     *
     * @return true for a code cell
     */
    public boolean isCode() {
        return "code".equals(type());
    }

    /**
     * The kind of cell.
     *
     * @return {@code code}, {@code markdown} or {@code raw}
     */
    public String type() {
        JsonElement type = json.get("cell_type");
        return type == null ? "" : type.getAsString();
    }

    /**
     * The cell's text.
     *
     * @return the text, lines separated by line feeds
     */
    public String source() {
        return Multiline.read(json.get("source"));
    }

    /**
     * Whether the cell carries a tag.
     *
     * @param tag such as {@code parameters}
     * @return true if it does
     */
    public boolean hasTag(String tag) {
        JsonObject metadata = json.getAsJsonObject("metadata");
        JsonElement tags = metadata == null ? null : metadata.get("tags");
        if (tags == null || !tags.isJsonArray()) {
            return false;
        }
        for (JsonElement found : tags.getAsJsonArray()) {
            if (tag.equals(found.getAsString())) {
                return true;
            }
        }
        return false;
    }

    /** Removes the outputs and the number of a code cell. */
    public void clear() {
        json.add("execution_count", JsonNull.INSTANCE);
        json.add("outputs", new JsonArray());
    }

    /**
     * Gives a code cell the result of its run.
     *
     * @param count the cell's number
     * @param outputs its outputs, in order
     */
    public void finish(int count, List<Output> outputs) {
        json.addProperty("execution_count", count);
        JsonArray array = new JsonArray();
        outputs.forEach(output -> array.add(output.json()));
        json.add("outputs", array);
    }

    /**
     * The outputs of a code cell.
     *
     * @return the outputs in order; empty for other cells
     */
    public List<Output> outputs() {
        List<Output> found = new ArrayList<>();
        if (json.has("outputs")) {
            json.getAsJsonArray("outputs").forEach(e -> found.add(new Output(e.getAsJsonObject())));
        }
        return found;
    }

    /**
     * The number a code cell was run with.
     *
     * @return the number, or 0 if it was not run
     */
    public int count() {
        JsonElement count = json.get("execution_count");
        return count == null || count.isJsonNull() ? 0 : count.getAsInt();
    }
}
