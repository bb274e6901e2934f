package org.shotledger.build;

import org.shotledger.fuel.Fuel;

/**
 * The two fuels.
 *
 * @param main fuel of the engine's own injectors
 * @param nitrous fuel of the wet kit's own supply
 * @param temperature temperature of both as they are injected, K
 * @param mainEvaporated share of the main fuel evaporated before the intake valve closes, 0 to 1
 * @param nitrousEvaporated share of the nitrous fuel evaporated before the intake valve closes, 0 to 1
 */
public record FuelStreams(
        Fuel main, Fuel nitrous, double temperature, double mainEvaporated, double nitrousEvaporated) {}
