package org.shotledger.wiring;

/**
 * What a controller shows for a sensor in a state.
 *
 * @param sensor its name
 * @param state the state
 * @param value shown, SI
 */
public record SensorReading(String sensor, CheckValue.State state, double value) {}
