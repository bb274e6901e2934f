package org.shotledger.controls;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.shotledger.comm.Comm;
import org.shotledger.comm.CommMessage;
import org.shotledger.comm.Comms;

/**
 * One model on the page and our copy of its state.
 *
 * <p>Protocol: "Jupyter widgets messaging", version 2.1. What the page changes is taken into the copy and echoed, so that a second page
 * on the same kernel follows; it is never written back as a plain update, which would pull the handle from under the finger.
 */
final class Widget {
    static final String TARGET = "jupyter.widget";
    static final String CONTROLS = "@jupyter-widgets/controls";
    static final String BASE = "@jupyter-widgets/base";
    static final String VERSION = "2.0.0";

    private static final Map<String, Object> PROTOCOL = Map.of("version", "2.1.0");

    private final Map<String, Object> state;
    private final Comm comm;
    private Consumer<Map<String, Object>> changed = sent -> {};
    private Runnable clicked = () -> {};

    private Widget(Comms comms, Map<String, Object> state) {
        this.state = new LinkedHashMap<>(state);
        this.comm = comms.open(TARGET, new CommMessage(data("state", state), PROTOCOL, List.of()))
                .describedBy(() -> this.state)
                .onMessage(this::receive);
    }

    static Widget open(Comms comms, Map<String, Object> state) {
        return new Widget(comms, state);
    }

    /** Rules of width and the like that others refer to. */
    static Widget layout(Comms comms, Map<String, Object> rules) {
        Map<String, Object> state = new LinkedHashMap<>(rules);
        state.put("_model_module", BASE);
        state.put("_model_module_version", VERSION);
        state.put("_model_name", "LayoutModel");
        state.put("_view_module", BASE);
        state.put("_view_module_version", VERSION);
        state.put("_view_name", "LayoutView");
        return open(comms, state);
    }

    Widget onChange(Consumer<Map<String, Object>> told) {
        changed = told;
        return this;
    }

    Widget onClick(Runnable told) {
        clicked = told;
        return this;
    }

    String id() {
        return comm.id();
    }

    /** How another model names this one. */
    String reference() {
        return "IPY_MODEL_" + comm.id();
    }

    void set(String key, Object value) {
        state.put(key, value);
        comm.send(CommMessage.of(update("update", Map.of(key, value))));
    }

    void close() {
        comm.close();
    }

    private void receive(CommMessage message) {
        switch (String.valueOf(message.data().get("method"))) {
            case "update" -> changed(message.data().get("state"));
            case "request_state" -> comm.send(CommMessage.of(update("update", state)));
            case "custom" -> {
                if (message.data().get("content") instanceof Map<?, ?> content
                        && "click".equals(content.get("event"))) {
                    clicked.run();
                }
            }
            default -> {
                // the protocol has no other message; one of a later version is no concern of ours
            }
        }
    }

    private void changed(Object sent) {
        if (sent instanceof Map<?, ?> keys) {
            Map<String, Object> now = new LinkedHashMap<>();
            keys.forEach((key, value) -> now.put(String.valueOf(key), value));
            state.putAll(now);
            comm.send(CommMessage.of(update("echo_update", now)));
            changed.accept(now);
        }
    }

    private static Map<String, Object> update(String method, Map<String, Object> state) {
        Map<String, Object> data = data("state", state);
        data.put("method", method);
        return data;
    }

    /** The place of binary content must be named, also where there is none. */
    static Map<String, Object> data(String key, Map<String, Object> content) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put(key, content);
        data.put("buffer_paths", List.of());
        return data;
    }
}
