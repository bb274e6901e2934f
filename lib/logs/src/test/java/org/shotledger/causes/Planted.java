package org.shotledger.causes;

import java.util.function.UnaryOperator;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Outcome;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;

/**
 * What was really run and how it was read, changed part by part; it knows nothing of the fit.
 *
 * @param car what is built
 * @param setup what was set
 * @param at what the world was
 * @param pumpVoltage supply at the nitrous fuel pump; NaN for that of the case
 * @param lambdaReading factor on the lambda that is logged
 * @param powerReading factor on the power that is logged
 * @param bottleReading added to the bottle pressure that is logged, Pa
 */
record Planted(
        Car car,
        Setup setup,
        Case at,
        double pumpVoltage,
        double lambdaReading,
        double powerReading,
        double bottleReading) {

    static Planted sound(Outcome outcome) {
        return new Planted(outcome.car(), outcome.setup(), outcome.at(), Double.NaN, 1, 1, 0);
    }

    Planted car(UnaryOperator<Car> change) {
        return new Planted(change.apply(car), setup, at, pumpVoltage, lambdaReading, powerReading, bottleReading);
    }

    Planted setup(UnaryOperator<Setup> change) {
        return new Planted(car, change.apply(setup), at, pumpVoltage, lambdaReading, powerReading, bottleReading);
    }

    Planted world(UnaryOperator<Case> change) {
        return new Planted(car, setup, change.apply(at), pumpVoltage, lambdaReading, powerReading, bottleReading);
    }

    Planted times(Factor factor, double by) {
        return world(c -> c.with(factor, by * c.factors().of(factor)));
    }

    Planted pump(double volts) {
        return new Planted(car, setup, at, volts, lambdaReading, powerReading, bottleReading);
    }

    Planted lambda(double factor) {
        return new Planted(car, setup, at, pumpVoltage, factor * lambdaReading, powerReading, bottleReading);
    }

    Planted power(double factor) {
        return new Planted(car, setup, at, pumpVoltage, lambdaReading, factor * powerReading, bottleReading);
    }

    Planted bottleGauge(double added) {
        return new Planted(car, setup, at, pumpVoltage, lambdaReading, powerReading, bottleReading + added);
    }
}
