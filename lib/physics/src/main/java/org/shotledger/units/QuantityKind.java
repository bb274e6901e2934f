package org.shotledger.units;

import java.util.Locale;

/**
 * What a number measures, and the unit in which each {@link UnitSystem} shows it.
 *
 * <p>A value is always held in the coherent SI unit; {@code shown = si * factor + offset}. Conversion factors are exact
 * by definition (international yard and pound, 1959; mechanical horsepower 550 ft lbf/s; BIPM SI Brochure, 9th ed.).
 */
public enum QuantityKind {
    /** A pure number. */
    RATIO(Dimension.NUMBER, "", 1, 0, 3, "", 1, 0, 3),
    /** A fraction shown as percent. */
    FRACTION(Dimension.NUMBER, "%", 100, 0, 1, "%", 100, 0, 1),
    /** A count of things. */
    COUNT(Dimension.NUMBER, "", 1, 0, 0, "", 1, 0, 0),
    /** Absolute pressure, Pa. */
    ABSOLUTE_PRESSURE(Dimension.PRESSURE, "bar abs", 1e-5, 0, 2, "psi abs", 1 / UnitFactors.PSI, 0, 1),
    /** Pressure above a stated ambient, Pa. */
    GAUGE_PRESSURE(Dimension.PRESSURE, "bar gauge", 1e-5, 0, 2, "psi gauge", 1 / UnitFactors.PSI, 0, 1),
    /** Difference of two pressures, Pa. */
    PRESSURE_DIFFERENCE(Dimension.PRESSURE, "bar", 1e-5, 0, 2, "psi", 1 / UnitFactors.PSI, 0, 1),
    /** Temperature, K. */
    TEMPERATURE(
            Dimension.TEMPERATURE,
            "degC",
            1,
            -UnitFactors.ICE_POINT,
            1,
            "degF",
            1.8,
            -UnitFactors.FAHRENHEIT_OFFSET,
            1),
    /** Difference of two temperatures, K. */
    TEMPERATURE_DIFFERENCE(Dimension.TEMPERATURE, "K", 1, 0, 1, "degF difference", 1.8, 0, 1),
    /** Power, W. */
    POWER(Dimension.POWER, "kW", 1e-3, 0, 1, "hp", 1 / UnitFactors.HORSEPOWER, 0, 0),
    /** Torque, N m. */
    TORQUE(Dimension.TORQUE, "N m", 1, 0, 0, "lbf ft", 1 / UnitFactors.POUND_FOOT, 0, 0),
    /** Energy, J. */
    ENERGY(Dimension.ENERGY, "kJ", 1e-3, 0, 1, "Btu", 1 / 1055.05585262, 0, 1),
    /** Mass, kg. */
    MASS(Dimension.MASS, "kg", 1, 0, 3, "lb", 1 / UnitFactors.POUND, 0, 2),
    /** Mass flow, kg/s. */
    MASS_FLOW(Dimension.MASS_FLOW, "g/s", 1e3, 0, 2, "lb/min", 60 / UnitFactors.POUND, 0, 3),
    /** Volume, m3. */
    VOLUME(Dimension.VOLUME, "L", 1e3, 0, 3, "in3", 1 / 1.6387064e-5, 0, 1),
    /** Volume flow, m3/s. */
    VOLUME_FLOW(Dimension.VOLUME_FLOW, "cc/min", 6e7, 0, 0, "US gal/h", 3600 / UnitFactors.US_GALLON, 0, 1),
    /** Volume flow of air or charge, m3/s. */
    AIR_VOLUME_FLOW(Dimension.VOLUME_FLOW, "L/s", 1e3, 0, 1, "ft3/min", 60 / 0.028316846592, 0, 1),
    /** Length, m. */
    LENGTH(Dimension.LENGTH, "mm", 1e3, 0, 2, "in", 1 / UnitFactors.INCH, 0, 3),
    /** Height above the sea, m. */
    ALTITUDE(Dimension.LENGTH, "m", 1, 0, 0, "ft", 1 / UnitFactors.FOOT, 0, 0),
    /** Diameter of a small hole, m. */
    BORE(Dimension.LENGTH, "mm", 1e3, 0, 3, "thou", 1e3 / UnitFactors.INCH, 0, 1),
    /** Density, kg/m3. */
    DENSITY(Dimension.DENSITY, "kg/m3", 1, 0, 1, "lb/ft3", 1 / 16.018463373960142, 0, 2),
    /** Crankshaft or rotor speed, held in revolutions per minute. */
    ROTATION(Dimension.ROTATION, "rpm", 1, 0, 0, "rpm", 1, 0, 0),
    /** Speed, m/s. */
    SPEED(Dimension.SPEED, "m/s", 1, 0, 1, "ft/s", 1 / UnitFactors.FOOT, 0, 1),
    /** Time, s. */
    TIME(Dimension.TIME, "s", 1, 0, 2, "s", 1, 0, 2),
    /** Angle of the crankshaft, degrees. */
    CRANK_ANGLE(Dimension.ANGLE, "deg", 1, 0, 1, "deg", 1, 0, 1),
    /** Energy per mass, J/kg. */
    SPECIFIC_ENERGY(Dimension.SPECIFIC_ENERGY, "MJ/kg", 1e-6, 0, 2, "Btu/lb", 1 / 2326.0, 0, 0),
    /** Electric potential, V. */
    VOLTAGE(Dimension.VOLTAGE, "V", 1, 0, 2, "V", 1, 0, 2),
    /** Electric current, A. */
    CURRENT(Dimension.CURRENT, "A", 1, 0, 1, "A", 1, 0, 1),
    /** Area, m2. */
    AREA(Dimension.AREA, "m2", 1, 0, 3, "ft2", 1 / 0.09290304, 0, 2),
    /** Electric resistance, ohm. */
    RESISTANCE(Dimension.RESISTANCE, "mohm", 1e3, 0, 1, "mohm", 1e3, 0, 1),
    /** Electric charge, C. */
    CHARGE(Dimension.CHARGE, "A h", 1 / 3600.0, 0, 1, "A h", 1 / 3600.0, 0, 1),
    /** Frequency of a signal, Hz. */
    FREQUENCY(Dimension.FREQUENCY, "Hz", 1, 0, 1, "Hz", 1, 0, 1),
    /** Moment of inertia, kg m2. */
    INERTIA(Dimension.INERTIA, "kg m2", 1, 0, 6, "lb ft2", 1 / 0.042140110093804806, 0, 6),
    /** Specific heat capacity, J/(kg K). */
    SPECIFIC_HEAT(Dimension.SPECIFIC_HEAT, "J/(kg K)", 1, 0, 0, "J/(kg K)", 1, 0, 0);

