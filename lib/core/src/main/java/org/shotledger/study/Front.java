package org.shotledger.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The trade-off front in constant memory: the archive of Laumanns, Thiele, Deb and Zitzler (Evolutionary Computation 10 (2002)
 * 263) with one member for each box that no other box betters. Boxes are as wide as the objectives' grains and double when
 * more than {@link #MOST} are kept.
 */
final class Front {
    static final int MOST = 64;

    @SuppressWarnings("ArrayRecordComponent") // read only and never compared
    private record Member(long[] box, double sum, Figures outcome) {}

    private final List<Objective> objectives;
    private List<Member> members = new ArrayList<>();
    private double grains = 1;

    Front(List<Objective> objectives) {
        this.objectives = List.copyOf(objectives);
    }

    void offer(Figures outcome) {
        insert(member(outcome));
        while (members.size() > MOST) {
            grains *= 2;
            List<Member> old = members;
            members = new ArrayList<>();
            old.forEach(m -> insert(member(m.outcome())));
        }
    }

    /** A quick look: whether a member already betters these values; they stand in the order of the objectives. */
    boolean betters(double[] values) {
        for (int m = 0; m < members.size(); m++) {
            long[] box = members.get(m).box;
            boolean all = true;
            boolean some = false;
            for (int i = 0; i < values.length && all; i++) {
                long here = box(i, values[i]);
                all = box[i] >= here;
                some |= box[i] > here;
            }
            if (all && some) {
                if (m > 0) {
                    members.add(0, members.remove(m));
                }
                return true;
            }
        }
        return false;
    }

    private long box(int objective, double value) {
        Objective by = objectives.get(objective);
        return (long) Math.floor(by.sign() * value / (grains * by.grain()));
    }

    private Member member(Figures outcome) {
        long[] box = new long[objectives.size()];
        double sum = 0;
        for (int i = 0; i < box.length; i++) {
            Objective by = objectives.get(i);
            box[i] = box(i, by.of(outcome));
            sum += by.sign() * by.of(outcome) / by.grain();
        }
        return new Member(box, sum, outcome);
    }

    private void insert(Member next) {
        for (Member member : members) {
            if (java.util.Arrays.equals(member.box, next.box)) {
                if (better(next, member)) {
                    members.set(members.indexOf(member), next);
                }
                return;
            }
            if (covers(member.box, next.box)) {
                return;
            }
        }
        members.removeIf(member -> covers(next.box, member.box));
        members.add(next);
    }

    private static boolean better(Member a, Member b) {
        return a.sum > b.sum || (a.sum == b.sum && a.outcome.index() < b.outcome.index());
    }

    private static boolean covers(long[] a, long[] b) {
        for (int i = 0; i < a.length; i++) {
            if (a[i] < b[i]) {
                return false;
            }
        }
        return true;
    }

    /** The members by their first objective, best last; members of neighbouring boxes that another member betters are left out. */
    List<Figures> all() {
        return members.stream()
                .map(Member::outcome)
                .filter(o -> members.stream().noneMatch(m -> dominates(m.outcome(), o)))
                .sorted(Comparator.comparingDouble((Figures o) ->
                                objectives.get(0).sign() * objectives.get(0).of(o))
                        .thenComparingLong(Figures::index))
                .toList();
    }

    private boolean dominates(Figures a, Figures b) {
        boolean more = false;
        for (Objective by : objectives) {
            double difference = by.sign() * (by.of(a) - by.of(b));
            if (difference < 0) {
                return false;
            }
            more |= difference > 0;
        }
        return more;
    }
}
