package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.verdict;
import static org.shotledger.table.Column.words;
import static org.shotledger.units.QuantityKind.BORE;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.POWER;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Alternative;
import org.shotledger.plan.Attainable;
import org.shotledger.table.Listing;
import org.shotledger.whathelps.Attempt;
import org.shotledger.whathelps.WhatHelps;

/** What a plan weighed, as tables. */
public final class PlanTables {
    private PlanTables() {}

    /**
     * The setups that were weighed.
     *
     * @param alternatives the setups
     * @return one row a setup
     */
    public static Listing alternatives(List<Alternative> alternatives) {
        return Listing.of(
                "What else was weighed, with jets of exact size",
                alternatives,
                column("Boost", GAUGE_PRESSURE, Alternative::gaugePressure),
                column("Nitrous jet", BORE, way -> bore(way, JetPair::nitrousBore)),
                column("Fuel jet", BORE, way -> bore(way, JetPair::fuelBore)),
                column("Power", POWER, Alternative::wheelPower),
                column("of which nitrous", POWER, Alternative::nitrousPower),
                column("Nitrous", MASS_FLOW, Alternative::nitrousFlow),
                column("Least margin", FRACTION, PlanTables::margin),
                words("First limit", Alternative::firstLimit),
                verdict("Verdict", Alternative::verdict));
    }

    /** Without a number where the models have no answer in some case: the first limit says so. */
    private static double margin(Alternative way) {
        return Double.isInfinite(way.leastMargin()) ? Double.NaN : way.leastMargin();
    }

    private static double bore(Alternative way, ToDoubleFunction<JetPair> hole) {
        return way.setup().jets().map(hole::applyAsDouble).orElse(Double.NaN);
    }

    /**
     * The most power inside every limit.
     *
     * @param attainable the answer
     * @return one row
     */
    public static Listing of(Attainable attainable) {
        return Listing.of(
                "The most power inside every limit in every case",
                List.of(attainable),
                column("At the wheels", POWER, Attainable::wheelPower),
                words("Stopped by", Attainable::limit));
    }

    /**
     * What would help a plan that is tight or broken.
     *
     * @param helps what was tried
     * @return one row a change, in the order of cost
     */
    public static Listing of(WhatHelps helps) {
        return Listing.of(
                helps.cheapest()
                        .map(found -> "What would help; the cheapest single change: "
                                + found.change().words() + ", " + found.before() + " to " + found.after())
                        .orElse("What would help: no single change that was tried mends the plan"),
                helps.attempts(),
                words("Change", tried -> tried.change().words()),
                words("Cost", tried -> tried.change().cost().words()),
                words("From", Attempt::before),
                words("To", Attempt::after),
                column("Power gained", POWER, Attempt::powerGained),
                column("Margin gained", FRACTION, Attempt::marginGained),
                words("Limit then", Attempt::limit),
                verdict("Verdict then", Attempt::verdict));
    }
}
