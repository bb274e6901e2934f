package org.shotledger.logs;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shotledger.sheet.Range;
import org.shotledger.units.QuantityKind;

/**
 * What a column of a log can hold. The plausible ranges are wide and our own: outside them the unit or the sensor is wrong, not
 * the engine.
 */
public enum LogChannel {
    /** Time since any moment, s. */
    TIME(QuantityKind.TIME, -1e7, 1e7, Pace.FAST),
    /** Engine speed, rev/min. */
    ENGINE_SPEED(QuantityKind.ROTATION, 0, 25_000, Pace.FAST),
    /** Throttle opening, a fraction. */
    THROTTLE(QuantityKind.FRACTION, -0.1, 1.1, Pace.STATE),
    /** Pressure in the intake manifold, Pa absolute. */
    MANIFOLD_PRESSURE(QuantityKind.ABSOLUTE_PRESSURE, 0.1e5, 10e5, Pace.FAST),
    /** Oxygen supplied over oxygen demanded, read in the exhaust. */
    LAMBDA(QuantityKind.RATIO, 0.4, 2.5, Pace.FAST),
    /** Fuel pressure at the rail of the main injectors, Pa absolute. */
    FUEL_PRESSURE(QuantityKind.ABSOLUTE_PRESSURE, 0.7e5, 25e5, Pace.FAST),
    /** Pressure of the nitrous bottle, Pa absolute. */
    BOTTLE_PRESSURE(QuantityKind.ABSOLUTE_PRESSURE, 0.7e5, 250e5, Pace.FAST),
    /** Pressure of the nitrous fuel before its solenoid, Pa absolute. */
    NITROUS_FUEL_PRESSURE(QuantityKind.ABSOLUTE_PRESSURE, 0.7e5, 25e5, Pace.FAST),
    /** Whether the nitrous is commanded on: 0 or 1, or the words on and off. */
    NITROUS_ON(QuantityKind.RATIO, 0, 1, Pace.STATE),
    /** Temperature of the charge in the manifold, K. */
    CHARGE_TEMPERATURE(QuantityKind.TEMPERATURE, 200, 480, Pace.SLOW),
    /** Temperature of the nitrous bottle, K. */
    BOTTLE_TEMPERATURE(QuantityKind.TEMPERATURE, 220, 345, Pace.SLOW),
    /** Battery voltage, V. */
    BATTERY_VOLTAGE(QuantityKind.VOLTAGE, 5, 32, Pace.SLOW),
    /** Power at the wheels, W. */
    WHEEL_POWER(QuantityKind.POWER, -0.5e6, 5e6, Pace.FAST),
    /** Power at the crankshaft, W. */
    CRANK_POWER(QuantityKind.POWER, -0.5e6, 5e6, Pace.FAST),
    /** Torque at the wheels referred to engine speed, that is wheel power over engine speed, N m. */
    WHEEL_TORQUE(QuantityKind.TORQUE, -2000, 8000, Pace.FAST),
    /** Torque at the crankshaft, N m. */
    CRANK_TORQUE(QuantityKind.TORQUE, -2000, 8000, Pace.FAST),
    /** Share of the cycle the main injectors are open; above 1 they cannot. */
    INJECTOR_DUTY(QuantityKind.RATIO, 0, 2, Pace.FAST),
    /** Spark before top dead centre, crank degrees. */
    SPARK(QuantityKind.CRANK_ANGLE, -30, 80, Pace.SLOW),
    /** Speed of the vehicle over the ground, or of wheels that are not driven, m/s. */
    VEHICLE_SPEED(QuantityKind.SPEED, -1, 150, Pace.FAST),
    /** Gear engaged, 1 for the first, 0 for none. */
    GEAR(QuantityKind.COUNT, -1, 12, Pace.STATE);

    /** How fast a sound signal moves while the engine accelerates: decides what counts as frozen. */
    enum Pace {
        FAST,
        SLOW,
        STATE
    }

    private final QuantityKind kind;
    private final double low;
    private final double high;
    private final Pace pace;

    LogChannel(QuantityKind kind, double low, double high, Pace pace) {
        this.kind = kind;
        this.low = low;
        this.high = high;
        this.pace = pace;
    }

    /**
     * The channel in words, as a heading names it.
     *
     * @return for example {@code "engine speed"}
     */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * The name in a mapping.
     *
     * @return for example {@code "engine-speed"}
     */
    public String key() {
        return words().replace(' ', '-');
    }

    /**
     * What it measures.
     *
     * @return the kind; pressures are absolute, whatever the file says
     */
    public QuantityKind kind() {
        return kind;
    }

    /**
     * Tells whether a value can be true.
     *
     * @param si the value, SI
     * @return false outside the plausible range
     */
    public boolean plausible(double si) {
        return si >= low && si <= high;
    }

    /**
     * The plausible range.
     *
     * @return range and unit in words
     */
    public String range() {
        return Range.text(kind, low, high);
    }

    Pace pace() {
        return pace;
    }

    /**
     * The channel a heading names.
     *
     * @param heading the heading without its unit
     * @return the channel, or empty
     */
    public static Optional<LogChannel> named(String heading) {
        return Arrays.stream(values())
                .filter(c -> c.words().equalsIgnoreCase(heading) || c.key().equalsIgnoreCase(heading))
                .findFirst();
    }

    /**
     * The names of all channels.
     *
     * @return their words, in order
     */
    public static List<String> names() {
        return Arrays.stream(values()).map(LogChannel::words).toList();
    }
}
