package org.shotledger.logs;

import java.util.List;
import org.shotledger.units.Require;

/**
 * A car as a mass on the road, for power from acceleration.
 *
 * @param mass with driver and fuel, kg, 100 to 10 000
 * @param wheels what the wheels take to spin up, as a share of the mass, 0 to 0.2
 * @param drivetrain what engine and driveline take to spin up, as a share of the mass for an overall ratio of 1; it grows with the square of
 *     the ratio of engine to wheel speed; 0 to 0.01
 * @param dragArea drag coefficient times frontal area, m2, 0.1 to 5
 * @param airDensity kg/m3, 0.5 to 1.6
 * @param headwind speed of the air against the car, m/s, -30 to 30
 * @param rolling rolling resistance over weight, 0 to 0.1
 * @param grade rise over way, -0.2 to 0.2
 * @param speedFactor true speed over logged speed, 0.8 to 1.2
 * @param gears gear ratios, first gear first, falling; may be empty
 * @param finalDrive ratio of the final drive, 1 to 10
 * @param tyreRadius rolling radius of the driven wheels, m, 0.15 to 0.6
 */
public record RunningCar(
        Measured mass,
        Measured wheels,
        Measured drivetrain,
        Measured dragArea,
        Measured airDensity,
        Measured headwind,
        Measured rolling,
        Measured grade,
        Measured speedFactor,
        List<Double> gears,
        double finalDrive,
        double tyreRadius) {
    /** Mass factor 1 + 0.04 + 0.0025 N2: T. D. Gillespie, Fundamentals of Vehicle Dynamics, SAE, 1992, ch. 2 (from memory). */
    private static final Measured WHEELS = new Measured(0.04, 0.01);

    private static final Measured DRIVETRAIN = new Measured(0.0025, 0.0008);
    /** Standard uncertainty of the wind where none was stated, m/s: our choice, a light breeze. */
    private static final double WIND = 2;
    /** Standard uncertainty of the rise where none was stated: our choice, a road that looks level. */
    private static final double GRADE = 0.005;

    public RunningCar {
        Require.within("mass of the car", mass.value(), 100, 10_000, "kg");
        Require.within("share of the wheels' spin-up", wheels.value(), 0, 0.2, "");
        Require.within("share of the driveline's spin-up", drivetrain.value(), 0, 0.01, "");
        Require.within("drag area", dragArea.value(), 0.1, 5, "m2");
        Require.within("density of the air", airDensity.value(), 0.5, 1.6, "kg/m3");
        Require.within("head wind", headwind.value(), -30, 30, "m/s");
        Require.within("rolling resistance over weight", rolling.value(), 0, 0.1, "");
        Require.within("grade", grade.value(), -0.2, 0.2, "");
        Require.within("factor of the speed", speedFactor.value(), 0.8, 1.2, "");
        Require.within("final drive", finalDrive, 1, 10, "");
        Require.within("rolling radius", tyreRadius, 0.15, 0.6, "m");
        gears = List.copyOf(gears);
        gears.forEach(g -> Require.within("gear ratio", g, 0.3, 8, ""));
    }

    /**
     * A car with the usual doubts: mass 1 %, drag 10 %, air 1 %, rolling 20 %, speed 1 %; a level road within 0.5 % and still air within
     * 2 m/s. All are our choice; replace what was measured.
     *
     * @param mass with driver and fuel, kg
     * @param dragArea drag coefficient times frontal area, m2
     * @param rolling rolling resistance over weight
     * @param airDensity kg/m3
     * @param gears gear ratios, first gear first
     * @param finalDrive ratio of the final drive
     * @param tyreRadius rolling radius, m
     * @return the car
     */
    public static RunningCar usual(
            double mass,
            double dragArea,
            double rolling,
            double airDensity,
            List<Double> gears,
            double finalDrive,
            double tyreRadius) {
        return new RunningCar(
                new Measured(mass, 0.01 * Math.abs(mass)),
                WHEELS,
                DRIVETRAIN,
                new Measured(dragArea, 0.1 * Math.abs(dragArea)),
                new Measured(airDensity, 0.01 * Math.abs(airDensity)),
                new Measured(0, WIND),
                new Measured(rolling, 0.2 * Math.abs(rolling)),
                new Measured(0, GRADE),
                new Measured(1, 0.01),
                gears,
                finalDrive,
                tyreRadius);
    }
}
