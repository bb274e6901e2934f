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
    private final double[] grain;

    Front(List<Objective> objectives) {
        this.objectives = List.copyOf(objectives);
        this.grain = new double[objectives.size()];
        setGrains();
    }

    void offer(Figures outcome) {
        insert(member(outcome));
        while (members.size() > MOST) {
            grains *= 2;
            setGrains();
            List<Member> old = members;
            members = new ArrayList<>();
            old.forEach(m -> insert(member(m.outcome())));
        }
    }

    /**
     * A quick look whether a member makes these values pointless, each already times its objective's sign: its box covers them,
     * and if it is their own, its sum is greater.
     */
    boolean betters(double[] values) {
        for (int m = 0; m < members.size(); m++) {
            Member member = members.get(m);
            boolean covered = true;
            boolean own = true;
            for (int i = 0; i < values.length && covered; i++) {
                double upper = (member.box[i] + 1) * grain[i];
                covered = values[i] < upper;
                own &= values[i] >= upper - grain[i];
            }
            if (covered && (!own || sum(values) <= member.sum)) {
                if (m > 0) {
                    members.set(m, members.set(m - 1, member));
                }
                return true;
            }
        }
        return false;
    }

    private double sum(double[] values) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += values[i] / objectives.get(i).grain();
        }
        return sum;
    }

    private void setGrains() {
        for (int i = 0; i < grain.length; i++) {
            grain[i] = grains * objectives.get(i).grain();
        }
    }

    private Member member(Figures outcome) {
        long[] box = new long[grain.length];
        double[] values = new double[grain.length];
        for (int i = 0; i < box.length; i++) {
            values[i] = objectives.get(i).sign() * objectives.get(i).of(outcome);
            box[i] = (long) Math.floor(values[i] / grain[i]);
        }
        return new Member(box, sum(values), outcome);
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
