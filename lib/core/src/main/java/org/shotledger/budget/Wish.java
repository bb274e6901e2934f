package org.shotledger.budget;

/**
 * What the customer asks for.
 *
 * @param conditions name of the weather and place in the build sheet, for example {@code "event"}
 * @param wheelPower power at the wheels, W, positive
 * @param rpmLow lower end of the band in which the engine is used, rev/min
 * @param rpmHigh upper end of that band, rev/min
 * @param passes full passes wanted from one bottle without a refill
 * @param passSeconds time under full nitrous in one pass, s
 */
public record Wish(
        String conditions, double wheelPower, double rpmLow, double rpmHigh, int passes, double passSeconds) {

    /** Checks the ranges. */
    public Wish {
        require(wheelPower > 0 && wheelPower < 5e6, "wheel power", wheelPower + " W", "above 0 and below 5 MW");
        require(
                rpmLow > 0 && rpmHigh >= rpmLow,
                "rpm band",
                rpmLow + " to " + rpmHigh,
                "a low end above 0 and a high end not below it");
        require(passes >= 0, "number of passes", String.valueOf(passes), "0 or more");
        require(passSeconds >= 0, "time under nitrous", passSeconds + " s", "0 s or more");
    }

    /**
     * The same wish for another power.
     *
     * @param power power at the wheels, W
     * @return the changed wish
     */
    public Wish withWheelPower(double power) {
        return new Wish(conditions, power, rpmLow, rpmHigh, passes, passSeconds);
    }

    private static void require(boolean good, String name, String value, String allowed) {
        if (!good) {
            throw new IllegalArgumentException("The wish's " + name + " is " + value + "; allowed is " + allowed + ".");
        }
    }
}
