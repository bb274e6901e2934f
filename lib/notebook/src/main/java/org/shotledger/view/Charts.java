package org.shotledger.view;

import static org.shotledger.view.Rows.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.shotledger.boost.CompressorMap;
import org.shotledger.boost.MapPoint;
import org.shotledger.chart.BoostChart;
import org.shotledger.chart.BudgetChart;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.CompressorMapChart;
import org.shotledger.chart.MarginChart;
import org.shotledger.chart.PassChart;
import org.shotledger.chart.PassMixtureChart;
import org.shotledger.chart.PowerChart;
import org.shotledger.chart.TradeOffChart;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.limits.Limits;
import org.shotledger.plan.Alternative;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Results as charts. */
public final class Charts {
    private static final int HEIGHT = 250;
    private static final int NARROW_HEIGHT = 330;

    private Charts() {}

    /**
     * Power over engine speed in the case of the target: boost alone, with nitrous, and the range over all cases.
     *
     * @param plan the plan
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(Plan plan, UnitSystem system) {
        return power(plan.outcomes(), plan.target().wheelPower(), HEIGHT).picture(system);
    }

    /**
     * Power over engine speed in one case: boost alone, and with nitrous.
     *
     * @param outcome the outcome
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(Outcome outcome, UnitSystem system) {
        return power(List.of(outcome), Double.NaN, HEIGHT).picture(system);
    }

    /**
     * Power over engine speed in one case, and the power that is asked for.
     *
     * @param outcome the outcome
     * @param target power asked for, W
     * @param system the units
     * @param width width of the drawing, pixels
     * @return the picture
     */
    public static ChartPicture of(Outcome outcome, double target, UnitSystem system, int width) {
        return power(List.of(outcome), target, NARROW_HEIGHT).picture(system, width);
    }

    /** The first outcome is drawn, all of them make the band. */
    static PowerChart power(List<Outcome> outcomes, double target, int height) {
        Outcome stated = outcomes.get(0);
        List<OperatingPoint> on = stated.withNitrous();
        return new PowerChart(
                curve(stated.off()),
                curve(on),
                column(on, point -> powers(outcomes, point.rpm()).min().orElse(Double.NaN)),
                column(on, point -> powers(outcomes, point.rpm()).max().orElse(Double.NaN)),
                target,
                height);
    }

    /**
     * The whole proposal in one picture.
     *
     * @param plan the plan
     * @param height height of the drawing, pixels
     * @param system the units
     * @return the picture
     */
    static ChartPicture budget(Plan plan, int height, UnitSystem system) {
        Setup setup = plan.setup();
        List<OperatingPoint> speeds = plan.stated().armed().isEmpty()
                ? plan.stated().off()
                : plan.stated().armed();
        double torque = plan.car().limits().crankTorque();
        return new BudgetChart(
                        power(plan.outcomes(), plan.target().wheelPower(), height),
                        new PowerChart.Curve(
                                column(speeds, OperatingPoint::rpm),
                                column(speeds, at -> at.wheelPower() / at.crankTorque() * torque)),
                        new PowerChart.Curve(
                                column(speeds, OperatingPoint::rpm), column(speeds, OperatingPoint::gaugePressure)),
                        setup.arming().rpmLow(),
                        setup.arming().rpmHigh())
                .picture(system);
    }

    private static DoubleStream powers(List<Outcome> outcomes, double rpm) {
        return outcomes.stream()
                .flatMap(outcome -> outcome.withNitrous().stream())
                .filter(point -> point.rpm() == rpm)
                .mapToDouble(OperatingPoint::wheelPower);
    }

    private static PowerChart.Curve curve(List<OperatingPoint> points) {
        return new PowerChart.Curve(column(points, OperatingPoint::rpm), column(points, OperatingPoint::wheelPower));
    }

