package org.shotledger.view;

import org.shotledger.budget.Budget;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Evaluation;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.CylinderPressureChart;
import org.shotledger.engine.CycleTrace;
import org.shotledger.units.UnitSystem;

/** What happens in a cylinder, as charts. */
public final class EngineCharts {
    private static final double SHOWN_FROM = -90;
    private static final double SHOWN_TO = 120;

    private EngineCharts() {}

    /**
     * Pressure in a cylinder at the power peak, with the nitrous oxide on and, at the same boost, off.
     *
     * @param budget the budget
     * @param system the units
     * @return the picture
     */
    public static ChartPicture cylinder(Budget budget, UnitSystem system) {
        Evaluation on = budget.peak();
        Evaluation off = budget.evaluator()
                .at(on.conditions(), on.rpm(), Demand.boost(on.demand().plenumPressure()));
        CycleTrace with = budget.evaluator().trace(on);
        CycleTrace without = budget.evaluator().trace(off);
        int from = first(with.angle(), SHOWN_FROM);
        int to = first(with.angle(), SHOWN_TO);
        return new CylinderPressureChart(
                        java.util.Arrays.copyOfRange(with.angle(), from, to),
                        java.util.Arrays.copyOfRange(without.pressure(), from, to),
                        java.util.Arrays.copyOfRange(with.pressure(), from, to),
                        budget.build().limits().peakPressure())
                .picture(system);
    }

    private static int first(double[] angle, double at) {
        int i = 0;
        while (i < angle.length && angle[i] < at) {
            i++;
        }
        return i;
    }
}
