package org.shotledger.logs;

import java.util.List;

/** What a comparison with a plan needs of a log, and what cannot be said without it. */
enum LogNeed {
    SPEED(
            "engine speed",
            true,
            "no pull can be found and nothing can be laid over engine speed",
            LogChannel.ENGINE_SPEED),
    BOOST(
            "manifold pressure",
            true,
            "a power that differs cannot be told from a boost that differs",
            LogChannel.MANIFOLD_PRESSURE),
    MIXTURE("lambda", true, "nothing can be said of the mixture or of the fuel jets", LogChannel.LAMBDA),
    BOTTLE(
            "bottle pressure",
            true,
            "nitrous jets cannot be told from a bottle that is too cold or too warm",
            LogChannel.BOTTLE_PRESSURE),
    NITROUS_FUEL(
            "nitrous fuel pressure",
            true,
            "small fuel jets cannot be told from a low fuel pressure",
            LogChannel.NITROUS_FUEL_PRESSURE),
    STATE(
            "nitrous on",
            true,
            "when the nitrous was on has to be told from the fall of bottle pressure",
            LogChannel.NITROUS_ON),
    POWER(
            "power or torque",
            true,
            "power can be judged only by acceleration, from vehicle speed, gears and mass",
            LogChannel.WHEEL_POWER,
            LogChannel.WHEEL_TORQUE,
            LogChannel.CRANK_POWER,
            LogChannel.CRANK_TORQUE),
    ROAD(
            "vehicle speed",
            false,
            "power cannot be had from acceleration either",
            LogChannel.VEHICLE_SPEED,
            LogChannel.WHEEL_POWER,
            LogChannel.WHEEL_TORQUE,
            LogChannel.CRANK_POWER,
            LogChannel.CRANK_TORQUE),
    LOAD(
            "throttle",
            false,
            "whether the engine was wide open is told by manifold pressure, or by nothing",
            LogChannel.THROTTLE),
    MAIN_FUEL(
            "fuel pressure",
            false,
            "a main fuel regulator or pump that falls off cannot be told from injectors that flow less",
            LogChannel.FUEL_PRESSURE),
    CHARGE(
            "charge temperature",
            false,
            "less air because of a hot charge cannot be told from less breathing",
            LogChannel.CHARGE_TEMPERATURE),
    BOTTLE_HEAT(
            "bottle temperature",
            false,
            "a bottle pressure sensor that reads wrong cannot be told from a bottle that is too cold or too warm",
            LogChannel.BOTTLE_TEMPERATURE),
    SUPPLY_VOLTAGE(
            "battery voltage",
            false,
            "a pump or injectors short of voltage cannot be told from other causes",
            LogChannel.BATTERY_VOLTAGE);

    private final String words;
    private final boolean usual;
    private final String without;
    private final List<LogChannel> channels;

    LogNeed(String words, boolean usual, String without, LogChannel... channels) {
        this.words = words;
        this.usual = usual;
        this.without = without;
        this.channels = List.of(channels);
    }

    String words() {
        return words;
    }

    /** Whether every comparison with a plan wants it. */
    boolean usual() {
        return usual;
    }

    /** What cannot be said without it. */
    String without() {
        return without;
    }

    /** The channels any of which serves. */
    List<LogChannel> channels() {
        return channels;
    }
}
