package org.shotledger.controls;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.shotledger.comm.Comms;
import org.shotledger.display.Display;

/** A panel that is shown: its values, its models on the page, and the output that its function fills. */
final class Live {
    private static final String VIEW = "application/vnd.jupyter.widget-view+json";
    /** Widths on the page, pixels: our choice, so that labels stand whole and a narrow page gets one column. */
    private static final int LETTER = 8;

    private static final int MOST_LABEL = 240;
    private static final int COLUMN = 330;

    private final Panel panel;
    private final Handler handler;
    private final Values values;
    private final String result = "result-" + UUID.randomUUID();
    private final Map<String, Widget> widgets = new LinkedHashMap<>();
    private final List<Widget> all = new ArrayList<>();
    private final List<Action> clicks = new ArrayList<>();

    Live(Panel panel, Handler handler) {
        this.panel = panel;
        this.handler = handler;
        this.values = new Values(panel.controls());
    }

    void show(Optional<Comms> comms) throws Exception {
        Object first = handler.show(values);
        Map<String, Object> forms = new LinkedHashMap<>();
        if (comms.isPresent()) {
            Widget root = open(comms.get());
            forms.put(VIEW, Map.of("model_id", root.id(), "version_major", 2, "version_minor", 0));
            comms.get().whenRunAgain(() -> all.forEach(Widget::close));
        }
        forms.putAll(Display.bundle(new Fallback(panel, values)));
        Display.sink().show(forms, null);
        values.takeMoved().forEach(this::moveOnPage);
        Display.show(first == null ? Nothing.SHOWN : first, result);
    }

    /** Children first: a view waits for its parts for a moment only. */
    private Widget open(Comms comms) {
        Widget fill = keep(Widget.look(comms, Widget.BASE, "LayoutModel", "LayoutView", Map.of("width", "auto")));
        int widest = panel.controls().stream().mapToInt(control -> control.label().length()).max().orElse(0);
        String label = Math.min(widest * LETTER, MOST_LABEL) + "px";
        Map<String, Widget> styles = new LinkedHashMap<>();
        List<String> parts = new ArrayList<>();
        for (Control<?> control : panel.controls()) {
            Widget style = styles.computeIfAbsent(
                    control.look().style(),
                    model -> keep(Widget.look(
                            comms, Widget.CONTROLS, model, "StyleView", Map.of("description_width", label))));
            parts.add(control(comms, control, fill, style).reference());
        }
        List<String> rows = new ArrayList<>(List.of(box(
                        comms,
                        "GridBox",
                        Map.of(
                                "width", "100%",
                                "grid_template_columns", "repeat(auto-fit, minmax(min(" + COLUMN + "px, 100%), 1fr))",
                                "grid_gap", "2px 24px"),
                        parts)
                .reference()));
        if (!panel.buttons().isEmpty()) {
            List<String> buttons = new ArrayList<>();
            panel.buttons().forEach((words, action) -> buttons.add(button(comms, words, action).reference()));
            rows.add(box(comms, "HBox", Map.of("flex_flow", "row wrap"), buttons).reference());
        }
        return box(comms, "VBox", Map.of("width", "100%"), rows);
    }

    private Widget box(Comms comms, String kind, Map<String, Object> layout, List<String> children) {
        Widget shape = keep(Widget.look(comms, Widget.BASE, "LayoutModel", "LayoutView", layout));
        Map<String, Object> state = new LinkedHashMap<>(Look.named(kind));
        state.put("children", children);
        state.put("layout", shape.reference());
        return keep(Widget.open(comms, state));
    }

    private <T> Widget control(Comms comms, Control<T> control, Widget layout, Widget style) {
        Look<T> look = control.look();
        Map<String, Object> state = new LinkedHashMap<>(look.state());
        state.put("description", control.label());
        state.put("continuous_update", control.whileMoving());
        state.put("layout", layout.reference());
        state.put("style", style.reference());
        state.put(look.key(), look.toPage(values.of(control)));
        Widget widget = keep(Widget.open(comms, state));
        widgets.put(control.name(), widget);
        return widget.onChange(sent -> {
            Object value = sent.get(look.key());
            if (value != null) {
                values.take(control, value);
                comms.later(this, this::workOut);
            }
        });
    }

    private Widget button(Comms comms, String words, Action action) {
        Map<String, Object> state = new LinkedHashMap<>(Look.named("Button"));
        state.put("description", words);
        return keep(Widget.open(comms, state)).onClick(() -> {
            clicks.add(action);
            comms.later(this, this::workOut);
        });
    }

    private Widget keep(Widget widget) {
        all.add(widget);
        return widget;
    }

    /** Whatever goes wrong is shown where the result would be; the controls go on. */
    private void workOut() {
        Map<String, Object> forms;
        try {
            List<Action> due = new ArrayList<>(clicks);
            clicks.clear();
            for (Action action : due) {
                action.run(values);
            }
            Object shown = handler.show(values);
            forms = Display.bundle(shown == null ? Nothing.SHOWN : shown);
        } catch (Throwable e) { // an error of the user's function must not end the kernel's thread, nor be lost
            forms = Display.bundle(Failure.of(e, values));
        }
        values.takeMoved().forEach(this::moveOnPage);
        Display.sink().update(forms, result);
    }

    private void moveOnPage(String name) {
        Widget widget = widgets.get(name);
        if (widget != null) {
            panel.controls().stream()
                    .filter(control -> control.name().equals(name))
                    .forEach(control -> widget.set(control.look().key(), toPage(control)));
        }
    }

    private <T> Object toPage(Control<T> control) {
        return control.look().toPage(values.of(control));
    }
}
