package org.shotledger.chart;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * A compressor map with the line on which the engine runs.
 *
 * @param speedLines lines of constant corrected speed
 * @param surgeFlow corrected flow along the surge line, kg/s
 * @param surgeRatio pressure ratio along the surge line
 * @param operatingFlow corrected flow along the operating line, kg/s
 * @param operatingRatio pressure ratio along the operating line
 * @param operatingRpm engine speed at each point of the operating line, rev/min
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record CompressorMapChart(
        List<SpeedLine> speedLines,
        double[] surgeFlow,
        double[] surgeRatio,
        double[] operatingFlow,
        double[] operatingRatio,
        double[] operatingRpm) {

    /**
     * A line of constant corrected speed.
     *
     * @param speed corrected rotor speed, rev/min
     * @param flow corrected flow, kg/s, increasing
     * @param ratio total-to-total pressure ratio
     */
    public record SpeedLine(double speed, double[] flow, double[] ratio) {}

    /** Copies the list of lines. */
    @SuppressWarnings("doclint:missing")
    public CompressorMapChart {
        speedLines = List.copyOf(speedLines);
    }

    /**
     * Draws the map.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        int last = operatingFlow.length - 1;
        Plot plot = Plot.of(
                        "compressor-map",
                        "Compressor map with the operating line",
                        alt(last, system),
                        new Axis("Corrected air flow", QuantityKind.MASS_FLOW, system),
                        new Axis("Pressure ratio, total to total", QuantityKind.RATIO, system))
                .height(480);
        for (SpeedLine line : speedLines) {
            plot.add("_" + line.speed, line.flow, line.ratio, Look.SPEED, Plot.Style.LINE, false);
            plot.label(
                    Math.round(line.speed / 1000) + "k",
                    line.flow[line.flow.length - 1],
                    line.ratio[line.ratio.length - 1]);
        }
        plot.add("surge line", surgeFlow, surgeRatio, Look.SECOND, Plot.Style.LINE_WITH_MARKERS, false);
        plot.add("engine on full load", operatingFlow, operatingRatio, Look.FIRST, Plot.Style.LINE_WITH_MARKERS, false);
        for (int i : new int[] {0, last / 2, last}) {
            plot.strongLabel(QuantityKind.ROTATION.text(operatingRpm[i], system), operatingFlow[i], operatingRatio[i]);
        }
        double widest = 0;
        for (SpeedLine line : speedLines) {
            widest = Math.max(widest, line.flow[line.flow.length - 1]);
        }
        return plot.reach(widest * 1.08, Double.NaN).picture();
    }

    private String alt(int last, UnitSystem system) {
        return "Speed lines are marked in thousands of rotor revolutions per minute. The engine runs from "
                + QuantityKind.MASS_FLOW.text(operatingFlow[0], system) + " at ratio "
                + QuantityKind.RATIO.number(operatingRatio[0], system) + " to "
                + QuantityKind.MASS_FLOW.text(operatingFlow[last], system) + " at ratio "
                + QuantityKind.RATIO.number(operatingRatio[last], system) + ".";
    }
}
