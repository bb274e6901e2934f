package org.shotledger.budget;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.shotledger.build.BasePullSheet;
import org.shotledger.build.Build;
import org.shotledger.engine.Cylinder;
import org.shotledger.engine.IndicatedEfficiency;
import org.shotledger.fuel.WaterGasCombustion;

/**
 * Finds the one free constant of the engine model, the share of the constant-volume cycle that the engine reaches, so that
 * the model gives the wheel power of the base pull.
 */
public final class Calibration {
    private static final double LEAST = 0.4;
    private static final double MOST = 1.0;

    private Calibration() {}

    /**
     * Calibrates a build on its own base pull.
     *
     * @param build the build
     * @return the evaluator with calibrated models
     * @throws IllegalArgumentException when no share from 0.4 to 1.0 gives the measured power; the message names both ends
     */
    public static Evaluator of(Build build) {
        BasePullSheet pull = build.basePull();
        Conditions at = Conditions.of(build, pull.conditions());
        Demand demand = Demand.boost(at.air().pressure() + pull.gaugePressure());
        Cylinder cylinder = Cylinder.of(build.engine());
        double low = wheelPower(build, at, demand, cylinder, LEAST);
        double high = wheelPower(build, at, demand, cylinder, MOST);
        if (!(low <= pull.wheelPower() && pull.wheelPower() <= high)) {
            throw new IllegalArgumentException("The base pull of " + build.name() + " gives " + pull.wheelPower()
                    + " W at the wheels at " + pull.rpm()
                    + " rpm; by its own boost, mixture and breathing it can only lie from "
                    + low + " to " + high + " W. Check boost, conditions, volumetric efficiency and driveline loss.");
        }
        try {
            double share = new BracketingNthOrderBrentSolver(1e-10, 1e-6, 5)
                    .solve(100, x -> wheelPower(build, at, demand, cylinder, x) - pull.wheelPower(), LEAST, MOST);
            return new Evaluator(build, model(build, cylinder, share));
        } catch (MathIllegalArgumentException e) {
            throw new IllegalStateException("The calibration of " + build.name() + " did not settle.", e);
        }
    }

    private static double wheelPower(Build build, Conditions at, Demand demand, Cylinder cylinder, double share) {
        return new Evaluator(build, model(build, cylinder, share))
                .at(at, build.basePull().rpm(), demand)
                .wheelPower();
    }

    private static EngineModel model(Build build, Cylinder cylinder, double share) {
        return new EngineModel(
                WaterGasCombustion.DEFAULT,
                IndicatedEfficiency.TYPICAL.withFraction(share),
                build.friction(),
                cylinder,
                BurnTiming.USUAL,
                EngineModel.USUAL_EFFECTIVENESS);
    }
}
