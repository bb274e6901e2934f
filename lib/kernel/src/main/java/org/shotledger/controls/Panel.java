package org.shotledger.controls;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shotledger.comm.Comms;

/** Controls and buttons that are shown together, with what is worked out for them below. */
public final class Panel {
    private final List<Control<?>> controls;
    private final Map<String, Action> buttons;
    private final int positions;
    private final Optional<Handler> brief;

    private Panel(List<Control<?>> controls, Map<String, Action> buttons, int positions, Optional<Handler> brief) {
        this.controls = controls;
        this.buttons = buttons;
        this.positions = positions;
        this.brief = brief;
    }

    static Panel of(List<Control<?>> controls) {
        Set<String> names = new HashSet<>();
        for (Control<?> control : controls) {
            if (!names.add(control.name())) {
                throw new IllegalArgumentException(
                        "Two controls are called '" + control.name() + "'; give each a name of its own.");
            }
        }
        if (controls.isEmpty()) {
            throw new IllegalArgumentException("A panel has no control; give one at least.");
        }
        return new Panel(List.copyOf(controls), Map.of(), 0, Optional.empty());
    }

    /**
     * The same with a button.
     *
     * @param label what it says
     * @param action what it does
     * @return the changed panel
     */
    public Panel button(String label, Action action) {
        Map<String, Action> all = new LinkedHashMap<>(buttons);
        all.put(label, action);
        return new Panel(controls, all, positions, brief);
    }

    /**
     * The same, with some positions worked out beforehand for a page on which nothing can be moved: each slider and menu at some of its
     * values, the others at their start. What is heard only when it is let go takes long, and is left out.
     *
     * @param count how many values of each, 1 to 9
     * @param shortly what is shown for each; it is called that often when the panel is shown
     * @return the changed panel
     * @throws IllegalArgumentException when the count is out of range
     */
    public Panel positions(int count, Handler shortly) {
        if (count < 1 || count > 9) {
            throw new IllegalArgumentException(
                    "A panel is to show " + count + " positions of each control; give 1 to 9.");
        }
        return new Panel(controls, buttons, count, Optional.of(shortly));
    }

    /**
     * Shows the controls, and below them what the function gives for their start; from then on it is called again whenever something is
     * moved. What was asked for while it still ran is dropped, but for the newest. A cell that is run again closes what it showed before.
     *
     * @param handler works out what is shown; what it throws later is shown in place of the result
     * @throws IllegalStateException when it fails for the start values; the cause says why
     */
    public void show(Handler handler) {
        try {
            new Live(this, handler).show(Comms.current());
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException("Nothing can be shown for the start of the controls: " + e.getMessage(), e);
        }
    }

    List<Control<?>> controls() {
        return new ArrayList<>(controls);
    }

    Map<String, Action> buttons() {
        return buttons;
    }

    int positions() {
        return positions;
    }

    Optional<Handler> brief() {
        return brief;
    }
}
