package org.shotledger.wiring;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shotledger.units.Require;

/**
 * A signal that asks for a pin.
 *
 * @param name what it is, unique among the signals
 * @param importance how much it is needed
 * @param need what it asks of a pin
 * @param rate how often it must be read or set, Hz; what an expander must manage
 * @param command what drives an output, or what an input measures; two signals may share a pin only where this is the same
 * @param closedWithoutCurrent whether what it drives is in its safe state without current; of no meaning for inputs
 * @param direct whether it must stay on the controller itself, as what opens nitrous must: a lost bus would hold it where it is
 * @param apart names of signals that are each other's independent cut and so never share a pin
 * @param options other ways, cheapest first or not
 */
public record PinSignal(
        String name,
        Importance importance,
        PinNeed need,
        double rate,
        String command,
        boolean closedWithoutCurrent,
        boolean direct,
        Set<String> apart,
        List<PinOption> options) {

    public PinSignal {
        Require.named("signal", name);
        Require.given("importance of " + name, importance);
        Require.given("need of " + name, need);
        Require.within("rate of " + name, rate, 0, 1e5, "Hz");
        Require.named("command of " + name, command);
        apart = Set.copyOf(apart);
        options = List.copyOf(options);
        if (direct && options.stream().anyMatch(option -> option.way() == PinOption.Way.BUS)) {
            throw new IllegalArgumentException("The signal " + name
                    + " must stay on the controller itself and yet names a way over the bus; take that way out.");
        }
    }

    /**
     * An input with a sensor of its own.
     *
     * @param name what it is
     * @param importance how much it is needed
     * @param need what it asks of a pin
     * @param rate how often it must be read, Hz
     * @param options other ways
     * @return the signal
     */
    public static PinSignal input(String name, Importance importance, PinNeed need, double rate, PinOption... options) {
        return new PinSignal(name, importance, need, rate, name, true, false, Set.of(), List.of(options));
    }

    /**
     * An output.
     *
     * @param name what it is
     * @param importance how much it is needed
     * @param need what it asks of a pin
     * @param command what drives it
     * @param options other ways
     * @return the signal, closed without current, allowed on an expander
     */
    public static PinSignal output(
            String name, Importance importance, PinNeed need, String command, PinOption... options) {
        return new PinSignal(name, importance, need, 0, command, true, false, Set.of(), List.of(options));
    }

    /**
     * The same, to stay on the controller itself.
     *
     * @return the signal
     */
    public PinSignal onController() {
        return new PinSignal(name, importance, need, rate, command, closedWithoutCurrent, true, apart, options);
    }

    /**
     * The same, never on one pin with others.
     *
     * @param names the others
     * @return the signal
     */
    public PinSignal apartFrom(String... names) {
        return new PinSignal(
                name, importance, need, rate, command, closedWithoutCurrent, direct, Set.of(names), options);
    }

    /**
     * The same, driven together with others.
     *
     * @param what drives it
     * @return the signal with that command
     */
    public PinSignal drivenBy(String what) {
        return new PinSignal(name, importance, need, rate, what, closedWithoutCurrent, direct, apart, options);
    }

    /**
     * Why it may not share a pin with another signal.
     *
     * @param other the other
     * @return a phrase; empty when it may
     */
    public Optional<String> sharingRefusal(PinSignal other) {
        if (apart.contains(other.name) || other.apart.contains(name)) {
            return Optional.of("one is the other's independent cut");
        }
        if (!command.equals(other.command)) {
            return Optional.of(need.output() ? "they are driven differently" : "they are different readings");
        }
        if (!need.kinds().equals(other.need.kinds()) || need.frequency() != other.need.frequency()) {
            return Optional.of("they ask for different pins or pulse rates");
        }
        if (need.output() && !(closedWithoutCurrent && other.closedWithoutCurrent)) {
            return Optional.of("they do not both close when the pin is off");
        }
        return Optional.empty();
    }

    /**
     * Why it may share a pin with the signals that it may share with.
     *
     * @return a phrase
     */
    public String sharingReason() {
        return need.output()
                ? "same duty from \"" + command + "\", and all close together when the pin is off"
                : "one sensor, one wire: \"" + command + "\"";
    }
}
