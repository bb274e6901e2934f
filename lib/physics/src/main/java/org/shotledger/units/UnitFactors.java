package org.shotledger.units;

/**
 * Sizes of units in SI, and the two conventional states that figures are counted from.
 *
 * <p>Exact by definition: inch 25.4 mm and pound 0.453 592 37 kg (international yard and pound, 1959), standard gravity, standard
 * atmosphere and the zero of the Celsius scale (NIST SP 811, 2008, appendix B). Horsepower is 550 ft lbf/s.
 */
public final class UnitFactors {
    /** Inch, m. */
    public static final double INCH = 0.0254;
    /** Foot, m. */
    public static final double FOOT = 0.3048;
    /** Mile an hour, m/s. */
    public static final double MILE_PER_HOUR = 0.44704;
    /** Pound, kg. */
    public static final double POUND = 0.45359237;
    /** Standard acceleration of gravity, m/s2. */
    public static final double GRAVITY = 9.80665;
    /** Pound-force, N. */
    public static final double POUND_FORCE = POUND * GRAVITY;
    /** Pound-force to the square inch, Pa. */
    public static final double PSI = 6894.757293168;
    /** Horsepower, W. */
    public static final double HORSEPOWER = 745.69987158227022;
    /** Pound-force foot, N m. */
    public static final double POUND_FOOT = 1.3558179483314004;
    /** US gallon of 231 cubic inches, m3. */
    public static final double US_GALLON = 3.785411784e-3;
    /** Inch of mercury, conventional, Pa. */
    public static final double INCH_OF_MERCURY = 3386.389;
    /** Zero of the Celsius scale, K. */
    public static final double ICE_POINT = 273.15;
    /** Zero of the Rankine scale on the Fahrenheit scale, below its zero. */
    public static final double FAHRENHEIT_OFFSET = 459.67;
    /** Standard atmosphere, Pa. */
    public static final double ATMOSPHERE = 101_325;

    private UnitFactors() {}
}
