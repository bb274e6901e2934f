package org.shotledger.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.shotledger.study.Rank.Ranked;

/**
 * Combinations that keep every limit and that no other betters in power, margin and nitrous at once, to a grain: one stands for
 * each box of one grain in every objective, and a box that another covers is dropped (the archive of Laumanns, Thiele, Deb and
 * Zitzler, Evolutionary Computation 10 (2002) 263). With the grain fixed the result does not depend on the order of offers.
 */
final class Front {
    /** Grain of margin, and of power and nitrous as a share of the plan's own: our choice, below what a dynamometer tells. */
    static final double GRAIN = 0.0025;

    /** Boxes of power that have a floor, up to five times the whole: our choice. */
    private static final int BOXES = 2000;

    /** Above every sum: at this margin more power is in the front already. */
    private static final double COVERED = Double.POSITIVE_INFINITY;

    private final double power;
    private final double nitrous;
    private final Map<Box, Ranked> members = new HashMap<>();
    private final Ranked[] ends = new Ranked[3];
    /** Nitrous flow turned to, and by box of power the margin below which it has nothing new. */
    private double flow;

    private final double[] floor = new double[BOXES];
    /** At that margin, the sum below which it has nothing new. */
    private final double[] sums = new double[BOXES];

    private record Box(long power, long margin, long nitrous) {
        boolean covers(Box other) {
            return power >= other.power && margin >= other.margin && nitrous >= other.nitrous && !equals(other);
        }
    }

    /**
     * An empty front.
     *
     * @param power W that count as whole
     * @param nitrous kg/s that count as whole
     */
    Front(double power, double nitrous) {
        this.power = power;
        this.nitrous = nitrous;
    }

    /** Turns to combinations with another nitrous flow, kg/s. */
    void turn(double nitrousFlow) {
        flow = nitrousFlow;
        Arrays.fill(floor, Double.NEGATIVE_INFINITY);
    }

    /**
     * Whether a combination with the flow turned to may be worth an offer; most are not, and to know that costs next to nothing.
     *
     * @param margin least relative margin
     * @param watts power
     */
    boolean mayWant(double margin, double watts) {
        int box = (int) (watts / power / GRAIN);
        return box >= BOXES
                || (margin >= floor[box] && (edge(margin) > floor[box] || sum(margin, watts, flow) >= sums[box]))
                || watts >= ends[0].power()
                || margin >= ends[1].margin()
                || flow < ends[2].nitrous()
                || (flow == ends[2].nitrous() && margin >= ends[2].margin());
    }

    private static double edge(double margin) {
        return GRAIN * Math.floor(margin / GRAIN);
    }

    private double sum(double margin, double watts, double itsFlow) {
        return watts / power + margin - itsFlow / nitrous;
    }

    void offer(Ranked ranked) {
        offerEnds(ranked);
        raiseFloor(ranked);
        enter(ranked);
    }

    private void enter(Ranked ranked) {
        Box box = box(ranked, GRAIN);
        Ranked same = members.get(box);
        if (same == null) {
            if (members.keySet().stream().anyMatch(other -> other.covers(box))) {
                return;
            }
            members.keySet().removeIf(box::covers);
        }
        if (same == null || order().compare(ranked, same) < 0) {
            members.put(box, ranked);
        }
    }

    /** In the box of power itself only a larger margin or sum is new, at less power only a larger margin. */
    private void raiseFloor(Ranked ranked) {
        double edge = edge(ranked.margin());
        int own = (int) Math.min(BOXES - 1, ranked.power() / power / GRAIN);
        if (floor[own] <= edge) {
            double sum = sum(ranked.margin(), ranked.power(), flow);
            sums[own] = floor[own] < edge ? sum : Math.max(sum, sums[own]);
            floor[own] = edge;
        }
        // what lies below a box that has nothing new at this margin was dealt with when that box was
        for (int box = own - 1; box >= 0 && (floor[box] < edge || (floor[box] == edge && sums[box] < COVERED)); box--) {
            floor[box] = edge;
            sums[box] = COVERED;
        }
    }

    private void offerEnds(Ranked ranked) {
        List<Comparator<Ranked>> wanted = ends();
        for (int i = 0; i < ends.length; i++) {
            if (ends[i] == null || wanted.get(i).compare(ranked, ends[i]) < 0) {
                ends[i] = ranked;
            }
        }
    }

    /** Best first in each objective; among equals the one that is better in the others, then the first of the space. */
    private List<Comparator<Ranked>> ends() {
        Comparator<Ranked> morePower = Comparator.comparingDouble(r -> -r.power());
        Comparator<Ranked> moreMargin = Comparator.comparingDouble(r -> -r.margin());
        Comparator<Ranked> lessNitrous = Comparator.comparingDouble(Ranked::nitrous);
        return List.of(
                morePower.thenComparing(moreMargin).thenComparing(order()),
                moreMargin.thenComparing(morePower).thenComparing(order()),
                lessNitrous.thenComparing(moreMargin).thenComparing(order()));
    }

    /** Within a box the best sum. */
    private Comparator<Ranked> order() {
        return Comparator.comparingDouble((Ranked r) -> -sum(r.margin(), r.power(), r.nitrous()))
                .thenComparingLong(Ranked::index);
    }

    private Box box(Ranked r, double grain) {
        return new Box((long) Math.floor(r.power() / power / grain), (long) Math.floor(r.margin() / grain), (long)
                Math.floor(-r.nitrous() / nitrous / grain));
    }

    void add(Front other) {
        other.members.values().forEach(this::enter);
        for (Ranked end : other.ends) {
            if (end != null) {
                offerEnds(end);
            }
        }
    }

    /** The members, without the ends. */
    Stream<Ranked> members() {
        return members.values().stream();
    }

    /**
     * Members and the grain at which there are no more than so many; the ends of every objective are always among them.
     *
     * @param members by power, descending
     * @param grain share of power, margin and nitrous in which neighbours may differ from what was left out
     */
    record Thinned(List<Ranked> members, double grain) {}

    Thinned thinned(int most) {
        double grain = GRAIN;
        Set<Ranked> kept = at(grain);
        while (kept.size() > most && grain < 1) {
            grain *= 2;
            kept = at(grain);
        }
        List<Ranked> sorted = new ArrayList<>(kept);
        sorted.sort(Comparator.comparingDouble((Ranked r) -> -r.power()).thenComparingLong(Ranked::index));
        return new Thinned(sorted, grain);
    }

    private Set<Ranked> at(double grain) {
        Map<Box, Ranked> boxes = new HashMap<>();
        for (Ranked member : members.values()) {
            boxes.merge(box(member, grain), member, (a, b) -> order().compare(a, b) <= 0 ? a : b);
        }
        Set<Ranked> kept = new LinkedHashSet<>();
        boxes.forEach((box, member) -> {
            if (boxes.keySet().stream().noneMatch(other -> other.covers(box))) {
                kept.add(member);
            }
        });
        for (Ranked end : ends) {
            if (end != null) {
                kept.add(end);
            }
        }
        return kept;
    }
}
