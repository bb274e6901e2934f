package org.shotledger.snippet;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Finds the variables whose values still use what a cell has replaced: closures, and values of a type that was declared again. */
final class Stale {

    /** How many objects of one variable are looked at: enough for what people write, short enough not to be felt. */
    private static final int MOST = 20_000;

    private static final int ARRAY_LOOK = 1_000;

    private final Linker linker;
    private final Set<String> outdated;
    private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Deque<Object> rest = new ArrayDeque<>();

    private Stale(Linker linker, Set<String> outdated) {
        this.linker = linker;
        this.outdated = outdated;
    }

    static Set<String> among(List<String> names, Variables variables, Linker linker) {
        Set<String> outdated = linker.takeOutdated();
        Set<String> found = new TreeSet<>();
        if (!outdated.isEmpty()) {
            for (String name : names) {
                if (new Stale(linker, outdated).holds(variables.value(name))) {
                    found.add(name);
                }
            }
        }
        return found;
    }

    private boolean holds(Object value) {
        add(value);
        while (!rest.isEmpty() && seen.size() < MOST) {
            Object one = rest.poll();
            if (isStale(one.getClass())) {
                return true;
            }
            follow(one);
        }
        return false;
    }

    private void add(Object value) {
        if (value != null && seen.add(value)) {
            rest.add(value);
        }
    }

    private boolean isStale(Class<?> type) {
        String holder = Linker.holderOf(type.getName());
        return holder != null
                && (outdated.contains(holder) || !Collections.disjoint(linker.mentionedBy(holder), outdated));
    }

    private void follow(Object one) {
        if (one instanceof Object[] array) {
            for (int i = 0; i < Math.min(ARRAY_LOOK, array.length); i++) {
                add(Array.get(array, i));
            }
        } else if (one instanceof Collection<?> || one instanceof Map<?, ?>) {
            contents(one);
        } else if (Linker.holderOf(one.getClass().getName()) != null) {
            fields(one, one.getClass());
        }
    }

    /** A collection of the cell's own may fail or never end. */
    private void contents(Object one) {
        if (!one.getClass().getName().startsWith("java.util.")) {
            return;
        }
        try {
            if (one instanceof Map<?, ?> map) {
                map.forEach((key, value) -> {
                    add(key);
                    add(value);
                });
            } else {
                ((Collection<?>) one).forEach(this::add);
            }
        } catch (RuntimeException changing) {
            return; // a thread of the cell fills it at this moment: what was seen so far decides
        }
    }

    /** What a closure has captured, or a value of a cell's own type holds. */
    private void fields(Object one, Class<?> type) {
        for (Field field : type.getDeclaredFields()) {
            if (!Modifier.isStatic(field.getModifiers()) && !field.getType().isPrimitive()) {
                try {
                    field.setAccessible(true);
                    add(field.get(one));
                } catch (ReflectiveOperationException | RuntimeException closed) {
                    seen.add(field); // not to be looked into
                }
            }
        }
        Class<?> above = type.getSuperclass();
        if (above != null && Linker.holderOf(above.getName()) != null) {
            fields(one, above);
        }
    }
}
