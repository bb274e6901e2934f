package org.shotledger.chart;

import org.shotledger.display.Units;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * One axis of a chart: what it measures and in which units it is shown.
 *
 * @param name what is measured, for example {@code "Wheel power"}
 * @param kind the kind of quantity
 * @param system the unit system of the numbers along it
 */
public record Scale(String name, QuantityKind kind, UnitSystem system) {

    /**
     * The axis title with its unit.
     *
     * @return for example {@code "Wheel power, hp"}; the name alone for a pure number
     */
    public String title() {
        String unit = unit();
        return unit.isEmpty() ? name : name + ", " + unit;
    }

    /**
     * The unit as it is printed on an axis.
     *
     * @return for example {@code "\u00b0F"}; empty for a pure number
     */
    public String unit() {
        String unit = kind.unit(system);
        return unit.equals("deg") ? "\u00b0 crank" : Units.printed(unit);
    }

    /**
     * Converts values to the numbers along this axis.
     *
     * @param si values in the coherent SI unit
     * @return the numbers shown
     */
    public double[] shown(double[] si) {
        double[] out = new double[si.length];
        for (int i = 0; i < si.length; i++) {
            out[i] = kind.shown(si[i], system);
        }
        return out;
    }

    /**
     * Converts one value to the number along this axis.
     *
     * @param si the value in the coherent SI unit
     * @return the number shown
     */
    public double shown(double si) {
        return kind.shown(si, system);
    }
}
