package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.PRESSURE_DIFFERENCE;
import static org.shotledger.units.QuantityKind.RATIO;

import java.util.Arrays;
import org.shotledger.car.SheetPaths;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.FuelCircuit.Pressures;
import org.shotledger.nitrous.FuelJet;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.JetSide;
import org.shotledger.nitrous.WetKit;
import org.shotledger.setup.Factor;
import org.shotledger.supply.Regulator;

/** The nitrous fuel from its regulator to the jets. */
final class FuelCircuitEntries {
    /** The inputs before the factor of a flow test. */
    private static final int AT = 7;

    private FuelCircuitEntries() {}

    static void write(LedgerPen pen, Subject from) {
        boolean onRail = RailEntries.onRail(from);
        if (!onRail) {
            setting(pen, from.setup().nitrousRegulator());
        }
        String[] inputs = JetFactorEntries.write(
                pen,
                from,
                JetSide.FUEL,
                "ambient-pressure",
                onRail ? "main-pressure" : "fuel-pressure",
                onRail ? "main-reference" : "boost-reference",
                "plenum-pressure",
                "nitrous-fuel-density",
                "fuel-jet",
                "voltage");
        if (!onRail) {
            rail(pen, from, inputs);
        }
        FuelFlow flow = from.point().nitrousFuel();
        double factor = from.factor(Factor.FUEL_JET_FLOW);
        FuelJet jet = from.car().nitrous().fuel().jet();
        var entry = pen.calculated("nitrous-fuel-flow", "nitrous fuel flow", "m_F", MASS_FLOW, flow.massFlow())
                .uncertain(flow.massFlow() * jet.factors().logarithmicDeviation())
                .by(
                        "sqrt(2 rho (p_r - p_m)) over solenoid, jets and nozzle passages in series"
                                + EngineEntries.times(factor) + JetFactorEntries.outside(from, JetSide.FUEL),
                        "Bernoulli with discharge coefficients; coefficient of the jets: " + jet.source())
                .provenance(jet.measured().isPresent() ? Provenance.MEASURED : Provenance.CALCULATED);
        if (RailEntries.fallen(from)) {
            String[] fallen = Arrays.copyOf(inputs, inputs.length + 1);
            fallen[inputs.length] = "main-rail";
            entry.on(fallen)
                    .from(x -> factor
                            * flow(from, Arrays.copyOf(x, inputs.length))
                                    .at(x[inputs.length], x[3])
                                    .massFlow());
        } else {
            entry.on(inputs).from(x -> factor * flow(from, x).massFlow());
        }
    }

    private static void setting(LedgerPen pen, Regulator set) {
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
    }

    private static void rail(LedgerPen pen, Subject from, String... inputs) {
        FuelFlow flow = from.point().nitrousFuel();
        var rail = pen.calculated(
                "fuel-rail", "pressure at the nitrous fuel rail", "p_r", ABSOLUTE_PRESSURE, flow.railPressure());
        if (flow.pumpLimited()) {
            rail.by("the pressure at which pump and jets pass the same flow; the regulator's is not held", "pump curve")
                    .on(inputs)
                    .from(x -> flow(from, x).railPressure());
        } else {
            rail.by("p_a + p_F + k_b (p_m - p_a)", "definition")
                    .on("ambient-pressure", "fuel-pressure", "boost-reference", "plenum-pressure")
                    .from(x -> x[0] + x[1] + x[2] * (x[3] - x[0]));
        }
    }

    private static FuelFlow flow(Subject from, double... x) {
        WetKit kit = x.length > AT
                ? JetFactorEntries.with(from.car(), JetSide.FUEL, x[AT]).nitrous()
                : from.car().nitrous();
        Regulator regulator = new Regulator(from.setup().nitrousRegulator().name(), x[1], x[2]);
        return kit.fuelFlow(x[4], new JetPair(x[5], x[5]), new Pressures(x[0], x[3], x[3]), regulator, x[6]);
    }
}
