package org.shotledger.explore;

import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;
import org.shotledger.units.Amount;
import org.shotledger.units.GaugePressure;

/**
 * Where the sliders stand. What stands where the plan put it is the plan's own figure, to the last digit.
 *
 * @param plan the plan that is explored
 * @param nitrous whether the nitrous is used
 * @param nitrousJet hole of the nitrous jet of every nozzle
 * @param fuelJet hole of its fuel jet
 * @param boost highest boost of the table that is run
 * @param fuelPressure before the nitrous system's fuel jets, engine off
 * @param bottle temperature of the bottle at the start of a pass
 * @param retard spark later than the builder's own timing while the nitrous flows, crank degrees
 * @param ethanol ethanol in the main fuel by volume, 0 to 1; not-a-number where it cannot change
 * @param air air temperature
 * @param altitude altitude whose standard pressure the air has
 * @param moment the moment in the bottle's day
 */
public record Position(
        Plan plan,
        boolean nitrous,
        Amount nitrousJet,
        Amount fuelJet,
        GaugePressure boost,
        GaugePressure fuelPressure,
        Amount bottle,
        double retard,
        double ethanol,
        Amount air,
        Amount altitude,
        BottleState moment) {

    /**
     * The setup there.
     *
     * @return the plan's own where nothing of it was moved
     */
    public Setup setup() {
        Position start = Start.of(plan, this);
        Setup setup = plan.setup();
        if (nitrous && !(start.nitrous && jetsAre(start))) {
            setup = setup.withJets(nitrousJet, fuelJet);
        } else if (!nitrous && start.nitrous) {
            setup = setup.withoutJets();
        }
        setup = boost.equals(start.boost) ? setup : setup.withHighestBoost(boost);
        setup = fuelPressure.equals(start.fuelPressure) ? setup : setup.withNitrousFuelPressure(fuelPressure);
        setup = bottle.equals(start.bottle) ? setup : setup.withBottleTemperature(bottle);
        return retard == start.retard ? setup : setup.withRetard(retard);
    }

    /**
     * The case there.
     *
     * @return the plan's stated case where nothing of it was moved
     */
    public Case at() {
        Position start = Start.of(plan, this);
        Case at = plan.job().stated();
        at = air.equals(start.air) ? at : at.withAirTemperature(air);
        at = altitude.equals(start.altitude) ? at : at.withAltitude(altitude);
        at = Double.compare(ethanol, start.ethanol) == 0 ? at : at.withFuel(ethanol);
        return moment.equals(start.moment) ? at : at.withBottle(moment);
    }

    boolean jetsAre(Position other) {
        return nitrousJet.equals(other.nitrousJet) && fuelJet.equals(other.fuelJet);
    }

    /**
     * What happens there.
     *
     * @return the plan's own outcome where nothing was moved, else one worked out in full
     */
    public Outcome outcome() {
        Setup setup = setup();
        Case at = at();
        return setup.equals(plan.setup()) && at.equals(plan.job().stated())
                ? plan.stated()
                : Evaluate.of(plan.car(), setup, at);
    }
}
