package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.shotledger.boost.CompressorMap;
import org.shotledger.boost.MapPoint;
import org.shotledger.budget.BottlePlan;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Limits;
import org.shotledger.budget.Split;
import org.shotledger.budget.SplitCandidate;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.CompressorMapChart;
import org.shotledger.chart.MarginChart;
import org.shotledger.chart.PassChart;
import org.shotledger.chart.PowerSplitChart;
import org.shotledger.chart.TradeOffChart;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Results as charts. */
public final class Charts {
    private Charts() {}

    /**
     * The split over engine speed.
     *
     * @param split the split
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(Split split, UnitSystem system) {
        var points = split.points();
        return new PowerSplitChart(
                        column(points, Split.Point::rpm),
                        column(points, Split.Point::boostWheelPower),
                        column(points, Split.Point::nitrousWheelPower),
                        split.target(),
                        split.window().rpmLow(),
                        split.window().rpmHigh())
                .picture(system);
    }

    /**
     * The room left to each limit.
     *
     * @param limits the limits, at least one
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(Limits limits, UnitSystem system) {
        return new MarginChart(limits.all()).picture(system);
    }

    /**
     * Bottle pressure and power while the bottle empties without a pause.
     *
     * @param bottle the plan
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(BottlePlan bottle, UnitSystem system) {
        var moments = bottle.history();
        return new PassChart(
                        "One bottle emptied without a pause",
                        column(moments, BottlePlan.Moment::time),
                        column(moments, BottlePlan.Moment::pressure),
                        column(moments, BottlePlan.Moment::wheelPower),
                        Double.NaN,
                        bottle.seconds())
                .picture(system);
    }

    /**
     * The ways to divide a wish: nitrous share against least margin.
     *
     * @param candidates the ways
     * @param recommended boost of the recommended way, Pa gauge
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(List<SplitCandidate> candidates, double recommended, UnitSystem system) {
        List<TradeOffChart.Choice> choices = new ArrayList<>();
        for (SplitCandidate way : candidates) {
            double total = way.boostWheelPower() + way.nitrousWheelPower();
            boolean chosen = Math.abs(way.gaugePressure() - recommended) < 1;
            choices.add(new TradeOffChart.Choice(
                    QuantityKind.GAUGE_PRESSURE.text(way.gaugePressure(), system),
                    way.nitrousWheelPower() / total,
                    way.leastMargin(),
                    place(way, chosen, candidates)));
        }
        return new TradeOffChart(
                        "Share of power from nitrous oxide",
                        QuantityKind.FRACTION,
                        "Least margin of all limits",
                        QuantityKind.FRACTION,
                        choices)
                .picture(system);
    }

    /**
     * A compressor map with an operating line.
     *
     * @param map the map
     * @param flow corrected flow along the line, kg/s
     * @param ratio pressure ratio along the line
     * @param rpm engine speed along the line, rev/min
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(CompressorMap map, double[] flow, double[] ratio, double[] rpm, UnitSystem system) {
        return new CompressorMapChart(
                        speedLines(map),
                        column(map.lines(), l -> l.surge().correctedFlow()),
                        column(map.lines(), l -> l.surge().pressureRatio()),
                        flow,
                        ratio,
                        rpm)
                .picture(system);
    }

    private static List<CompressorMapChart.SpeedLine> speedLines(CompressorMap map) {
        return map.lines().stream()
                .map(line -> new CompressorMapChart.SpeedLine(
                        line.correctedRpm(),
                        column(line.points(), p -> p.correctedFlow()),
                        column(line.points(), p -> p.pressureRatio())))
                .toList();
    }

    /**
     * A compressor map with two operating lines, each with its smallest distances from surge and choke written beside it.
     *
     * @param map the map
     * @param alone points with the nitrous off, by engine speed, at least one
     * @param together points with the nitrous on, by engine speed, at least one
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(
            CompressorMap map, List<Evaluation> alone, List<Evaluation> together, UnitSystem system) {
        return new CompressorMapChart(
                        speedLines(map),
                        column(map.lines(), l -> l.surge().correctedFlow()),
                        column(map.lines(), l -> l.surge().pressureRatio()),
                        List.of(operating("boost alone", alone), operating("boost and nitrous oxide", together)))
                .picture(system);
    }

    private static CompressorMapChart.OperatingLine operating(String name, List<Evaluation> points) {
        Map<Integer, String> remarks = new TreeMap<>();
        remark(remarks, points, "surge", MapPoint::surgeMargin);
        remark(remarks, points, "choke", MapPoint::chokeMargin);
        return new CompressorMapChart.OperatingLine(
                name,
                column(points, e -> e.compressor().place().correctedFlow()),
                column(points, e -> e.compressor().place().pressureRatio()),
                column(points, Evaluation::rpm),
                remarks);
    }

    private static void remark(
            Map<Integer, String> remarks, List<Evaluation> points, String edge, ToDoubleFunction<MapPoint> margin) {
        int closest = 0;
        for (int i = 1; i < points.size(); i++) {
            boolean closer = margin.applyAsDouble(points.get(i).compressor().place())
                    < margin.applyAsDouble(points.get(closest).compressor().place());
            closest = closer ? i : closest;
        }
        Evaluation at = points.get(closest);
        String words =
                QuantityKind.FRACTION.text(margin.applyAsDouble(at.compressor().place()), UnitSystem.SI) + " to " + edge
                        + " at " + Math.round(at.rpm());
        remarks.merge(closest, words, (a, b) -> a + ", " + b);
    }

    /** On the front stands what no other way betters in both: less nitrous and more margin. */
    private static TradeOffChart.Place place(SplitCandidate way, boolean chosen, List<SplitCandidate> all) {
        if (way.leastMargin() < 0) {
            return TradeOffChart.Place.REJECTED;
        }
        if (chosen) {
            return TradeOffChart.Place.RECOMMENDED;
        }
        boolean bettered = all.stream()
                .anyMatch(other -> other.leastMargin() > way.leastMargin() && other.nitrousFlow() < way.nitrousFlow());
        return bettered ? TradeOffChart.Place.BETTERED : TradeOffChart.Place.FRONT;
    }

    private static <T> double[] column(List<T> rows, ToDoubleFunction<T> of) {
        return rows.stream().mapToDouble(of).toArray();
    }
}
