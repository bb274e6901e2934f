package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * What the signals still to be set cost at least.
 *
 * <p>Each signal, and each set of signals that may lie on one pin, needs a pin; those that a largest matching to free pins leaves over,
 * built in the order of importance, are as few as can be (the sets that can be matched form a matroid, so the greedy order is best for
 * each importance at once: Edmonds and Fulkerson, J. Res. NBS 69B (1965) 147). Signals with a way that needs no pin are left out. What no
 * pin can take as it asks costs at least its own cheapest purchase, by the same greedy order over prices.
 */
final class PinBound {
    private final PinSearch search;
    private final PinScore score;
    private final PinEdges edges;
    private final int[] taken;

    PinBound(PinSearch search, PinScore score) {
        this.search = search;
        this.score = score;
        edges = new PinEdges(search);
        taken = new int[search.slots.pins.size()];
    }

    /** Lower bound of every entry for the signals from a depth on. */
    double[] rest(int from) {
        double[] rest = new double[PinScore.ENTRIES];
        leftOver(from, rest);
        double shared = shared(from, rest);
        rest[score.price()] = price(from, rest);
        rest[PinScore.ENTRIES - 1] = shared;
        return rest;
    }

    private void leftOver(int from, double[] rest) {
        Arrays.fill(taken, -1);
        for (int i = from; i < search.order.size(); i++) {
            if (edges.leads(i, from) && !escapes(i) && !augment(i, edges.ofGroup, new boolean[taken.length])) {
                rest[score.unplaced(search.order.get(i).importance())]++;
            }
        }
    }

    /** Pins that carry more than one, when no more is left over than must be. */
    private double shared(int from, double[] rest) {
        Arrays.fill(taken, -1);
        double without = 0;
        for (int i = from; i < search.order.size(); i++) {
            if (!escapes(i) && !augment(i, edges.anyWay, new boolean[taken.length])) {
                without++;
            }
        }
        for (double leftOver : rest) {
            without -= leftOver;
        }
        return Math.max(0, without);
    }

    /** Those with a way without a pin take it or a pin; of the others, as many as were found left over pay nothing. */
    private double price(int from, double[] rest) {
        int free = 0;
        for (int i = 0; i < score.price(); i++) {
            free += (int) rest[i];
        }
        return price(from, true, 0) + price(from, false, free);
    }

    /** The dearest are matched first, so that what finds no pin is as cheap as can be. */
    private double price(int from, boolean escaping, int free) {
        Arrays.fill(taken, -1);
        List<Double> prices = new ArrayList<>();
        for (int i : dearestFirst(from, escaping)) {
            if (!augment(i, edges.direct, new boolean[taken.length])) {
                prices.add(cheapest(i));
            }
        }
        Collections.sort(prices);
        double sum = 0;
        for (int i = 0; i < prices.size() - free && Double.isFinite(prices.get(i)); i++) {
            sum += prices.get(i);
        }
        return sum;
    }

    private List<Integer> dearestFirst(int from, boolean escaping) {
        List<Integer> list = new ArrayList<>();
        for (int i = from; i < search.order.size(); i++) {
            boolean paid = search.order.get(i).importance().compareTo(score.paidFor) <= 0;
            if (paid && !edges.shares(i) && escapes(i) == escaping) {
                list.add(i);
            }
        }
        list.sort(Comparator.comparing(this::cheapest).reversed());
        return list;
    }

    /** Kuhn's step: gives a signal a pin, moving others where that makes room. */
    private boolean augment(int signal, boolean[][] edge, boolean[] seen) {
        for (int slot = 0; slot < taken.length; slot++) {
            if (seen[slot] || !edge[signal][slot] || !ready(signal, slot)) {
                continue;
            }
            seen[slot] = true;
            if (taken[slot] < 0 || augment(taken[slot], edge, seen)) {
                taken[slot] = signal;
                return true;
            }
        }
        return false;
    }

    private boolean ready(int signal, int slot) {
        return search.slots.free(slot) && search.usable(search.order.get(signal), slot);
    }

    /** Whether it, or a signal that may share with it, needs no pin that is there now. */
    private boolean escapes(int signal) {
        return edges.group(signal).stream().anyMatch(this::escapesAlone);
    }

    private boolean escapesAlone(int signal) {
        return search.order.get(signal).options().stream()
                .anyMatch(option -> search.options.contains(option) && needsNoPin(option));
    }

    private static boolean needsNoPin(PinOption option) {
        return option.need().map(need -> need.kinds().contains(PinKind.BUS)).orElse(true);
    }

    private double cheapest(int signal) {
        double cheapest = Double.POSITIVE_INFINITY;
        for (PinOption option : search.order.get(signal).options()) {
            if (search.options.contains(option)) {
                cheapest = Math.min(cheapest, option.price());
            }
        }
        return cheapest;
    }
}
