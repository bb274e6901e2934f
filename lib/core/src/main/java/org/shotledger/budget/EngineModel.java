package org.shotledger.budget;

import org.shotledger.engine.FrictionModel;
import org.shotledger.engine.IndicatedEfficiency;
import org.shotledger.engine.PeakPressure;
import org.shotledger.fuel.CombustionModel;

/**
 * The models that turn a charge into power, with their calibrated constants.
 *
 * @param combustion heat released by a mixture
 * @param efficiency share of it that becomes indicated work
 * @param friction friction of the engine
 * @param peakPressure peak cylinder pressure
 */
public record EngineModel(
        CombustionModel combustion,
        IndicatedEfficiency efficiency,
        FrictionModel friction,
        PeakPressure peakPressure) {}
