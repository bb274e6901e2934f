package org.shotledger.view;

import java.util.Arrays;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.CylinderPressureChart;
import org.shotledger.engine.CycleTrace;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.units.UnitSystem;

/** What happens in a cylinder, as charts. */
public final class EngineCharts {
    private static final double SHOWN_FROM = -90;
    private static final double SHOWN_TO = 120;

    private EngineCharts() {}

    /**
     * Pressure in a cylinder at the power peak, with the nitrous oxide on and, at the same boost, off.
     *
     * @param outcome an outcome with nitrous
     * @param system the units
     * @return the picture
     */
    public static ChartPicture cylinder(Outcome outcome, UnitSystem system) {
        OperatingPoint on = Peak.of(outcome);
        PointModel model = Evaluate.model(outcome.car(), outcome.setup(), outcome.at());
        OperatingPoint off = model.at(on.rpm(), on.plenumPressure(), Mode.ARMED);
        CycleTrace with = model.trace(on);
        CycleTrace without = model.trace(off);
        int from = first(with.angle(), SHOWN_FROM);
        int to = first(with.angle(), SHOWN_TO);
        return new CylinderPressureChart(
                        Arrays.copyOfRange(with.angle(), from, to),
                        Arrays.copyOfRange(without.pressure(), from, to),
                        Arrays.copyOfRange(with.pressure(), from, to),
                        outcome.car().limits().peakPressure())
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
