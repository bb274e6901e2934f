package org.shotledger.pass;

/**
 * A mark of the strip as the clock sees it.
 *
 * @param distance from the clock's start, m
 * @param time since the clock's start, s
 * @param speed there, m/s
 */
public record PassMark(double distance, double time, double speed) {}
