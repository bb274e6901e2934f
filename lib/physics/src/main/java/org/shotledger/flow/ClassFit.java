package org.shotledger.flow;

/**
 * The constants of {@link ClassLaw} and the share of equilibrium flow they give a choked hole, in dimensionless terms, so that
 * measured holes of any fluid can be compared.
 *
 * @param largestExcess A: excess of saturated liquid through a hole without length, over 1
 * @param span B: pressure over boiling pressure, less 1, over which the excess fades
 * @param lengthScale l: bores over which it falls by e
 * @param rounded coefficient of a rounded hole run with liquid
 * @param plain coefficient of a plain hole of which nothing is known
 * @param unknownLengthShare what a hole of unknown length keeps of the excess
 */
record ClassFit(
        double largestExcess,
        double span,
        double lengthScale,
        double rounded,
        double plain,
        double unknownLengthShare) {
    /**
     * Fitted to the measured holes, each source with the same weight. The plain coefficient is the geometric mean of the three
     * sources of drilled holes of 1.0 to 1.9 mm: 0.63 (Aerospace 9-828, hole and line), 0.78 (AIAA 2013-3636, late boiling aside)
     * and 0.96 (refrigerant short tubes with bubbles before them). The smooth nozzles are left out there: nobody polishes a jet so.
     */
    static final ClassFit MEASURED = new ClassFit(1.087, 0.336, 16.5, 0.859, 0.777, 0.441);

    /** Choked gas through a smooth inlet: 0.95 to 0.99 (ISO 9300, from memory). */
    private static final double ROUNDED_VAPOUR = 0.95;

    /** Choked gas through a sharp edge: 0.84 (Perry, Trans. ASME 71 (1949) 757, from memory). */
    private static final double SQUARE_VAPOUR = 0.84;

    private static final double CRITICAL_FADE = 0.05;
    /** Some 0.3 % of bubbles by volume: enough to begin the boiling (assumed). */
    private static final double BUBBLE_QUALITY = 0.0005;

    private static final double NOTHING = 1e-6;

    /**
     * Coefficient of a hole filled with liquid. Square edge: 0.605 + 0.005 L/d up to 0.73, a straight line through fig. 15 of AIAA
     * 2013-3636 (three holes, 9.5 to 23 bores long, deviation 2 %) that meets the sharp orifice's 0.61 at zero length.
     */
    double liquid(Edge edge, double lengthToBore) {
        return switch (edge) {
            case ROUNDED -> rounded;
            case SQUARE -> Double.isNaN(lengthToBore) ? plain : Math.min(0.73, 0.605 + 0.005 * lengthToBore);
            case UNKNOWN -> plain;
        };
    }

    /** Share of equilibrium flow of vapour. */
    double vapour(Edge edge) {
        return switch (edge) {
            case ROUNDED -> ROUNDED_VAPOUR;
            case SQUARE -> SQUARE_VAPOUR;
            case UNKNOWN -> plain;
        };
    }

    /**
     * Excess of liquid that boils late, for the wide-open pressure behind.
     *
     * @param edge shape of the edge
     * @param lengthToBore length over diameter, NaN when unknown
     * @param reducedTemperature temperature over critical
     * @param aboveBoiling pressure over boiling pressure
     * @param quality vapour before the hole, 0 to 1
     */
    double excess(Edge edge, double lengthToBore, double reducedTemperature, double aboveBoiling, double quality) {
        if (reducedTemperature >= 1) {
            return 0;
        }
        boolean unknown = Double.isNaN(lengthToBore);
        double keep = unknown ? unknownLengthShare : Math.exp(-lengthToBore / lengthScale);
        double bubbles = edge == Edge.SQUARE || quality == 0 ? 1 : Math.exp(-quality / BUBBLE_QUALITY);
        double fade = Math.min(1, (1 - reducedTemperature) / CRITICAL_FADE);
        double over = (aboveBoiling - 1) / (span * keep);
        double excess = largestExcess * keep * bubbles * fade * Math.exp(-over * over);
        return excess < NOTHING ? 0 : excess;
    }

    /** Share of equilibrium flow of a choked hole, arguments as for the excess. */
    double share(Edge edge, double lengthToBore, double reducedTemperature, double aboveBoiling, double quality) {
        double excess = quality < 1 ? excess(edge, lengthToBore, reducedTemperature, aboveBoiling, quality) : 0;
        return (1 - quality) * liquid(edge, lengthToBore) * (1 + excess) + quality * vapour(edge);
    }
}
