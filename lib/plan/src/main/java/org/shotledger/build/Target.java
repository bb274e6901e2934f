package org.shotledger.build;

/**
 * What the customer asks for.
 *
 * @param conditions name of the conditions under which it is wanted
 * @param wheelPower power at the wheels, W
 * @param rpmLow lower end of the band in which it is wanted, rev/min
 * @param rpmHigh upper end of that band, rev/min
 * @param passes full passes from one bottle without a refill
 * @param passSeconds time under full nitrous in one pass, s
 */
public record Target(
        String conditions, double wheelPower, double rpmLow, double rpmHigh, int passes, double passSeconds) {}