    /** Digits that count in {@link #brief}. */
    private static final int BRIEF = 3;

    private final Dimension dimension;
    private final Face si;
    private final Face us;

    QuantityKind(
            Dimension dimension,
            String siUnit,
            double siFactor,
            double siOffset,
            int siDigits,
            String usUnit,
            double usFactor,
            double usOffset,
            int usDigits) {
        this.dimension = dimension;
        this.si = new Face(siUnit, siFactor, siOffset, siDigits);
        this.us = new Face(usUnit, usFactor, usOffset, usDigits);
    }

    /**
     * The dimension, which kinds with different zeros share.
     *
     * @return the dimension
     */
    public Dimension dimension() {
        return dimension;
    }

    /**
     * The kind in words.
     *
     * @return for example {@code "gauge pressure"}
     */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * The name of the unit shown.
     *
     * @param system the unit system
     * @return the unit's name, empty for a pure number
     */
    public String unit(UnitSystem system) {
        return face(system).unit;
    }

    /**
     * Converts an SI value to the number shown.
     *
     * @param siValue the value in the coherent SI unit
     * @param system the unit system
     * @return the number in {@link #unit(UnitSystem)}
     */
    public double shown(double siValue, UnitSystem system) {
        Face face = face(system);
        return siValue * face.factor + face.offset;
    }

    /**
     * Writes an SI value with the digits the trade reads and its unit.
     *
     * @param siValue the value in the coherent SI unit
     * @param system the unit system
     * @return for example {@code "65.50 bar gauge"}
     */
    public String text(double siValue, UnitSystem system) {
        return withUnit(number(siValue, system), system);
    }

    /**
     * Writes the number alone, with the digits the trade reads.
     *
     * @param siValue the value in the coherent SI unit
     * @param system the unit system
     * @return for example {@code "65.50"}; {@code "-"} when the value is not a number
     */
    public String number(double siValue, UnitSystem system) {
        return written(shown(siValue, system), face(system).digits);
    }

    /**
     * Writes an SI value with its unit and with no decimals beyond three digits that count, for figures that no model knows better.
     *
     * @param siValue the value in the coherent SI unit
     * @param system the unit system
     * @return for example {@code "65.5 bar gauge"}; never more decimals than {@link #text} writes
     */
    public String brief(double siValue, UnitSystem system) {
        double shown = shown(siValue, system);
        int needed = shown == 0 ? BRIEF : BRIEF - 1 - (int) Math.floor(Math.log10(Math.abs(shown)));
        int decimals = Math.max(0, Math.min(face(system).digits, needed));
        return withUnit(written(shown, decimals), system);
    }

    private String withUnit(String number, UnitSystem system) {
        String unit = unit(system);
        return unit.isEmpty() ? number : number + " " + unit;
    }

    private static String written(double shown, int decimals) {
        if (Double.isNaN(shown)) {
            return "-";
        }
        String text = String.format(Locale.ROOT, "%." + decimals + "f", shown);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    private Face face(UnitSystem system) {
        return system == UnitSystem.SI ? si : us;
    }

    private record Face(String unit, double factor, double offset, int digits) {}
}
