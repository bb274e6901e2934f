package org.shotledger.kernel;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.reflect.TypeToken;
import java.util.Collection;
import java.util.Map;
import org.shotledger.snippet.CellError;

/** Contents that several messages share. */
final class Json {

    private static final Gson GSON = new GsonBuilder().serializeNulls().create();

    private Json() {}

    static JsonObject ok() {
        return status("ok");
    }

    static JsonObject status(String status) {
        JsonObject content = new JsonObject();
        content.addProperty("status", status);
        return content;
    }

    static JsonObject error(CellError error) {
        JsonObject content = status("error");
        content.addProperty("ename", error.name());
        content.addProperty("evalue", error.message());
        content.add("traceback", strings(error.report()));
        return content;
    }

    static JsonArray strings(Collection<String> values) {
        JsonArray array = new JsonArray();
        values.forEach(array::add);
        return array;
    }

    static JsonObject one(String name, String value) {
        JsonObject content = new JsonObject();
        content.addProperty(name, value);
        return content;
    }

    static JsonObject object(String name, JsonElement value) {
        JsonObject content = new JsonObject();
        content.add(name, value);
        return content;
    }

    /** Texts, numbers, booleans, nulls, and lists and maps of these. */
    static JsonObject of(Map<String, Object> values) {
        return GSON.toJsonTree(values).getAsJsonObject();
    }

    /** The other way round; anything but an object is nothing. */
    static Map<String, Object> map(JsonElement object) {
        return object != null && object.isJsonObject()
                ? GSON.fromJson(object, new TypeToken<Map<String, Object>>() {}.getType())
                : Map.of();
    }
}
