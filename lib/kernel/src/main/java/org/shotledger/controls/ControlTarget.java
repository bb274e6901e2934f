package org.shotledger.controls;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import org.shotledger.comm.Comm;
import org.shotledger.comm.CommMessage;
import org.shotledger.comm.Comms;

/** Tells a page that was loaded anew of all controls there are; a kernel registers it under {@link #NAME}. */
public final class ControlTarget {
    /** The name under which a page asks. */
    public static final String NAME = "jupyter.widget.control";

    private ControlTarget() {}

    /**
     * The answer to a page that opens the comm.
     *
     * @param comms all comms of the kernel
     * @return given the page's comm, answers what the page asks on it
     */
    public static BiConsumer<Comm, CommMessage> of(Comms comms) {
        return (comm, first) -> comm.onMessage(message -> {
            if ("request_states".equals(message.data().get("method"))) {
                comm.send(CommMessage.of(states(comms)));
            }
        });
    }

    private static Map<String, Object> states(Comms comms) {
        Map<String, Object> states = new LinkedHashMap<>();
        comms.all(Widget.TARGET).forEach(comm -> {
            Map<String, Object> state = comm.state();
            states.put(
                    comm.id(),
                    Map.of(
                            "model_name", state.getOrDefault("_model_name", ""),
                            "model_module", state.getOrDefault("_model_module", ""),
                            "model_module_version", state.getOrDefault("_model_module_version", ""),
                            "state", state));
        });
        Map<String, Object> data = Widget.data("states", states);
        data.put("method", "update_states");
        return data;
    }
}
