package org.shotledger.car;

import org.shotledger.boost.ChargeCooler;
import org.shotledger.boost.CompressorMap;
import org.shotledger.boost.FlowLoss;
import org.shotledger.boost.Turbine;

/**
 * Turbocharger and charge cooling.
 *
 * @param map compressor map with its speed limit
 * @param turbine turbine with its exhaust
 * @param inlet pressure loss before the compressor
 * @param cooler charge cooler; its cooling air is at ambient temperature
 * @param exhaustTemperature gas temperature before the turbine at full load, K
 * @param boostCeiling highest plenum pressure above ambient that the builder allows, Pa
 */
public record Turbo(
        CompressorMap map,
        Turbine turbine,
        FlowLoss inlet,
        ChargeCooler cooler,
        double exhaustTemperature,
        double boostCeiling) {}
