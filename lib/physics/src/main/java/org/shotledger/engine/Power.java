package org.shotledger.engine;

/**
 * From released heat to the crankshaft, each part in W.
 *
 * @param indicated gross indicated power (compression and expansion strokes)
 * @param pumping power lost to gas exchange, {@code (p_exhaust - p_intake) V_d n / 2}; negative where boost pushes
 * @param friction power lost to friction and accessories
 * @param rpm crankshaft speed
 */
public record Power(double indicated, double pumping, double friction, double rpm) {
    /**
     * Power at the flywheel.
     *
     * @return W
     */
    public double brake() {
        return indicated - pumping - friction;
    }

    /**
     * Torque at the flywheel.
     *
     * @return N m
     */
    public double torque() {
        return Engine.torque(brake(), rpm);
    }

    /**
     * Brake over gross indicated power.
     *
     * @return mechanical efficiency with pumping counted as a loss
     */
    public double mechanicalEfficiency() {
        return brake() / indicated;
    }
}
