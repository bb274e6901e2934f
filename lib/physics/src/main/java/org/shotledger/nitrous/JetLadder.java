package org.shotledger.nitrous;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;
import org.shotledger.units.UnitFactors;

/**
 * The hole sizes that can be had, smallest first.
 *
 * <p>Jets come in steps, so a continuous size must be replaced by a rung above or below it, and what that rung really
 * gives is a question of its own.
 */
public final class JetLadder {
    /** One thousandth of an inch, m (exact: 25.4 mm / 1000). */
    private static final double THOU = UnitFactors.INCH / 1000;

    private final double[] bores;

    private JetLadder(double[] bores) {
        this.bores = bores;
    }

    /**
     * Makes a ladder of the given sizes.
     *
     * @param bores hole diameters, m, each positive and finite, in any order; repeats are dropped
     * @return the ladder
     * @throws IllegalArgumentException when there is no size or one is not a positive number
     */
    public static JetLadder of(double... bores) {
        if (bores.length == 0) {
            throw new IllegalArgumentException("The jet ladder is empty; list at least one hole diameter.");
        }
        for (double bore : bores) {
            if (!(bore > 0 && Double.isFinite(bore))) {
                throw new IllegalArgumentException(
                        "The jet ladder holds a hole of " + bore + " m; hole diameters must be positive.");
            }
        }
        return new JetLadder(Arrays.stream(bores).sorted().distinct().toArray());
    }

    /**
     * A ladder in steps of thousandths of an inch.
     *
     * @param first smallest size, thousandths of an inch, at least 1
     * @param last largest size, thousandths of an inch
     * @param step distance of two rungs, thousandths of an inch, at least 1
     * @return the ladder
     */
    public static JetLadder thousandths(int first, int last, int step) {
        if (first < 1 || last < first || step < 1) {
            throw new IllegalArgumentException("A ladder from " + first + " to " + last + " thou in steps of " + step
                    + " has no rungs; give 1 <= first <= last and a step of at least 1.");
        }
        return of(IntStream.rangeClosed(0, (last - first) / step)
                .mapToDouble(i -> (first + i * step) * THOU)
                .toArray());
    }

    /**
     * The sizes, smallest first.
     *
     * @return a copy of the hole diameters, m
     */
    public double[] bores() {
        return bores.clone();
    }

    /**
     * The largest rung not above a size.
     *
     * @param bore a hole diameter, m
     * @return the rung, m; the smallest rung when all are larger
     */
    public double below(double bore) {
        int found = Arrays.binarySearch(bores, bore);
        return bores[Math.max(found >= 0 ? found : -found - 2, 0)];
    }

    /**
     * The smallest rung not below a size.
     *
     * @param bore a hole diameter, m
     * @return the rung, m; the largest rung when all are smaller
     */
    public double above(double bore) {
        int found = Arrays.binarySearch(bores, bore);
        return bores[Math.min(found >= 0 ? found : -found - 1, bores.length - 1)];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JetLadder ladder && Arrays.equals(bores, ladder.bores);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bores);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d jets from %.1f to %.1f thou",
                bores.length,
                bores[0] / THOU,
                bores[bores.length - 1] / THOU);
    }
}
