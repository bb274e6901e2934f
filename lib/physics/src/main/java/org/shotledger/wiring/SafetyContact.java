package org.shotledger.wiring;

import org.shotledger.units.Require;

/**
 * A contact in series in a circuit: a switch, a relay, a driver, a fuse.
 *
 * @param name what it is; the same name in two circuits is the same part
 * @param holder what keeps it closed
 * @param output pin that drives it, where the holder is the controller; else empty
 */
public record SafetyContact(String name, Holder holder, String output) {

    /** What keeps a contact closed. */
    public enum Holder {
        /** The master switch, by hand. */
        MASTER,
        /** The arming switch, by hand. */
        ARMING,
        /** A switch on the throttle itself, closed when fully open. */
        THROTTLE,
        /** A pressure switch in the fuel line. */
        FUEL_PRESSURE,
        /** The running engine without the controller, by oil pressure or the alternator. */
        ENGINE,
        /** A fuse. */
        FUSE,
        /** An output of the controller. */
        OUTPUT
    }

    public SafetyContact {
        Require.named("contact", name);
        Require.given("holder of " + name, holder);
        if (output.isBlank() == (holder == Holder.OUTPUT)) {
            throw new IllegalArgumentException("The contact " + name + " is held by " + holder + " and its output is \""
                    + output + "\"; name the pin where the controller holds it, and nowhere else.");
        }
    }

    /**
     * A contact that is not the controller's.
     *
     * @param name what it is
     * @param holder what keeps it closed
     * @return the contact
     */
    public static SafetyContact of(String name, Holder holder) {
        return new SafetyContact(name, holder, "");
    }

    /**
     * A contact of the controller.
     *
     * @param name what it is
     * @param output pin that drives it
     * @return the contact
     */
    public static SafetyContact output(String name, String output) {
        return new SafetyContact(name, Holder.OUTPUT, output);
    }
}
