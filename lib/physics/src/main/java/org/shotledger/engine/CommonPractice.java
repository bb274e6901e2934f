package org.shotledger.engine;

import org.shotledger.units.UnitFactors;

/**
 * Bands the trade uses to judge a figure. Common practice, no source: they warn, they never decide.
 *
 * @param words what the band is for
 * @param low lower end, SI
 * @param high upper end, SI
 */
public record CommonPractice(String words, double low, double high) {
    private static final double POUND_PER_HORSEPOWER_HOUR = UnitFactors.POUND / (UnitFactors.HORSEPOWER * 3600);
    private static final double POUND_IN_TEN_SECONDS_FOR_A_HUNDRED_HORSEPOWER =
            UnitFactors.POUND / (100 * UnitFactors.HORSEPOWER * 10);
    private static final double HORSEPOWER_PER_POUND_MINUTE = UnitFactors.HORSEPOWER * 60 / UnitFactors.POUND;

    /** Brake specific fuel consumption of a rich boosted engine on petrol, kg/J: 0.55 to 0.70 lb/(hp h). */
    public static final CommonPractice PETROL_CONSUMPTION = new CommonPractice(
            "boosted petrol engine's brake specific fuel consumption",
            0.55 * POUND_PER_HORSEPOWER_HOUR,
            0.70 * POUND_PER_HORSEPOWER_HOUR);
    /** Brake specific fuel consumption of a rich boosted engine on E85, kg/J: 0.75 to 0.95 lb/(hp h). */
    public static final CommonPractice ETHANOL_CONSUMPTION = new CommonPractice(
            "boosted E85 engine's brake specific fuel consumption",
            0.75 * POUND_PER_HORSEPOWER_HOUR,
            0.95 * POUND_PER_HORSEPOWER_HOUR);
    /** Brake specific fuel consumption of a rich boosted engine on methanol, kg/J: 1.0 to 1.3 lb/(hp h). */
    public static final CommonPractice METHANOL_CONSUMPTION = new CommonPractice(
            "boosted methanol engine's brake specific fuel consumption",
            1.0 * POUND_PER_HORSEPOWER_HOUR,
            1.3 * POUND_PER_HORSEPOWER_HOUR);
    /** Crankshaft power per air flow, J/kg: 9 to 10.8 hp per lb/min. */
    public static final CommonPractice POWER_PER_AIR = new CommonPractice(
            "crankshaft power per air flow", 9 * HORSEPOWER_PER_POUND_MINUTE, 10.8 * HORSEPOWER_PER_POUND_MINUTE);
    /**
     * Nitrous oxide for the crankshaft power it adds, kg/J: 0.75 lb in 10 s for each 100 hp, a little below what the cycle needs
     * with all work arriving, to 1.12 lb, the weakest of three service figures of aero engines of the 1940s (encyclopaedia
     * articles, secondary). The trade speaks of 0.8 lb.
     */
    public static final CommonPractice NITROUS_FOR_POWER = new CommonPractice(
            "nitrous oxide for the crankshaft power it adds",
            0.75 * POUND_IN_TEN_SECONDS_FOR_A_HUNDRED_HORSEPOWER,
            1.12 * POUND_IN_TEN_SECONDS_FOR_A_HUNDRED_HORSEPOWER);

    /**
     * Tells whether a value lies in the band.
     *
     * @param value SI
     * @return true inside, ends included
     */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }
}
