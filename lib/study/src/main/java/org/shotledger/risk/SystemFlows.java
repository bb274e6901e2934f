package org.shotledger.risk;

import java.util.List;
import org.shotledger.evaluate.PointModel;
import org.shotledger.flow.FeedFlow;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.FuelCircuit.Pressures;
import org.shotledger.nitrous.WetKit;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;
import org.shotledger.supply.Regulator;

/** What the two circuits of the nitrous system pass in a scenario, with jets blocked or solenoids shut. */
final class SystemFlows {
    private SystemFlows() {}

    /**
     * The operating points of a scenario; its flows are always given, so the model need not solve the feed path itself. On the main rail
     * the injectors go on with the times of the tune: the pressure of the nitrous fuel tells the model where the rail really stands.
     */
    static PointModel model(Scenario s) {
        Setup setup = s.car().nitrous().fuel().onMainRail() ? s.setup().withMainRegulator(s.tuned()) : s.setup();
        return PointModel.of(s.car(), setup.withoutJets(), s.at(), s.bottle());
    }

    /** The nitrous flow against a plenum pressure; none when no jet is open. */
    static FeedFlow nitrous(Scenario s, double plenum) {
        if (!s.flows()) {
            return new FeedFlow(0, "", "No nitrous jet is open.", List.of(), List.of(), s.bottle(), 0, 0);
        }
        WetKit open = s.car().nitrous().withNozzles(s.nitrousOpen());
        return open.nitrousPath(s.jets())
                .flow(s.bottle(), plenum)
                .times(s.at().factors().of(Factor.NITROUS_FLOW));
    }

    /** The nitrous fuel; with no jet open the regulator holds the rail and the jets stand at plenum pressure. */
    static FuelFlow fuel(Scenario s, PointModel model, double plenum) {
        Pressures at = model.pressures(plenum);
        Regulator regulator = s.setup().nitrousRegulator();
        double density = model.nitrousFuelDensity();
        if (s.fuelOpen() == 0) {
            double rail = regulator.railPressure(at.ambient(), at.plenum());
            double capacity = s.car()
                    .nitrous()
                    .fuel()
                    .cell()
                    .map(cell -> density * cell.pumps().capacity(rail - at.ambient(), s.at().voltage()))
                    .orElse(Double.POSITIVE_INFINITY);
            return new FuelFlow(0, rail, plenum, capacity, false);
        }
        return s.car()
                .nitrous()
                .withNozzles(s.fuelOpen())
                .fuelFlow(density, s.jets(), at, regulator, s.at().voltage())
                .times(s.at().factors().of(Factor.FUEL_JET_FLOW));
    }
}
