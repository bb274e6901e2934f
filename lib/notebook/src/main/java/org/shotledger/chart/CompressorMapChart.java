package org.shotledger.chart;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * A compressor map with the lines on which the engine runs.
 *
 * @param speedLines lines of constant corrected speed
 * @param surgeFlow corrected flow along the surge line, kg/s
 * @param surgeRatio pressure ratio along the surge line
 * @param operating lines of the engine on full load, at least one
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record CompressorMapChart(
        List<SpeedLine> speedLines, double[] surgeFlow, double[] surgeRatio, List<OperatingLine> operating) {
    private static final Look[] LOOKS = {Look.FIRST, Look.THIRD, Look.FOURTH};

    /**
     * A line of constant corrected speed.
     *
     * @param speed corrected rotor speed, rev/min
     * @param flow corrected flow, kg/s, increasing
     * @param ratio total-to-total pressure ratio
     */
    public record SpeedLine(double speed, double[] flow, double[] ratio) {}

    /**
     * A line on which the engine runs.
     *
     * @param name its name in the legend
     * @param flow corrected flow, kg/s
     * @param ratio pressure ratio
     * @param rpm engine speed at each point, rev/min
     * @param remarks words to be set beside some of its points, in place of the engine speed there
     */
    @SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
    public record OperatingLine(
            String name, double[] flow, double[] ratio, double[] rpm, Map<Integer, String> remarks) {}

    /** Copies the lists of lines. */
    @SuppressWarnings("doclint:missing")
    public CompressorMapChart {
        speedLines = List.copyOf(speedLines);
        operating = List.copyOf(operating);
    }

    /**
     * A map with one operating line.
     *
     * @param speedLines lines of constant corrected speed
     * @param surgeFlow corrected flow along the surge line, kg/s
     * @param surgeRatio pressure ratio along the surge line
     * @param operatingFlow corrected flow along the operating line, kg/s
     * @param operatingRatio pressure ratio along the operating line
     * @param operatingRpm engine speed at each point of the operating line, rev/min
     */
    public CompressorMapChart(
            List<SpeedLine> speedLines,
            double[] surgeFlow,
            double[] surgeRatio,
            double[] operatingFlow,
            double[] operatingRatio,
            double[] operatingRpm) {
        this(
                speedLines,
                surgeFlow,
                surgeRatio,
                List.of(new OperatingLine(
                        "engine on full load", operatingFlow, operatingRatio, operatingRpm, Map.of())));
    }

    /**
     * Draws the map.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        Plot plot = Plot.of(
                        "compressor-map",
                        "Compressor map with the operating line",
                        alt(system),
                        new Scale("Corrected air flow", QuantityKind.MASS_FLOW, system),
                        new Scale("Pressure ratio, total to total", QuantityKind.RATIO, system))
                .height(300);
        double widest = 0;
        for (SpeedLine line : speedLines) {
            int end = line.flow.length - 1;
            plot.add("_" + line.speed, line.flow, line.ratio, Look.SPEED, Plot.Style.LINE, false);
            plot.label(Math.round(line.speed / 1000) + "k", line.flow[end], line.ratio[end]);
            widest = Math.max(widest, line.flow[end]);
        }
        plot.add("surge line", surgeFlow, surgeRatio, Look.SECOND, Plot.Style.LINE_WITH_MARKERS, false);
        for (int i = 0; i < operating.size(); i++) {
            draw(plot, operating.get(i), LOOKS[i % LOOKS.length], system);
        }
        return plot.reach(widest * 1.08, Double.NaN).picture();
    }

    private static void draw(Plot plot, OperatingLine line, Look look, UnitSystem system) {
        plot.add(line.name, line.flow, line.ratio, look, Plot.Style.LINE_WITH_MARKERS, false);
        Map<Integer, String> words = new TreeMap<>();
        int last = line.flow.length - 1;
        for (int i : new int[] {0, last / 2, last}) {
            words.put(i, QuantityKind.ROTATION.text(line.rpm[i], system));
        }
        (line.remarks.isEmpty() ? words : line.remarks)
                .forEach((i, text) -> plot.strongLabel(text, line.flow[i], line.ratio[i]));
    }

    private String alt(UnitSystem system) {
        StringBuilder words = new StringBuilder("Speed lines are marked in thousands of rotor revolutions per minute.");
        for (OperatingLine line : operating) {
            int last = line.flow.length - 1;
            words.append(" The ")
                    .append(line.name)
                    .append(" runs from ")
                    .append(place(line, 0, system))
                    .append(" to ")
                    .append(place(line, last, system))
                    .append('.');
            line.remarks
                    .values()
                    .forEach(remark -> words.append(' ').append(remark).append('.'));
        }
        return words.toString();
    }

    private static String place(OperatingLine line, int i, UnitSystem system) {
        return QuantityKind.MASS_FLOW.text(line.flow[i], system) + " at ratio "
                + QuantityKind.RATIO.number(line.ratio[i], system);
    }
}
