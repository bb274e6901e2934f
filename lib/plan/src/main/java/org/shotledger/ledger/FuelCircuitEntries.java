package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.PRESSURE_DIFFERENCE;
import static org.shotledger.units.QuantityKind.RATIO;

import org.shotledger.car.SheetPaths;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.FuelCircuit.Pressures;
import org.shotledger.nitrous.WetKit;
import org.shotledger.setup.Factor;
import org.shotledger.supply.Regulator;

/** The nitrous fuel from its regulator to the jets. */
final class FuelCircuitEntries {
    private static final String[] INPUTS = {
        "ambient-pressure",
        "fuel-pressure",
        "boost-reference",
        "plenum-pressure",
        "nitrous-fuel-density",
        "fuel-jet",
        "voltage"
    };

    private FuelCircuitEntries() {}

    static void write(LedgerPen pen, Subject from) {
        Regulator set = from.setup().nitrousRegulator();
        FuelFlow flow = from.point().nitrousFuel();
        pen.given(
                        "fuel-pressure",
                        "set pressure of the nitrous fuel",
                        "p_F",
                        PRESSURE_DIFFERENCE,
                        set.basePressure(),
                        SheetPaths.NITROUS_FUEL_PRESSURE,
                        "this setup")
                .enter();
        pen.given(
                        "boost-reference",
                        "boost reference of its regulator",
                        "k_b",
                        RATIO,
                        set.boostReference(),
                        SheetPaths.NITROUS_FUEL_REFERENCE,
                        "this setup")
                .enter();
        var rail = pen.calculated(
                "fuel-rail", "pressure at the nitrous fuel rail", "p_r", ABSOLUTE_PRESSURE, flow.railPressure());
        if (flow.pumpLimited()) {
            rail.by("the pressure at which pump and jets pass the same flow; the regulator's is not held", "pump curve")
                    .on(INPUTS)
                    .from(x -> flow(from, x).railPressure());
        } else {
            rail.by("p_a + p_F + k_b (p_m - p_a)", "definition")
                    .on("ambient-pressure", "fuel-pressure", "boost-reference", "plenum-pressure")
                    .from(x -> x[0] + x[1] + x[2] * (x[3] - x[0]));
        }
        double factor = from.factor(Factor.FUEL_JET_FLOW);
        pen.calculated("nitrous-fuel-flow", "nitrous fuel flow", "m_F", MASS_FLOW, flow.massFlow())
                .by(
                        "sqrt(2 rho (p_r - p_m)) over solenoid and jets in series" + EngineEntries.times(factor),
                        "Bernoulli with discharge coefficients")
                .on(INPUTS)
                .from(x -> factor * flow(from, x).massFlow());
    }

    private static FuelFlow flow(Subject from, double... x) {
        WetKit kit = from.car().nitrous();
        Regulator regulator = new Regulator(from.setup().nitrousRegulator().name(), x[1], x[2]);
        return kit.fuel().flow(x[4], kit.nozzles(), x[5], new Pressures(x[0], x[3], x[3]), regulator, x[6]);
    }
}
