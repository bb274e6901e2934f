package org.shotledger.chart;

import org.shotledger.limits.Side;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Bottle pressure and power over a pass.
 *
 * @param title what is shown, for example {@code "The bottle and the power over a pass"}
 * @param time time since the nitrous oxide was opened, s, increasing
 * @param bottlePressure pressure in the bottle, Pa absolute
 * @param power power at the wheels, W
 * @param leastPressure bottle pressure below which the jets no longer hold the mixture, Pa absolute; not-a-number when
 *     none is set
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record PassChart(String title, double[] time, double[] bottlePressure, double[] power, double leastPressure) {

    /**
     * Draws the pressure on the left axis and the power on the right one.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        return picture(system, XySheet.WIDTH);
    }

    /**
     * The same in another width.
     *
     * @param system the units shown
     * @param width width of the drawing, pixels
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system, int width) {
        int last = time.length - 1;
        QuantityKind pressure = QuantityKind.ABSOLUTE_PRESSURE;
        String alt = "The bottle falls from " + pressure.text(bottlePressure[0], system) + " to "
                + pressure.text(bottlePressure[last], system) + " in " + QuantityKind.TIME.text(time[last], system)
                + ", the power from "
                + QuantityKind.POWER.text(power[0], system) + " to " + QuantityKind.POWER.text(power[last], system)
                + ".";
        Plot plot = Plot.of(
                "pass-trace",
                title,
                alt,
                new Scale("Time since opening", QuantityKind.TIME, system),
                new Scale("Bottle pressure", pressure, system));
        plot.rightAxis(new Scale("Power at the wheels", QuantityKind.POWER, system));
        plot.line("bottle pressure (left)", time, bottlePressure);
        plot.rightLine("power at the wheels (right)", time, power);
        if (Double.isFinite(leastPressure)) {
            plot.limit("bottle at least " + pressure.text(leastPressure, system), leastPressure, Side.AT_LEAST);
        }
        return plot.width(width).picture();
    }
}
