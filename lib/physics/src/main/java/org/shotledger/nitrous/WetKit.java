package org.shotledger.nitrous;

import java.util.Optional;

/**
 * A wet kit without its jets.
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
            throw new IllegalArgumentException("The wet kit has " + nozzles + " nozzles; allowed is 1 to 16.");
        }
    }
}
