package org.shotledger.view;

import java.util.concurrent.atomic.AtomicReference;
import org.shotledger.table.Shown;

/**
 * The units in which a bare result is shown in a notebook. A front end asks for a value's picture and hands over nothing
 * else, so this one choice is kept for the session; everything that can be asked for by name takes its units as an
 * argument instead.
 */
public final class Viewing {
    private static final AtomicReference<Shown> CHOICE = new AtomicReference<>(Shown.US);

    private Viewing() {}

    /**
     * The units of the session.
     *
     * @return US units until others are chosen
     */
    public static Shown units() {
        return CHOICE.get();
    }

    /**
     * Chooses the units of the session.
     *
     * @param shown the units
     */
    public static void choose(Shown shown) {
        CHOICE.set(shown);
    }
}
