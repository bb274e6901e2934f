package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;

/**
 * A sensor that is a resistance to ground below a pull-up, known by a table; {@code U = U_s R/(R + R_p)}.
 *
 * <p>Between the points of a temperature {@code ln R} is taken as straight over {@code 1/T}, as a thermistor's is between near points
 * (IEC 60539-1); of anything else {@code R} as straight over the value.
 *
 * @param name what it is called
 * @param kind what it measures
 * @param values of the table, rising, SI, at least two
 * @param ohms resistance at each, ohm, all rising or all falling
 * @param pullUp pull-up resistor, ohm
 * @param supply voltage above the resistor, V
 */
public record ResistanceSensor(
        String name, QuantityKind kind, List<Double> values, List<Double> ohms, double pullUp, double supply)
        implements PulledUpSensor {

    public ResistanceSensor {
        Require.named("sensor", name);
        Require.given("kind of " + name, kind);
        values = List.copyOf(values);
        ohms = List.copyOf(ohms);
        Require.within("pull-up of " + name, pullUp, 10, 1e6, "ohm");
        Require.within("supply of " + name, supply, 1, 30, "V");
        if (values.size() < 2 || values.size() != ohms.size()) {
            throw new IllegalArgumentException("The table of " + name + " has " + values.size() + " values and "
                    + ohms.size() + " resistances; give as many of both, two at least.");
        }
        boolean rising = ohms.get(1) > ohms.get(0);
        for (int i = 0; i < ohms.size(); i++) {
            Require.positive("resistance " + (i + 1) + " of " + name, ohms.get(i), "ohm");
            if (i > 0 && (values.get(i) <= values.get(i - 1) || !goesOn(ohms.get(i - 1), ohms.get(i), rising))) {
                throw new IllegalArgumentException(
                        "The table of " + name + ", point " + (i + 1) + ", is " + values.get(i)
                                + " and " + ohms.get(i)
                                + " ohm; values must rise and resistances go one way throughout: check that point.");
            }
        }
    }

    private static boolean goesOn(double from, double to, boolean rising) {
        return rising ? to > from : to < from;
    }

    @Override
    public double low() {
        return values.get(0);
    }

    @Override
    public double high() {
        return values.get(values.size() - 1);
    }

    /**
     * Resistance at a value.
     *
     * @param value SI, inside the table; beyond it the last stretch goes on
     * @return ohm
     */
    @Override
    public double resistance(double value) {
        int i = 1;
        while (i < values.size() - 1 && value > values.get(i)) {
            i++;
        }
        double a = values.get(i - 1);
        double b = values.get(i);
        if (kind != QuantityKind.TEMPERATURE) {
            return ohms.get(i - 1) + (ohms.get(i) - ohms.get(i - 1)) * (value - a) / (b - a);
        }
        double share = (1 / value - 1 / a) / (1 / b - 1 / a);
        return ohms.get(i - 1) * Math.pow(ohms.get(i) / ohms.get(i - 1), share);
    }

    @Override
    public String law() {
        return kind == QuantityKind.TEMPERATURE
                ? "a table, ln R straight over 1/T between its points (as IEC 60539-1 defines B)"
                : "a table, straight between its points";
    }

    @Override
    public String faults() {
        return "A broken wire reads the full supply, as the greatest resistance would; a short circuit reads zero.";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                new Check("at the first point of the table", low(), output(low())),
                new Check("at the last point of the table", high(), output(high())));
    }
}
