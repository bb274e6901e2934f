package org.shotledger.car;

import org.shotledger.pass.RollingCar.Axle;

/**
 * What a pass in time needs of a car besides its mass, drag and gears.
 *
 * @param axle driven axle
 * @param drivenShare of the standing weight on the driven axle, 0.1 to 1
 * @param wheelbase m
 * @param centreHeight height of the centre of mass, m
 * @param tyreRadius rolling radius of the driven wheels, m; NaN for that of the size on the tyres
 * @param drivenInertia of the driven wheels with everything that turns with them, kg m2
 * @param freeInertia of the other wheels, kg m2
 * @param engineInertia of crankshaft, flywheel and clutch, kg m2
 * @param turboInertia of both wheels and the shaft of the turbocharger, kg m2
 * @param shiftTime time without torque in a shift, s
 * @param shiftRpm engine speed at which gears are left, rev/min; NaN for that at which the nitrous closes
 * @param launchRpm engine speed held while the clutch or the converter slips at the start, rev/min
 */
public record Chassis(
        Axle axle,
        double drivenShare,
        double wheelbase,
        double centreHeight,
        double tyreRadius,
        double drivenInertia,
        double freeInertia,
        double engineInertia,
        double turboInertia,
        double shiftTime,
        double shiftRpm,
        double launchRpm) {}
