package org.shotledger.causes;

import java.util.Locale;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** What can make a log differ from the setup that was run. */
public enum Cause {
    /** The nitrous fuel jets flow otherwise than planned. */
    FUEL_JETS(
            "nitrous fuel jets or their coefficient",
            Size.FLOW,
            "measure the fuel jets with a pin gauge and weigh what they pass at the set pressure"),
    /** Something between gauge and fuel jets lets less through. */
    FUEL_RESTRICTED(
            "fuel solenoid not fully open, or dirt behind the fuel gauge",
            Size.CLOSED,
            "read the nitrous fuel pressure behind the solenoid with the nitrous on"),
    /** The nitrous jets flow otherwise than planned. */
    NITROUS_JETS(
            "nitrous jets or their coefficient",
            Size.FLOW,
            "measure the nitrous jets with a pin gauge, then weigh the bottle before and after a timed pass"),
    /** The nitrous solenoid does not open fully. */
    NITROUS_SOLENOID(
            "nitrous solenoid not fully open",
            Size.CLOSED,
            "read the nitrous pressure before and behind the solenoid with the nitrous on, and its voltage and"
                    + " current"),
    /** The nitrous filter is blocked. */
    NITROUS_FILTER(
            "nitrous filter blocked",
            Size.CLOSED,
            "take the nitrous filter out and look, or read the pressure on both sides of it with the nitrous on"),
    /** The nitrous fuel regulator holds another pressure. */
    NITROUS_FUEL_PRESSURE(
            "pressure setting of the nitrous fuel regulator",
            Size.PRESSURE,
            "read the nitrous fuel pressure with a second gauge while fuel flows"),
    /** The nitrous fuel regulator does not follow the boost. */
    NITROUS_FUEL_REFERENCE(
            "boost reference of the nitrous fuel regulator",
            Size.LOST,
            "put air pressure on the hose of the nitrous fuel regulator and watch the fuel pressure follow"),
    /** The nitrous fuel pump cannot follow. */
    NITROUS_FUEL_PUMP(
            "nitrous fuel pump weak or short of voltage",
            Size.VOLTS_LOST,
            "read the voltage at the nitrous fuel pump's plug while fuel flows"),
    /** The main fuel pumps cannot follow both fuels. */
    MAIN_FUEL_PUMP(
            "main fuel pumps weak or short of voltage for both fuels",
            Size.VOLTS_LOST,
            "read the voltage at the main fuel pumps' plugs and the rail pressure with the nitrous on"),
    /** The supply voltage differs. */
    SUPPLY_VOLTAGE("supply voltage", Size.VOLTS, "read the voltage at the battery in the pull with a meter"),
    /** The main fuel pressure differs by its setting or its pump. */
    MAIN_FUEL_PRESSURE(
            "pressure of the main fuel: regulator setting or pump",
            Size.PRESSURE,
            "read the main fuel pressure with a second gauge in the pull"),
    /** The main regulator does not follow the boost. */
    MAIN_FUEL_REFERENCE(
            "boost reference of the main fuel regulator",
            Size.LOST,
            "put air pressure on the hose of the main fuel regulator and watch the fuel pressure follow"),
    /** The main injectors pass other fuel than their table says. */
    MAIN_FUEL(
            "main injectors or their table",
            Size.FLOW,
            "have the main injectors flow-tested, or weigh what they pass in a timed run"),
    /** The fuel in the tank is another. */
    FUEL_CONTENT("ethanol content of the fuel", Size.SHARE, "draw a fuel sample and measure its ethanol content"),
    /** The bottle is colder or warmer than planned. */
    BOTTLE(
            "bottle colder or warmer than planned, and its pressure with it",
            Size.TEMPERATURE,
            "read the bottle's temperature with a probe under its blanket and its pressure with a second gauge"),
    /** The bottle gauge is off. */
    BOTTLE_GAUGE(
            "bottle pressure gauge",
            Size.PRESSURE,
            "read the bottle pressure with a second gauge, and zero on open air"),
    /** The lambda sensor reads wrong. */
    LAMBDA_SENSOR("lambda sensor", Size.READING, "read the lambda sensor in free air, then with a second sensor"),
    /** The boost differs from what was set. */
    BOOST("boost", Size.PRESSURE, "read the boost with a second gauge"),
    /** The manifold pressure sensor is off. */
    MANIFOLD_GAUGE(
            "manifold pressure sensor",
            Size.PRESSURE,
            "with the engine off, hold the manifold pressure sensor against a barometer"),
    /** The engine breathes otherwise. */
    BREATHING("breathing of the engine", Size.FLOW, "log injector duty or air flow over a pull without nitrous"),
    /** The engine makes other work of its heat. */
    ENGINE_WORK(
            "spark, or work of the engine", Size.WORK, "check the ignition timing with a lamp and log it in the pull"),
    /** Nitrous adds other work than assumed. */
    NITROUS_WORK(
            "work that the nitrous adds for its flow",
            Size.WORK,
            "two pulls at the same boost, with the nitrous and without, and the bottle weighed"),
    /** The dynamometer reads wrong. */
    POWER_READING("power reading", Size.READING, "repeat a known pull without nitrous on the same dynamometer"),
    /** The gauge of the main fuel is off. */
    RAIL_GAUGE("gauge of the main fuel pressure", Size.PRESSURE, "read the main fuel pressure with a second gauge"),
    /** The gauge of the nitrous fuel is off. */
    NITROUS_FUEL_GAUGE(
            "gauge of the nitrous fuel pressure", Size.PRESSURE, "read the nitrous fuel pressure with a second gauge");

