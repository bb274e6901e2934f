package org.shotledger.snippet;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a declaration is about, read from the line by which the compiler describes it.
 *
 * @param type name of the class, with or without its package; nested classes after a dot
 * @param member name of the method or field, or empty for the class itself
 * @param parameters simple names of the method's parameter types, or null if it is no method
 */
record Signature(String type, String member, List<String> parameters) {

    private static final Pattern METHOD = Pattern.compile("(?:.*\\s)?([\\w.]+)\\.(\\w+)\\((.*?)\\)(?: throws .*)?");
    private static final Pattern FIELD = Pattern.compile("([\\w.]+)\\.(\\w+):.*");
    private static final Pattern VARIABLE = Pattern.compile("\\w+:([\\w.]+)");
    private static final Pattern CONSTRUCTOR = Pattern.compile("([A-Z][\\w.]*)\\((.*?)\\)(?: throws .*)?");
    private static final Pattern CLASS = Pattern.compile("([\\w.]+)(?:\\(.*\\))?");

    static Optional<Signature> of(String line) {
        String plain = withoutTypeArguments(line);
        Matcher found = CONSTRUCTOR.matcher(plain);
        if (found.matches()) {
            return Optional.of(new Signature(found.group(1), "<init>", types(found.group(2))));
        }
        found = FIELD.matcher(plain);
        if (found.matches()) {
            return Optional.of(new Signature(found.group(1), found.group(2), null));
        }
        found = VARIABLE.matcher(plain);
        if (found.matches()) {
            return Optional.of(new Signature(found.group(1), "", null));
        }
        found = CLASS.matcher(plain);
        if (found.matches() && Character.isLowerCase(plain.charAt(0))) {
            return Optional.of(new Signature(found.group(1), "", null));
        }
        found = METHOD.matcher(plain);
        return found.matches()
                ? Optional.of(new Signature(found.group(1), found.group(2), types(found.group(3))))
                : Optional.empty();
    }

    static String withoutTypeArguments(String text) {
        String shorter = text.replaceAll("<[^<>]*>", "");
        return shorter.equals(text) ? text : withoutTypeArguments(shorter);
    }

    /** The last word of a dotted type's name. */
    static String simple(String name) {
        String type = name.replace("...", "[]");
        return type.substring(type.lastIndexOf('.') + 1);
    }

    private static List<String> types(String parameters) {
        return parameters.isBlank()
                ? List.of()
                : Stream.of(parameters.split(",", -1))
                        .map(parameter -> simple(parameter.strip().split("\\s", 2)[0]))
                        .toList();
    }
}
