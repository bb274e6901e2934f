package org.shotledger.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Controls at the level of messages, as a page sees them. What must be said and in which form: the Jupyter widget messaging protocol,
 * version 2.1 (published with the widgets, "packages/schema/messages.md"), and the Jupyter messaging protocol 5.3 for busy and idle.
 */
@Timeout(60)
class KernelControlsTest {
    private static final String VIEW = "application/vnd.jupyter.widget-view+json";
    private static final String CELL =
            "controls(slider(\"turns\", 0, 10).from(4.0), menu(\"oil\", \"thin\", \"thick\"))"
                    + ".button(\"count\", v -> counted.incrementAndGet())"
                    + ".show(v -> { if (v.number(\"turns\") > 8) throw new IllegalStateException(\"too far\");"
                    + " worked.incrementAndGet(); return v.text(\"oil\") + \" \" + v.number(\"turns\") + \" \" + counted; });";

    /** One kernel for all: it takes seconds to start. */
    private static Page page;

    @BeforeAll
    static void start() throws IOException {
        page = new Page("static org.shotledger.controls.Controls.*", "java.util.concurrent.atomic.*");
    }

    @BeforeEach
    void countAnew() {
        assertEquals(
                List.of(),
                ofType(page.run("var counted = new AtomicInteger(); var worked = new AtomicInteger();"), "error"));
    }

    @AfterAll
    static void end() {
        page.close();
    }

    @Test
    void aPanelOpensItsPartsBeforeItselfAndShowsTheStart() {
        List<Message> said = page.run(CELL);
        List<Message> opened = ofType(said, "comm_open");
        opened.forEach(open -> {
            assertEquals("2", open.metadata().get("version").getAsString().split("\\.", -1)[0]);
            assertEquals("jupyter.widget", open.text("target_name", ""));
            assertTrue(open.content().getAsJsonObject("data").has("buffer_paths"));
        });
        Set<String> before = new HashSet<>();
        for (Message open : opened) {
            String state = data(open).getAsJsonObject("state").toString();
            Pattern.compile("IPY_MODEL_(\\w+)")
                    .matcher(state)
                    .results()
                    .forEach(used -> assertTrue(before.contains(used.group(1)), () -> "not open yet: " + used.group()));
            before.add(open.text("comm_id", ""));
        }
        List<Message> shown = ofType(said, "display_data");
        JsonObject controls = shown.get(0).content().getAsJsonObject("data");
        assertTrue(
                before.contains(controls.getAsJsonObject(VIEW).get("model_id").getAsString()));
        assertTrue(
                controls.get("text/html").getAsString().contains("turns"),
                "a page without widgets shows where they stand");
        assertEquals(
                "thin 4.0 0",
                shown.get(1).content().getAsJsonObject("data").get("text/plain").getAsString());
        assertFalse(displayId(shown.get(1)).isEmpty());
        assertTrue(said.indexOf(shown.get(0)) > said.indexOf(opened.get(opened.size() - 1)));
    }

    @Test
    void aMoveIsEchoedAndItsResultReplacesTheFormerBeforeIdle() {
        List<Message> said = page.run(CELL);
        List<Message> moved = page.ask("comm_msg", update(models(said).get("turns"), "value", "6.5"));
        assertEquals(
                List.of("status", "comm_msg", "update_display_data", "status"),
                moved.stream().map(Message::type).toList());
        assertEquals("echo_update", data(moved.get(1)).get("method").getAsString());
        assertEquals("{\"value\":6.5}", data(moved.get(1)).get("state").toString());
        assertEquals("thin 6.5 0", text(moved.get(2)));
        assertEquals(displayId(ofType(said, "display_data").get(1)), displayId(moved.get(2)));
        List<Message> chosen = page.ask("comm_msg", update(models(said).get("oil"), "index", "1"));
        assertEquals("thick 6.5 0", text(chosen.get(2)));
        List<Message> impossible = page.ask("comm_msg", update(models(said).get("oil"), "index", "7"));
        assertEquals("thick 6.5 0", text(impossible.get(2)), "what nobody can choose changes nothing");
    }

    @Test
    void whatWasAskedForMeanwhileIsDroppedButForTheNewestAndEachMessageEndsIdle() {
        List<Message> said = page.run(CELL);
        String turns = models(said).get("turns");
        int before = Integer.parseInt(
                text(ofType(page.run("worked.get()"), "execute_result").get(0)));
        String busy = page.send("execute_request", Json.one("code", "Thread.sleep(700);"));
        List<String> moves = List.of("1", "2", "3", "4.5").stream()
                .map(value -> page.send("comm_msg", update(turns, "value", value)))
                .toList();
        page.hear(busy);
        List<List<Message>> answers = moves.stream().map(page::hear).toList();
        answers.forEach(answer -> assertTrue(Page.isIdle(answer.get(answer.size() - 1))));
        assertEquals(
                "thin 4.5 0", text(ofType(answers.get(3), "update_display_data").get(0)));
        assertEquals(
                before + 1,
                Integer.parseInt(
                        text(ofType(page.run("worked.get()"), "execute_result").get(0))));
    }

