package org.shotledger.pass;

import java.util.List;
import org.shotledger.drive.Driveline;
import org.shotledger.units.Require;

/**
 * Gears, shifts and what turns with the crankshaft.
 *
 * @param gears ratios in the order in which they are used, 1 to 10 of them, each 0.3 to 20
 * @param finalDrive ratio of the axle, 0.5 to 20; 1 where it is in the gears
 * @param shiftRpm engine speed at which each gear is left; that of the last is the limiter's
 * @param shiftTime time without torque in a shift, s, 0 to 3
 * @param driveline losses
 * @param engineInertia of crankshaft, flywheel and clutch, kg m2, 0 to 5
 * @param launchRpm engine speed held while the clutch or the converter slips at the start
 */
public record Transmission(
        List<Double> gears,
        double finalDrive,
        List<Double> shiftRpm,
        double shiftTime,
        Driveline driveline,
        double engineInertia,
        double launchRpm) {
    public Transmission {
        gears = List.copyOf(gears);
        shiftRpm = List.copyOf(shiftRpm);
        Require.within("number of gears", gears.size(), 1, 10, "");
        Require.within("final drive", finalDrive, 0.5, 20, "");
        Require.within("shift time", shiftTime, 0, 3, "s");
        Require.given("driveline", driveline);
        Require.within("inertia of the engine", engineInertia, 0, 5, "kg m2");
        if (shiftRpm.size() != gears.size()) {
            throw new IllegalArgumentException("There are " + gears.size() + " gears and " + shiftRpm.size()
                    + " shift speeds; give one for each gear, the limiter's for the last.");
        }
        for (int i = 0; i < gears.size(); i++) {
            Require.within("ratio of gear " + (i + 1), gears.get(i), 0.3, 20, "");
            Require.within("shift speed of gear " + (i + 1), shiftRpm.get(i), 500, 30_000, "rpm");
        }
        Require.within("launch speed of the engine", launchRpm, 500, shiftRpm.get(0), "rpm");
    }

    /** Turns of the engine for a turn of the wheels in a gear, counted from zero. */
    double ratio(int gear) {
        return gears.get(gear) * finalDrive;
    }

    int last() {
        return gears.size() - 1;
    }
}
