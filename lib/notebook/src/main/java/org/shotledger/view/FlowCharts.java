package org.shotledger.view;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Conditions;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Evaluator;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.FeedFlowChart;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.nitrous.JetPair;
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
     * @param budget the budget
     * @param system the units
     * @return the picture, with the predictive band of the jets, and a fuel jet half a thou off
     */
    public static ChartPicture overBottlePressure(Budget budget, UnitSystem system) {
        double low = budget.build().limits().bottlePressureLow();
        double high = Math.min(budget.build().limits().bottlePressureHigh(), 0.97 * NitrousOxide.CRITICAL_PRESSURE);
        double[] pressure = new double[POINTS];
        FeedFlow[] feeds = new FeedFlow[POINTS];
        double[][] fuel = new double[3][POINTS];
        for (int i = 0; i < POINTS; i++) {
            pressure[i] = low + (high - low) * i / (POINTS - 1);
            Conditions at =
                    budget.peak().conditions().withBottleTemperature(NitrousOxide.saturationTemperature(pressure[i]));
            feeds[i] = budget.evaluator().feed(at, budget.peak().demand());
            for (int j = 0; j < 3; j++) {
                fuel[j][i] = fuel(budget, at, feeds[i], (j - 1) * Supply.USUAL_BORE_TOLERANCE);
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

    private static double fuel(Budget budget, Conditions at, FeedFlow feed, double off) {
        Evaluator evaluator = budget.evaluator();
        Evaluation peak = budget.peak();
        JetPair pair = peak.demand().jets().orElseThrow();
        Demand demand = Demand.boost(peak.demand().plenumPressure())
                .with(new JetPair(pair.nitrousBore(), pair.fuelBore() + off));
        return evaluator.at(at, peak.rpm(), demand, feed).nitrousFuel().massFlow();
    }

    private static double[] all(FeedFlow[] feeds, ToDoubleFunction<FeedFlow> part) {
        return Arrays.stream(feeds).mapToDouble(part).toArray();
    }
}
