package org.shotledger.reconcile;

import java.util.List;
import java.util.Optional;
import org.shotledger.budget.BottlePlan;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Conditions;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Split;

/**
 * What a plan expects an engine speed and a moment of the nitrous to look like. Boost is the plan's own; the bottle has cooled as the
 * plan's emptying says.
 */
final class Expectation {
    private final Budget budget;
    private final List<Split.Point> alone;
    private final List<BottlePlan.Moment> bottle;

    Expectation(Budget budget) {
        this.budget = budget;
        this.alone = budget.split().points().stream()
                .filter(p -> p.nitrousWheelPower() == 0)
                .toList();
        this.bottle = budget.bottle().history();
    }

    /** The point with the nitrous on for a time; empty where the plan has no answer. */
    Optional<Evaluation> on(double rpm, double seconds) {
        double temperature = bottle(seconds, true);
        if (Double.isNaN(temperature)) {
            return Optional.empty();
        }
        return planned(rpm)
                .map(point -> budget.evaluator()
                        .at(budget.conditions().withBottleTemperature(temperature), rpm, point.demand()));
    }

    /** The point with the nitrous off: the boost of the plan at that speed, in the window as with the nitrous on. */
    Optional<Evaluation> off(double rpm) {
        Optional<Double> plenum = budget.split().window().contains(rpm)
                ? planned(rpm).map(p -> p.demand().plenumPressure())
                : aloneAt(rpm);
        return plenum.flatMap(p -> evaluate(rpm, budget.conditions(), Demand.boost(p)));
    }

    /** The same demand without its nitrous. */
    Optional<Evaluation> without(Evaluation on) {
        return evaluate(on.rpm(), on.conditions(), Demand.boost(on.demand().plenumPressure()));
    }

    /** Pressure in the bottle after a time with the nitrous on, Pa absolute. */
    double bottlePressure(double seconds) {
        return bottle(seconds, false);
    }

    private double bottle(double seconds, boolean temperature) {
        for (int i = 1; i < bottle.size(); i++) {
            BottlePlan.Moment a = bottle.get(i - 1);
            BottlePlan.Moment b = bottle.get(i);
            if (seconds >= a.time() && seconds <= b.time()) {
                double share = (seconds - a.time()) / (b.time() - a.time());
                return temperature
                        ? a.temperature() + share * (b.temperature() - a.temperature())
                        : a.pressure() + share * (b.pressure() - a.pressure());
            }
        }
        return Double.NaN;
    }

    private Optional<Evaluation> planned(double rpm) {
        try {
            return Optional.of(budget.planned(rpm));
        } catch (IllegalArgumentException outside) {
            return Optional.empty();
        }
    }

    private Optional<Evaluation> evaluate(double rpm, Conditions at, Demand demand) {
        try {
            return Optional.of(budget.evaluator().at(at, rpm, demand));
        } catch (IllegalArgumentException outside) {
            return Optional.empty();
        }
    }

    /** Boost between the speeds of the plan that have no nitrous; none where the window or the end of the plan lies between. */
    private Optional<Double> aloneAt(double rpm) {
        double ambient = budget.conditions().air().pressure();
        for (int i = 1; i < alone.size(); i++) {
            Split.Point a = alone.get(i - 1);
            Split.Point b = alone.get(i);
            boolean acrossWindow = a.rpm() < budget.split().window().rpmLow()
                    && b.rpm() > budget.split().window().rpmHigh();
            if (rpm >= a.rpm() && rpm <= b.rpm()) {
                double share = (rpm - a.rpm()) / (b.rpm() - a.rpm());
                double gauge = acrossWindow
                        ? (rpm <= budget.split().window().rpmLow() ? a : b).gaugePressure()
                        : a.gaugePressure() + share * (b.gaugePressure() - a.gaugePressure());
                return Optional.of(ambient + gauge);
            }
        }
        return Optional.empty();
    }

    /** What is expected of a figure; NaN where it cannot be. */
    double value(Compared what, Evaluation point, double seconds) {
        return switch (what) {
            case WHEEL_POWER -> point.wheelPower();
            case CRANK_POWER -> point.power().brake();
            case MANIFOLD_PRESSURE -> point.demand().plenumPressure();
            case LAMBDA -> point.lambda();
            case FUEL_PRESSURE -> point.main().railPressure();
            case NITROUS_FUEL_PRESSURE ->
                point.nitrousOn() ? point.nitrousFuel().railPressure() : Double.NaN;
            case BOTTLE_PRESSURE -> point.nitrousOn() ? bottlePressure(seconds) : Double.NaN;
        };
    }
}
