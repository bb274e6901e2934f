package org.shotledger.causes;

import org.shotledger.logs.LogChannel;

/**
 * A channel of a log as the fit sees it: logarithmic where errors are shares, otherwise in a unit in which the usual sizes are near one.
 */
enum Observable {
    /** Mixture of all streams. */
    LAMBDA(LogChannel.LAMBDA, Double.NaN, 0.0010, 0.004),
    /** Power at the wheels, from power, torque or acceleration. */
    WHEEL_POWER(LogChannel.WHEEL_POWER, Double.NaN, 0.0010, 0.005),
    /** Power at the crankshaft. */
    CRANK_POWER(LogChannel.CRANK_POWER, Double.NaN, 0.0010, 0.005),
    /** Manifold pressure. */
    MANIFOLD_PRESSURE(LogChannel.MANIFOLD_PRESSURE, 1e5, 0.0015, 0.005),
    /** Rail of the main injectors. */
    FUEL_PRESSURE(LogChannel.FUEL_PRESSURE, 1e5, 0.005, 0.02),
    /** Nitrous fuel before its solenoid. */
    NITROUS_FUEL_PRESSURE(LogChannel.NITROUS_FUEL_PRESSURE, 1e5, 0.005, 0.02),
    /** Bottle pressure with the nitrous on. */
    BOTTLE_PRESSURE(LogChannel.BOTTLE_PRESSURE, 1e5, 0.05, 0.2),
    /** Bottle temperature before the nitrous opens. */
    BOTTLE_TEMPERATURE(LogChannel.BOTTLE_TEMPERATURE, 1, 1.0, 1.5),
    /** Supply voltage: it sags and recovers with everything that is switched. */
    BATTERY_VOLTAGE(LogChannel.BATTERY_VOLTAGE, 1, 0.15, 0.15),
    /** How far the main injectors are open. */
    INJECTOR_DUTY(LogChannel.INJECTOR_DUTY, Double.NaN, 0.005, 0.01);

    private final LogChannel channel;
    private final double unit;
    private final double floor;
    private final double usual;

    Observable(LogChannel channel, double unit, double floor, double usual) {
        this.channel = channel;
        this.unit = unit;
        this.floor = floor;
        this.usual = usual;
    }

    LogChannel channel() {
        return channel;
    }

    /** The value as the fit sees it; NaN for what has no logarithm. */
    double seen(double si) {
        if (!Double.isNaN(unit)) {
            return si / unit;
        }
        return si > 0 ? Math.log(si) : Double.NaN;
    }

    /** The value behind what the fit sees, SI. */
    double si(double seen) {
        return Double.isNaN(unit) ? Math.exp(seen) : seen * unit;
    }

    /** What slowly wanders in any log beside what is modelled, one standard deviation as the fit sees it: our choice. */
    double floor() {
        return floor;
    }

    /** What a mean of a usual sensor of this channel is good for without its offset, as the fit sees it: our choice. */
    double usual() {
        return usual;
    }

    /** Row of its values in the tables of a fit. */
    @SuppressWarnings("EnumOrdinal") // the tables live for one fit and have one row a channel
    int row() {
        return ordinal();
    }
}
