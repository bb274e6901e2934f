package org.shotledger.pass;

/**
 * Where the engine's work went.
 *
 * @param engine work at the flywheel, J
 * @param air work against the air, J
 * @param rolling work against the rolling resistance, J
 * @param driveline lost in the driveline, J
 * @param clutch lost in the slipping clutch, J
 * @param shifts energy of the engine's parts given up in shifts, J
 * @param kinetic gained by the car, its wheels and the engine's parts, J
 */
public record PassEnergy(
        double engine, double air, double rolling, double driveline, double clutch, double shifts, double kinetic) {

    /**
     * What the energy balance does not account for, over the engine's work.
     *
     * @return relative, zero in exact arithmetic
     */
    public double imbalance() {
        return (engine - air - rolling - driveline - clutch - shifts - kinetic) / engine;
    }
}
