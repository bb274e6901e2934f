package org.shotledger.view;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.FeedFlowChart;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.spread.Supply;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** What flows through the jets, as charts. */
public final class FlowCharts {
    private static final int POINTS = 15;

    private FlowCharts() {}

    /**
     * Nitrous oxide and its fuel over bottle pressure at the power peak: from the lowest pressure at which the builder trusts the
     * jets to the highest at which he opens the bottle, the bottle at rest.
     *
     * @param outcome an outcome with nitrous
     * @param system the units
     * @return the picture, with the predictive band of the jets, and a fuel jet half a thou off
     */
    public static ChartPicture overBottlePressure(Outcome outcome, UnitSystem system) {
        double plenum = Peak.of(outcome).plenumPressure();
        double bore = outcome.setup().jets().orElseThrow().fuelBore();
        double low = outcome.car().limits().bottlePressureLow();
        double high = Math.min(outcome.car().limits().bottlePressureHigh(), 0.97 * NitrousOxide.CRITICAL_PRESSURE);
        PointModel model = Evaluate.model(outcome.car(), outcome.setup(), outcome.at());
        double[] pressure = new double[POINTS];
        FeedFlow[] feeds = new FeedFlow[POINTS];
        double[][] fuel = new double[3][POINTS];
        for (int i = 0; i < POINTS; i++) {
            pressure[i] = low + (high - low) * i / (POINTS - 1);
            double temperature = NitrousOxide.saturationTemperature(pressure[i]);
            feeds[i] =
                    model.withBottle(NitrousOxide.saturatedLiquid(temperature)).feed(plenum);
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
                        fuel[2])
                .picture(system);
    }

    private static double[] all(FeedFlow[] feeds, ToDoubleFunction<FeedFlow> part) {
        return Arrays.stream(feeds).mapToDouble(part).toArray();
    }
}
