package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.shotledger.car.Origin;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.job.SheetDifference;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** What changed from one plan to the next: in the sheet with its reason, and in the plan. */
public final class Changes {
    private static final List<Figure> FIGURES = List.of(
            new Figure(
                    "wheel power asked for",
                    QuantityKind.POWER,
                    plan -> plan.target().wheelPower()),
            new Figure("wheel power", QuantityKind.POWER, plan -> plan.stated().power()),
            new Figure("boost at the power peak", QuantityKind.GAUGE_PRESSURE, peak(OperatingPoint::gaugePressure)),
            new Figure("nitrous jet", QuantityKind.BORE, jet(JetPair::nitrousBore)),
            new Figure("nitrous fuel jet", QuantityKind.BORE, jet(JetPair::fuelBore)),
            new Figure(
                    "nitrous oxide flow",
                    QuantityKind.MASS_FLOW,
                    peak(point -> point.nitrous().massFlow())),
            new Figure("lambda", QuantityKind.RATIO, peak(OperatingPoint::lambda)),
            new Figure(
                    "peak cylinder pressure",
                    QuantityKind.ABSOLUTE_PRESSURE,
                    peak(point -> point.cylinder().peakPressure())),
            new Figure(
                    "bottle charge",
                    QuantityKind.MASS,
                    plan -> plan.setup().bottle().charge()),
            new Figure(
                    "bottle temperature",
                    QuantityKind.TEMPERATURE,
                    plan -> plan.setup().bottle().startTemperature()),
            new Figure(
                    "whole passes from one filling",
                    QuantityKind.COUNT,
                    plan -> plan.stated()
                            .pass()
                            .map(PassOutcome::wholePasses)
                            .map(Integer::doubleValue)
                            .orElse(Double.NaN)),
            new Figure(
                    "least margin", QuantityKind.FRACTION, plan -> plan.parts().leastMargin()));

    private Changes() {}

    /** A figure by which two plans are compared. */
    private record Figure(String name, QuantityKind kind, ToDoubleFunction<Plan> value) {
        String told(Plan plan) {
            double told = value.applyAsDouble(plan);
            return Double.isNaN(told) ? "none" : Both.of(kind, told);
        }
    }

    private static ToDoubleFunction<Plan> peak(ToDoubleFunction<OperatingPoint> value) {
        return plan -> plan.stated().strongest().map(value::applyAsDouble).orElse(Double.NaN);
    }

    private static ToDoubleFunction<Plan> jet(ToDoubleFunction<JetPair> hole) {
        return plan -> plan.setup().jets().map(hole::applyAsDouble).orElse(Double.NaN);
    }

    /**
     * Values of the sheet that changed, each with the reason written beside it.
     *
     * @param before the earlier plan
     * @param after the later one
     * @return one row a value; empty when the sheets say the same
     */
    public static Listing sheet(Plan before, Plan after) {
        return Listing.of(
                "What changed in the job sheet",
                before.job().differences(after.job()),
                words("Value", SheetDifference::path),
                words("Before", SheetDifference::before),
                words("Now", SheetDifference::after),
                words(
                        "Reason in the sheet",
                        difference -> after.car()
                                .origin(difference.path())
                                .map(Origin::from)
                                .orElse("")));
    }

    /**
     * The plan before and now.
     *
     * @param before the earlier plan
     * @param after the later one
     * @return one row a figure
     */
    public static Listing plan(Plan before, Plan after) {
        return Listing.of(
                "What changed in the plan: it was '" + before.verdict().word() + "' and is '"
                        + after.verdict().word() + "'",
                FIGURES,
                words("Figure", Figure::name),
                column("Before", Figure::kind, figure -> figure.value().applyAsDouble(before)),
                column("Now", Figure::kind, figure -> figure.value().applyAsDouble(after)));
    }

    /**
     * The differences of the plan in sentences, for the table of revisions.
     *
     * @param before the earlier plan
     * @param after the later one
     * @return one sentence a difference that shows
     */
    public static List<String> sentences(Plan before, Plan after) {
        List<String> said = new ArrayList<>();
        for (Figure figure : FIGURES) {
            String was = figure.told(before);
            String is = figure.told(after);
            if (!was.equals(is)) {
                said.add(figure.name().substring(0, 1).toUpperCase(Locale.ROOT)
                        + figure.name().substring(1) + ": " + was + ", now " + is + ".");
            }
        }
        if (before.verdict() != after.verdict()) {
            said.add("Verdict: " + before.verdict().word() + ", now "
                    + after.verdict().word() + ".");
        }
        return said.isEmpty() ? List.of("The plan is the same.") : said;
    }
}
