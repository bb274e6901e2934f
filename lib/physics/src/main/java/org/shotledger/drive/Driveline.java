package org.shotledger.drive;

import org.shotledger.units.Require;

/**
 * Losses between flywheel and driven wheels: a drag torque that is there at any load, and a share of the power carried.
 * The power that spins up rotating parts is not a loss and is not in here.
 *
 * @param name layout, for example {@code "rear drive, manual"}
 * @param dragTorque at the crankshaft, N m, 0 to 100
 * @param proportionalLoss share of the power carried, 0 to 0.4; 0.12 to 0.16 manual and 0.18 to 0.22 automatic are common
 *     practice
 */
public record Driveline(String name, double dragTorque, double proportionalLoss) {
    public Driveline {
        Require.named("driveline", name);
        Require.within("drag torque of " + name, dragTorque, 0, 100, "N m");
        Require.within("proportional loss of " + name, proportionalLoss, 0, 0.4, "");
    }

    /**
     * A driveline with a proportional loss alone.
     *
     * @param name layout
     * @param loss share of the power, 0 to 0.4
     * @return the driveline
     */
    public static Driveline proportional(String name, double loss) {
        return new Driveline(name, 0, loss);
    }

    /**
     * Power at the wheels.
     *
     * @param brakePower at the flywheel, W
     * @param rpm crankshaft speed
     * @return W
     */
    public double wheelPower(double brakePower, double rpm) {
        return (brakePower - dragTorque * Math.PI * rpm / 30) * (1 - proportionalLoss);
    }

    /**
     * Power at the flywheel that gives a power at the wheels.
     *
     * @param wheelPower W
     * @param rpm crankshaft speed
     * @return W
     */
    public double brakePower(double wheelPower, double rpm) {
        return wheelPower / (1 - proportionalLoss) + dragTorque * Math.PI * rpm / 30;
    }
}
