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
    /** Least width of a control, pixels: our choice; a telephone shows one beside none, a screen three or four. */
    private static final int COLUMN = 210;

    private final Panel panel;
    private final Handler handler;
    private final Values values;
    private final String result = "result-" + UUID.randomUUID();
    private final Map<String, Widget> widgets = new LinkedHashMap<>();
    private final List<Widget> all = new ArrayList<>();
    private final List<Action> clicks = new ArrayList<>();
    private final Comms.Task task = new Comms.Task(this::workOut, this::tellStopped);

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
        Widget fill = shape(comms, Map.of("width", "auto", "margin", "0 2px"));
        Widget name = shape(comms, Map.of("height", "auto", "margin", "4px 2px 0"));
        List<String> parts = new ArrayList<>();
        for (Control<?> control : panel.controls()) {
            Widget widget = control(comms, control, fill);
            parts.add(
                    control.look().isNamedAbove()
                            ? named(comms, control, widget, name).reference()
                            : widget.reference());
        }
        List<String> rows = new ArrayList<>();
        rows.add(box(
                        comms,
                        "GridBox",
                        shape(
                                comms,
                                Map.of(
                                        "width", "100%",
                                        "align_items", "flex-end",
                                        "grid_template_columns", "repeat(auto-fill, minmax(" + COLUMN + "px, 1fr))",
                                        "grid_gap", "0 20px")),
                        parts)
                .reference());
        if (!panel.buttons().isEmpty()) {
            List<String> buttons = new ArrayList<>();
            panel.buttons()
                    .forEach((words, action) ->
                            buttons.add(button(comms, words, action).reference()));
            rows.add(box(comms, "HBox", shape(comms, Map.of("flex_flow", "row wrap")), buttons)
                    .reference());
        }
        return box(comms, "VBox", shape(comms, Map.of("width", "100%")), rows);
    }

    /** A name beside its slider would be cut off, or leave it no room, on a narrow page: it stands above. */
    private Widget named(Comms comms, Control<?> control, Widget widget, Widget layout) {
        Map<String, Object> label = new LinkedHashMap<>(Look.named("Label"));
        label.put("value", control.label());
        label.put("layout", layout.reference());
        Widget words = keep(Widget.open(comms, label));
        return box(comms, "VBox", layout, List.of(words.reference(), widget.reference()));
    }

    private Widget shape(Comms comms, Map<String, Object> rules) {
        return keep(Widget.layout(comms, rules));
    }

    private Widget box(Comms comms, String kind, Widget shape, List<String> children) {
        Map<String, Object> state = new LinkedHashMap<>(Look.named(kind));
        state.put("children", children);
        state.put("layout", shape.reference());
        return keep(Widget.open(comms, state));
    }

    private <T> Widget control(Comms comms, Control<T> control, Widget layout) {
        Look<T> look = control.look();
        Map<String, Object> state = new LinkedHashMap<>(look.state());
        state.put("tooltip", control.label());
        if (!look.isNamedAbove()) {
            state.put("description", control.label());
        }
        state.put("continuous_update", control.whileMoving());
        state.put("layout", layout.reference());
        state.put(look.key(), look.toPage(values.of(control)));
        Widget widget = keep(Widget.open(comms, state));
        widgets.put(control.name(), widget);
        return widget.onChange(sent -> {
            Object value = sent.get(look.key());
            if (value != null) {
                values.take(control, value);
                comms.later(this, task);
            }
        });
    }

    private Widget button(Comms comms, String words, Action action) {
        Map<String, Object> state = new LinkedHashMap<>(Look.named("Button"));
        state.put("description", words);
        return keep(Widget.open(comms, state)).onClick(() -> {
            clicks.add(action);
            comms.later(this, task);
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
        } catch (ThreadDeath stopped) {
            throw stopped; // comes again and again until this thread is at its end: no time to show anything
        } catch (Throwable e) { // an error of the user's function must not end the kernel's thread, nor be lost
            forms = Display.bundle(Failure.of(e, values));
        }
        values.takeMoved().forEach(this::moveOnPage);
        Display.sink().update(forms, result);
    }

    private void tellStopped() {
        Display.sink().update(Display.bundle(Failure.stopped(values)), result);
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
