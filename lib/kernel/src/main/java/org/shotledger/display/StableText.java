package org.shotledger.display;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The text of a value, the same in each run: sets and maps without an order of their own would else come in another each time. */
final class StableText {

    private StableText() {}

    static String of(Object value) {
        if (value instanceof Map<?, ?> map && isPlain(map)) {
            return entries(map)
                    .map(e -> of(e.getKey()) + "=" + of(e.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (value instanceof Collection<?> items && isPlain(items)) {
            Stream<String> texts = items.stream().map(StableText::of);
            return (value instanceof Set<?> set && !hasOrder(set) ? texts.sorted() : texts)
                    .collect(Collectors.joining(", ", "[", "]"));
        }
        if (value instanceof Record item && !JavaValues.hasOwnText(item)) {
            return JavaValues.components(item).entrySet().stream()
                    .map(e -> e.getKey() + "=" + of(e.getValue()))
                    .collect(Collectors.joining(", ", item.getClass().getSimpleName() + "[", "]"));
        }
        return value != null && value.getClass().isHidden() ? function(value) : String.valueOf(value);
    }

    /** A closure has no text but the name of a class that is another in each run. */
    private static String function(Object value) {
        Class<?>[] types = value.getClass().getInterfaces();
        return types.length == 0 ? String.valueOf(value) : "a " + types[0].getSimpleName();
    }

    /** The entries of a map in its own order, or by the text of their keys where it has none. */
    static Stream<? extends Map.Entry<?, ?>> entries(Map<?, ?> map) {
        boolean ordered = map instanceof SortedMap || map instanceof LinkedHashMap || map instanceof EnumMap;
        return ordered
                ? map.entrySet().stream()
                : map.entrySet().stream().sorted(Comparator.comparing(e -> of(e.getKey())));
    }

    private static boolean hasOrder(Set<?> set) {
        return set instanceof SortedSet || set instanceof LinkedHashSet || set instanceof EnumSet;
    }

    /** A collection of somebody's own may have a text of its own. */
    private static boolean isPlain(Object collection) {
        return collection.getClass().getName().startsWith("java.util.");
    }
}
