package org.shotledger.fuel;

/**
 * Vapour-pressure classes of flex fuel after ASTM D5798-15: the ethanol content at the pump may be anything from 51 to 83 %
 * by volume in each, so a tune must not trust the name "E85". Class 1 is for the warmest, class 4 for the coldest months.
 */
public enum FlexFuelClass {
    /** 5.5 to 9.0 psi. */
    CLASS_1(5.5, 9.0),
    /** 7.0 to 9.5 psi. */
    CLASS_2(7.0, 9.5),
    /** 8.5 to 12.0 psi. */
    CLASS_3(8.5, 12.0),
    /** 9.5 to 15.0 psi. */
    CLASS_4(9.5, 15.0);

    /** Least ethanol, volume fraction. */
    public static final double LEAST_ETHANOL = 0.51;
    /** Most ethanol, volume fraction. */
    public static final double MOST_ETHANOL = 0.83;

    private static final double PSI = 6894.757293168;

    private final double low;
    private final double high;

    FlexFuelClass(double low, double high) {
        this.low = low * PSI;
        this.high = high * PSI;
    }

    /**
     * Least vapour pressure.
     *
     * @return Pa
     */
    public double leastVapourPressure() {
        return low;
    }

    /**
     * Highest vapour pressure.
     *
     * @return Pa
     */
    public double highestVapourPressure() {
        return high;
    }
}
