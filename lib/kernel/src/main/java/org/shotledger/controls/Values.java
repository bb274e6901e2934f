package org.shotledger.controls;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** What the controls of a panel say; a function may also move them. */
public final class Values {
    private final Map<String, Control<?>> controls = new LinkedHashMap<>();
    private final Map<String, Object> held = new LinkedHashMap<>();
    private final Set<String> changed = new LinkedHashSet<>();
    private final Set<String> moved = new LinkedHashSet<>();

    Values(Iterable<Control<?>> all) {
        for (Control<?> control : all) {
            controls.put(control.name(), control);
            held.put(control.name(), control.start());
        }
    }

    /**
     * What a control says.
     *
     * @param <T> its values
     * @param control one of the panel
     * @return the value
     * @throws IllegalArgumentException when it is not of this panel
     */
    @SuppressWarnings("unchecked") // a control takes in only what its own look reads
    public <T> T of(Control<T> control) {
        return (T) held(control.name());
    }

    /**
     * What a control says.
     *
     * @param <T> its values
     * @param name name of the control
     * @param type what its values are
     * @return the value
     * @throws IllegalArgumentException when there is no such control, or it gives something else
     */
    public <T> T get(String name, Class<T> type) {
        Object value = held(name);
        if (!type.isInstance(value)) {
            throw new IllegalArgumentException("The control '" + name + "' gives a "
                    + value.getClass().getSimpleName() + ", not a " + type.getSimpleName() + "; ask for that.");
        }
        return type.cast(value);
    }

    /**
     * What a slider or field for plain numbers says.
     *
     * @param name name of the control
     * @return the number
     */
    public double number(String name) {
        return get(name, Double.class);
    }

    /**
     * What any control says, in words: the choice of a menu, a figure with its unit.
     *
     * @param name name of the control
     * @return the words
     */
    public String text(String name) {
        return words(controls.get(known(name)));
    }

    /**
     * What a box says.
     *
     * @param name name of the control
     * @return whether it is ticked
     */
    public boolean flag(String name) {
        return get(name, Boolean.class);
    }

    /**
     * Whether a control was moved by hand since the function was last called.
     *
     * @param control one of the panel
     * @return true if it was
     */
    public boolean changed(Control<?> control) {
        return changed.contains(control.name());
    }

    /**
     * Moves another control: in these values at once, on the page when the function is done.
     *
     * @param <T> its values
     * @param control one of the panel
     * @param value where it is to stand
     */
    public <T> void set(Control<T> control, T value) {
        // a control that stands there already is left alone: a needless update would pull its handle from under a
        // finger
        if (!value.equals(held.put(known(control.name()), value))) {
            moved.add(control.name());
        }
    }

    /**
     * The same panel with one control elsewhere, as values of their own that move nothing.
     *
     * @param <T> its values
     * @param control one of the panel
     * @param value where it is to stand
     * @return the changed values
     */
    <T> Values with(Control<T> control, T value) {
        Values other = new Values(controls.values());
        other.held.putAll(held);
        other.held.put(control.name(), value);
        return other;
    }

    private <T> String words(Control<T> control) {
        return control.words(of(control));
    }

    /** Takes in what the page sent; a value that the page shows already stays as exact as it was. */
    <T> void take(Control<T> control, Object sent) {
        T before = of(control);
        if (!sent.equals(control.look().toPage(before))
                && !sameNumber(sent, control.look().toPage(before))) {
            held.put(control.name(), control.look().fromPage(sent, before));
            changed.add(control.name());
        }
    }

    /** Whether a page that adds up steps means the same place. */
    private static boolean sameNumber(Object a, Object b) {
        return a instanceof Number x
                && b instanceof Number y
                && Math.abs(x.doubleValue() - y.doubleValue()) <= 1e-9 * Math.max(1, Math.abs(x.doubleValue()));
    }

    /** What the function moved since this was last asked. */
    Set<String> takeMoved() {
        Set<String> all = new LinkedHashSet<>(moved);
        moved.clear();
        changed.clear();
        return all;
    }

    private Object held(String name) {
        return held.get(known(name));
    }

    private String known(String name) {
        if (!controls.containsKey(name)) {
            throw new IllegalArgumentException(
                    "There is no control '" + name + "' here; there are " + controls.keySet() + ".");
        }
        return name;
    }

    @Override
    public String toString() {
        StringBuilder out = new StringBuilder();
        controls.keySet()
                .forEach(name -> out.append(out.length() == 0 ? "" : ", ")
                        .append(name)
                        .append(": ")
                        .append(text(name)));
        return out.toString();
    }
}
