package org.shotledger.snippet;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Carries the values of variables over when the compiler re-creates the classes that hold them.
 *
 * <p>When a declaration is evaluated again, everything that mentions it is compiled anew and its fields start at 0 or null.
 * The holder classes of one variable share a number and differ in a letter ({@code $JShell$12}, {@code $JShell$12B}), which
 * tells old from new; declarations that need each other share a holder ({@code $JShell$12_14B}).
 */
final class ValueCarrier {

    private static final Pattern HOLDER = Pattern.compile("REPL\\.\\$JShell\\$(\\d+[A-Z]*(?:_\\d+[A-Z]*)*)");

    private record Replacement(Class<?> from, Class<?> to) {}

    private final Map<String, Class<?>> newest = new HashMap<>();
    private final Map<String, Replacement> pending = new LinkedHashMap<>();
    private final List<String> losses = new ArrayList<>();

    static boolean isHolder(String className) {
        return HOLDER.matcher(className).matches();
    }

    void loaded(String className, Class<?> holder) {
        for (String number : numbers(className)) {
            Class<?> old = newest.put(number, holder);
            if (old != null && old != holder) {
                // a holder may be re-created more than once before it is used: carry from the first to the last
                pending.merge(number, new Replacement(old, holder), (a, b) -> new Replacement(a.from(), b.to()));
            }
        }
    }

    /** Copies the values of all re-created holders but the one being evaluated, whose value is about to be set. */
    void carryOver(String exceptClass) {
        for (Replacement replacement : pending.values()) {
            if (!replacement.to().getName().equals(exceptClass)) {
                copyFields(replacement);
            }
        }
        pending.clear();
    }

    List<String> takeLosses() {
        List<String> taken = List.copyOf(losses);
        losses.clear();
        return taken;
    }

    void clear(String className, String name) {
        List<String> numbers = numbers(className);
        Class<?> type = numbers.isEmpty() ? null : newest.get(numbers.get(0));
        if (type == null) {
            return;
        }
        try {
            Field field = type.getDeclaredField(name);
            field.setAccessible(true);
            if (!field.getType().isPrimitive()) {
                field.set(null, null);
            }
        } catch (NoSuchFieldException | IllegalAccessException e) {
            throw new IllegalStateException("cannot clear the variable " + name, e);
        }
    }

    private static List<String> numbers(String className) {
        Matcher name = HOLDER.matcher(className);
        List<String> found = new ArrayList<>();
        if (name.matches()) {
            for (String part : name.group(1).split("_", -1)) {
                found.add(part.replaceAll("[A-Z]", ""));
            }
        }
        return found;
    }

    private void copyFields(Replacement replacement) {
        for (Field to : replacement.to().getDeclaredFields()) {
            if (Modifier.isStatic(to.getModifiers()) && !to.isSynthetic()) {
                copyField(replacement.from(), to);
            }
        }
    }

    private void copyField(Class<?> source, Field to) {
        try {
            Field from = source.getDeclaredField(to.getName());
            from.setAccessible(true);
            to.setAccessible(true);
            Object value = from.get(null);
            if (value == null) {
                return;
            }
            boolean fits = to.getType().isPrimitive()
                    ? to.getType() == from.getType()
                    : to.getType().isInstance(value);
            if (fits) {
                to.set(null, value);
            } else {
                losses.add(to.getName());
            }
        } catch (NoSuchFieldException e) {
            return; // the new holder has a field the old one had not: nothing to carry
        } catch (IllegalAccessException e) {
            losses.add(to.getName());
        }
    }
}
