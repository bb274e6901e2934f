package org.shotledger.units;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The units that are read.
 *
 * <p>Exact by definition: inch 25.4 mm, pound 0.453 592 37 kg (international yard and pound, 1959), standard gravity
 * 9.806 65 m/s2, US gallon 231 in3, imperial gallon 4.546 09 L, Btu of the International Table. Mercury and water
 * columns are the conventional ones of NIST SP 811 (2008), appendix B. Horsepower is 550 ft lbf/s; the metric one
 * (75 kgf m/s) is written PS.
 */
final class UnitTable {
    private static final double CUBIC_INCH = UnitFactors.INCH * UnitFactors.INCH * UnitFactors.INCH;
    private static final double CUBIC_FOOT = UnitFactors.FOOT * UnitFactors.FOOT * UnitFactors.FOOT;
    private static final double IMPERIAL_GALLON = 4.54609e-3;
    private static final double BTU = 1055.05585262;

    private final Map<String, UnitName> bySpelling = new LinkedHashMap<>();
    private final List<UnitName> all = new ArrayList<>();

    private static final class Holder {
        static final UnitTable TABLE = new UnitTable();
    }

    static UnitTable get() {
        return Holder.TABLE;
    }

    private UnitTable() {
        numbers();
        pressures();
        temperatures();
        mechanics();
        lengths();
        masses();
        volumes();
        flows();
        motion();
        electrics();
    }

    UnitName find(String spelling) {
        return bySpelling.get(spelling);
    }

    List<UnitName> of(Dimension dimension) {
        return all.stream().filter(unit -> unit.dimension() == dimension).toList();
    }

    List<UnitName> all() {
        return all;
    }

    private void numbers() {
        add("%", Dimension.NUMBER, 0.01, "percent", "pct");
        add("", Dimension.NUMBER, 1);
    }

    private void pressures() {
        Dimension d = Dimension.PRESSURE;
        add("bar", d, 1e5);
        add("mbar", d, 100);
        add("Pa", d, 1);
        add("hPa", d, 100);
        add("kPa", d, 1e3);
        add("MPa", d, 1e6);
        add("psi", d, UnitFactors.POUND_FORCE / (UnitFactors.INCH * UnitFactors.INCH), "PSI", "lbf/in2");
        add("atm", d, UnitFactors.ATMOSPHERE);
        add("inHg", d, UnitFactors.INCH_OF_MERCURY, "in Hg");
        add("mmHg", d, 133.3224, "mm Hg");
        add("inH2O", d, 249.0889, "in H2O");
        add("kgf/cm2", d, UnitFactors.GRAVITY * 1e4);
    }

    private void temperatures() {
        Dimension d = Dimension.TEMPERATURE;
        add("K", d, 1);
        add(new UnitName("degC", d, 1, UnitFactors.ICE_POINT, List.of("C", "deg C")));
        add(new UnitName("degF", d, 1 / 1.8, UnitFactors.FAHRENHEIT_OFFSET / 1.8, List.of("F", "deg F")));
        add("degR", d, 1 / 1.8, "deg R");
    }

    private void mechanics() {
        add("W", Dimension.POWER, 1);
        add("kW", Dimension.POWER, 1e3);
        add("hp", Dimension.POWER, 550 * UnitFactors.FOOT * UnitFactors.POUND_FORCE, "HP");
        add("PS", Dimension.POWER, 75 * UnitFactors.GRAVITY, "metric hp");
        add("N m", Dimension.TORQUE, 1, "Nm", "N.m");
        add(
                "lbf ft",
                Dimension.TORQUE,
                UnitFactors.FOOT * UnitFactors.POUND_FORCE,
                "lb ft",
                "ft lbf",
                "ft lb",
                "lb-ft",
                "ft-lb",
                "lbf-ft",
                "ft-lbf");
        add(
                "lbf in",
                Dimension.TORQUE,
                UnitFactors.INCH * UnitFactors.POUND_FORCE,
                "lb in",
                "in lbf",
                "in lb",
                "in-lb",
                "lb-in");
        add("kgf m", Dimension.TORQUE, UnitFactors.GRAVITY);
        add("J", Dimension.ENERGY, 1);
        add("kJ", Dimension.ENERGY, 1e3);
        add("MJ", Dimension.ENERGY, 1e6);
        add("Btu", Dimension.ENERGY, BTU, "BTU");
        add("kWh", Dimension.ENERGY, 3.6e6, "kW h");
        add("J/kg", Dimension.SPECIFIC_ENERGY, 1);
        add("kJ/kg", Dimension.SPECIFIC_ENERGY, 1e3);
        add("MJ/kg", Dimension.SPECIFIC_ENERGY, 1e6);
        add("Btu/lb", Dimension.SPECIFIC_ENERGY, BTU / UnitFactors.POUND, "BTU/lb");
        add("J/(kg K)", Dimension.SPECIFIC_HEAT, 1, "J/kg/K", "J/kg K");
        add("kJ/(kg K)", Dimension.SPECIFIC_HEAT, 1e3, "kJ/kg/K", "kJ/kg K");
        add("kg m2", Dimension.INERTIA, 1);
        add("g cm2", Dimension.INERTIA, 1e-7);
        add("lb ft2", Dimension.INERTIA, UnitFactors.POUND * UnitFactors.FOOT * UnitFactors.FOOT);
    }

