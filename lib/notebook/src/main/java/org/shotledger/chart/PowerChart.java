package org.shotledger.chart;

import java.util.Arrays;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Power at the wheels over engine speed: on boost alone, with the nitrous oxide, and between which ends the latter lies over all
 * cases.
 *
 * @param alone on boost alone
 * @param nitrous with nitrous oxide, only where it flows; empty when none is used
 * @param least least power with nitrous oxide over all cases, W, at the speeds of {@code nitrous}
 * @param most greatest power with nitrous oxide over all cases, W, at the speeds of {@code nitrous}
 * @param target power asked for, W; not-a-number when nothing was asked
 * @param height height of the drawing, pixels
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record PowerChart(Curve alone, Curve nitrous, double[] least, double[] most, double target, int height) {

    /**
     * Power over engine speed.
     *
     * @param rpm engine speeds, rev/min, increasing
     * @param power power at the wheels, W
     */
    @SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
    public record Curve(double[] rpm, double[] power) {
        boolean isEmpty() {
            return rpm.length == 0;
        }

        private int best() {
            int best = 0;
            for (int i = 1; i < power.length; i++) {
                best = power[i] > power[best] ? i : best;
            }
            return best;
        }

        private String words(UnitSystem system) {
            return QuantityKind.POWER.text(power[best()], system) + " at "
                    + QuantityKind.ROTATION.text(rpm[best()], system);
        }
    }

    /**
     * Draws both curves, the range over all cases as a band, the target across.
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
        Plot plot = Plot.of(
                        "power",
                        nitrous.isEmpty() ? "Power on boost alone" : "Power on boost alone, and with nitrous oxide",
                        alt(system),
                        new Scale("Engine speed", QuantityKind.ROTATION, system),
                        new Scale("Power at the wheels", QuantityKind.POWER, system))
                .height(height)
                .width(width)
                .reach(Double.NaN, 0);
        plot.line("boost alone", alone.rpm, alone.power);
        if (!nitrous.isEmpty()) {
            if (!Arrays.equals(least, most)) { // of one case there is no range
                plot.band("over all cases", nitrous.rpm, least, most, Look.SECOND, true);
            }
            plot.total("with nitrous oxide", nitrous.rpm, nitrous.power);
            plot.strongLabel(
                    QuantityKind.POWER.text(nitrous.power[nitrous.best()], system),
                    nitrous.rpm[nitrous.best()],
                    nitrous.power[nitrous.best()]);
        }
        if (Double.isFinite(target)) {
            plot.mark("asked for: " + QuantityKind.POWER.text(target, system), target);
        }
        return plot.picture();
    }

    String alt(UnitSystem system) {
        String asked = Double.isFinite(target) ? "; asked for: " + QuantityKind.POWER.text(target, system) + "." : ".";
        return "Boost alone gives at most " + alone.words(system)
                + (nitrous.isEmpty() ? "" : ", with nitrous oxide " + nitrous.words(system)) + asked;
    }
}
