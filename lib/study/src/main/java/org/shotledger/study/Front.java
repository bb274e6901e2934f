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

    /** Offers after which what is covered is dropped, at least. */
    private static final int MANY = 2000;

    private final double power;
    private final double nitrous;
    private Map<Box, Ranked> offers = new HashMap<>();
    private int room = MANY;
    private final Ranked[] ends = new Ranked[3];

    private record Box(int power, int margin, int nitrous) {}

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

    void offer(Ranked ranked) {
        offers.merge(box(ranked, GRAIN), ranked, this::better);
        if (offers.size() > room) {
            offers = uncovered(offers);
            room = 2 * offers.size() + MANY;
        }
    }

    /** Within a box the best sum, then the first of the space. */
    private Ranked better(Ranked a, Ranked b) {
        return order().compare(a, b) <= 0 ? a : b;
    }

    private Comparator<Ranked> order() {
        return Comparator.comparingDouble((Ranked r) -> r.nitrous() / nitrous - r.margin() - r.power() / power)
                .thenComparingLong(Ranked::index);
    }

    private Box box(Ranked r, double grain) {
        return new Box((int) (r.power() * boxes(grain, power)), (int) (r.margin() * boxes(grain, 1)), (int)
                Math.floor(-r.nitrous() * boxes(grain, nitrous)));
    }

    /** How many boxes one unit spans, where so many units count as whole. */
    static double boxes(double grain, double whole) {
        return 1 / (grain * whole);
    }

    /** Those of some boxes that no other is at least as good as in everything. */
    private static Map<Box, Ranked> uncovered(Map<Box, Ranked> some) {
        List<Box> boxes = new ArrayList<>(some.keySet());
        // who covers a box comes before it
        boxes.sort(Comparator.comparingInt(Box::nitrous)
                .thenComparingInt(Box::power)
                .thenComparingInt(Box::margin)
                .reversed());
        int[] most = new int[boxes.stream().mapToInt(Box::power).max().orElse(0) + 1];
        Arrays.fill(most, -1);
        Map<Box, Ranked> kept = new HashMap<>();
        for (Box box : boxes) {
            if (box.margin > most[box.power]) {
                kept.put(box, some.get(box));
            }
            // the most margin at this power and above, of those seen so far
            for (int p = box.power; p >= 0 && most[p] < box.margin; p--) {
                most[p] = box.margin;
            }
        }
        return kept;
    }

    void offerEnd(Ranked ranked) {
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

    void add(Front other) {
        other.offers.values().forEach(this::offer);
        Stream.of(other.ends).filter(end -> end != null).forEach(this::offerEnd);
    }

    /** The members, without the ends. */
    Stream<Ranked> members() {
        return uncovered(offers).values().stream();
    }

    /**
     * Members and the grain at which there are no more than so many; the ends of every objective are always among them.
     *
     * @param members by power, descending
     * @param grain share of power, margin and nitrous in which neighbours may differ from what was left out
     */
    record Thinned(List<Ranked> members, double grain) {}

    Thinned thinned(int most) {
        List<Ranked> members = members().toList();
        double grain = GRAIN;
        Set<Ranked> kept = at(grain, members);
        while (kept.size() > most && grain < 1) {
            grain *= 2;
            kept = at(grain, members);
        }
        List<Ranked> sorted = new ArrayList<>(kept);
        sorted.sort(Comparator.comparingDouble((Ranked r) -> -r.power()).thenComparingLong(Ranked::index));
        return new Thinned(sorted, grain);
    }

    private Set<Ranked> at(double grain, List<Ranked> members) {
        Map<Box, Ranked> boxes = new HashMap<>();
        members.forEach(member -> boxes.merge(box(member, grain), member, this::better));
        Set<Ranked> kept = new LinkedHashSet<>(uncovered(boxes).values());
        Stream.of(ends).filter(end -> end != null).forEach(kept::add);
        return kept;
    }
}