    private void lengths() {
        Dimension d = Dimension.LENGTH;
        add("mm", d, 1e-3);
        add("in", d, UnitFactors.INCH, "inch", "inches", "\"");
        add("thou", d, UnitFactors.INCH / 1000);
        add("m", d, 1);
        add("ft", d, UnitFactors.FOOT, "feet", "foot");
        add("cm", d, 1e-2);
        add("um", d, 1e-6, "µm", "μm");
        add("km", d, 1e3);
        add("mi", d, 5280 * UnitFactors.FOOT, "mile", "miles");
        add("m2", Dimension.AREA, 1);
        add("mm2", Dimension.AREA, 1e-6);
        add("cm2", Dimension.AREA, 1e-4);
        add("in2", Dimension.AREA, UnitFactors.INCH * UnitFactors.INCH, "sq in");
        add("ft2", Dimension.AREA, UnitFactors.FOOT * UnitFactors.FOOT, "sq ft");
    }

    private void masses() {
        add("kg", Dimension.MASS, 1);
        add("lb", Dimension.MASS, UnitFactors.POUND, "lbs", "lbm", "pounds");
        add("g", Dimension.MASS, 1e-3);
        add("mg", Dimension.MASS, 1e-6);
        add("oz avdp", Dimension.MASS, UnitFactors.POUND / 16);
        add("kg/m3", Dimension.DENSITY, 1);
        add("kg/L", Dimension.DENSITY, 1e3, "kg/l");
        add("g/cm3", Dimension.DENSITY, 1e3, "g/cc", "g/mL", "g/ml");
        add("lb/ft3", Dimension.DENSITY, UnitFactors.POUND / CUBIC_FOOT);
        add("lb/US gal", Dimension.DENSITY, UnitFactors.POUND / UnitFactors.US_GALLON);
    }

    private void volumes() {
        Dimension d = Dimension.VOLUME;
        add("L", d, 1e-3, "l", "litre", "litres", "liter", "liters");
        add("cc", d, 1e-6);
        add("mL", d, 1e-6, "ml");
        add("cm3", d, 1e-6);
        add("m3", d, 1);
        add("in3", d, CUBIC_INCH, "cu in");
        add("ft3", d, CUBIC_FOOT, "cu ft");
        add("US gal", d, UnitFactors.US_GALLON);
        add("imp gal", d, IMPERIAL_GALLON);
        add("US fl oz", d, UnitFactors.US_GALLON / 128);
        add("imp fl oz", d, IMPERIAL_GALLON / 160);
    }

    /** Every mass and volume over second, minute and hour. */
    private void flows() {
        for (String mass : List.of("kg", "g", "lb")) {
            perTime(mass, Dimension.MASS_FLOW);
        }
        for (String volume : List.of("cc", "L", "mL", "cm3", "m3", "in3", "ft3", "US gal", "imp gal")) {
            perTime(volume, Dimension.VOLUME_FLOW);
        }
    }

    private void perTime(String unit, Dimension dimension) {
        UnitName amount = bySpelling.get(unit);
        List<String> starts = new ArrayList<>(amount.spellings());
        starts.add(0, amount.name());
        perTime(amount, starts, dimension, List.of("s", "sec"), 1);
        perTime(amount, starts, dimension, List.of("min"), 60);
        perTime(amount, starts, dimension, List.of("h", "hr", "hour"), 3600);
    }

    private void perTime(UnitName amount, List<String> starts, Dimension dimension, List<String> ends, double seconds) {
        List<String> spellings = new ArrayList<>();
        for (String start : starts) {
            for (String end : ends) {
                spellings.add(start + "/" + end);
            }
        }
        String name = spellings.remove(0);
        add(new UnitName(name, dimension, amount.factor() / seconds, 0, spellings));
    }

    private void motion() {
        add("rpm", Dimension.ROTATION, 1, "RPM", "rev/min", "1/min", "r/min");
        add("m/s", Dimension.SPEED, 1);
        add("km/h", Dimension.SPEED, 1 / 3.6, "kph");
        add("mph", Dimension.SPEED, 5280 * UnitFactors.FOOT / 3600, "mi/h");
        add("ft/s", Dimension.SPEED, UnitFactors.FOOT);
        add("s", Dimension.TIME, 1, "sec", "seconds");
        add("ms", Dimension.TIME, 1e-3);
        add("us", Dimension.TIME, 1e-6, "µs", "μs");
        add("min", Dimension.TIME, 60, "minutes");
        add("h", Dimension.TIME, 3600, "hr", "hours");
        add("deg", Dimension.ANGLE, 1, "degrees", "deg crank", "degCA");
    }

    private void electrics() {
        add("V", Dimension.VOLTAGE, 1, "volt", "volts");
        add("mV", Dimension.VOLTAGE, 1e-3);
        add("A", Dimension.CURRENT, 1, "amp", "amps");
        add("mA", Dimension.CURRENT, 1e-3);
        add("ohm", Dimension.RESISTANCE, 1, "ohms", "Ω", "Ω");
        add("mohm", Dimension.RESISTANCE, 1e-3, "milliohm", "mΩ");
        add("kohm", Dimension.RESISTANCE, 1e3, "kΩ");
        add("A h", Dimension.CHARGE, 3600, "Ah");
        add("Hz", Dimension.FREQUENCY, 1, "hertz");
        add("kHz", Dimension.FREQUENCY, 1e3);
    }

    private void add(String name, Dimension dimension, double factor, String... spellings) {
        add(new UnitName(name, dimension, factor, 0, List.of(spellings)));
    }

    private void add(UnitName unit) {
        all.add(unit);
        bySpelling.put(unit.name(), unit);
        unit.spellings().forEach(spelling -> bySpelling.put(spelling, unit));
    }
}
