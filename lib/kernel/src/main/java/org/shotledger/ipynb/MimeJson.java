package org.shotledger.ipynb;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import org.shotledger.display.Display;

/** MIME bundles as Jupyter writes them in messages and in files. */
public final class MimeJson {

    /** Text longer than this is cut in the plain-text form, which nobody reads to the end. */
    private static final int TEXT_LIMIT = 200_000;

    private static final Gson GSON = new Gson();

    private MimeJson() {}

    /**
     * The forms of a value, never failing.
     *
     * @param value any value, even one whose {@code toString} throws
     * @return MIME type to content; if the value cannot be shown, a sentence that says so
     */
    public static JsonObject of(Object value) {
        try {
            return of(Display.bundle(value));
        } catch (Throwable e) {
            // an Error thrown by a value's toString or by a renderer is the value's fault, not the session's
            JsonObject data = new JsonObject();
            data.addProperty(
                    Display.TEXT,
                    "(a " + value.getClass().getSimpleName() + ", which cannot be shown: its text fails with "
                            + e.getClass().getSimpleName() + ")");
            return data;
        }
    }

    /**
     * A bundle as JSON.
     *
     * @param bundle MIME type to content: text as {@code String}, binary content as {@code byte[]}, JSON as a map
     * @return the same, binary content in base 64
     */
    public static JsonObject of(Map<String, Object> bundle) {
        JsonObject data = new JsonObject();
        bundle.forEach((type, content) -> data.add(type, element(content)));
        return data;
    }

    private static JsonElement element(Object content) {
        return content instanceof Map<?, ?> json ? GSON.toJsonTree(json) : new JsonPrimitive(encode(content));
    }

    private static String encode(Object content) {
        if (content instanceof byte[] bytes) {
            return new String(Base64.getEncoder().encode(bytes), StandardCharsets.US_ASCII);
        }
        String text = String.valueOf(content);
        return text.length() <= TEXT_LIMIT || text.startsWith("<")
                ? text
                : text.substring(0, TEXT_LIMIT) + "\n... (" + text.length() + " characters in all)";
    }
}
