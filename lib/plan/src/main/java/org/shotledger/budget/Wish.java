package org.shotledger.budget;

import java.util.Optional;
import org.shotledger.build.Target;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.units.Amount;

/**
 * What the customer asks for.
 *
 * @param conditions name of the weather and place in the build sheet, for example {@code "event"}
 * @param wheelPower power at the wheels, W, positive
 * @param rpmLow lower end of the band in which the engine is used, rev/min
 * @param rpmHigh upper end of that band, rev/min
 * @param passes full passes wanted from one bottle without a refill
 * @param passSeconds time under full nitrous in one pass, s
 * @param mixture mixture wanted with the nitrous on; empty for that of the build sheet
 */
public record Wish(
        String conditions,
        double wheelPower,
        double rpmLow,
        double rpmHigh,
        int passes,
        double passSeconds,
        Optional<MixtureGoal> mixture) {

    /** Jets come in steps, so a pair of the ladder meets the wish when it gives at least this share of it. */
    private static final double MET = 0.995;

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
     * The wish written in a build sheet.
     *
     * @param target the sheet's target
     * @return the wish
     */
    public static Wish of(Target target) {
        return new Wish(
                target.conditions(),
                target.wheelPower(),
                target.rpmLow(),
                target.rpmHigh(),
                target.passes(),
                target.passSeconds(),
                Optional.empty());
    }

    /**
     * The same wish for another power.
     *
     * @param power power at the wheels, for example {@code hp(780)}
     * @return the changed wish
     */
    public Wish withWheelPower(Amount power) {
        return new Wish(conditions, power.si(), rpmLow, rpmHigh, passes, passSeconds, mixture);
    }

    /**
     * The same wish under other conditions.
     *
     * @param named name of the place and weather in the build sheet
     * @return the changed wish
     */
    public Wish under(String named) {
        return new Wish(named, wheelPower, rpmLow, rpmHigh, passes, passSeconds, mixture);
    }

    /**
     * The same wish with another mixture.
     *
     * @param wanted total lambda, ratio or lambda of the nitrous circuit
     * @return the changed wish
     */
    public Wish with(MixtureGoal wanted) {
        return new Wish(conditions, wheelPower, rpmLow, rpmHigh, passes, passSeconds, Optional.of(wanted));
    }

    /**
     * Tells whether a wheel power meets the wish, a step of the jet ladder aside.
     *
     * @param power wheel power, W
     * @return true from 99.5 % of the wish
     */
    public boolean metBy(double power) {
        return met(power, wheelPower);
    }

    static boolean met(double power, double asked) {
        return power >= MET * asked;
    }

    private static void require(boolean good, String name, String value, String allowed) {
        if (!good) {
            throw new IllegalArgumentException("The wish's " + name + " is " + value + "; allowed is " + allowed + ".");
        }
    }
}
