package org.shotledger.car;

/**
 * What feeds the loads.
 *
 * @param alternatorCurrent rated current, A
 * @param batteryCharge rated charge, C
 */
public record Electrical(double alternatorCurrent, double batteryCharge) {}
