package org.shotledger.bottle;

import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** An event that stops the integration when a function of the state falls (or rises) through zero. */
final class Crossing implements ODEEventDetector, ODEEventHandler {
    private static final double LONGEST_CHECK = 1e6;

    final BottleEvent.Kind kind;
    private final ToDoubleFunction<double[]> function;
    private final boolean falling;
    private final BracketedUnivariateSolver<UnivariateFunction> solver =
            new BracketingNthOrderBrentSolver(0, 1e-9, 0, 5);

    /** True once it stopped the integration. */
    boolean happened;

    Crossing(BottleEvent.Kind kind, boolean falling, ToDoubleFunction<double[]> function) {
        this.kind = kind;
        this.falling = falling;
        this.function = function;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return AdaptableInterval.of(LONGEST_CHECK);
    }

    @Override
    public int getMaxIterationCount() {
        return 100;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
        return solver;
    }

    @Override
    public ODEEventHandler getHandler() {
        return this;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
        return function.applyAsDouble(state.getPrimaryState());
    }

    @Override
    public Action eventOccurred(ODEStateAndDerivative state, ODEEventDetector detector, boolean increasing) {
        if (increasing == falling) {
            return Action.CONTINUE;
        }
        happened = true;
        return Action.STOP;
    }
}
