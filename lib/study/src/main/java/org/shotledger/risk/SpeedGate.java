package org.shotledger.risk;

import java.util.Locale;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Standing;
import org.shotledger.units.QuantityKind;

/**
 * The engine speeds at which the planned jets keep every limit.
 *
 * <p>Nitrous oxide is constant in time, so the load of each cylinder grows as the speed falls: torque and peak pressure set the
 * lower end. Red line, fuel and compressor set the upper one.
 */
final class SpeedGate {
    private static final double STEP = 50;
    private static final double HYSTERESIS = 100;

    private final Budget budget;
    private final Situation plan;

    SpeedGate(Budget budget) {
        this.budget = budget;
        this.plan = Situation.of(budget);
    }

    /**
     * The gate.
     *
     * @param overshoot speed the engine gains from the closing signal to the end of nitrous flow, rev/min
     */
    Gate gate(double overshoot) {
        double start = Math.round(budget.peak().rpm() / STEP) * STEP;
        double low = last(start, -STEP);
        double redLine = budget.build().engine().redLineRpm() - overshoot;
        double kept = last(start, STEP);
        double high = Math.min(kept, Math.floor(redLine / STEP) * STEP);
        String highReason = high < kept
                ? String.format(
                        Locale.ROOT, "red line less the %.0f rpm the engine gains until the nitrous is off", overshoot)
                : at(kept + STEP).firstWords() + " breaks above";
        return new Gate(
                "rpm",
                "engine speed",
                QuantityKind.ROTATION,
                low,
                high,
                HYSTERESIS,
                budget.peak().rpm(),
                lowReason(low),
                highReason,
                Standing.CALCULATED);
    }

    private String lowReason(double low) {
        String tapered = at(low - STEP).firstWords() + " breaks below, with the boost taken back as planned";
        double held = budget.peak().demand().plenumPressure();
        double rpm = budget.peak().rpm();
        while (rpm > low && heldAt(rpm - STEP, held).safe()) {
            rpm -= STEP;
        }
        return rpm <= low
                ? tapered
                : String.format(
                        Locale.ROOT,
                        "%s; with the boost held at its highest it would be %.0f rpm (%s)",
                        tapered,
                        rpm,
                        heldAt(rpm - STEP, held).firstWords());
    }

    private double last(double start, double step) {
        double rpm = start;
        while (at(rpm + step).safe()) {
            rpm += step;
        }
        return rpm;
    }

    /** The plan at a speed; refused outside what boost control and tables cover. */
    private Outcome at(double rpm) {
        try {
            return heldAt(rpm, budget.planned(rpm).demand().plenumPressure());
        } catch (IllegalArgumentException outside) {
            return Outcome.refused(outside.getMessage());
        }
    }

    private Outcome heldAt(double rpm, double plenumPressure) {
        return Trial.run(plan, BoostLine.at(rpm, plenumPressure));
    }
}
