package org.shotledger.bottle;

import java.util.List;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Fits the boiling law and the shell's coefficient to measured tanks: least mean square of the relative error, each tank alike. The
 * bulk rate is held: from 0.01 to 0.75 per second and kelvin the nucleation's two figures make up for it and the errors change by a
 * tenth of a per cent.
 */
final class BoilingFit {
    private static final double[] START = {0.15, 15, 0.5, 1500};
    private static final double BULK_RATE = 0.03;
    private static final double STEP = 0.3;
    private static final int MOST = 400;

    private BoilingFit() {}

    /** Surface rate, nucleation superheat and time, the shell's coefficient. */
    static double[] to(List<MeasuredTank> tanks) {
        double[] logarithms = new SimplexOptimizer(new SimpleValueChecker(1e-4, 1e-7))
                .optimize(
                        new MaxEval(MOST),
                        GoalType.MINIMIZE,
                        new InitialGuess(map(START, true)),
                        new NelderMeadSimplex(new double[] {STEP, STEP, STEP, STEP}),
                        new ObjectiveFunction(point -> misfit(tanks, map(point, false))))
                .getPoint();
        return map(logarithms, false);
    }

    private static double misfit(List<MeasuredTank> tanks, double[] constants) {
        return tanks.stream()
                .mapToDouble(tank -> error(tank, constants))
                .map(e -> e * e)
                .sum();
    }

    /** Error of one tank with given constants. */
    static double error(MeasuredTank tank, double... c) {
        BoilingLaw law = new BoilingLaw(c[0], BULK_RATE, c[1], c[2]);
        return tank.error(TwoNodeBottle.with(law).run(tank.task(c[3])));
    }

    private static double[] map(double[] values, boolean logarithm) {
        double[] mapped = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            mapped[i] = logarithm ? Math.log(values[i]) : Math.exp(values[i]);
        }
        return mapped;
    }
}
