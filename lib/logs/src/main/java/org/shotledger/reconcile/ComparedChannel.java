package org.shotledger.reconcile;

import java.util.Locale;
import org.shotledger.logs.LogChannel;
import org.shotledger.units.QuantityKind;

/** What of a log is laid over the plan. */
public enum ComparedChannel {
    /** Power at the wheels, W. */
    WHEEL_POWER(LogChannel.WHEEL_POWER, "more", "less"),
    /** Power at the crankshaft, W. */
    CRANK_POWER(LogChannel.CRANK_POWER, "more", "less"),
    /** Pressure in the intake manifold, Pa absolute. */
    MANIFOLD_PRESSURE(LogChannel.MANIFOLD_PRESSURE, "higher", "lower"),
    /** Mixture of all streams. */
    LAMBDA(LogChannel.LAMBDA, "leaner", "richer"),
    /** Pressure at the rail of the main injectors, Pa absolute. */
    FUEL_PRESSURE(LogChannel.FUEL_PRESSURE, "higher", "lower"),
    /** Pressure of the nitrous fuel after its regulator, Pa absolute. */
    NITROUS_FUEL_PRESSURE(LogChannel.NITROUS_FUEL_PRESSURE, "higher", "lower"),
    /** Pressure of the bottle, Pa absolute. */
    BOTTLE_PRESSURE(LogChannel.BOTTLE_PRESSURE, "higher", "lower");

    private final LogChannel channel;
    private final String above;
    private final String below;

    ComparedChannel(LogChannel channel, String above, String below) {
        this.channel = channel;
        this.above = above;
        this.below = below;
    }

    /**
     * The channel of the log.
     *
     * @return the channel
     */
    public LogChannel channel() {
        return channel;
    }

    /**
     * In words.
     *
     * @return for example {@code "wheel power"}
     */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * What its differences measure.
     *
     * @return the kind
     */
    public QuantityKind difference() {
        return channel.kind() == QuantityKind.ABSOLUTE_PRESSURE ? QuantityKind.PRESSURE_DIFFERENCE : channel.kind();
    }

    /**
     * The word for a difference.
     *
     * @param difference log less plan
     * @return for example {@code "leaner"}
     */
    public String direction(double difference) {
        return difference >= 0 ? above : below;
    }
}
