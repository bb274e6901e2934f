package org.shotledger.build;

/**
 * What feeds the loads.
 *
 * @param alternatorCurrent rated current, A
 * @param batteryCharge rated charge, C
 * @param bottleDistance length of cable from the controller to the bottle, m
 */
public record Electrical(double alternatorCurrent, double batteryCharge, double bottleDistance) {}
