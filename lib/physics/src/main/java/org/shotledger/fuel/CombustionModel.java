package org.shotledger.fuel;

/** How much of the fuel's heat a mixture frees in the engine. */
public sealed interface CombustionModel permits OxygenLimited, WaterGasCombustion {
    /**
     * Burns a mixture.
     *
     * @param mixture what flows in
     * @return the heat freed, by origin
     */
    HeatRelease burn(Mixture mixture);

    /**
     * What the model is, for the ledger.
     *
     * @return one line with its source
     */
    String basis();
}
