package org.shotledger.car;

import java.util.Optional;
import org.shotledger.wiring.Alternator;

/**
 * What feeds the loads.
 *
 * @param alternatorCurrent rated current, that at 6000/min of the alternator, A
 * @param batteryCharge rated charge, C
 * @param overSpeed current over engine speed; empty where the second current of the plate is not given
 * @param idleRpm engine speed at which the car waits, rev/min
 */
public record Electrical(
        double alternatorCurrent, double batteryCharge, Optional<Alternator> overSpeed, double idleRpm) {}
