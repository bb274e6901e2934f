package org.shotledger.wiring;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Blade fuses after ISO 8820-3: their ratings and how long they carry an overload at least (both from memory).
 *
 * @param rating rated current, A
 */
public record Fuse(double rating) {
    private static final double[] RATINGS = {2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100};

    /** A fuse that lies in warmth should not carry more than this share of its rating without end: common practice, no source. */
    private static final double LASTING_SHARE = 0.75;

    /** Carried without end up to this multiple, at 23 degC. */
    private static final double FOREVER = 1.1;

    /** Multiple of the rating, and the shortest time in which a fuse may open at it, s. */
    private static final TreeMap<Double, Double> SHORTEST =
            new TreeMap<>(Map.of(1.35, 0.75, 1.6, 0.25, 2.0, 0.15, 3.5, 0.04, 6.0, 0.02));

    /**
     * The smallest fuse for a load.
     *
     * @param lasting current that lasts, A
     * @param surge current at switching on, A
     * @param surgeTime how long the surge lasts, s
     * @return the fuse; empty when no blade fuse is large enough
     */
    public static Optional<Fuse> smallest(double lasting, double surge, double surgeTime) {
        for (double rating : RATINGS) {
            Fuse fuse = new Fuse(rating);
            if (lasting <= LASTING_SHARE * rating && fuse.carries(surge, surgeTime)) {
                return Optional.of(fuse);
            }
        }
        return Optional.empty();
    }

    /**
     * Tells whether every fuse of this rating carries an overload.
     *
     * @param current A
     * @param time s
     * @return false when a good fuse might open
     */
    public boolean carries(double current, double time) {
        double multiple = current / rating;
        if (multiple <= FOREVER) {
            return true;
        }
        var above = SHORTEST.ceilingEntry(multiple);
        return above != null && time < above.getValue();
    }
}