    /** What the size of a cause is. */
    private enum Size {
        FLOW,
        CLOSED,
        LOST,
        PRESSURE,
        TEMPERATURE,
        VOLTS,
        VOLTS_LOST,
        READING,
        WORK,
        SHARE
    }

    private final String words;
    private final Size size;
    private final String measurement;

    Cause(String words, Size size, String measurement) {
        this.words = words;
        this.size = size;
        this.measurement = measurement;
    }

    /**
     * In words.
     *
     * @return for example {@code "lambda sensor"}
     */
    public String words() {
        return words;
    }

    /**
     * What would tell it from other causes.
     *
     * @return a measurement, as something to do
     */
    public String measurement() {
        return measurement;
    }

    /**
     * A size with its band.
     *
     * @param value the size: a share for flows, readings, work and content, what is closed or lost of 1, Pa, K or V
     * @param half half of the band, in the same unit
     * @param system the units
     * @return for example {@code "passes 0.92 +/- 0.02 times what was planned"}
     */
    String size(double value, double half, UnitSystem system) {
        return switch (size) {
            case FLOW -> factor("passes", value, half, "what was planned");
            case WORK -> factor("gives", value, half, "what was planned");
            case READING -> factor("reads", value, half, "the truth");
            case CLOSED -> percent(value, half) + " of its opening closed";
            case LOST -> percent(value, half) + " of it lost";
            case SHARE ->
                String.format(
                        Locale.ROOT,
                        "%.0f +/- %.0f percentage points %s",
                        Math.abs(100 * value),
                        100 * half,
                        value < 0 ? "less" : "more");
            case PRESSURE -> difference(QuantityKind.PRESSURE_DIFFERENCE, value, half, system, "higher", "lower");
            case TEMPERATURE ->
                degrees(Math.abs(value), system) + " +/- " + degrees(half, system)
                        + (value < 0 ? " colder" : " warmer");
            case VOLTS -> difference(QuantityKind.VOLTAGE, value, half, system, "higher", "lower");
            case VOLTS_LOST -> difference(QuantityKind.VOLTAGE, -value, half, system, "more", "short at the pump");
        };
    }

    /**
     * Half a band alone.
     *
     * @param half in the unit of the size
     * @param system the units
     * @return for example {@code "+/- 0.020"}
     */
    String halfText(double half, UnitSystem system) {
        return "+/- "
                + switch (size) {
                    case FLOW, WORK, READING -> String.format(Locale.ROOT, "%.3f", half);
                    case CLOSED, LOST, SHARE -> String.format(Locale.ROOT, "%.0f %%", 100 * half);
                    case PRESSURE -> QuantityKind.PRESSURE_DIFFERENCE.text(half, system);
                    case TEMPERATURE -> degrees(half, system);
                    case VOLTS, VOLTS_LOST -> QuantityKind.VOLTAGE.text(half, system);
                };
    }

    private static String degrees(double kelvin, UnitSystem system) {
        return system == UnitSystem.US
                ? String.format(Locale.ROOT, "%.1f degF", 1.8 * kelvin)
                : String.format(Locale.ROOT, "%.1f K", kelvin);
    }

    private static String factor(String verb, double value, double half, String of) {
        return String.format(Locale.ROOT, "%s %.3f +/- %.3f times %s", verb, 1 + value, half, of);
    }

    private static String percent(double value, double half) {
        return String.format(Locale.ROOT, "%.0f +/- %.0f %%", 100 * value, 100 * half);
    }

    private static String difference(
            QuantityKind kind, double value, double half, UnitSystem system, String above, String below) {
        return kind.text(Math.abs(value), system) + " +/- " + kind.text(half, system) + " "
                + (value < 0 ? below : above);
    }
}
