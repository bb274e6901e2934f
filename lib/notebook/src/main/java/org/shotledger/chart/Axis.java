package org.shotledger.chart;

import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * One axis of a chart: what it measures and in which units it is shown.
 *
 * @param name what is measured, for example {@code "Wheel power"}
 * @param kind the kind of quantity
 * @param system the unit system of the numbers along it
 */
public record Axis(String name, QuantityKind kind, UnitSystem system) {

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
        return switch (kind.unit(system)) {
            case "degC" -> "\u00b0C";
            case "degF" -> "\u00b0F";
            case "deg" -> "\u00b0 crank";
            case "kg/m3" -> "kg/m\u00b3";
            case "lb/ft3" -> "lb/ft\u00b3";
            case "in3" -> "in\u00b3";
            case "N m" -> "N\u00b7m";
            case "lbf ft" -> "lbf\u00b7ft";
            default -> kind.unit(system);
        };
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
