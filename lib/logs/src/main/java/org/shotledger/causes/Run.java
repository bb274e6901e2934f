package org.shotledger.causes;

import java.util.function.UnaryOperator;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Outcome;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;

/**
 * What may have been run, and how it was read.
 *
 * @param car what is built
 * @param setup what was set
 * @param at what the world was
 * @param boost plenum pressure above what the setup asks for, Pa
 * @param bottle bottle above the temperature of the setup's pass, K
 * @param pumpLoss what the nitrous fuel pump lacks of the supply voltage, V
 * @param gauges what the sensors read beside the truth
 */
record Run(Car car, Setup setup, Case at, double boost, double bottle, double pumpLoss, Gauges gauges) {

    static Run of(Outcome outcome) {
        return new Run(outcome.car(), outcome.setup(), outcome.at(), 0, 0, 0, Gauges.TRUE);
    }

    /** Whether the engine runs as in another while the nitrous is off. */
    boolean withoutNitrousAs(Run other) {
        Case alike = at.with(Factor.NITROUS_FLOW, other.at.factors().of(Factor.NITROUS_FLOW))
                .with(Factor.FUEL_JET_FLOW, other.at.factors().of(Factor.FUEL_JET_FLOW))
                .with(Factor.NITROUS_WORK, other.at.factors().of(Factor.NITROUS_WORK));
        return boost == other.boost
                && car.with(other.car.nitrous()).equals(other.car)
                && other.setup
                        .ownRegulator()
                        .map(setup::withNitrousRegulator)
                        .orElse(setup)
                        .equals(other.setup)
                && alike.equals(other.at);
    }

    Run withCar(Car other) {
        return new Run(other, setup, at, boost, bottle, pumpLoss, gauges);
    }

    Run withSetup(Setup other) {
        return new Run(car, other, at, boost, bottle, pumpLoss, gauges);
    }

    Run withCase(Case other) {
        return new Run(car, setup, other, boost, bottle, pumpLoss, gauges);
    }

    Run times(Factor factor, double by) {
        return withCase(at.with(factor, by * at.factors().of(factor)));
    }

    Run withBoost(double added) {
        return new Run(car, setup, at, added, bottle, pumpLoss, gauges);
    }

    Run withBottle(double warmer) {
        return new Run(car, setup, at, boost, warmer, pumpLoss, gauges);
    }

    Run withPumpLoss(double volts) {
        return new Run(car, setup, at, boost, bottle, volts, gauges);
    }

    Run withGauges(UnaryOperator<Gauges> change) {
        return new Run(car, setup, at, boost, bottle, pumpLoss, change.apply(gauges));
    }
}
