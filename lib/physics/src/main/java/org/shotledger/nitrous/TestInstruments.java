package org.shotledger.nitrous;

/**
 * What a flow test is read with, as half-widths of rectangular bands (JCGM 100:2008, 4.3.7).
 *
 * @param scale of one weighing of the bottle, kg, above 0
 * @param stopwatch of the time open, s, above 0
 * @param gauge of a pressure, as a share of it, above 0, at most 0.5
 * @param cylinder of a volume that was caught, m3, above 0
 */
public record TestInstruments(double scale, double stopwatch, double gauge, double cylinder) {
    /** A bench scale to 10 g, a stopwatch by hand, a gauge to 3 %, a measuring cylinder to 10 mL: common practice, no source. */
    public static final TestInstruments USUAL = new TestInstruments(0.010, 0.3, 0.03, 10e-6);

    private static final double RECTANGLE = Math.sqrt(3);

    public TestInstruments {
        check("scale", scale, 5, "kg");
        check("stopwatch", stopwatch, 10, "s");
        check("gauge", gauge, 0.5, "of the pressure");
        check("measuring cylinder", cylinder, 0.01, "m3");
    }

    private static void check(String what, double halfWidth, double most, String unit) {
        if (!(halfWidth > 0 && halfWidth <= most)) {
            throw new IllegalArgumentException("The error of the " + what + " is " + halfWidth + " " + unit
                    + "; allowed is above 0, at most " + most + " " + unit + ".");
        }
    }

    /**
     * One standard deviation of a reading.
     *
     * @param halfWidth half-width of its band
     * @return half-width over the root of three
     */
    public static double deviation(double halfWidth) {
        return halfWidth / RECTANGLE;
    }
}
