package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.List;

/** Which signal can lie on which pin, and which signals may lie together, worked out once for a search. */
final class PinEdges {
    /** Signal by pin: as it asks. */
    final boolean[][] direct;
    /** Signal by pin: as it asks or through a part that may be bought. */
    final boolean[][] anyWay;
    /** Signal by pin: the same for it or any signal of its group. */
    final boolean[][] ofGroup;

    private final List<List<Integer>> groups = new ArrayList<>();

    PinEdges(PinSearch search) {
        int count = search.order.size();
        int pins = search.slots.pins.size();
        direct = new boolean[count][pins];
        anyWay = new boolean[count][pins];
        ofGroup = new boolean[count][pins];
        for (int i = 0; i < count; i++) {
            PinSignal signal = search.order.get(i);
            for (int slot = 0; slot < pins; slot++) {
                Pin pin = search.slots.pins.get(slot);
                direct[i][slot] =
                        slot != search.slots.bus && signal.need().refusal(pin).isEmpty();
                anyWay[i][slot] = direct[i][slot] || (slot != search.slots.bus && optional(search, signal, pin));
            }
        }
        for (int i = 0; i < count; i++) {
            groups.add(together(search, i));
            for (int member : groups.get(i)) {
                for (int slot = 0; slot < pins; slot++) {
                    ofGroup[i][slot] |= anyWay[member][slot];
                }
            }
        }
    }

    /** The signals that it may share with, near or far, itself included. */
    List<Integer> group(int signal) {
        return groups.get(signal);
    }

    boolean shares(int signal) {
        return groups.get(signal).size() > 1;
    }

    /** Whether it stands for its group: the first of it, all of which is still to be set. */
    boolean leads(int signal, int from) {
        return groups.get(signal).get(0) == signal && signal >= from;
    }

    private static boolean optional(PinSearch search, PinSignal signal, Pin pin) {
        return signal.options().stream()
                .filter(search.options::contains)
                .flatMap(option -> option.need().stream())
                .anyMatch(need -> need.refusal(pin).isEmpty());
    }

    private static List<Integer> together(PinSearch search, int start) {
        List<Integer> group = new ArrayList<>(List.of(start));
        for (int next = 0; next < group.size(); next++) {
            for (int i = 0; i < search.order.size(); i++) {
                if (!group.contains(i) && pair(search, search.order.get(group.get(next)), search.order.get(i))) {
                    group.add(i);
                }
            }
        }
        group.sort(null);
        return group;
    }

    /** Whether some pin carries both at once. */
    private static boolean pair(PinSearch search, PinSignal a, PinSignal b) {
        PinNeed both = a.need().withCurrent(a.need().current() + b.need().current());
        return a.sharingRefusal(b).isEmpty()
                && search.slots.pins.stream().anyMatch(pin -> both.refusal(pin).isEmpty());
    }
}
