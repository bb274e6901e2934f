package org.shotledger.view;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.FeedFlowChart;
import org.shotledger.chart.FlowOverPressureChart;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.flow.FeedFlow;
import org.shotledger.flow.FeedPath;
import org.shotledger.flow.FlowOverPressure;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.spread.Supply;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** What flows through the jets, as charts. */
public final class FlowCharts {
    private static final int POINTS = 15;

    /** The chart against measured holes begins with a bottle near -10 degC, Pa: colder ones were measured than are raced. */
    private static final double SHOWN_FROM = 24e5;

    private FlowCharts() {}

    /**
     * Nitrous oxide and its fuel over bottle pressure at the power peak: from the lowest pressure at which the builder trusts the
     * jets to the highest at which he opens the bottle, the bottle at rest; the outcome's own pressure among them is told in words.
     *
     * @param outcome an outcome with nitrous
     * @param system the units
     * @return the picture, with the predictive band of the jets, and a fuel jet half a thou off
     */
    public static ChartPicture overBottlePressure(Outcome outcome, UnitSystem system) {
        double plenum = Peak.of(outcome).plenumPressure();
        double bore = outcome.setup().jets().orElseThrow().fuelBore();
        double low = outcome.car().limits().bottlePressureLow();
        double high = highest(outcome);
        PointModel model = Evaluate.model(outcome.car(), outcome.setup(), outcome.at());
        double own = Math.min(Math.max(Peak.of(outcome).bottle().pressure(), low), high);
        double[] pressure = DoubleStream.concat(
                        DoubleStream.of(own),
                        IntStream.range(0, POINTS).mapToDouble(i -> low + (high - low) * i / (POINTS - 1)))
                .sorted()
                .distinct()
                .toArray();
        FeedFlow[] feeds = new FeedFlow[pressure.length];
        double[][] fuel = new double[3][pressure.length];
        for (int i = 0; i < pressure.length; i++) {
            feeds[i] = model.withBottle(saturated(pressure[i])).feed(plenum);
            for (int j = 0; j < 3; j++) {
                fuel[j][i] = model.nitrousFuel(plenum, bore + (j - 1) * Supply.USUAL_BORE_TOLERANCE)
                        .massFlow();
            }
        }
        return new FeedFlowChart(
                        "Bottle pressure",
                        QuantityKind.ABSOLUTE_PRESSURE,
                        pressure,
                        all(feeds, FeedFlow::massFlow),
                        all(feeds, feed -> feed.massFlow() * feed.band().low()),
                        all(feeds, feed -> feed.massFlow() * feed.band().high()),
                        fuel[1],
                        fuel[0],
                        fuel[2],
                        Arrays.binarySearch(pressure, own))
                .picture(system);
    }

    /**
     * Nitrous oxide over bottle pressure at the power peak, held against measured holes of the nearest class and against a
     * square-root law.
     *
     * @param outcome an outcome with nitrous
     * @param system the units
     * @return the picture
     */
    public static ChartPicture againstSquareRoot(Outcome outcome, UnitSystem system) {
        FlowOverPressure flow = overPressure(
                outcome, Math.min(SHOWN_FROM, outcome.car().limits().bottlePressureLow()), POINTS);
        Map<String, double[][]> measured = flow.measured().stream()
                .collect(Collectors.groupingBy(
                        FlowOverPressure.Point::source,
                        LinkedHashMap::new,
                        Collectors.collectingAndThen(Collectors.toList(), FlowCharts::columns)));
        double plan = planPressure(outcome);
        return new FlowOverPressureChart(
                        flow.pressure(),
                        flow.low(),
                        flow.best(),
                        flow.high(),
                        flow.squareRoot(),
                        measured,
                        plan,
                        path(outcome).massFlow(saturated(plan), Peak.of(outcome).plenumPressure()))
                .picture(system);
    }

    private static double[][] columns(List<FlowOverPressure.Point> points) {
        return new double[][] {
            Rows.column(points, FlowOverPressure.Point::pressure), Rows.column(points, FlowOverPressure.Point::flow)
        };
    }

    /**
     * Why the flow rises less with the bottle's pressure than a square root would have it, in the figures of this car.
     *
     * @param outcome an outcome with nitrous
     * @return a few sentences
     */
    public static String whyFlatter(Outcome outcome) {
        FlowOverPressure flow = overPressure(outcome, outcome.car().limits().bottlePressureLow(), 2);
        double[] pressure = flow.pressure();
        int last = pressure.length - 1;
        FeedPath path = path(outcome);
        double plenum = Peak.of(outcome).plenumPressure();
        return String.format(
                Locale.ROOT,
                "From %s to %s in the bottle a square root of the pressure drop would pass %.0f %% more; the real fluid passes %.0f %%"
                        + " more. With the pressure the temperature rises: the liquid of the warmer bottle is %.0f %% lighter, and more of"
                        + " it boils on the way, so that %.1f %% of it by mass is vapour before the jets instead of %.1f %%. A choked jet"
                        + " passes what the boiling mixture lets through at its own speed of sound, not what the drop behind it would"
                        + " push.%s",
                Both.of(QuantityKind.ABSOLUTE_PRESSURE, pressure[0]),
                Both.of(QuantityKind.ABSOLUTE_PRESSURE, pressure[last]),
                100 * (flow.squareRoot()[last] / flow.squareRoot()[0] - 1),
                100 * (flow.best()[last] / flow.best()[0] - 1),
                100 * (1 - flow.liquidDensity()[last] / flow.liquidDensity()[0]),
                100 * vapour(path.flow(saturated(pressure[last]), plenum)),
                100 * vapour(path.flow(saturated(pressure[0]), plenum)),
                " The points of the chart are measured holes of the nearest class, and a hole at the end of a line from a bottle, all brought"
                        + " to this area and to nitrous oxide at the same reduced state.");
    }

    private static double vapour(FeedFlow feed) {
        double quality = feed.jetInlet().quality();
        return Double.isNaN(quality) ? 0 : quality;
    }

    private static FlowOverPressure overPressure(Outcome outcome, double low, int points) {
        double high = highest(outcome);
        double[] pressure = new double[points];
        for (int i = 0; i < points; i++) {
            pressure[i] = low + (high - low) * i / (points - 1);
        }
        return FlowOverPressure.of(
                path(outcome), pressure, planPressure(outcome), Peak.of(outcome).plenumPressure());
    }

    private static FeedPath path(Outcome outcome) {
        return outcome.car().nitrous().nitrousPath(outcome.setup().jets().orElseThrow());
    }

    private static double planPressure(Outcome outcome) {
        return NitrousOxide.saturationPressure(Peak.of(outcome).bottle().temperature());
    }

    private static double highest(Outcome outcome) {
        return Math.min(outcome.car().limits().bottlePressureHigh(), 0.97 * NitrousOxide.CRITICAL_PRESSURE);
    }

    private static FluidState saturated(double pressure) {
        return NitrousOxide.saturatedLiquid(NitrousOxide.saturationTemperature(pressure));
    }

    private static double[] all(FeedFlow[] feeds, ToDoubleFunction<FeedFlow> part) {
        return Arrays.stream(feeds).mapToDouble(part).toArray();
    }
}
