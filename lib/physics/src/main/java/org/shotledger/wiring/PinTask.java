package org.shotledger.wiring;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.shotledger.units.Require;

/**
 * Signals that ask for pins, the pins there are, and what may be bought.
 *
 * @param pins free pins of the controller, one bus among them at most
 * @param signals the signals, each name once
 * @param expanders devices that bring further pins
 */
public record PinTask(List<Pin> pins, List<PinSignal> signals, List<PinExpander> expanders) {
    /** Largest number of signals: our choice, beyond it the proof may take too long. */
    private static final int MOST_SIGNALS = 60;

    /** Every set of them is tried: our choice. */
    private static final int MOST_EXPANDERS = 6;

    public PinTask {
        pins = List.copyOf(pins);
        signals = List.copyOf(signals);
        expanders = List.copyOf(expanders);
        Require.within("number of expanders", expanders.size(), 0, MOST_EXPANDERS, "");
        Require.within("number of signals", signals.size(), 0, MOST_SIGNALS, "");
        if (pins.stream().filter(pin -> pin.kinds().contains(PinKind.BUS)).count() > 1) {
            throw new IllegalArgumentException(
                    "The pins hold more than one data bus; give the one that sensors and expanders may use.");
        }
        unique("signal", signals.stream().map(PinSignal::name).toList());
        unique("pin", pins.stream().map(Pin::name).toList());
    }

    /**
     * Sets the signals on the pins that are there, nothing bought: as many as possible of those that must be there, then of those that
     * should, then of those that could; among equals with the fewest shared pins.
     *
     * @return the plan
     */
    public PinPlan asBuilt() {
        return new PinSearch(this, Importance.COULD, Set.of(), Set.of()).best();
    }

    /**
     * The cheapest purchases that provide for as many signals as can be provided for, down to an importance; less important ones get
     * what is left over without a purchase.
     *
     * @param downTo the least importance that is paid for
     * @return the plan with its price
     */
    public PinPlan cheapest(Importance downTo) {
        Set<PinOption> options = new HashSet<>();
        signals.forEach(signal -> options.addAll(signal.options()));
        return new PinSearch(this, downTo, options, new HashSet<>(expanders)).best();
    }

    /** With nothing but one purchase. */
    PinPlan with(PinOption option) {
        return new PinSearch(this, Importance.COULD, Set.of(option), Set.of()).best();
    }

    /** With nothing but one purchase. */
    PinPlan with(PinExpander expander) {
        return new PinSearch(this, Importance.COULD, Set.of(), Set.of(expander)).best();
    }

    private static void unique(String what, List<String> names) {
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                throw new IllegalArgumentException(
                        "Two " + what + "s are called \"" + name + "\"; give each its own name.");
            }
        }
    }
}
