package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Writes the outcome of a search down, with its reasons. */
final class PinReport {
    private final PinSearch search;
    private final Map<PinSignal, PinMove> moves = new LinkedHashMap<>();
    private final double price;

    PinReport(PinSearch search, PinMove[] best, double price) {
        this.search = search;
        this.price = price;
        for (int i = 0; i < best.length; i++) {
            moves.put(search.order.get(i), best[i]);
        }
    }

    PinPlan plan(long visited) {
        List<PinPlacement> placements = new ArrayList<>();
        Set<PinExpander> expanders = new LinkedHashSet<>();
        for (PinSignal signal : search.task.signals()) {
            PinPlacement placement = placement(signal, moves.get(signal));
            placements.add(placement);
            placement.expander().ifPresent(expanders::add);
        }
        return new PinPlan(placements, List.copyOf(expanders), price, visited, PinSearch.proven(visited));
    }

    private PinPlacement placement(PinSignal signal, PinMove move) {
        if (!move.placed()) {
            return new PinPlacement(
                    signal, Optional.empty(), Optional.empty(), Optional.empty(), List.of(), false, missing(signal));
        }
        Optional<Pin> pin = move.slot() < 0 ? Optional.empty() : Optional.of(search.slots.pins.get(move.slot()));
        int owner = move.slot() < 0 ? PinSlots.CONTROLLER : search.slots.owner.get(move.slot());
        Optional<PinExpander> expander = owner < 0
                ? Optional.empty()
                : Optional.of(search.task.expanders().get(owner));
        List<String> others = move.slot() < 0 || move.slot() == search.slots.bus ? List.of() : others(signal, move);
        return new PinPlacement(
                signal, pin, move.option(), expander, others, true, why(signal, move.option(), expander, others));
    }

    private static String why(
            PinSignal signal, Optional<PinOption> option, Optional<PinExpander> expander, List<String> others) {
        if (option.isPresent()) {
            return option.get().way().words() + ": " + option.get().what();
        }
        String where = expander.map(e -> "on the expander " + e.name()).orElse("on the controller");
        return others.isEmpty()
                ? "a pin of its own " + where
                : "shares with " + String.join(", ", others) + ": " + signal.sharingReason();
    }

    private List<String> others(PinSignal signal, PinMove move) {
        List<String> names = new ArrayList<>();
        moves.forEach((other, at) -> {
            if (!other.equals(signal) && at.slot() == move.slot()) {
                names.add(other.name());
            }
        });
        return names;
    }

    /** Who holds the pins that would serve; where none would, what the closest lacks. */
    private String missing(PinSignal signal) {
        List<String> holders = new ArrayList<>();
        String lacks = "the controller has no free pin at all";
        for (Pin pin : search.task.pins()) {
            Optional<String> refusal = signal.need().refusal(pin);
            if (refusal.isEmpty()) {
                holders.add(holder(pin));
            } else if (!refusal.get().startsWith("it is no ") || lacks.startsWith("the controller")) {
                lacks = "no free pin serves; of " + pin.name() + ": " + refusal.get();
            }
        }
        return holders.isEmpty() ? lacks : "the pins that would serve are taken: " + String.join(", ", holders);
    }

    private String holder(Pin pin) {
        for (Map.Entry<PinSignal, PinMove> entry : moves.entrySet()) {
            int slot = entry.getValue().slot();
            if (slot >= 0 && search.slots.pins.get(slot).equals(pin)) {
                return pin.name() + " by " + entry.getKey().name();
            }
        }
        return pin.name() + " kept free";
    }
}
