package org.shotledger.nitrous;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shotledger.flow.FeedPath;
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
 */
public record WetKit(
        NozzlePosition position,
        int nozzles,
        NitrousCircuit nitrous,
        FuelCircuit fuel,
        JetLadder ladder,
        Optional<NozzlePassages> passages) {

    /** Checks the count. */
    public WetKit {
        if (nozzles < 1 || nozzles > 16) {
            throw new IllegalArgumentException("The nitrous system has " + nozzles + " nozzles; allowed is 1 to 16.");
        }
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
        return new WetKit(position, open, nitrous, fuel, ladder, passages);
    }

    /**
     * The same system with another fuel side.
     *
     * @param circuit the fuel side
     * @return the changed system
     */
    public WetKit withFuel(FuelCircuit circuit) {
        return new WetKit(position, nozzles, nitrous, circuit, ladder, passages);
    }

    private FuelCircuit.Jets fuelJets(double bore) {
        return new FuelCircuit.Jets(
                nozzles, bore, passages.map(NozzlePassages::fuelBore).orElse(Double.POSITIVE_INFINITY));
    }
}
