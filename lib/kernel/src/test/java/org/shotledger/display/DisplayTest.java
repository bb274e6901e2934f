package org.shotledger.display;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class DisplayTest {

    private record Weight(String text) implements Displayable {
        @Override
        public String toText() {
            return text;
        }

        @Override
        public String toHtml() {
            return "<b>" + Display.escapeHtml(text) + "</b>";
        }
    }

    private static final class Recording implements DisplaySink {
        final List<String> calls = new ArrayList<>();

        @Override
        public void show(Map<String, Object> bundle, String id) {
            calls.add("show " + id + " " + bundle.get(Display.TEXT));
        }

        @Override
        public void update(Map<String, Object> bundle, String id) {
            calls.add("update " + id + " " + bundle.get(Display.TEXT));
        }

        @Override
        public void clear(boolean whenNextArrives) {
            calls.add("clear " + whenNextArrives);
        }

        @Override
        public String ask(String prompt, boolean hidden) {
            return prompt;
        }
    }

    @AfterEach
    void backToTheTerminal() {
        Display.install(null);
    }

    @Test
    void aDisplayableGivesItsTextAndItsHtml() {
        assertEquals(
                Map.of(Display.TEXT, "<5 kg", Display.HTML, "<b>&lt;5 kg</b>"), Display.bundle(new Weight("<5 kg")));
    }

    @Test
    void anythingElseGivesItsText() {
        assertEquals(Map.of(Display.TEXT, "7"), Display.bundle(7));
        assertEquals(Map.of(Display.TEXT, "null"), Display.bundle(null));
    }

    @Test
    void valuesShownGoToTheInstalledSink() {
        Recording sink = new Recording();
        Display.install(sink);
        Display.show(1);
        Display.show(2, "bar");
        Display.update(3, "bar");
        assertEquals(List.of("show null 1", "show bar 2", "update bar 3"), sink.calls);
    }

    @Test
    void theFiveSpecialCharactersAreEscaped() {
        assertEquals("&lt;a href=&quot;x&quot;&gt;&amp;&#39;", Display.escapeHtml("<a href=\"x\">&'"));
    }
}
