package org.shotledger.view;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.limits.Limit;
import org.shotledger.plan.Plan;
import org.shotledger.study.SideBySide;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** Setups beside each other, line by line. */
public final class SideBySideTable {
    private final Collection<Plan> plans;
    private final Listing.Builder rows = Listing.titled("Line by line").words("");

    private SideBySideTable(SideBySide compared) {
        this.plans = compared.plans().values();
        compared.plans().keySet().forEach(rows::mixed);
    }

    /**
     * The table.
     *
     * @param compared the setups and what they do
     * @return one row a figure of the stated case, then the margin of each limit over all cases, one column a setup
     */
    public static Listing of(SideBySide compared) {
        SideBySideTable table = new SideBySideTable(compared);
        table.figures();
        table.margins();
        table.line(
                "closest limit",
                plan -> new Cell.Text(plan.parts().first().map(Limit::name).orElse("none")));
        table.line("verdict", plan -> new Cell.Judged(plan.verdict()));
        return table.rows.build();
    }

    private void figures() {
        line("wheel power", plan -> new Cell.Figure(plan.stated().power(), QuantityKind.POWER));
        atPeak("engine speed of it", OperatingPoint::rpm, QuantityKind.ROTATION);
        atPeak("boost there", OperatingPoint::gaugePressure, QuantityKind.GAUGE_PRESSURE);
        atPeak("crank torque there", OperatingPoint::crankTorque, QuantityKind.TORQUE);
        atPeak("lambda, all streams", OperatingPoint::lambda, QuantityKind.RATIO);
        atPeak("nitrous flow", point -> point.nitrous().massFlow(), QuantityKind.MASS_FLOW);
        atPeak("nitrous fuel flow", point -> point.nitrousFuel().massFlow(), QuantityKind.MASS_FLOW);
        atPeak("peak cylinder pressure", point -> point.cylinder().peakPressure(), QuantityKind.ABSOLUTE_PRESSURE);
    }

    private void margins() {
        for (Limit limit : plans.iterator().next().limits().all()) {
            line(
                    "margin: " + limit.name(),
                    plan -> new Cell.Figure(
                            plan.limits()
                                    .find(limit.key())
                                    .map(Limit::relativeMargin)
                                    .orElse(Double.NaN),
                            QuantityKind.FRACTION));
        }
    }

    private void atPeak(String name, ToDoubleFunction<OperatingPoint> value, QuantityKind kind) {
        line(
                name,
                plan -> new Cell.Figure(
                        plan.stated().strongest().map(value::applyAsDouble).orElse(Double.NaN), kind));
    }

    private void line(String name, Function<Plan, Cell> cell) {
        List<Object> cells = new ArrayList<>(List.of(name));
        plans.stream().map(cell).forEach(cells::add);
        rows.row(cells.toArray());
    }
}
