package org.shotledger.units;

/** Short words for quantities, made to be imported statically: {@code hp(780)}, {@code psiGauge(950)}. */
public final class Quantities {
    private Quantities() {}

    /**
     * A figure from its text.
     *
     * @param text number and unit, such as {@code "84.5 mm"}
     * @param kind what is wanted
     * @return the figure
     * @throws UnitException when the text is not such a figure
     */
    public static Amount quantity(String text, QuantityKind kind) {
        return Amount.read(text, kind);
    }

    /**
     * Quantity in horsepower of 550 ft lbf/s.
     *
     * @param number the number in hp
     * @return the figure
     */
    public static Amount hp(double number) {
        return of(number, "hp", QuantityKind.POWER);
    }

    /**
     * Quantity in kilowatts.
     *
     * @param number the number in kW
     * @return the figure
     */
    public static Amount kW(double number) {
        return of(number, "kW", QuantityKind.POWER);
    }

    /**
     * Quantity in newton metres.
     *
     * @param number the number in N m
     * @return the figure
     */
    public static Amount Nm(double number) {
        return of(number, "N m", QuantityKind.TORQUE);
    }

    /**
     * Quantity in pound-force feet.
     *
     * @param number the number in lbf ft
     * @return the figure
     */
    public static Amount lbfFt(double number) {
        return of(number, "lbf ft", QuantityKind.TORQUE);
    }

    /**
     * Quantity in millimetres.
     *
     * @param number the number in mm
     * @return the figure
     */
    public static Amount mm(double number) {
        return of(number, "mm", QuantityKind.LENGTH);
    }

    /**
     * Quantity in inches.
     *
     * @param number the number in in
     * @return the figure
     */
    public static Amount inch(double number) {
        return of(number, "in", QuantityKind.LENGTH);
    }

    /**
     * Quantity in metres.
     *
     * @param number the number in m
     * @return the figure
     */
    public static Amount metres(double number) {
        return of(number, "m", QuantityKind.LENGTH);
    }

    /**
     * Quantity in feet.
     *
     * @param number the number in ft
     * @return the figure
     */
    public static Amount feet(double number) {
        return of(number, "ft", QuantityKind.LENGTH);
    }

    /**
     * Quantity in thousandths of an inch.
     *
     * @param number the number in thou
     * @return the figure
     */
    public static Amount thou(double number) {
        return of(number, "thou", QuantityKind.BORE);
    }

    /**
     * Quantity in degrees Celsius.
     *
     * @param number the number in degC
     * @return the figure
     */
    public static Amount degC(double number) {
        return of(number, "degC", QuantityKind.TEMPERATURE);
    }

    /**
     * Quantity in degrees Fahrenheit.
     *
     * @param number the number in degF
     * @return the figure
     */
    public static Amount degF(double number) {
        return of(number, "degF", QuantityKind.TEMPERATURE);
    }

    /**
     * Quantity in kelvin.
     *
     * @param number the number in K
     * @return the figure
     */
    public static Amount kelvin(double number) {
        return of(number, "K", QuantityKind.TEMPERATURE);
    }

    /**
     * Quantity in kilograms.
     *
     * @param number the number in kg
     * @return the figure
     */
    public static Amount kg(double number) {
        return of(number, "kg", QuantityKind.MASS);
    }

    /**
     * Quantity in pounds avoirdupois.
     *
     * @param number the number in lb
     * @return the figure
     */
    public static Amount lb(double number) {
        return of(number, "lb", QuantityKind.MASS);
    }

    /**
     * Quantity in kilograms per second.
     *
     * @param number the number in kg/s
     * @return the figure
     */
    public static Amount kgPerSecond(double number) {
        return of(number, "kg/s", QuantityKind.MASS_FLOW);
    }

    /**
     * Quantity in grams per second.
     *
     * @param number the number in g/s
     * @return the figure
     */
    public static Amount gramsPerSecond(double number) {
        return of(number, "g/s", QuantityKind.MASS_FLOW);
    }

