package org.shotledger.nitrous;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shotledger.flow.FeedPath;
import org.shotledger.flow.FlowBand;
import org.shotledger.flow.NitrousJet;
import org.shotledger.flow.OrificeLaw;
import org.shotledger.supply.Regulator;

/**
 * A nitrous system without its jets.
 *
 * @param position where the nozzles spray
 * @param nozzles number of nozzles, 1 to 16; each carries one pair of jets
 * @param nitrous the nitrous side
 * @param fuel the fuel side
 * @param ladder the jets that can be had
 * @param passages the passages inside each nozzle; empty when the sheet does not state them
 * @param tests flow tests of its jets in the order in which they were made; what they found stands in both circuits' jets
 */
public record WetKit(
        NozzlePosition position,
        int nozzles,
        NitrousCircuit nitrous,
        FuelCircuit fuel,
        JetLadder ladder,
        Optional<NozzlePassages> passages,
        List<FlowTested> tests) {

    /** Checks the count. */
    public WetKit {
        tests = List.copyOf(tests);
        if (nozzles < 1 || nozzles > 16) {
            throw new IllegalArgumentException("The nitrous system has " + nozzles + " nozzles; allowed is 1 to 16.");
        }
    }

    /**
     * A system whose jets nobody has tested.
     *
     * @param position where the nozzles spray
     * @param nozzles number of nozzles, 1 to 16; each carries one pair of jets
     * @param nitrous the nitrous side
     * @param fuel the fuel side
     * @param ladder the jets that can be had
     * @param passages the passages inside each nozzle; empty when the sheet does not state them
     */
    public WetKit(
            NozzlePosition position,
            int nozzles,
            NitrousCircuit nitrous,
            FuelCircuit fuel,
            JetLadder ladder,
            Optional<NozzlePassages> passages) {
        this(position, nozzles, nitrous, fuel, ladder, passages, List.of());
    }

    /**
     * The nitrous feed path with a pair of jets, the nozzles' passages in series when they are known.
     *
     * @param jets the pair in every nozzle
     * @return the path from the bottle's liquid to the nozzles
     */
    public FeedPath nitrousPath(JetPair jets) {
        return nitrous.path(
                nozzles,
                jets.nitrousBore(),
                passages.map(NozzlePassages::nitrousBore)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()));
    }

    /**
     * What the fuel circuit passes with a pair of jets, the nozzles' passages in series when they are known.
     *
     * @param density fuel density, kg/m3
     * @param jets the pair in every nozzle
     * @param at the pressures around the circuit
     * @param regulator its regulator as it is set
     * @param voltage supply voltage at the pump's wiring, V
     * @return the flow; zero when the rail is not above the nozzle
     */
    public FuelCircuit.FuelFlow fuelFlow(
            double density, JetPair jets, FuelCircuit.Pressures at, Regulator regulator, double voltage) {
        return fuel.flow(density, fuelJets(jets.fuelBore()), at, regulator, voltage);
    }

    /**
     * The fuel jet that passes a wanted flow.
     *
     * @param massFlow fuel through all jets, kg/s, positive
     * @param density fuel density, kg/m3
     * @param at the pressures around the circuit
     * @param regulator its regulator as it is set
     * @return hole diameter of each jet, m
     * @throws IllegalArgumentException when solenoid and passages alone let less pass
     */
    public double fuelBoreFor(double massFlow, double density, FuelCircuit.Pressures at, Regulator regulator) {
        return fuel.boreFor(massFlow, density, fuelJets(0), at, regulator);
    }

    /**
     * The same system with some of its nozzles only, as when others are blocked.
     *
     * @param open number of nozzles, 1 to 16
     * @return the changed system
     */
    public WetKit withNozzles(int open) {
        return new WetKit(position, open, nitrous, fuel, ladder, passages, tests);
    }

    /**
     * The same system with another fuel side.
     *
     * @param circuit the fuel side
     * @return the changed system
     */
    public WetKit withFuel(FuelCircuit circuit) {
        return new WetKit(position, nozzles, nitrous, circuit, ladder, passages, tests);
    }

    /**
     * The same system with another nitrous side.
     *
     * @param circuit the nitrous side
     * @return the changed system
     */
    public WetKit withNitrous(NitrousCircuit circuit) {
        return new WetKit(position, nozzles, circuit, fuel, ladder, passages, tests);
    }

    /**
     * The same system whose nitrous jets follow another law; a factor that a flow test found was relative to the old one and goes.
     *
     * @param law the law
     * @return the changed system
     * @throws IllegalArgumentException when the law does not cover these jets
     */
    public WetKit withFlowLaw(OrificeLaw law) {
        NitrousJet jet = nitrous.jet();
        if (law == OrificeLaw.LONG_ORIFICE && !(jet.lengthToBore() >= 2 && jet.lengthToBore() <= 10)) {
            throw new IllegalArgumentException("The law \"" + law.name()
                    + "\" covers jets 2 to 10 bores long, these are "
                    + (Double.isNaN(jet.lengthToBore()) ? "of a length not stated" : jet.lengthToBore() + " bores long")
                    + "; state their length in the sheet or choose \"" + OrificeLaw.CLASS.name() + "\".");
        }
        return withNitrous(nitrous.withJet(new NitrousJet(
                jet.name(),
                jet.bore(),
                jet.lengthToBore(),
                jet.edge(),
                jet.dischargeCoefficient(),
                law,
                Optional.empty(),
                jet.place())));
    }

    /**
     * The same system after one more flow test.
     *
     * @param tested the test and what it told
     * @return the changed system
     */
    public WetKit after(FlowTested tested) {
        List<FlowTested> all = new ArrayList<>(tests);
        all.add(tested);
        FlowBand band = tested.after().band();
        boolean own = tested.side() == JetSide.NITROUS;
        return new WetKit(
                position,
                nozzles,
                own ? nitrous.withJet(nitrous.jet().withMeasured(band)) : nitrous,
                own ? fuel : fuel.withJet(fuel.jet().withMeasured(band)),
                ladder,
                passages,
                all);
    }

    /**
     * The last flow test of one side.
     *
     * @param side which jets
     * @return the test; empty when nobody has tested them
     */
    public Optional<FlowTested> lastTest(JetSide side) {
        return tests.stream().filter(t -> t.side() == side).reduce((first, second) -> second);
    }

    private FuelCircuit.Jets fuelJets(double bore) {
        return new FuelCircuit.Jets(
                nozzles, bore, passages.map(NozzlePassages::fuelBore).orElse(Double.POSITIVE_INFINITY));
    }
}
