package org.shotledger.delivery;

import org.shotledger.nitrous.Pulsing.Pulse;

/**
 * One duty and what it makes of the mixture, as an average over a pulse.
 *
 * @param pulse duties and delivered shares
 * @param lambda oxygen supplied over oxygen demanded, all streams
 * @param wanted the same if the fuel delivered exactly the share the nitrous delivers
 * @param leanest the same with each solenoid's delays off to the lean side by the spread
 * @param richest the same to the rich side
 * @param wheelPower power at the wheels, W
 * @param crankTorque torque at the crankshaft, N m
 */
public record PulsePoint(
        Pulse pulse,
        double lambda,
        double wanted,
        double leanest,
        double richest,
        double wheelPower,
        double crankTorque) {

    /**
     * What the two valves' different delays do to the mixture.
     *
     * @return relative error of lambda; positive is lean
     */
    public double error() {
        return lambda / wanted - 1;
    }

    /**
     * The same with the spread of the delays.
     *
     * @return the larger of the relative errors to the lean and to the rich side, not negative
     */
    public double worstError() {
        return Math.max(Math.abs(leanest / wanted - 1), Math.abs(richest / wanted - 1));
    }
}
