package org.shotledger.pass;

/**
 * A row of the trace.
 *
 * @param time since the car moved, s
 * @param distance since the car moved, m
 * @param speed m/s
 * @param acceleration m/s2
 * @param rpm engine speed
 * @param gear counted from 1
 * @param power that the engine gives at its flywheel, W
 * @param turbo state of the turbocharger
 * @param nitrous share of the shot, 0 to 1; zero is off
 * @param nitrousUsed since the start, kg
 * @param held whether grip or the front wheels hold the engine back
 */
public record PassRow(
        double time,
        double distance,
        double speed,
        double acceleration,
        double rpm,
        int gear,
        double power,
        double turbo,
        double nitrous,
        double nitrousUsed,
        boolean held) {}
