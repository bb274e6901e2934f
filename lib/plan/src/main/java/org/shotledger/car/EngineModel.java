package org.shotledger.car;

import java.util.Optional;
import org.shotledger.curve.Curve;
import org.shotledger.engine.BurnPhasing;
import org.shotledger.engine.ChenFlynn;
import org.shotledger.engine.Cylinder;
import org.shotledger.engine.Engine;
import org.shotledger.engine.EngineFactor;
import org.shotledger.engine.ExhaustProbe;
import org.shotledger.engine.KnockModel;
import org.shotledger.engine.NitrousFactor;

/**
 * The models that turn a charge into power, with their calibrated constants.
 *
 * @param factor share of the fuel-air cycle's work that the engine reaches
 * @param nitrous share of the work that nitrous oxide adds which arrives
 * @param friction friction of the engine
 * @param cylinder closed cycle of one cylinder, for pressure, exhaust and the cost of retard
 * @param phasing when and how fast the charge burns
 * @param probe exhaust temperature before the turbine from that of the cylinder
 * @param knock knock against the base pull
 * @param baseKnock knock index of the base pull over engine speed; empty before calibration
 * @param backPressure exhaust over plenum pressure at which the breathing table holds; NaN before calibration
 * @param cycles the fuel-air cycles of this engine
 */
public record EngineModel(
        EngineFactor factor,
        NitrousFactor nitrous,
        ChenFlynn friction,
        Cylinder cylinder,
        BurnPhasing phasing,
        ExhaustProbe probe,
        KnockModel knock,
        Optional<Curve> baseKnock,
        double backPressure,
        CycleTables cycles) {
    /** Burning with nitrous oxide takes this share of the usual time: common practice, no source. */
    public static final double NITROUS_DURATION = 0.9;

    /** Heywood, chapter 5: 0.8 to 0.9 at best timing; only a start. */
    private static final double USUAL_FACTOR = 0.8;

    /**
     * Models before calibration.
     *
     * @param engine the engine
     * @param friction its friction
     * @param cycles its fuel-air cycles
     * @return the models at usual values
     */
    public static EngineModel uncalibrated(Engine engine, ChenFlynn friction, CycleTables cycles) {
        return new EngineModel(
                new EngineFactor(USUAL_FACTOR),
                NitrousFactor.NOT_MEASURED,
                friction,
                Cylinder.of(engine),
                BurnPhasing.USUAL,
                ExhaustProbe.NOT_MEASURED,
                KnockModel.BEST,
                Optional.empty(),
                Double.NaN,
                cycles);
    }

    /**
     * The same with another share of the cycle's work.
     *
     * @param other the share
     * @return the changed models
     */
    public EngineModel with(EngineFactor other) {
        return new EngineModel(
                other, nitrous, friction, cylinder, phasing, probe, knock, baseKnock, backPressure, cycles);
    }

    /**
     * The same with another share of the nitrous work.
     *
     * @param other the share
     * @return the changed models
     */
    public EngineModel with(NitrousFactor other) {
        return new EngineModel(
                factor, other, friction, cylinder, phasing, probe, knock, baseKnock, backPressure, cycles);
    }

    /**
     * The same with another cylinder.
     *
     * @param other the closed cycle
     * @return the changed models
     */
    public EngineModel with(Cylinder other) {
        return new EngineModel(
                factor, nitrous, friction, other, phasing, probe, knock, baseKnock, backPressure, cycles);
    }

    /**
     * The same with what the base pull tells beside its power.
     *
     * @param exhaust exhaust temperature before the turbine
     * @param knockIndex knock index of the pull over engine speed
     * @param pressureRatio exhaust over plenum pressure of the pull
     * @return the changed models
     */
    public EngineModel withBase(ExhaustProbe exhaust, Curve knockIndex, double pressureRatio) {
        return new EngineModel(
                factor,
                nitrous,
                friction,
                cylinder,
                phasing,
                exhaust,
                knock,
                Optional.of(knockIndex),
                pressureRatio,
                cycles);
    }
}
