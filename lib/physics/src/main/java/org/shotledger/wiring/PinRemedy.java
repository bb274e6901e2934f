package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One purchase, and what it does for the signals.
 *
 * @param what the part in words, with the signal that it moves
 * @param price of it, in the sheet's money
 * @param provides signals that it provides for and that had no pin before
 * @param plan the plan with it and nothing else bought
 */
public record PinRemedy(String what, double price, List<PinSignal> provides, PinPlan plan) {
    public PinRemedy {
        provides = List.copyOf(provides);
    }

    /**
     * Tries every purchase alone.
     *
     * @param task signals, pins and what may be bought
     * @return those that provide for a signal that has no pin without them, the cheapest first
     */
    public static List<PinRemedy> all(PinTask task) {
        PinPlan before = task.asBuilt();
        List<PinRemedy> list = new ArrayList<>();
        Set<PinOption> tried = new LinkedHashSet<>();
        for (PinSignal signal : task.signals()) {
            for (PinOption option : signal.options()) {
                if (tried.add(option)) {
                    add(
                            signal.name() + " " + option.way().words() + ": " + option.what(),
                            before,
                            task.with(option),
                            list);
                }
            }
        }
        task.expanders().forEach(e -> add("expander: " + e.name(), before, task.with(e), list));
        list.sort(java.util.Comparator.comparing(PinRemedy::price));
        return list;
    }

    private static void add(String what, PinPlan before, PinPlan after, List<PinRemedy> list) {
        List<PinSignal> provides = new ArrayList<>();
        for (PinPlacement placement : after.placements()) {
            if (placement.placed() && !before.of(placement.signal().name()).placed()) {
                provides.add(placement.signal());
            }
        }
        if (!provides.isEmpty()) {
            list.add(new PinRemedy(what, after.price(), provides, after));
        }
    }
}
