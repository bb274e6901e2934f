package org.shotledger.display;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.ServiceLoader;
import java.util.concurrent.atomic.AtomicReference;

/** Turns values into MIME bundles and shows them in whatever runs the notebook. */
public final class Display {

    /** Plain text; every bundle holds it. */
    public static final String TEXT = "text/plain";

    /** A fragment of HTML. */
    public static final String HTML = "text/html";

    /** A whole SVG document. */
    public static final String SVG = "image/svg+xml";

    /** A PNG image, as {@code byte[]}. */
    public static final String PNG = "image/png";

    /** Markdown text. */
    public static final String MARKDOWN = "text/markdown";

    private static final AtomicReference<DisplaySink> SINK = new AtomicReference<>(new TerminalSink());

    private Display() {}

    /**
     * All forms in which a value can be shown. Numbers, texts and other values of {@code java.lang} have the form of text only, so that
     * the renderers need not be looked for. Arrays, pictures, optionals, maps, records and lists of records have forms of their own.
     *
     * @param value any value, null included
     * @return MIME type to content, {@link #TEXT} always present; {@code String}, or {@code byte[]} for binary types
     */
    public static Map<String, Object> bundle(Object value) {
        if (value instanceof Displayable d) {
            return ofDisplayable(d);
        }
        Map<String, Object> out = new LinkedHashMap<>();
        if (value != null && !isPlain(value)) {
            DisplayRenderer<?> renderer = mostSpecial(value);
            out.putAll(renderer == null ? JavaValues.forms(value) : apply(renderer, value));
        }
        out.computeIfAbsent(TEXT, type -> StableText.of(value));
        return out;
    }

    /**
     * Shows a value at once, in the middle of a cell.
     *
     * @param value any value
     */
    public static void show(Object value) {
        SINK.get().show(bundle(value), null);
    }

    /**
     * Shows a value under a name, so that {@link #update} can replace it.
     *
     * @param value any value
     * @param id a name, unique in the notebook
     */
    public static void show(Object value, String id) {
        SINK.get().show(bundle(value), Objects.requireNonNull(id, "id"));
    }

    /**
     * Replaces what was shown under a name.
     *
     * @param value the new value
     * @param id the name given to {@link #show(Object, String)}
     */
    public static void update(Object value, String id) {
        SINK.get().update(bundle(value), Objects.requireNonNull(id, "id"));
    }

    /**
     * The place where the running notebook shows things.
     *
     * @return the installed sink; the terminal if none was installed
     */
    public static DisplaySink sink() {
        return SINK.get();
    }

    /**
     * Called by a kernel when it starts a session.
     *
     * @param sink where shown values go from now on, or null for the terminal
     */
    public static void install(DisplaySink sink) {
        SINK.set(sink == null ? new TerminalSink() : sink);
    }

    /**
     * Escapes text for use in HTML content and quoted attributes.
     *
     * @param text any text
     * @return the text with the five special characters replaced
     */
    public static String escapeHtml(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(c);
            }
        }
        return out.toString();
    }

    /** Whether a value knows how it looks, by itself or by a renderer. */
    static boolean hasForms(Object value) {
        return value instanceof Displayable || (value != null && !isPlain(value) && mostSpecial(value) != null);
    }

    private static boolean isPlain(Object value) {
        return value.getClass().getPackageName().equals("java.lang")
                && !value.getClass().isArray();
    }

    private static Map<String, Object> ofDisplayable(Displayable value) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put(TEXT, value.toText());
        out.put(HTML, value.toHtml());
        value.toSvg().ifPresent(svg -> out.put(SVG, svg));
        return out;
    }

    private static <T> Map<String, Object> apply(DisplayRenderer<T> renderer, Object value) {
        return renderer.render(renderer.type().cast(value));
    }

    /** The forms of a list whose values have one renderer, if that shows them together; empty otherwise. */
    static Map<String, Object> together(Collection<?> values) {
        DisplayRenderer<?> renderer = mostSpecial(values.iterator().next());
        return renderer != null && values.stream().allMatch(value -> mostSpecial(value) == renderer)
                ? applyToAll(renderer, values)
                : Map.of();
    }

    private static <T> Map<String, Object> applyToAll(DisplayRenderer<T> renderer, Collection<?> values) {
        return renderer.renderAll(values.stream().map(renderer.type()::cast).toList());
    }

    private static DisplayRenderer<?> mostSpecial(Object value) {
        DisplayRenderer<?> best = null;
        for (DisplayRenderer<?> candidate : Renderers.ALL) {
            boolean fits = candidate.type().isInstance(value);
            if (fits && (best == null || best.type().isAssignableFrom(candidate.type()))) {
                best = candidate;
            }
        }
        return best;
    }

    /** Looked up once, at the first value shown. */
    private static final class Renderers {
        static final List<DisplayRenderer<?>> ALL = load();

        private static List<DisplayRenderer<?>> load() {
            List<DisplayRenderer<?>> found = new ArrayList<>();
            ServiceLoader.load(DisplayRenderer.class, Display.class.getClassLoader())
                    .forEach(found::add);
            return List.copyOf(found);
        }
    }
}