    /**
     * The boost tables of a plan's setup.
     *
     * @param plan the plan
     * @param system the units
     * @return the picture
     */
    public static ChartPicture boost(Plan plan, UnitSystem system) {
        Setup setup = plan.setup();
        List<Double> speeds = SetupTables.speeds(setup);
        boolean nitrous = setup.jets().isPresent();
        return new BoostChart(
                        column(speeds, Double::doubleValue),
                        column(speeds, setup.boost().off()::at),
                        column(speeds, setup.boost().armed()::at),
                        plan.car().turbo().boostCeiling(),
                        nitrous ? setup.arming().rpmLow() : Double.NaN,
                        nitrous ? setup.arming().rpmHigh() : Double.NaN)
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
     * Bottle pressure and power over the seconds of a pass.
     *
     * @param pass the pass
     * @param leastPressure lowest bottle pressure the builder allows, Pa
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(PassOutcome pass, double leastPressure, UnitSystem system) {
        return chart(pass, leastPressure).picture(system);
    }

    /**
     * Bottle pressure and power over the seconds of a pass.
     *
     * @param pass the pass
     * @param leastPressure lowest bottle pressure the builder allows, Pa
     * @param system the units
     * @param width width of the drawing, pixels
     * @return the picture
     */
    public static ChartPicture of(PassOutcome pass, double leastPressure, UnitSystem system, int width) {
        return chart(pass, leastPressure).picture(system, width);
    }

    private static PassChart chart(PassOutcome pass, double leastPressure) {
        var moments = pass.moments();
        return new PassChart(
                "Bottle and power over pass " + pass.number(),
                column(moments, PassOutcome.Moment::time),
                column(moments, PassOutcome.Moment::pressure),
                column(moments, PassOutcome.Moment::wheelPower),
                leastPressure);
    }

    /**
     * The mixture over the seconds of a pass, in every case.
     *
     * @param plan the plan, with nitrous
     * @param system the units
     * @return the picture
     */
    public static ChartPicture mixture(Plan plan, UnitSystem system) {
        List<PassMixtureChart.Trace> traces = plan.outcomes().stream()
                .filter(outcome -> !outcome.overPass().isEmpty())
                .map(outcome -> new PassMixtureChart.Trace(
                        outcome.at().name(),
                        column(outcome.overPass(), PassOutcome.Moment::time),
                        column(outcome.overPass(), PassOutcome.Moment::lambda)))
                .toList();
        var limits = plan.car().limits();
        return new PassMixtureChart(traces, limits.lambdaLow(), limits.lambdaHigh()).picture(system);
    }

    /**
     * The setups that were weighed: nitrous share against least margin.
     *
     * @param plan the plan
     * @param system the units
     * @return the picture
     */
    public static ChartPicture alternatives(Plan plan, UnitSystem system) {
        List<TradeOffChart.Choice> choices = new ArrayList<>();
        for (Alternative way : plan.alternatives()) {
            choices.add(new TradeOffChart.Choice(
                    QuantityKind.GAUGE_PRESSURE.text(way.gaugePressure(), system),
                    way.nitrousPower() / way.wheelPower(),
                    way.leastMargin(),
                    place(way, plan.alternatives())));
        }
        plan.stated().strongest().ifPresent(best -> choices.add(chosen(plan, best, system)));
        return new TradeOffChart(
                        "Share of power from nitrous oxide",
                        QuantityKind.FRACTION,
                        "Least margin of all limits",
                        QuantityKind.FRACTION,
                        choices)
                .picture(system);
    }

    /** The plan itself, with jets of the ladder and worked out in full; it stands where it stands, front or not. */
    private static TradeOffChart.Choice chosen(Plan plan, OperatingPoint best, UnitSystem system) {
        double alone = plan.stated().off().stream()
                .filter(point -> point.rpm() == best.rpm())
                .mapToDouble(OperatingPoint::wheelPower)
                .findFirst()
                .orElse(best.wheelPower());
        return new TradeOffChart.Choice(
                QuantityKind.GAUGE_PRESSURE.text(best.gaugePressure(), system),
                1 - Math.min(alone, best.wheelPower()) / best.wheelPower(),
                plan.parts().leastMargin(),
                TradeOffChart.Place.CHOSEN);
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
            CompressorMap map, List<OperatingPoint> alone, List<OperatingPoint> together, UnitSystem system) {
        return new CompressorMapChart(
                        speedLines(map),
                        column(map.lines(), l -> l.surge().correctedFlow()),
                        column(map.lines(), l -> l.surge().pressureRatio()),
                        List.of(operating("boost alone", alone), operating("boost and nitrous oxide", together)))
                .picture(system);
    }

    /**
     * The compressor map of an outcome with both operating lines.
     *
     * @param outcome the outcome
     * @param system the units
     * @return the picture
     */
    public static ChartPicture map(Outcome outcome, UnitSystem system) {
        List<OperatingPoint> on = outcome.withNitrous();
        return of(outcome.car().turbo().map(), outcome.off(), on.isEmpty() ? outcome.off() : on, system);
    }

    private static CompressorMapChart.OperatingLine operating(String name, List<OperatingPoint> points) {
        Map<Integer, String> remarks = new TreeMap<>();
        remark(remarks, points, "surge", MapPoint::surgeMargin);
        remark(remarks, points, "choke", MapPoint::chokeMargin);
        return new CompressorMapChart.OperatingLine(
                name,
                column(points, e -> e.compressor().place().correctedFlow()),
                column(points, e -> e.compressor().place().pressureRatio()),
                column(points, OperatingPoint::rpm),
                remarks);
    }

    private static void remark(
            Map<Integer, String> remarks, List<OperatingPoint> points, String edge, ToDoubleFunction<MapPoint> margin) {
        int closest = 0;
        for (int i = 1; i < points.size(); i++) {
            boolean closer = margin.applyAsDouble(points.get(i).compressor().place())
                    < margin.applyAsDouble(points.get(closest).compressor().place());
            closest = closer ? i : closest;
        }
        OperatingPoint at = points.get(closest);
        String words =
                QuantityKind.FRACTION.text(margin.applyAsDouble(at.compressor().place()), UnitSystem.SI) + " to " + edge
                        + " at " + Math.round(at.rpm());
        remarks.merge(closest, words, (a, b) -> a + ", " + b);
    }

    /** On the front stands what no other setup betters in both: less nitrous and more margin. */
    private static TradeOffChart.Place place(Alternative way, List<Alternative> all) {
        if (way.leastMargin() < 0) {
            return TradeOffChart.Place.REJECTED;
        }
        boolean bettered = all.stream()
                .anyMatch(other -> other.leastMargin() > way.leastMargin() && other.nitrousFlow() < way.nitrousFlow());
        return bettered ? TradeOffChart.Place.BETTERED : TradeOffChart.Place.FRONT;
    }
}
