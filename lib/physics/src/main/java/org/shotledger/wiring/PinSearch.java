package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Exhaustive depth-first search with bounds for the best plan.
 *
 * <p>Plans are compared entry by entry: unplaced signals of each importance, the price after the last importance that is paid for,
 * shared pins last. A branch is left only when its lower bound is no better than the best plan found, so that the plan returned is
 * the best one unless the search was cut off ({@link PinPlan#proven()}). Equal input gives equal output.
 */
final class PinSearch {
    /** Nodes after which the search gives up its proof: our choice, a second or two. */
    private static final long MOST_NODES = 20_000;

    final PinTask task;
    final List<PinSignal> order;
    final Set<PinOption> options;
    final Set<PinExpander> expanders;
    final PinSlots slots;
    final boolean[] bought;

    private final PinBound bound;
    private final PinScore score;
    private final PinMove[] moves;
    private PinMove[] bestMoves;
    private double[] best;
    private long visited;

    PinSearch(PinTask task, Importance paidFor, Set<PinOption> options, Set<PinExpander> expanders) {
        this.task = task;
        this.options = options;
        this.expanders = expanders;
        slots = new PinSlots(task.pins(), task.expanders());
        bought = new boolean[task.expanders().size()];
        order = new ArrayList<>(task.signals());
        order.sort(Comparator.comparing(PinSignal::importance).thenComparing(this::serving));
        moves = new PinMove[order.size()];
        score = new PinScore(paidFor);
        bound = new PinBound(this, score);
    }

    /** Every set of expanders that may be bought and that the bus has room for, then every way to set the signals with it. */
    PinPlan best() {
        for (int set = 0; set < 1 << bought.length; set++) {
            double[] start = new double[PinScore.ENTRIES];
            double frames = 0;
            boolean allowed = true;
            for (int e = 0; e < bought.length; e++) {
                bought[e] = ((set >> e) & 1) == 1;
                if (bought[e]) {
                    allowed &= expanders.contains(task.expanders().get(e));
                    frames += task.expanders().get(e).frames();
                    start[score.price()] += task.expanders().get(e).price();
                }
            }
            if (allowed && (set == 0 || slots.busHas(frames))) {
                slots.framesLeft -= frames;
                descend(0, start);
                slots.framesLeft += frames;
            }
        }
        return new PinReport(this, bestMoves, best[score.price()]).plan(visited);
    }

    static boolean proven(long visited) {
        return visited < MOST_NODES;
    }

    private long serving(PinSignal signal) {
        return slots.pins.stream()
                .filter(pin -> signal.need().refusal(pin).isEmpty())
                .count();
    }

    private void descend(int depth, double[] cost) {
        if (!proven(++visited)) {
            return;
        }
        if (depth == order.size()) {
            best = cost;
            bestMoves = moves.clone();
            return;
        }
        for (PinMove move : movesOf(order.get(depth))) {
            PinSignal signal = order.get(depth);
            double[] next = score.after(cost, signal, move);
            apply(signal, move, 1);
            moves[depth] = move;
            if (best == null || Arrays.compare(score.plus(next, bound.rest(depth + 1)), best) < 0) {
                descend(depth + 1, next);
            }
            apply(signal, move, -1);
        }
    }

    /** In the order in which they are tried: a pin of its own, a shared one, what costs, nothing. */
    private List<PinMove> movesOf(PinSignal signal) {
        List<PinMove> list = new ArrayList<>();
        for (int slot = 0; slot < slots.pins.size(); slot++) {
            if (slot != slots.bus && !slots.free(slot) && usable(signal, slot) && slots.joins(signal, slot)) {
                list.add(new PinMove(slot, Optional.empty(), true, true, 0));
            }
        }
        onFreePins(signal, signal.need(), Optional.empty(), list);
        for (PinOption option : signal.options()) {
            if (options.contains(option)) {
                optional(signal, option, list);
            }
        }
        list.sort(Comparator.comparing(PinMove::price)
                .thenComparing(PinMove::shared)
                .thenComparing(this::versatility));
        list.add(PinMove.NOWHERE);
        return list;
    }

    private void optional(PinSignal signal, PinOption option, List<PinMove> list) {
        if (option.need().isEmpty()) {
            list.add(new PinMove(-1, Optional.of(option), false, true, option.price()));
        } else if (option.need().get().kinds().contains(PinKind.BUS)) {
            if (slots.busHas(option.need().get().frequency())) {
                list.add(new PinMove(slots.bus, Optional.of(option), false, true, option.price()));
            }
        } else {
            onFreePins(signal, option.need().get(), Optional.of(option), list);
        }
    }

    private void onFreePins(PinSignal signal, PinNeed need, Optional<PinOption> option, List<PinMove> list) {
        for (int slot = 0; slot < slots.pins.size(); slot++) {
            if (slot == slots.bus || !slots.free(slot) || !usable(signal, slot) || slots.repeats(slot)) {
                continue;
            }
            if (need.refusal(slots.pins.get(slot)).isEmpty()) {
                list.add(new PinMove(
                        slot, option, false, true, option.map(PinOption::price).orElse(0.0)));
            }
        }
    }

    /** A versatile pin is spent last. */
    private long versatility(PinMove move) {
        if (move.slot() < 0) {
            return 0;
        }
        Pin pin = slots.pins.get(move.slot());
        return order.stream()
                .filter(signal -> signal.need().refusal(pin).isEmpty())
                .count();
    }

    boolean usable(PinSignal signal, int slot) {
        int owner = slots.owner.get(slot);
        return owner < 0
                || (bought[owner]
                        && !signal.direct()
                        && signal.rate() <= task.expanders().get(owner).rate());
    }

    private void apply(PinSignal signal, PinMove move, int sign) {
        if (move.slot() < 0) {
            return;
        }
        if (move.slot() == slots.bus) {
            slots.framesLeft -= sign * frames(move);
        } else if (sign > 0) {
            slots.on.get(move.slot()).add(signal);
        } else {
            slots.on.get(move.slot()).remove(signal);
        }
    }

    private static double frames(PinMove move) {
        return move.option().flatMap(PinOption::need).map(PinNeed::frequency).orElse(0.0);
    }
}
