package org.shotledger.ipynb;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.shotledger.files.AtomicFile;

/** A notebook in the format nbformat 4.5. */
public final class Notebook {

    private static final Gson GSON =
            new GsonBuilder().serializeNulls().disableHtmlEscaping().create();

    private final JsonObject root;
    private final List<NotebookCell> cells = new ArrayList<>();

    private Notebook(JsonObject root) {
        this.root = root;
        root.getAsJsonArray("cells").forEach(e -> cells.add(new NotebookCell(e.getAsJsonObject())));
    }

    /**
     * Reads a notebook file.
     *
     * @param file the file
     * @param name how to call it in messages
     * @return the notebook, its older minor version raised to 5
     * @throws NotebookException if the file is missing or is not a notebook of format 4
     */
    public static Notebook read(Path file, String name) {
        try {
            return parse(Files.readString(file), name);
        } catch (NoSuchFileException e) {
            throw new NotebookException("There is no notebook " + name + ". Check the path; it is taken from the"
                    + " folder the command was given in.");
        } catch (IOException e) {
            throw new NotebookException("The notebook " + name + " cannot be read: " + e.getMessage() + ".");
        }
    }

    /**
     * Reads a notebook's text.
     *
     * @param text JSON
     * @param name how to call it in messages
     * @return the notebook
     * @throws NotebookException if it is not a notebook of format 4
     */
    public static Notebook parse(String text, String name) {
        JsonObject root;
        try {
            root = JsonParser.parseString(text).getAsJsonObject();
        } catch (JsonParseException | IllegalStateException e) {
            throw new NotebookException(
                    name + " is not a notebook: it is not a JSON object. Open it in Jupyter and save it"
                            + " again, or restore it.");
        }
        NotebookShape.check(root, name);
        upgrade(root);
        return new Notebook(root);
    }

    private static void upgrade(JsonObject root) {
        JsonElement minor = root.get("nbformat_minor");
        if (minor == null || minor.getAsInt() < 5) {
            root.addProperty("nbformat_minor", 5);
        }
        if (!root.has("metadata")) {
            root.add("metadata", new JsonObject());
        }
        int number = 0;
        for (JsonElement element : root.getAsJsonArray("cells")) {
            JsonObject cell = element.getAsJsonObject();
            number++;
            if (!cell.has("id")) {
                cell.addProperty("id", "cell-" + number);
            }
            if (!cell.has("metadata")) {
                cell.add("metadata", new JsonObject());
            }
        }
    }

    /**
     * The cells, to be changed freely.
     *
     * @return the live list
     */
    public List<NotebookCell> cells() {
        return cells;
    }

    /**
     * The notebook's title.
     *
     * @param fallback used when there is no heading
     * @return the first heading of a markdown cell
     */
    public String title(String fallback) {
        return cells.stream()
                .filter(cell -> cell.type().equals("markdown"))
                .flatMap(cell -> cell.source().lines())
                .filter(line -> line.startsWith("# "))
                .map(line -> line.substring(2).strip())
                .findFirst()
                .orElse(fallback);
    }

    /**
     * The file's text, laid out as Jupyter does: keys sorted, one space per level.
     *
     * @return JSON with a line end
     */
    public String toJson() {
        JsonArray array = new JsonArray();
        cells.forEach(cell -> array.add(cell.json()));
        root.add("cells", array);
        StringWriter text = new StringWriter();
        JsonWriter writer = new JsonWriter(text);
        writer.setIndent(" ");
        writer.setHtmlSafe(false);
        writer.setSerializeNulls(true);
        GSON.toJson(sorted(root), writer);
        return text + "\n";
    }

    /**
     * Writes the file so that it is either whole or not there.
     *
     * @param file where
     * @throws java.io.UncheckedIOException if it cannot be written; an older file is then still whole
     */
    public void write(Path file) {
        AtomicFile.write(file, toJson());
    }

    private static JsonElement sorted(JsonElement element) {
        if (element.isJsonArray()) {
            JsonArray array = new JsonArray();
            element.getAsJsonArray().forEach(e -> array.add(sorted(e)));
            return array;
        }
        if (!element.isJsonObject()) {
            return element;
        }
        JsonObject object = new JsonObject();
        element.getAsJsonObject().entrySet().stream()
                .sorted(java.util.Map.Entry.comparingByKey())
                .forEach(e -> object.add(e.getKey(), sorted(e.getValue())));
        return object;
    }
}
