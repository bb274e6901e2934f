package org.shotledger.logs;

import java.util.LinkedHashMap;
import java.util.Map;

/** A car with one of its figures moved by its standard uncertainty, figure by figure. */
final class CarDoubts {
    private CarDoubts() {}

    static Map<String, RunningCar> each(RunningCar c) {
        Map<String, RunningCar> all = new LinkedHashMap<>();
        Measured[] figures = {
            c.mass(),
            c.wheels(),
            c.drivetrain(),
            c.dragArea(),
            c.airDensity(),
            c.headwind(),
            c.rolling(),
            c.grade(),
            c.speedFactor()
        };
        String[] names = {
            "the mass",
            "the spin-up of the wheels",
            "the spin-up of engine and driveline",
            "the drag area",
            "the density of the air",
            "the wind",
            "the rolling resistance",
            "the grade of the road",
            "the calibration of the speed"
        };
        for (int i = 0; i < figures.length; i++) {
            Measured[] moved = figures.clone();
            moved[i] = figures[i].plusStandard();
            all.put(names[i], with(c, moved));
        }
        return all;
    }

    private static RunningCar with(RunningCar c, Measured[] f) {
        return new RunningCar(
                f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7], f[8], c.gears(), c.finalDrive(), c.tyreRadius());
    }
}
