package org.shotledger.chart;

import org.shotledger.limits.Side;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * The whole proposal in one picture: power on boost alone and with nitrous oxide, the boost that goes with it on the right axis, and
 * what bounds both.
 *
 * @param power the power, with what was asked for
 * @param torque wheel power at which the crankshaft would carry all it may, over the speeds of {@code boost}
 * @param boost boost armed over engine speed, Pa gauge in the place of the power
 * @param from nitrous may open from this engine speed, rev/min; not-a-number when none is used
 * @param to nitrous closes at this engine speed, rev/min; not-a-number when none is used
 */
public record BudgetChart(PowerChart power, PowerChart.Curve torque, PowerChart.Curve boost, double from, double to) {

    /**
     * Draws it.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        Plot plot = Plot.of(
                        "budget",
                        "What is proposed",
                        power.alt(system),
                        new Scale("Engine speed", QuantityKind.ROTATION, system),
                        new Scale("Wheel power", QuantityKind.POWER, system))
                .height(power.height())
                .untitled()
                .reach(Double.NaN, 0);
        plot.line("boost alone", power.alone().rpm(), power.alone().power());
        if (!power.nitrous().isEmpty()) {
            plot.total("with nitrous", power.nitrous().rpm(), power.nitrous().power());
        }
        plot.line("torque limit", torque.rpm(), torque.power());
        plot.rightAxis(new Scale("Boost", QuantityKind.GAUGE_PRESSURE, system));
        plot.rightLine("boost, armed (right)", boost.rpm(), boost.power());
        if (Double.isFinite(power.target())) {
            plot.mark("asked for: " + QuantityKind.POWER.text(power.target(), system), power.target());
        }
        if (!power.nitrous().isEmpty()) {
            plot.limitAt("may open", from, Side.AT_LEAST);
            plot.limitAt("closes", to, Side.AT_MOST);
        }
        return plot.picture();
    }
}
