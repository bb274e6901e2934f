package org.shotledger.study;

/**
 * What one combination does over the band of the wish.
 *
 * @param index its place in the space
 * @param wheelPower most wheel power over the band, W; NaN when no model answers
 * @param lambda mixture of all streams at that speed
 * @param nitrousFlow nitrous oxide there, kg/s
 * @param peakPressure highest cylinder pressure over the band, Pa absolute
 * @param leastMargin smallest margin over all limits and speeds, as a fraction of the limit; negative when one is broken
 * @param first key of the limit with that margin: the one that bites or breaks first
 * @param forgiveness margin left to the lean limit over the band when {@link #FUEL_LOST} of the nitrous fuel is missing, as a
 *     fraction of the limit
 */
public record Figures(
        long index,
        double wheelPower,
        double lambda,
        double nitrousFlow,
        double peakPressure,
        double leastMargin,
        String first,
        double forgiveness) {
    /**
     * Share of the nitrous fuel taken away to see how much a combination forgives, about what a fuel pressure a fifth too low
     * takes: common practice, no source.
     */
    public static final double FUEL_LOST = 0.10;

    /**
     * Beyond this share above the lean limit nothing else of a combination is worked out; it counts as broken by the lean limit.
     */
    public static final double FAR_LEAN = 1.06;

    /** The same for the rich limit. */
    public static final double FAR_RICH = 0.90;

    /** Charge temperature below which nothing else is worked out, K: near it the models have no balance any more. */
    public static final double FAR_COLD = 190;

    static final String LEAN = "lambda-lean";
    static final String RICH = "lambda-rich";
    static final String PUMP = "kit-pump";
    static final String COLD = "charge-cold";
    /** The held boost lies beyond the edge of the compressor map at some speed of the band. */
    static final String MAP = "compressor-map";

    /**
     * Tells whether every limit is kept.
     *
     * @return true when no margin is negative
     */
    public boolean accepted() {
        return leastMargin >= 0;
    }

    /** One of which nothing but the limit it is far beyond is known. */
    static Figures far(long index, String first) {
        return new Figures(
                index,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NEGATIVE_INFINITY,
                first,
                Double.NEGATIVE_INFINITY);
    }
}
