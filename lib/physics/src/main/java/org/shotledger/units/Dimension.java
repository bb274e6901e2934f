package org.shotledger.units;

/** What a unit measures, without saying from which zero: pressure is one dimension, gauge and absolute are two kinds. */
public enum Dimension {
    /** Pure numbers, fractions and counts. */
    NUMBER("a pure number"),
    /** Pressure of any kind. */
    PRESSURE("a pressure"),
    /** Temperature or a difference of temperatures. */
    TEMPERATURE("a temperature"),
    /** Power. */
    POWER("a power"),
    /** Torque. */
    TORQUE("a torque"),
    /** Energy. */
    ENERGY("an energy"),
    /** Mass. */
    MASS("a mass"),
    /** Mass per time. */
    MASS_FLOW("a mass flow"),
    /** Volume. */
    VOLUME("a volume"),
    /** Volume per time. */
    VOLUME_FLOW("a volume flow"),
    /** Length and diameter. */
    LENGTH("a length"),
    /** Area. */
    AREA("an area"),
    /** Density. */
    DENSITY("a density"),
    /** Rotational speed. */
    ROTATION("a rotational speed"),
    /** Speed along a line. */
    SPEED("a speed"),
    /** Time. */
    TIME("a time"),
    /** Angle. */
    ANGLE("an angle"),
    /** Energy per mass. */
    SPECIFIC_ENERGY("an energy per mass"),
    /** Specific heat capacity. */
    SPECIFIC_HEAT("a specific heat capacity"),
    /** Electric potential. */
    VOLTAGE("a voltage"),
    /** Electric current. */
    CURRENT("a current"),
    /** Electric resistance. */
    RESISTANCE("a resistance"),
    /** Electric charge. */
    CHARGE("an electric charge"),
    /** Frequency. */
    FREQUENCY("a frequency"),
    /** Moment of inertia. */
    INERTIA("a moment of inertia");

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    /**
     * The dimension in words with its article.
     *
     * @return for example {@code "a mass flow"}
     */
    public String words() {
        return words;
    }
}
