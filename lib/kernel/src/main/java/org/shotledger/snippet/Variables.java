package org.shotledger.snippet;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The values of a session's variables. A variable has a place for each type it was ever declared with; its value moves on when a cell
 * gives it another type that the value fits.
 */
final class Variables {

    private record Move(Linker.Stub from, Linker.Stub to) {}

    private final Map<String, Linker.Stub> newest = new HashMap<>();
    private final Map<String, Move> moves = new LinkedHashMap<>();
    private final Map<String, Linker.Stub> earlier = new HashMap<>();
    private final List<String> losses = new ArrayList<>();
    private final Function<String, Class<?>> classes;

    Variables(Function<String, Class<?>> classes) {
        this.classes = classes;
    }

    /** Forgets where variables were before the snippet that begins now. */
    void begin() {
        earlier.clear();
    }

    /** The value a variable had before the running snippet declared it with another type. */
    Object earlierValue(String name) {
        Linker.Stub place = earlier.getOrDefault(name, newest.get(name));
        return place == null ? null : get(field(place));
    }

    /** Gives a variable a value back, unless it is of another type by now. */
    boolean giveBack(String name, Object value) {
        Linker.Stub place = newest.get(name);
        boolean fits = place != null && fits(field(place).getType(), value);
        if (fits) {
            set(field(place), value);
        }
        return fits;
    }

    private static boolean fits(Class<?> type, Object value) {
        // what an array of the type holds is of the class that values of the type have
        Class<?> held =
                type.isPrimitive() ? Array.get(Array.newInstance(type, 1), 0).getClass() : type;
        return held.isInstance(value);
    }

    /** A holder was loaded that declares these variables. */
    void declared(List<Linker.Stub> places) {
        for (Linker.Stub place : places) {
            Linker.Stub old = newest.put(place.name(), place);
            if (old != null && !old.equals(place)) {
                earlier.putIfAbsent(place.name(), old);
                // a holder may be made anew more than once before it is used: carry from the first to the last
                moves.merge(place.name(), new Move(old, place), (a, b) -> new Move(a.from(), b.to()));
            }
        }
    }

    /** Moves all values but those of the variables being evaluated, which are about to be set. */
    void carryOver(List<Linker.Stub> except) {
        for (Move move : moves.values()) {
            if (!except.contains(move.to()) && !move.from().equals(move.to())) {
                carry(move);
            }
        }
        moves.clear();
    }

    private void carry(Move move) {
        Object value = get(field(move.from()));
        boolean fits = fits(field(move.to()).getType(), value);
        if (fits) {
            set(field(move.to()), value);
        } else {
            reset(move.to()); // the place may have been used before
        }
        if (!fits && value != null) {
            losses.add(move.to().name());
        }
    }

    List<String> takeLosses() {
        List<String> taken = List.copyOf(losses);
        losses.clear();
        return taken;
    }

    /** The value of a variable; null if there is none. */
    Object value(String name) {
        Linker.Stub place = newest.get(name);
        return place == null ? null : get(field(place));
    }

    /** Sets a variable to what it is without a value, so that what it referred to can be collected. */
    void reset(String name) {
        Linker.Stub place = newest.get(name);
        if (place != null) {
            reset(place);
        }
    }

    /** Lets go of a variable and its value. */
    void forget(String name) {
        reset(name);
        newest.remove(name);
        moves.remove(name);
    }

    private void reset(Linker.Stub place) {
        Field field = field(place);
        // an array of the type holds what a variable of the type starts with
        set(field, Array.get(Array.newInstance(field.getType(), 1), 0));
    }

    private Field field(Linker.Stub place) {
        try {
            return classes.apply(place.className()).getField(place.name());
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException("the variable " + place.name() + " has no place", e);
        }
    }

    private static Object get(Field field) {
        try {
            field.setAccessible(true);
            return field.get(null);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void set(Field field, Object value) {
        try {
            field.setAccessible(true);
            field.set(null, value);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }
}
