package org.shotledger.engine;

/**
 * Bands the trade uses to judge a figure. Common practice, no source: they warn, they never decide.
 *
 * @param words what the band is for
 * @param low lower end, SI
 * @param high upper end, SI
 */
public record CommonPractice(String words, double low, double high) {
    private static final double POUND_PER_HORSEPOWER_HOUR = 0.45359237 / (745.69987158227022 * 3600);
    private static final double HORSEPOWER_PER_POUND_MINUTE = 745.69987158227022 * 60 / 0.45359237;

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
    /** Crankshaft power per air flow, J/kg: 8.5 to 11 hp per lb/min. */
    public static final CommonPractice POWER_PER_AIR = new CommonPractice(
            "crankshaft power per air flow", 8.5 * HORSEPOWER_PER_POUND_MINUTE, 11 * HORSEPOWER_PER_POUND_MINUTE);

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
