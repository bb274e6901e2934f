package org.shotledger.delivery;

/**
 * One line of a ramp, held from one value of its axis to the next.
 *
 * @param from where it begins: s, rev/min or gear
 * @param to where it ends
 * @param nitrousDuty duty of the nitrous solenoid, 0 to 1
 * @param fuelDuty duty of the fuel solenoid, 0 to 1
 * @param share share of the full shot delivered
 * @param crankTorque largest torque at the crankshaft within the step, N m
 * @param allowedTorque smallest torque allowed within the step, N m
 * @param lambda leanest mixture within the step
 * @param reason what holds the step back, in words
 */
public record RampStep(
        double from,
        double to,
        double nitrousDuty,
        double fuelDuty,
        double share,
        double crankTorque,
        double allowedTorque,
        double lambda,
        String reason) {}