    /**
     * Quantity in pounds per minute.
     *
     * @param number the number in lb/min
     * @return the figure
     */
    public static Amount lbPerMin(double number) {
        return of(number, "lb/min", QuantityKind.MASS_FLOW);
    }

    /**
     * Quantity in litres.
     *
     * @param number the number in L
     * @return the figure
     */
    public static Amount litres(double number) {
        return of(number, "L", QuantityKind.VOLUME);
    }

    /**
     * Quantity in cubic centimetres per minute.
     *
     * @param number the number in cc/min
     * @return the figure
     */
    public static Amount ccPerMin(double number) {
        return of(number, "cc/min", QuantityKind.VOLUME_FLOW);
    }

    /**
     * Quantity in per cent.
     *
     * @param number the number in %
     * @return the figure
     */
    public static Amount percent(double number) {
        return of(number, "%", QuantityKind.FRACTION);
    }

    /**
     * Quantity in revolutions per minute.
     *
     * @param number the number in rpm
     * @return the figure
     */
    public static Amount rpm(double number) {
        return of(number, "rpm", QuantityKind.ROTATION);
    }

    /**
     * Quantity in seconds.
     *
     * @param number the number in s
     * @return the figure
     */
    public static Amount seconds(double number) {
        return of(number, "s", QuantityKind.TIME);
    }

    /**
     * Quantity in volts.
     *
     * @param number the number in V
     * @return the figure
     */
    public static Amount volts(double number) {
        return of(number, "V", QuantityKind.VOLTAGE);
    }

    /**
     * Quantity in amperes.
     *
     * @param number the number in A
     * @return the figure
     */
    public static Amount amps(double number) {
        return of(number, "A", QuantityKind.CURRENT);
    }

    /**
     * A pressure in pounds-force per square inch that does not say its zero yet; go on with {@code gauge()}, {@code abs()} or {@code difference()}.
     *
     * @param number the number in psi
     * @return the pressure
     */
    public static StatedPressure psi(double number) {
        return new StatedPressure(pascals(number, "psi"));
    }

    /**
     * Gauge pressure in pounds-force per square inch, at the standard atmosphere of 101 325 Pa.
     *
     * @param number the reading in psi
     * @return the gauge pressure
     */
    public static GaugePressure psiGauge(double number) {
        return psi(number).gauge();
    }

    /**
     * Gauge pressure in pounds-force per square inch.
     *
     * @param number the reading in psi
     * @param ambient the pressure around the gauge
     * @return the gauge pressure
     */
    public static GaugePressure psiGauge(double number, AbsolutePressure ambient) {
        return psi(number).gauge(ambient);
    }

    /**
     * Absolute pressure in pounds-force per square inch.
     *
     * @param number the number in psi
     * @return the absolute pressure
     */
    public static AbsolutePressure psiAbs(double number) {
        return psi(number).abs();
    }

    /**
     * A pressure in bar that does not say its zero yet; go on with {@code gauge()}, {@code abs()} or {@code difference()}.
     *
     * @param number the number in bar
     * @return the pressure
     */
    public static StatedPressure bar(double number) {
        return new StatedPressure(pascals(number, "bar"));
    }

    /**
     * Gauge pressure in bar, at the standard atmosphere of 101 325 Pa.
     *
     * @param number the reading in bar
     * @return the gauge pressure
     */
    public static GaugePressure barGauge(double number) {
        return bar(number).gauge();
    }

    /**
     * Gauge pressure in bar.
     *
     * @param number the reading in bar
     * @param ambient the pressure around the gauge
     * @return the gauge pressure
     */
    public static GaugePressure barGauge(double number, AbsolutePressure ambient) {
        return bar(number).gauge(ambient);
    }

    /**
     * Absolute pressure in bar.
     *
     * @param number the number in bar
     * @return the absolute pressure
     */
    public static AbsolutePressure barAbs(double number) {
        return bar(number).abs();
    }

    private static Amount of(double number, String unit, QuantityKind kind) {
        return new Amount(kind, UnitTable.get().find(unit).toSi(number));
    }

    private static double pascals(double number, String unit) {
        return UnitTable.get().find(unit).toSi(number);
    }
}
