package org.shotledger.view;

import java.util.Collection;
import org.shotledger.budget.BoostAlone;
import org.shotledger.budget.BottlePlan;
import org.shotledger.budget.Entry;
import org.shotledger.budget.JetChoice;
import org.shotledger.budget.Ledger;
import org.shotledger.budget.Limit;
import org.shotledger.budget.Limits;
import org.shotledger.budget.Side;
import org.shotledger.budget.Split;
import org.shotledger.budget.SplitCandidate;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** Results as tables. */
public final class Tables {
    private Tables() {}

    /**
     * Limits with their margins, verdicts and consequences.
     *
     * @param limits the limits
     * @return one row a limit
     */
    public static Listing of(Limits limits) {
        Listing.Builder rows = Listing.titled("Limits over the asked band")
                .words("Limit")
                .mixed("Value")
                .words("Must be")
                .mixed("Bound")
                .figures("Margin", QuantityKind.FRACTION)
                .words("Verdict")
                .mixed("Power until it bites")
                .words("When broken");
        for (Limit limit : limits.all()) {
            rows.row(
                    limit.name(),
                    new Cell.Figure(limit.value(), limit.kind()),
                    limit.side() == Side.AT_MOST ? "at most" : "at least",
                    new Cell.Figure(limit.bound(), limit.kind()),
                    limit.relativeMargin(),
                    limit.verdict(),
                    new Cell.Figure(limit.powerToBound(), QuantityKind.POWER),
                    limit.consequence());
        }
        return rows.build();
    }

    /**
     * Every figure with its reasoning.
     *
     * @param ledger the ledger
     * @return one row an entry
     */
    public static Listing of(Ledger ledger) {
        return entries("Every figure and where it comes from", ledger.entries());
    }

    /**
     * Why a figure is what it is.
     *
     * @param ledger the ledger
     * @param key the key of the figure
     * @return the figure first, then everything it rests on, down to the inputs
     * @throws IllegalArgumentException when there is no such figure; the message lists the keys
     */
    public static Listing why(Ledger ledger, String key) {
        var chain = ledger.why(key);
        return entries("Why: " + chain.get(0).name(), chain);
    }

    /**
     * Entries of a ledger.
     *
     * @param caption what they answer
     * @param entries the entries
     * @return one row an entry
     */
    public static Listing entries(String caption, Collection<Entry> entries) {
        Listing.Builder rows = Listing.titled(caption)
                .words("Figure")
                .mixed("Value")
                .mixed("Uncertainty")
                .words("Standing")
                .words("Basis")
                .words("Source")
                .words("Rests on");
        for (Entry entry : entries) {
            rows.row(
                    entry.symbol().isBlank() ? entry.name() : entry.name() + ", " + entry.symbol(),
                    new Cell.Figure(entry.value(), entry.kind()),
                    new Cell.Figure(entry.uncertainty(), difference(entry.kind())),
                    entry.standing().words(),
                    entry.basis(),
                    entry.source(),
                    String.join(", ", entry.inputs()));
        }
        return rows.build();
    }

    /**
     * The split over engine speed.
     *
     * @param split the split
     * @return one row an engine speed
     */
    public static Listing of(Split split) {
        Listing.Builder rows = Listing.titled("The split over engine speed")
                .figures("Engine speed", QuantityKind.ROTATION)
                .figures("Boost", QuantityKind.GAUGE_PRESSURE)
                .figures("Boost alone", QuantityKind.POWER)
                .figures("Nitrous adds", QuantityKind.POWER)
                .figures("Together", QuantityKind.POWER)
                .figures("Crank torque", QuantityKind.TORQUE)
                .figures("Lambda", QuantityKind.RATIO)
                .figures("Least margin", QuantityKind.FRACTION)
                .words("First limit");
        for (Split.Point point : split.points()) {
            rows.row(
                    point.rpm(),
                    point.gaugePressure(),
                    point.boostWheelPower(),
                    point.nitrousWheelPower(),
                    point.wheelPower(),
                    point.crankTorque(),
                    point.lambda(),
                    point.leastMargin(),
                    point.firstLimit());
        }
        return rows.build();
    }

