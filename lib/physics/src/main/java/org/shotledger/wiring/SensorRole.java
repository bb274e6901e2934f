package org.shotledger.wiring;

import java.util.Arrays;

/** What of the car a sensor measures, where a plan knows what it must show. */
public enum SensorRole {
    /** Pressure behind the bottle's valve. */
    BOTTLE_PRESSURE("bottle-pressure"),
    /** Temperature of the bottle's shell. */
    BOTTLE_TEMPERATURE("bottle-temperature"),
    /** Pressure at the fuel jets of the nitrous system. */
    NITROUS_FUEL_PRESSURE("nitrous-fuel-pressure"),
    /** Pressure at the rail of the injectors. */
    MAIN_FUEL_PRESSURE("main-fuel-pressure"),
    /** Pressure in the plenum. */
    PLENUM_PRESSURE("plenum-pressure"),
    /** Ethanol in the main fuel. */
    ETHANOL_CONTENT("ethanol-content"),
    /** Temperature of the fuel. */
    FUEL_TEMPERATURE("fuel-temperature"),
    /** Temperature of the coolant. */
    COOLANT_TEMPERATURE("coolant-temperature"),
    /** Temperature of the air in the plenum. */
    AIR_TEMPERATURE("air-temperature"),
    /** Temperature of the exhaust before the turbine. */
    EXHAUST_TEMPERATURE("exhaust-temperature"),
    /** Mixture by a probe in the exhaust. */
    LAMBDA("lambda"),
    /** Throttle position. */
    THROTTLE("throttle"),
    /** Speed of the crankshaft. */
    ENGINE_SPEED("engine-speed"),
    /** Speed of the car. */
    CAR_SPEED("car-speed"),
    /** Anything else. */
    OTHER("other");

    private final String word;

    SensorRole(String word) {
        this.word = word;
    }

    /**
     * The word by which a sheet names it.
     *
     * @return for example {@code "bottle-pressure"}
     */
    public String word() {
        return word;
    }

    /**
     * The role of a word.
     *
     * @param word any word, spaces or hyphens between its parts
     * @return the role; {@link #OTHER} for a word that names none
     */
    public static SensorRole of(String word) {
        String wanted = word.replace(' ', '-');
        return Arrays.stream(values())
                .filter(role -> role.word.equals(wanted))
                .findFirst()
                .orElse(OTHER);
    }
}
