package org.shotledger.view;

import org.shotledger.budget.Budget;
import org.shotledger.build.Build;
import org.shotledger.stepup.StepUp;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** Everything that is set by hand before the first pull. */
final class SettingsTable {
    private SettingsTable() {}

    static Listing of(Budget budget, StepUp plan) {
        Build build = budget.build();
        var peak = budget.peak();
        var regulator = build.wetKit().fuel().regulator();
        var pair = budget.jets().chosen().pair();
        double ambient = budget.conditions().air().pressure();
        Listing.Builder rows =
                Listing.titled("Settings").words("Setting").mixed("Value").words("Mind");
        rows.row(
                "nozzles",
                new Cell.Figure(budget.jets().nozzles(), QuantityKind.COUNT),
                build.wetKit().position().words());
        bore(
                rows,
                "nitrous jet, each nozzle",
                pair.nitrousBore(),
                "measure the hole by pin gauge; the stamp is not enough");
        bore(
                rows,
                "fuel jet, each nozzle",
                pair.fuelBore(),
                "never exchanged with the nitrous jet: that is a lean engine");
        rows.row(
                "boost at the power peak",
                new Cell.Figure(peak.gaugePressure(), QuantityKind.GAUGE_PRESSURE),
                "taken back at lower speed, see the split");
        rows.row(
                "nitrous on above",
                new Cell.Figure(budget.split().window().rpmLow(), QuantityKind.ROTATION),
                "only at full throttle and with the boost and fuel pressure up");
        rows.row(
                "nitrous off above",
                new Cell.Figure(budget.split().window().rpmHigh(), QuantityKind.ROTATION),
                "before the rev limiter, which cuts fuel and would leave nitrous alone");
        rows.row(
                "main mixture, nitrous off",
                new Cell.Figure(build.tune().lambda(), QuantityKind.RATIO),
                "lambda, as on the base pull");
        rows.row(
                "mixture, nitrous on",
                new Cell.Figure(peak.lambda(), QuantityKind.RATIO),
                "lambda of all streams together");
        rows.row(
                "cut the nitrous when leaner than",
                new Cell.Figure(build.limits().lambdaHigh(), QuantityKind.RATIO),
                "lambda; the builder's limit");
        rows.row(
                "spark retard to begin with, nitrous on",
                new Cell.Figure(plan.fullShot().spark().first(), QuantityKind.CRANK_ANGLE),
                "from the timing of the base pull; the largest of rule of thumb (common practice, no source), computed and"
                        + " sheet, see the step-up plan");
        rows.row(
                "nitrous fuel pressure, engine off",
                new Cell.Figure(regulator.basePressure(), QuantityKind.GAUGE_PRESSURE),
                regulator.boostReference() == 0 ? "does not follow the boost" : "follows the boost");
        rows.row(
                "nitrous fuel pressure at the power peak",
                new Cell.Figure(peak.nitrousFuel().railPressure() - ambient, QuantityKind.GAUGE_PRESSURE),
                "at the rail, fuel flowing");
        rows.row(
                "bottle pressure, at least",
                new Cell.Figure(build.limits().bottlePressureLow() - ambient, QuantityKind.GAUGE_PRESSURE),
                "below it the jets are not trusted");
        rows.row(
                "bottle pressure, at most",
                new Cell.Figure(build.limits().bottlePressureHigh() - ambient, QuantityKind.GAUGE_PRESSURE),
                "above it do not open the valve");
        return rows.build();
    }

    private static void bore(Listing.Builder rows, String name, double bore, String mind) {
        rows.row(name, new Cell.Figure(bore, QuantityKind.BORE), mind);
    }
}
