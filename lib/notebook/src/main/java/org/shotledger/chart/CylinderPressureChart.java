package org.shotledger.chart;

import org.shotledger.limits.Side;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Cylinder pressure over crank angle, without and with nitrous oxide.
 *
 * @param angle crank angle after top dead centre of firing, degrees, increasing
 * @param boost pressure on boost alone, Pa absolute
 * @param together pressure with nitrous oxide, Pa absolute
 * @param allowed greatest pressure the builder allows, Pa absolute
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record CylinderPressureChart(double[] angle, double[] boost, double[] together, double allowed) {

    /**
     * Draws both curves under the limit.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        QuantityKind kind = QuantityKind.ABSOLUTE_PRESSURE;
        int peak = 0;
        for (int i = 0; i < together.length; i++) {
            peak = together[i] > together[peak] ? i : peak;
        }
        String alt = "With nitrous oxide the pressure peaks at " + kind.text(together[peak], system) + ", "
                + QuantityKind.CRANK_ANGLE.text(angle[peak], system) + " after top dead centre; allowed: "
                + kind.text(allowed, system) + ".";
        Plot plot = Plot.of(
                "cylinder-pressure",
                "Pressure in the cylinder",
                alt,
                new Scale("Crank angle after top dead centre", QuantityKind.CRANK_ANGLE, system),
                new Scale("Cylinder pressure", kind, system));
        plot.reach(Double.NaN, 0);
        plot.line("boost alone", angle, boost);
        plot.line("boost and nitrous oxide", angle, together);
        return plot.limit("at most " + kind.text(allowed, system), allowed, Side.AT_MOST)
                .strongLabel(kind.text(together[peak], system), angle[peak], together[peak])
                .picture();
    }
}
