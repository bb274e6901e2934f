package org.shotledger.delivery;

import org.shotledger.car.Vehicle;
import org.shotledger.drive.Driveline;
import org.shotledger.units.UnitFactors;

/**
 * The car in one gear as a point mass: {@code m dv/dt = F - rho/2 CdA v^2 - c m g}. The spin-up of wheels and engine is left
 * out, so a real car gains speed a little later.
 *
 * @param car the car
 * @param gear gear, 1 for the first
 * @param driveline its losses
 * @param tyreRadius rolling radius, m
 * @param airDensity density of the air, kg/m3
 */
record GearMotion(Vehicle car, int gear, Driveline driveline, double tyreRadius, double airDensity) {
    /** s: our choice, a tenth of what a ramp's cell lasts. */
    private static final double TIME_STEP = 0.01;

    /** The engine speed after a time at one torque of the crankshaft, rev/min; it does not fall. */
    double after(double rpm, double crankTorque, double seconds) {
        double ratio = car.gears().get(gear - 1) * car.finalDrive();
        double force = (crankTorque - driveline.dragTorque()) * (1 - driveline.proportionalLoss()) * ratio / tyreRadius;
        double perRpm = Math.PI / 30 * tyreRadius / ratio;
        double speed = rpm * perRpm;
        for (double t = 0; t < seconds; t += TIME_STEP) {
            double drag = airDensity / 2 * car.dragArea() * speed * speed;
            double roll = car.rollingResistance() * car.mass() * UnitFactors.GRAVITY;
            speed += Math.max(force - drag - roll, 0) / car.mass() * TIME_STEP;
        }
        return speed / perRpm;
    }
}
