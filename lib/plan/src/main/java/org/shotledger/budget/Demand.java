package org.shotledger.budget;

import java.util.Optional;
import org.shotledger.nitrous.JetPair;

/**
 * What is asked of the engine at one moment.
 *
 * @param plenumPressure plenum pressure the boost control holds, Pa absolute
 * @param jets jets with the nitrous on, or empty with it off
 */
public record Demand(double plenumPressure, Optional<JetPair> jets) {

    /**
     * Boost alone.
     *
     * @param plenumPressure plenum pressure, Pa absolute
     * @return the demand with the nitrous off
     */
    public static Demand boost(double plenumPressure) {
        return new Demand(plenumPressure, Optional.empty());
    }

    /**
     * The same boost with the nitrous on.
     *
     * @param pair the jets of each nozzle
     * @return the demand with nitrous
     */
    public Demand with(JetPair pair) {
        return new Demand(plenumPressure, Optional.of(pair));
    }
}