    /**
     * The pairs of jets on the ladder and what each gives.
     *
     * @param jets the choice
     * @return one row a pair, the recommended one first
     */
    public static Listing of(JetChoice jets) {
        Listing.Builder rows = Listing.titled("Pairs of jets, " + jets.nozzles()
                        + (jets.nozzles() == 1 ? " nozzle" : " nozzles") + ", the recommended one first")
                .figures("Nitrous jet", QuantityKind.BORE)
                .figures("Fuel jet", QuantityKind.BORE)
                .figures("Nitrous", QuantityKind.MASS_FLOW)
                .figures("Fuel", QuantityKind.MASS_FLOW)
                .figures("Nitrous to fuel", QuantityKind.RATIO)
                .figures("Lambda", QuantityKind.RATIO)
                .figures("Best power", QuantityKind.POWER)
                .figures("Least margin", QuantityKind.FRACTION)
                .words("First limit");
        for (JetChoice.Option option : jets.options()) {
            rows.row(
                    option.pair().nitrousBore(),
                    option.pair().fuelBore(),
                    option.nitrousFlow(),
                    option.fuelFlow(),
                    option.circuitRatio(),
                    option.lambda(),
                    option.wheelPower(),
                    option.leastMargin(),
                    option.firstLimit());
        }
        return rows.build();
    }

    /**
     * What boost gives by itself.
     *
     * @param boost the answer
     * @return one row an engine speed
     */
    public static Listing of(BoostAlone boost) {
        Listing.Builder rows = Listing.titled("Boost alone, as far as the limits allow")
                .figures("Engine speed", QuantityKind.ROTATION)
                .figures("Boost", QuantityKind.GAUGE_PRESSURE)
                .figures("Power at the wheels", QuantityKind.POWER)
                .words("Stopped by");
        for (BoostAlone.Point point : boost.points()) {
            rows.row(point.rpm(), point.gaugePressure(), point.wheelPower(), point.stoppedBy());
        }
        return rows.build();
    }

    /**
     * The ways to divide a wish that were weighed.
     *
     * @param candidates the ways
     * @return one row a way
     */
    public static Listing candidates(Collection<SplitCandidate> candidates) {
        Listing.Builder rows = Listing.titled("Ways to divide the wish")
                .figures("Boost", QuantityKind.GAUGE_PRESSURE)
                .figures("Met at", QuantityKind.ROTATION)
                .figures("Boost gives", QuantityKind.POWER)
                .figures("Nitrous adds", QuantityKind.POWER)
                .figures("Nitrous", QuantityKind.MASS_FLOW)
                .figures("Least margin", QuantityKind.FRACTION)
                .words("First limit")
                .words("Verdict");
        for (SplitCandidate way : candidates) {
            rows.row(
                    way.gaugePressure(),
                    way.bestRpm(),
                    way.boostWheelPower(),
                    way.nitrousWheelPower(),
                    way.nitrousFlow(),
                    way.leastMargin(),
                    way.firstLimit(),
                    way.verdict());
        }
        return rows.build();
    }

    /**
     * What one bottle gives.
     *
     * @param bottle the plan
     * @return one row a figure
     */
    public static Listing of(BottlePlan bottle) {
        return Listing.titled("One bottle at the chosen jets")
                .words("Figure")
                .mixed("Value")
                .row("charge", new Cell.Figure(bottle.charge(), QuantityKind.MASS))
                .row("temperature at the start", new Cell.Figure(bottle.startTemperature(), QuantityKind.TEMPERATURE))
                .row("pressure at the start", new Cell.Figure(bottle.startPressure(), QuantityKind.ABSOLUTE_PRESSURE))
                .row("time to the end of liquid", new Cell.Figure(bottle.seconds(), QuantityKind.TIME))
                .row("delivered as liquid", new Cell.Figure(bottle.liquidUsed(), QuantityKind.MASS))
                .row("full passes, reheated between", new Cell.Figure(bottle.passes(), QuantityKind.COUNT))
                .build();
    }

    /** How a difference of two values is shown. */
    static QuantityKind difference(QuantityKind kind) {
        return switch (kind) {
            case TEMPERATURE -> QuantityKind.TEMPERATURE_DIFFERENCE;
            case ABSOLUTE_PRESSURE, GAUGE_PRESSURE -> QuantityKind.PRESSURE_DIFFERENCE;
            default -> kind;
        };
    }
}
