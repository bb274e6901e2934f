package org.shotledger.display;

import java.util.List;
import java.util.Map;

/**
 * Shows values of a type that cannot implement {@link Displayable} itself, such as a library's table or chart.
 *
 * <p>Registered through {@code META-INF/services/org.shotledger.display.DisplayRenderer}.
 *
 * @param <T> the type shown, subtypes included
 */
public interface DisplayRenderer<T> {

    /**
     * The type this renderer is for; of several that fit a value, the most special one is used. It must lie outside {@code java.lang}.
     *
     * @return the class or interface shown
     */
    Class<T> type();

    /**
     * The forms of one value.
     *
     * @param value never null
     * @return MIME type to content: a {@code String} for text types and SVG, {@code byte[]} for binary types; {@link
     *     Display#TEXT} should be among them
     */
    Map<String, Object> render(T value);

    /**
     * The forms of a list of such values, for those that read better in one table.
     *
     * @param values one at least
     * @return MIME type to content as for one value; empty to have them shown one below the other
     */
    default Map<String, Object> renderAll(List<T> values) {
        return Map.of();
    }
}
