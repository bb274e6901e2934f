package org.shotledger.wiring;

import java.util.EnumSet;
import java.util.Set;
import org.shotledger.units.Require;

/**
 * A free pin of a controller or of an expander.
 *
 * @param name as its plug is marked
 * @param kinds what it can be set up as, at least one
 * @param pullUp pull-up resistor, ohm; zero where it has none
 * @param threshold voltage at which a digital or frequency input changes, V; zero where it is neither
 * @param frequency Hz: greatest edge rate of an input, greatest pulse rate of an output (zero: on and off only), free frames per second
 *     of a bus
 * @param current that an output can switch, A; zero for inputs
 */
public record Pin(String name, Set<PinKind> kinds, double pullUp, double threshold, double frequency, double current) {

    public Pin {
        Require.named("pin", name);
        if (kinds == null || kinds.isEmpty()) {
            throw new IllegalArgumentException("The pin " + name + " has no kind; give at least one.");
        }
        kinds = Set.copyOf(kinds);
        Require.within("pull-up of pin " + name, pullUp, 0, 1e6, "ohm");
        Require.within("threshold of pin " + name, threshold, 0, 30, "V");
        Require.within("frequency of pin " + name, frequency, 0, 1e6, "Hz");
        Require.within("current of pin " + name, current, 0, 200, "A");
        if (kinds.contains(PinKind.ANALOGUE_PULL_UP) && pullUp == 0) {
            throw new IllegalArgumentException(
                    "The pin " + name + " is an input with pull-up of 0.0 ohm; give the resistor.");
        }
    }

    /**
     * A voltage input.
     *
     * @param name as its plug is marked
     * @return the pin
     */
    public static Pin analogue(String name) {
        return new Pin(name, Set.of(PinKind.ANALOGUE), 0, 0, 0, 0);
    }

    /**
     * A voltage input with pull-up.
     *
     * @param name as its plug is marked
     * @param ohm the resistor, ohm, above zero
     * @param switchable whether the resistor can be taken off, so that it is a plain voltage input too
     * @return the pin
     */
    public static Pin pullUp(String name, double ohm, boolean switchable) {
        Set<PinKind> kinds = EnumSet.of(PinKind.ANALOGUE_PULL_UP);
        if (switchable) {
            kinds.add(PinKind.ANALOGUE);
        }
        return new Pin(name, kinds, ohm, 0, 0, 0);
    }

    /**
     * A thermocouple input.
     *
     * @param name as its plug is marked
     * @return the pin
     */
    public static Pin thermocouple(String name) {
        return new Pin(name, Set.of(PinKind.THERMOCOUPLE), 0, 0, 0, 0);
    }

    /**
     * An input that times edges and, read slowly, knows on and off.
     *
     * @param name as its plug is marked
     * @param threshold voltage at which it changes, V
     * @param frequency greatest edge rate, Hz
     * @return the pin
     */
    public static Pin frequency(String name, double threshold, double frequency) {
        return new Pin(name, Set.of(PinKind.FREQUENCY, PinKind.DIGITAL), 0, threshold, frequency, 0);
    }

    /**
     * An output of one kind.
     *
     * @param name as its plug is marked
     * @param kind one of the outputs; a half bridge serves as the other two as well
     * @param current that it can switch, A
     * @param frequency greatest pulse rate, Hz; zero for on and off only
     * @return the pin
     */
    public static Pin output(String name, PinKind kind, double current, double frequency) {
        Set<PinKind> kinds = EnumSet.of(kind);
        if (kind == PinKind.HALF_BRIDGE) {
            kinds.addAll(Set.of(PinKind.LOW_SIDE, PinKind.HIGH_SIDE));
        }
        return new Pin(name, kinds, 0, 0, frequency, current);
    }

    /**
     * A data bus.
     *
     * @param name as its plug is marked
     * @param frames free frames per second, 1/s
     * @return the pin
     */
    public static Pin bus(String name, double frames) {
        return new Pin(name, Set.of(PinKind.BUS), 0, 0, frames, 0);
    }

    /**
     * The same under another name.
     *
     * @param other as its plug is marked
     * @return the renamed pin
     */
    public Pin named(String other) {
        return new Pin(other, kinds, pullUp, threshold, frequency, current);
    }

    /** Whether another pin serves whatever this one serves. */
    boolean sameAs(Pin other) {
        return kinds.equals(other.kinds)
                && pullUp == other.pullUp
                && threshold == other.threshold
                && frequency == other.frequency
                && current == other.current;
    }
}
