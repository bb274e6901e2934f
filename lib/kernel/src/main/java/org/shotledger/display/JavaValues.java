package org.shotledger.display;

import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Array;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/** How arrays, pictures, optionals, maps and records of plain Java look, for which no renderer is registered. */
final class JavaValues {

    private static final int MOST_ITEMS = 200;
    private static final int MOST_RESULTS = 20;

    private JavaValues() {}

    /** The forms of a value; none if its own text is the best there is. */
    static Map<String, Object> forms(Object value) {
        if (value.getClass().isArray()) {
            return Map.of(Display.TEXT, array(value));
        }
        if (value instanceof RenderedImage image) {
            return picture(image);
        }
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() ? Display.bundle(optional.get()) : Map.of(Display.TEXT, "(empty)");
        }
        if (value instanceof Map<?, ?> map && !map.isEmpty()) {
            return map(map);
        }
        if (value instanceof Collection<?> items) {
            return items(items);
        }
        return value instanceof Record one ? record(one) : Map.of();
    }

    private static Map<String, Object> items(Collection<?> items) {
        if (!items.isEmpty() && items.stream().allMatch(Display::hasForms)) {
            Map<String, Object> together = Display.together(items);
            return together.isEmpty() ? oneByOne(items) : together;
        }
        return isOfRecords(items) ? records(items) : Map.of(Display.TEXT, StableText.of(items));
    }

    /** Results that know how they look, one below the other. */
    private static Map<String, Object> oneByOne(Collection<?> items) {
        List<Map<String, Object>> shown =
                items.stream().limit(MOST_RESULTS).map(Display::bundle).toList();
        String rest = items.size() > MOST_RESULTS ? "first " + MOST_RESULTS + " of " + items.size() : "";
        Map<String, Object> forms = new LinkedHashMap<>();
        forms.put(
                Display.TEXT,
                Stream.concat(shown.stream().map(form -> String.valueOf(form.get(Display.TEXT))), Stream.of(rest))
                        .filter(text -> !text.isEmpty())
                        .collect(Collectors.joining("\n\n")));
        forms.put(
                Display.HTML,
                shown.stream().map(JavaValues::html).collect(Collectors.joining("\n"))
                        + (rest.isEmpty() ? "" : "<p>" + rest + "</p>"));
        return forms;
    }

    private static String html(Map<String, Object> forms) {
        Object html = forms.get(Display.HTML);
        return html == null
                ? "<pre>" + Display.escapeHtml(String.valueOf(forms.get(Display.TEXT))) + "</pre>"
                : html.toString();
    }

    private static String array(Object array) {
        int length = Array.getLength(array);
        List<String> items = new ArrayList<>();
        for (int i = 0; i < Math.min(length, MOST_ITEMS); i++) {
            Object item = Array.get(array, i);
            items.add(item != null && item.getClass().isArray() ? "\n " + array(item) : text(item));
        }
        return "[" + String.join(", ", items) + (length > MOST_ITEMS ? ", ... " + length + " in all" : "") + "]";
    }

    private static Map<String, Object> picture(RenderedImage image) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, Object> forms = new LinkedHashMap<>();
        forms.put(Display.TEXT, "picture of " + image.getWidth() + " x " + image.getHeight());
        if (bytes.size() > 0) {
            forms.put(Display.PNG, bytes.toByteArray());
        }
        return forms;
    }

    private static Map<String, Object> map(Map<?, ?> map) {
        List<List<String>> rows = new ArrayList<>();
        StableText.entries(map).limit(MOST_ITEMS).forEach(e -> rows.add(List.of(text(e.getKey()), text(e.getValue()))));
        return SimpleTable.forms(List.of("key", "value"), rows, map.size());
    }

    /** Records of one type. */
    private static boolean isOfRecords(Collection<?> items) {
        Class<?> type = items.isEmpty() ? null : first(items).getClass();
        return type != null
                && type.isRecord()
                && type.getRecordComponents().length > 0
                && items.stream().allMatch(item -> item != null && item.getClass() == type);
    }

    private static Object first(Collection<?> items) {
        Object first = items.iterator().next();
        return first == null ? "" : first;
    }

    private static Map<String, Object> records(Collection<?> items) {
        List<String> heads = Arrays.stream(first(items).getClass().getRecordComponents())
                .map(component -> words(component.getName()))
                .toList();
        List<List<String>> rows =
                items.stream().limit(MOST_ITEMS).map(JavaValues::row).toList();
        return SimpleTable.forms(heads, rows, items.size());
    }

    private static List<String> row(Object item) {
        return components(item).values().stream().map(JavaValues::text).toList();
    }

    private static Map<String, Object> record(Record item) {
        if (hasOwnText(item)) {
            return Map.of();
        }
        List<List<String>> rows = new ArrayList<>();
        components(item).forEach((name, value) -> rows.add(List.of(words(name), text(value))));
        Map<String, Object> forms = new LinkedHashMap<>(SimpleTable.forms(List.of("part", "value"), rows, rows.size()));
        forms.put(Display.TEXT, StableText.of(item));
        return forms;
    }

    /** Whether a record says more of itself than what every record says. */
    static boolean hasOwnText(Record item) {
        try {
            return item.getClass().getRecordComponents().length == 0
                    || item.getClass().getMethod("toString").getDeclaringClass() != item.getClass()
                    || !String.valueOf(item).startsWith(item.getClass().getSimpleName() + "[");
        } catch (NoSuchMethodException e) {
            return true;
        }
    }

    static Map<String, Object> components(Object item) {
        Map<String, Object> found = new LinkedHashMap<>();
        for (var component : item.getClass().getRecordComponents()) {
            try {
                component.getAccessor().setAccessible(true);
                found.put(component.getName(), component.getAccessor().invoke(item));
            } catch (ReflectiveOperationException | RuntimeException e) {
                found.put(component.getName(), "?");
            }
        }
        return found;
    }

    /** One line for one value: what its renderer or it itself says of it. */
    private static String text(Object value) {
        if (value instanceof Double || value instanceof Float) {
            return number(((Number) value).doubleValue());
        }
        if (value == null || value instanceof Number || value instanceof CharSequence) {
            return String.valueOf(value);
        }
        if (Display.hasForms(value)) {
            return firstLine(String.valueOf(Display.bundle(value).get(Display.TEXT)));
        }
        String text = value.getClass().isArray() ? array(value) : StableText.of(value);
        String line = text.replaceAll("\\s*\n\\s*", " ");
        return firstLine(line);
    }

    private static String firstLine(String text) {
        String line = text.strip().lines().findFirst().orElse("");
        return line.length() <= 120 ? line : line.substring(0, 119) + "…";
    }

    /** Six figures: more than any input here deserves. */
    private static String number(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return String.valueOf(value);
        }
        java.math.BigDecimal rounded = new java.math.BigDecimal(value)
                .round(new java.math.MathContext(6))
                .stripTrailingZeros();
        double size = Math.abs(value);
        return size != 0 && (size < 1e-4 || size >= 1e9) ? rounded.toString() : rounded.toPlainString();
    }

    /** "massFlow" as "mass flow". */
    private static String words(String name) {
        return name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT);
    }
}
