package org.shotledger.setup;

import org.shotledger.nitrous.MixtureGoal;

/**
 * What the customer asks for.
 *
 * @param conditions name of the weather and place under which it is wanted
 * @param wheelPower power at the wheels, W
 * @param rpmLow lower end of the speed range in which it is wanted, rev/min
 * @param rpmHigh upper end of that range, rev/min
 * @param passes full passes from one bottle without a refill
 * @param passSeconds time under full nitrous in one pass, s
 * @param mixture mixture wanted with the nitrous on
 */
public record Target(
        String conditions,
        double wheelPower,
        double rpmLow,
        double rpmHigh,
        int passes,
        double passSeconds,
        MixtureGoal mixture) {
    /** A power counts as reached when it falls short by less than this share: our choice, a tenth of what a dynamometer repeats. */
    public static final double SHORT_BY = 0.001;

    /**
     * The same target with another power.
     *
     * @param watts power at the wheels, W
     * @return the changed target
     */
    public Target withWheelPower(double watts) {
        return new Target(conditions, watts, rpmLow, rpmHigh, passes, passSeconds, mixture);
    }

    /**
     * The same target with other passes.
     *
     * @param count full passes from one bottle
     * @param seconds time under full nitrous in each, s
     * @return the changed target
     */
    public Target withPasses(int count, double seconds) {
        return new Target(conditions, wheelPower, rpmLow, rpmHigh, count, seconds, mixture);
    }

    /**
     * The same target with another mixture.
     *
     * @param goal mixture wanted with the nitrous on
     * @return the changed target
     */
    public Target withMixture(MixtureGoal goal) {
        return new Target(conditions, wheelPower, rpmLow, rpmHigh, passes, passSeconds, goal);
    }

    /**
     * Whether a power is what is asked for.
     *
     * @param watts power at the wheels, W
     * @return true at the power asked for and above, and a thousandth below
     */
    public boolean reachedBy(double watts) {
        return watts >= neededPower();
    }

    /**
     * The least power that counts as what is asked for.
     *
     * @return power at the wheels, W: a thousandth below the power asked for
     */
    public double neededPower() {
        return wheelPower * (1 - SHORT_BY);
    }
}
