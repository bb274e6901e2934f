package org.shotledger.supply;

import java.util.Comparator;
import java.util.List;
import org.shotledger.curve.Curve;
import org.shotledger.units.Require;

/**
 * An electric fuel pump from its measured lines of flow over pressure, one for each voltage.
 *
 * @param name what it is called
 * @param lines at least one, any order; sorted by voltage
 */
public record Pump(String name, List<Line> lines) {
    /**
     * Flow and current at one voltage.
     *
     * @param voltage at the pump's terminals, V, 5 to 30
     * @param flow volume flow over pressure rise, m3/s over Pa, never rising with pressure
     * @param current current over pressure rise, A over Pa
     */
    public record Line(double voltage, Curve flow, Curve current) {
        public Line {
            Require.within("voltage of a pump line", voltage, 5, 30, "V");
            Require.given("flow of a pump line", flow);
            Require.given("current of a pump line", current);
            double[] values = flow.ordinates();
            for (int i = 0; i < values.length; i++) {
                Require.within(flow.name(), values[i], 0, i == 0 ? 0.01 : values[i - 1], "m3/s");
            }
        }
    }

    public Pump {
        Require.named("pump", name);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("The pump " + name + " has no line of flow over pressure; give one.");
        }
        lines = lines.stream().sorted(Comparator.comparingDouble(Line::voltage)).toList();
        for (int i = 1; i < lines.size(); i++) {
            if (lines.get(i).voltage() == lines.get(i - 1).voltage()) {
                throw new IllegalArgumentException(
                        "The pump " + name + " has two lines at " + lines.get(i).voltage() + " V; give each once.");
            }
        }
    }

    /**
     * Flow, linear between the voltage lines.
     *
     * @param rise pressure rise over the pump, Pa, inside the tables
     * @param voltage at its terminals, V, inside the lines
     * @return m3/s
     * @throws IllegalArgumentException outside: a pump's curve is not extrapolated
     */
    public double flow(double rise, double voltage) {
        int i = below(voltage);
        double low = lines.get(i).flow().at(inside(lines.get(i).flow(), rise));
        return i == lines.size() - 1
                ? low
                : low + share(i, voltage) * (lines.get(i + 1).flow().at(rise) - low);
    }

    /**
     * Current drawn, linear between the voltage lines.
     *
     * @param rise pressure rise over the pump, Pa
     * @param voltage at its terminals, V
     * @return A
     */
    public double current(double rise, double voltage) {
        int i = below(voltage);
        double low = lines.get(i).current().at(inside(lines.get(i).current(), rise));
        return i == lines.size() - 1
                ? low
                : low + share(i, voltage) * (lines.get(i + 1).current().at(rise) - low);
    }

    private double inside(Curve line, double rise) {
        if (!(rise >= line.low() && rise <= line.high())) {
            throw new IllegalArgumentException("The pump " + name + " would have to push against "
                    + Require.shown(rise * 1e-5) + " bar; its table goes from " + Require.shown(line.low() * 1e-5)
                    + " to " + Require.shown(line.high() * 1e-5)
                    + " bar. Check the pressure of the regulator, or extend the table.");
        }
        return rise;
    }

    /**
     * The lowest voltage of the tables.
     *
     * @return V
     */
    public double lowestVoltage() {
        return lines.get(0).voltage();
    }

    /**
     * The highest voltage of the tables.
     *
     * @return V
     */
    public double highestVoltage() {
        return lines.get(lines.size() - 1).voltage();
    }

    private int below(double voltage) {
        if (!(voltage >= lowestVoltage() && voltage <= highestVoltage())) {
            throw new IllegalArgumentException("The voltage at the pump " + name + " is " + Require.shown(voltage)
                    + " V; its table goes from " + Require.shown(lowestVoltage()) + " to "
                    + Require.shown(highestVoltage())
                    + " V. Check the supply voltage and the resistance of the pump's wiring, or extend the table.");
        }
        int i = lines.size() - 1;
        while (lines.get(i).voltage() > voltage) {
            i--;
        }
        return i;
    }

    private double share(int i, double voltage) {
        double low = lines.get(i).voltage();
        return (voltage - low) / (lines.get(i + 1).voltage() - low);
    }
}
