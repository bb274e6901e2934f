package org.shotledger.confidence;

import java.util.SplittableRandom;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Sobol points with a random digital shift: every binary digit of a coordinate is turned or not, the same way for all points
 * (L'Ecuyer and Lemieux, in Modeling Uncertainty, Kluwer 2002, chapter 20). The points keep their evenness, each of them is
 * uniform, and different seeds give independent replicates from which an error can be told.
 */
public final class ShiftedSobol {
    private static final int BITS = 52;
    private static final double SCALE = 0x1.0p-52;

    private final SobolSequenceGenerator points;
    private final long[] shift;

    /**
     * Begins a replicate.
     *
     * @param dimensions number of coordinates, 1 to 1000
     * @param seed seed of the shift
     */
    public ShiftedSobol(int dimensions, long seed) {
        points = new SobolSequenceGenerator(dimensions);
        SplittableRandom random = new SplittableRandom(seed);
        shift = random.longs(dimensions).map(bits -> bits >>> (64 - BITS)).toArray();
    }

    /**
     * Writes the next point.
     *
     * @param into its coordinates, each above 0 and below 1
     */
    public void next(double[] into) {
        double[] point = points.nextVector();
        for (int i = 0; i < into.length; i++) {
            long digits = (long) (point[i] / SCALE) ^ shift[i];
            into[i] = (digits + 0.5) * SCALE;
        }
    }
}