    @Test
    void everyClickCounts() {
        List<Message> said = page.run(CELL);
        String busy = page.send("execute_request", Json.one("code", "Thread.sleep(500);"));
        List<String> clicks = List.of(1, 2, 3).stream()
                .map(i -> page.send("comm_msg", custom(models(said).get("count"))))
                .toList();
        page.hear(busy);
        Message last = null;
        for (String click : clicks) {
            List<Message> shown = ofType(page.hear(click), "update_display_data");
            last = shown.isEmpty() ? last : shown.get(0);
        }
        assertEquals("thin 4.0 3", text(last));
    }

    @Test
    void anErrorStandsInPlaceOfTheResultAndTheControlGoesOn() {
        List<Message> said = page.run(CELL);
        String turns = models(said).get("turns");
        List<Message> failed = page.ask("comm_msg", update(turns, "value", "9"));
        assertTrue(text(ofType(failed, "update_display_data").get(0)).contains("too far"));
        assertTrue(Page.isIdle(failed.get(failed.size() - 1)));
        assertEquals(
                "thin 2.0 0",
                text(ofType(page.ask("comm_msg", update(turns, "value", "2")), "update_display_data")
                        .get(0)));
    }

    @Test
    void theSameCellRunAgainClosesWhatItShowedAndAnotherCellDoesNot() {
        Set<String> first = Set.copyOf(ids(page.run(CELL)));
        assertEquals(List.of(), ofType(page.run("1 + 1"), "comm_close"));
        List<Message> again = page.run(CELL);
        assertEquals(
                first,
                ofType(again, "comm_close").stream()
                        .map(m -> m.text("comm_id", ""))
                        .collect(Collectors.toSet()));
        List<Message> stale = page.ask("comm_msg", update(first.iterator().next(), "value", "1"));
        assertEquals(
                List.of("status", "status"), stale.stream().map(Message::type).toList(), "unknown, but answered");
    }

    @Test
    void aPageLoadedAnewIsToldWhereEverythingStands() {
        List<Message> said = page.run(CELL);
        String turns = models(said).get("turns");
        page.ask("comm_msg", update(turns, "value", "7"));
        JsonObject open = Json.one("comm_id", "page");
        open.addProperty("target_name", "jupyter.widget.control");
        open.add("data", new JsonObject());
        assertEquals(2, page.ask("comm_open", open).size());
        List<Message> told = page.ask("comm_msg", message("page", "{\"method\":\"request_states\"}"));
        JsonObject data = data(told.get(1));
        assertEquals("update_states", data.get("method").getAsString());
        assertEquals(new JsonArray(), data.get("buffer_paths"), "left out, the page waits for ever");
        JsonObject states = data.getAsJsonObject("states");
        assertEquals(Set.copyOf(ids(said)), states.keySet());
        JsonObject slider = states.getAsJsonObject(turns);
        assertEquals("FloatSliderModel", slider.get("model_name").getAsString());
        assertEquals(7, slider.getAsJsonObject("state").get("value").getAsDouble());
        JsonObject one = data(page.ask("comm_msg", message(turns, "{\"method\":\"request_state\"}"))
                .get(1));
        assertEquals("update", one.get("method").getAsString());
        assertEquals(slider.get("state"), one.get("state"));
    }

    @Test
    void aFunctionThatNeverEndsCanBeStoppedAndThePanelGoesOn() throws Exception {
        String turns = models(
                        page.run(
                                "controls(slider(\"turns\", 0, 10).from(4.0))"
                                        + ".show(v -> { while (v.number(\"turns\") > 8) { worked.incrementAndGet(); } return v.number(\"turns\"); });"))
                .get("turns");
        String asked = page.send("comm_msg", update(turns, "value", "9"));
        Thread.sleep(500);
        page.interrupt();
        String told = text(ofType(page.hear(asked), "update_display_data").get(0));
        assertTrue(told.contains("It was stopped.") && told.contains("9"), told);
        assertEquals(
                "5.0",
                text(ofType(page.ask("comm_msg", update(turns, "value", "5")), "update_display_data")
                        .get(0)));
        assertEquals(List.of(), ofType(page.run("1 + 1"), "error"));
    }

    private static List<String> ids(List<Message> said) {
        return ofType(said, "comm_open").stream()
                .map(m -> m.text("comm_id", ""))
                .toList();
    }

    private static Map<String, String> models(List<Message> said) {
        Map<String, String> found = new LinkedHashMap<>();
        ofType(said, "comm_open").forEach(open -> {
            JsonObject state = data(open).getAsJsonObject("state");
            for (String name : List.of("tooltip", "description")) {
                if (state.has(name)) {
                    found.put(state.get(name).getAsString(), open.text("comm_id", ""));
                }
            }
        });
        return found;
    }

    private static List<Message> ofType(List<Message> said, String type) {
        return said.stream().filter(message -> message.type().equals(type)).toList();
    }

    private static JsonObject data(Message message) {
        return message.content().getAsJsonObject("data");
    }

    private static String text(Message message) {
        return data(message).get("text/plain").getAsString();
    }

    private static String displayId(Message message) {
        return message.content().getAsJsonObject("transient").get("display_id").getAsString();
    }

    private static JsonObject update(String id, String key, String value) {
        return message(id, "{\"method\":\"update\",\"state\":{\"" + key + "\":" + value + "},\"buffer_paths\":[]}");
    }

    private static JsonObject custom(String id) {
        return message(id, "{\"method\":\"custom\",\"content\":{\"event\":\"click\"}}");
    }

    private static JsonObject message(String id, String data) {
        JsonObject content = Json.one("comm_id", id);
        content.add("data", JsonParser.parseString(data));
        return content;
    }
}
