package org.shotledger.controls;

import java.util.List;
import java.util.Map;

/**
 * What kind of control it is on the page.
 *
 * @param <T> the values
 */
interface Look<T> {

    /** Names of its model and view, and what else the page must know. */
    Map<String, Object> state();

    /** Whether its name stands above it; a box is named beside it. */
    default boolean isNamedAbove() {
        return true;
    }

    /** Under which key the page sends what was set. */
    default String key() {
        return "value";
    }

    Object toPage(T value);

    /** The value for what the page sent; the one held until now where that is nothing a person can set. */
    T fromPage(Object sent, T held);

    String words(T value);

    /** Some values to show where nobody can move anything. */
    List<T> some(int count);

    /** The unit that stands behind the name, empty for none. */
    default String unit() {
        return "";
    }

    static Map<String, Object> named(String widget) {
        return Map.of(
                "_model_module", Widget.CONTROLS,
                "_model_module_version", Widget.VERSION,
                "_model_name", widget + "Model",
                "_view_module", Widget.CONTROLS,
                "_view_module_version", Widget.VERSION,
                "_view_name", widget + "View");
    }
}
