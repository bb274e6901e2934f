package org.shotledger.plan;

/**
 * The most power inside every limit in every case.
 *
 * @param wheelPower power at the wheels in the case of the target, W, to a hundredth
 * @param limit what stops more, in words
 */
public record Attainable(double wheelPower, String limit) {}
