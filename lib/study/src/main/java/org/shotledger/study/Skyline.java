package org.shotledger.study;

import java.util.Arrays;
import org.shotledger.study.Rank.Ranked;

/**
 * What of a row may enter the front. All of a row pass the same nitrous: in each box of power only the combination of most margin can be
 * a member. They stand in flat arrays until the row ends, so that most combinations cost one comparison.
 */
final class Skyline {
    /** Boxes of power of one grain each, up to four times the whole: our choice. The last one holds all beyond. */
    static final int BOXES = 1600;

    private static final int NONE = -1;
    /** Grains in a whole. */
    private static final double GRAINS = Front.boxes(Front.GRAIN, 1);

    private final double whole;
    private final double perWatt;

    // by box of power: the most margin, in whole grains; of those with it the one of the best sum
    private final int[] grains = new int[BOXES];
    private final double[] sum = new double[BOXES];
    private final long[] index = new long[BOXES];
    private final double[] margin = new double[BOXES];
    private final double[] power = new double[BOXES];

    /** Of most power and of most margin; of equals the one with more of the other, then the first of the space. */
    private final Best strongest = new Best();

    private final Best safest = new Best();

    /** One combination that is the best so far: of equals in what counts first the one that is better in the other. */
    private static final class Best {
        double first;
        double other;
        long index;

        void clear() {
            first = Double.NEGATIVE_INFINITY;
        }

        void see(double itsFirst, double itsOther, long itsIndex) {
            if (itsFirst >= first
                    && (itsFirst > first || itsOther > other || (itsOther == other && itsIndex < index))) {
                first = itsFirst;
                other = itsOther;
                index = itsIndex;
            }
        }
    }

    /** @param whole W that count as whole */
    Skyline(double whole) {
        this.whole = whole;
        this.perWatt = Front.boxes(Front.GRAIN, whole);
        clear();
    }

    private void clear() {
        Arrays.fill(grains, NONE);
        strongest.clear();
        safest.clear();
    }

    /** The box of a power, W. */
    int box(double watts) {
        return Math.min(BOXES - 1, (int) (watts * perWatt));
    }

    /** A combination that keeps every limit. */
    void see(int box, double itsMargin, double watts, long number) {
        strongest.see(watts, itsMargin, number);
        safest.see(itsMargin, watts, number);
        int whose = (int) (itsMargin * GRAINS);
        if (whose < grains[box]) {
            return;
        }
        double its = itsMargin + watts / whole;
        if (whose > grains[box] || its > sum[box] || (its == sum[box] && number < index[box])) {
            grains[box] = whose;
            sum[box] = its;
            index[box] = number;
            margin[box] = itsMargin;
            power[box] = watts;
        }
    }

    /** Ends the row: what no other of it betters enters a front. */
    void into(Front front, double nitrous) {
        if (strongest.first > Double.NEGATIVE_INFINITY) {
            front.offerEnd(new Ranked(strongest.index, strongest.other, strongest.first, nitrous));
            front.offerEnd(new Ranked(safest.index, safest.first, safest.other, nitrous));
        }
        int most = NONE;
        for (int box = BOXES - 1; box >= 0; box--) {
            if (grains[box] > most) {
                most = grains[box];
                front.offer(new Ranked(index[box], margin[box], power[box], nitrous));
            }
        }
        clear();
    }
}
