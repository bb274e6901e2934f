package org.shotledger.confidence;

import java.util.SplittableRandom;

/**
 * Latin hypercube points (McKay, Beckman and Conover, Technometrics 21 (1979) 239): of a given number of points exactly one
 * lies in each equal slice of every coordinate. After that many points a new hypercube begins.
 */
public final class LatinHypercube implements Points {
    private final int[][] order;
    private final SplittableRandom random;
    private int at;

    /**
     * Begins.
     *
     * @param dimensions number of coordinates, at least 1
     * @param count points of one hypercube, at least 2
     * @param seed seed
     */
    public LatinHypercube(int dimensions, int count, long seed) {
        random = new SplittableRandom(seed);
        order = new int[dimensions][count];
        for (int[] column : order) {
            for (int i = 0; i < count; i++) {
                column[i] = i;
            }
            shuffle(column);
        }
    }

    private void shuffle(int[] column) {
        for (int i = column.length - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            int kept = column[i];
            column[i] = column[other];
            column[other] = kept;
        }
    }

    @Override
    public void next(double[] into) {
        if (at == order[0].length) {
            at = 0;
            for (int[] column : order) {
                shuffle(column);
            }
        }
        for (int i = 0; i < into.length; i++) {
            into[i] = (order[i][at] + random.nextDouble()) / order[i].length;
        }
        at++;
    }
}
