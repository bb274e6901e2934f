package org.shotledger.car;

import java.util.List;

/**
 * The car, as far as a pass needs it.
 *
 * @param mass with driver, kg
 * @param dragArea drag coefficient times frontal area, m2
 * @param gears gear ratios, first gear first
 * @param finalDrive ratio of the final drive
 * @param tyres size as written on the driven tyres
 * @param rollingResistance rolling resistance over weight
 * @param chassis what a pass in time needs besides
 */
public record Vehicle(
        double mass,
        double dragArea,
        List<Double> gears,
        double finalDrive,
        String tyres,
        double rollingResistance,
        Chassis chassis) {
    public Vehicle {
        gears = List.copyOf(gears);
    }
}
