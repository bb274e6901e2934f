package org.shotledger.pass;

import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** A function of the state that rises through zero; it ends the leg, or is only taken note of. */
final class PassEvent implements ODEEventDetector, ODEEventHandler {
    /** Longest time between two looks, s: shorter than any pair of crossings that matters. */
    private static final double CHECK = 0.2;
    /** Accuracy of the time of an event, s. */
    private static final double ACCURACY = 1e-10;

    /** True once it happened. */
    boolean happened;

    private final ToDoubleFunction<double[]> function;
    private final boolean stops;
    private final Consumer<ODEStateAndDerivative> note;
    private final BracketedUnivariateSolver<UnivariateFunction> solver =
            new BracketingNthOrderBrentSolver(0, ACCURACY, 0, 5);

    private PassEvent(ToDoubleFunction<double[]> function, boolean stops, Consumer<ODEStateAndDerivative> note) {
        this.function = function;
        this.stops = stops;
        this.note = note;
    }

    static PassEvent stop(ToDoubleFunction<double[]> function) {
        return new PassEvent(function, true, state -> {});
    }

    static PassEvent note(ToDoubleFunction<double[]> function, Consumer<ODEStateAndDerivative> note) {
        return new PassEvent(function, false, note);
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return AdaptableInterval.of(CHECK);
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
        if (!increasing) {
            return Action.CONTINUE;
        }
        happened = true;
        note.accept(state);
        return stops ? Action.STOP : Action.CONTINUE;
    }
}
