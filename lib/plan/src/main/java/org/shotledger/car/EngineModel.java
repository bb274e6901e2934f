package org.shotledger.car;

import org.shotledger.engine.BurnTiming;
import org.shotledger.engine.Cylinder;
import org.shotledger.engine.Engine;
import org.shotledger.engine.FrictionModel;
import org.shotledger.engine.IndicatedEfficiency;
import org.shotledger.fuel.CombustionModel;
import org.shotledger.fuel.WaterGasCombustion;

/**
 * The models that turn a charge into power, with their calibrated constants.
 *
 * @param combustion heat released by a mixture
 * @param efficiency share of it that becomes indicated work
 * @param friction friction of the engine
 * @param cylinder closed cycle of one cylinder, for its peak pressure and its end gas
 * @param timing when and how fast the charge burns
 * @param nitrousShare share of the heat added by the nitrous circuit that works as well as the engine's own heat,
 *     0 to 1; it covers spark retard, heat loss and dissociation that grow with nitrous
 */
public record EngineModel(
        CombustionModel combustion,
        IndicatedEfficiency efficiency,
        FrictionModel friction,
        Cylinder cylinder,
        BurnTiming timing,
        double nitrousShare) {
    /**
     * Effectiveness with which the model gives the trade's 0.8 lb of nitrous oxide in 10 s for each 100 hp: common practice,
     * no source. Peak pressure is computed with the whole heat, which is the safe side.
     */
    public static final double USUAL_NITROUS_SHARE = 0.80;

    /**
     * Models before calibration, at a usual share of the ideal cycle.
     *
     * @param engine the engine
     * @param friction its friction
     * @return the models
     */
    public static EngineModel uncalibrated(Engine engine, FrictionModel friction) {
        return new EngineModel(
                WaterGasCombustion.DEFAULT,
                IndicatedEfficiency.TYPICAL,
                friction,
                Cylinder.of(engine),
                BurnTiming.USUAL,
                USUAL_NITROUS_SHARE);
    }

    /**
     * The same with another share of the ideal cycle's work.
     *
     * @param share 0 to 1
     * @return the changed models
     */
    public EngineModel withCycleShare(double share) {
        return new EngineModel(combustion, efficiency.withFraction(share), friction, cylinder, timing, nitrousShare);
    }
}
