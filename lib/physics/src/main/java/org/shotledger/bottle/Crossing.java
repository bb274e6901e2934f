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

/** Stops the integration when a function of the state falls through zero. */
final class Crossing implements ODEEventDetector, ODEEventHandler {
    private static final double LONGEST_CHECK = 1e6;
    /** So close to zero the sign is chance, and the search for a root next to the start of a leg could fail. */
    private static final double ROUNDING = 1e-11;

    private final ToDoubleFunction<double[]> function;
    private final Runnable action;
    private final BracketedUnivariateSolver<UnivariateFunction> solver =
            new BracketingNthOrderBrentSolver(0, 1e-9, 0, 5);

    /** True once it stopped the integration. */
    boolean happened;

    /**
     * Makes a crossing.
     *
     * @param function positive before, negative after
     * @param action what then changes
     */
    Crossing(ToDoubleFunction<double[]> function, Runnable action) {
        this.function = function;
        this.action = action;
    }

    /** Whether the state lies beyond already, so that nothing need be integrated to get there. */
    boolean beyond(double[] y) {
        return function.applyAsDouble(y) <= ROUNDING;
    }

    void act() {
        action.run();
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return AdaptableInterval.of(LONGEST_CHECK);
    }

    @Override
    public int getMaxIterationCount() {
        return 200;
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
        if (increasing) {
            return Action.CONTINUE;
        }
        happened = true;
        return Action.STOP;
    }
}
