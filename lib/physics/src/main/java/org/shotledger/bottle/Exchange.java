package org.shotledger.bottle;

/**
 * Heat between air, heater, shell and contents.
 *
 * <p>Coefficients may be as large as anybody likes, but an exchange that is over within a 2000th of the run (or within 20 ms) is
 * taken to last that long: shell and contents are one body by then, and an explicit integrator gets through in bounded time.
 */
final class Exchange {
    private static final double SHORTEST = 0.02;
    private static final double SHARE_OF_RUN = 1.0 / 2000;

    final double shellCapacity;
    private final HeatInput heat;
    private final Bottle bottle;
    private final double shortest;
    /** Whether the heater is on. */
    boolean heating;

    Exchange(Emptying task) {
        heat = task.heat();
        bottle = task.charge().bottle();
        shellCapacity = bottle.wallMass() * bottle.wallSpecificHeat();
        shortest = Math.max(SHORTEST, SHARE_OF_RUN * task.duration());
    }

    /** Whether heat from outside gets anywhere: into the shell, or through one without mass into the contents. */
    boolean open() {
        return shellCapacity > 0 || heat.fluidCoefficient() > 0;
    }

    double shellTemperature(double[] y, double contents) {
        return shellCapacity > 0 ? y[Layout.SHELL] / shellCapacity : contents;
    }

    /** Heat from air and heater, W. */
    double fromOutside(double shellTemperature, double contentsCapacity) {
        double capacity = shellCapacity > 0 ? shellCapacity : contentsCapacity;
        double conductance = Math.min(heat.ambientCoefficient() * bottle.outerArea(), capacity / shortest);
        return (heating ? heat.heaterPower() : 0) + conductance * (heat.ambientTemperature() - shellTemperature);
    }

    /** Heat from the shell through a share of its inner surface, W; the share counts gas with its smaller coefficient. */
    double toContents(double share, double shellTemperature, double temperature, double capacity) {
        double conductance = share * heat.fluidCoefficient() * bottle.wallArea();
        return Math.min(conductance, Math.min(shellCapacity, capacity) / shortest) * (shellTemperature - temperature);
    }
}
