package org.shotledger.plan;

/**
 * A nitrous flow with its fuel jet, before a nitrous jet is chosen for it.
 *
 * @param nitrousFlow nitrous oxide through all nozzles in the case of the target, kg/s
 * @param fuelBore hole of the fuel jet of every nozzle, m
 */
record Shot(double nitrousFlow, double fuelBore) {}
