package org.shotledger.risk;

import java.util.Locale;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.plan.Plan;
import org.shotledger.risk.Interlock.Kept;
import org.shotledger.units.QuantityKind;

/**
 * The engine speeds that the setup states, and those at which its jets keep every limit.
 *
 * <p>Nitrous oxide is constant in time, so the load of each cylinder grows as the speed falls: torque and peak pressure set the
 * lower end. Red line, fuel and compressor set the upper one.
 */
final class SpeedInterlock {
    /** rpm: our choice, what a controller's table resolves. */
    private static final double STEP = 50;
    /** rpm: our choice, above the noise of a speed signal. */
    private static final double HYSTERESIS = 100;

    private final Plan plan;
    private final Scenario sound;
    private final OperatingPoint peak;

    SpeedInterlock(Plan plan) {
        this.plan = plan;
        this.sound = Scenario.of(plan);
        this.peak = plan.stated().strongest().orElseThrow();
    }

    /**
     * The interlock.
     *
     * @param overshoot speed the engine gains from the closing signal to the end of nitrous flow, rev/min
     */
    Interlock interlock(double overshoot) {
        ActivationWindow set = plan.setup().arming();
        double start = Math.round(peak.rpm() / STEP) * STEP;
        double low = last(start, -STEP);
        double kept = last(start, STEP);
        double red = plan.car().engine().redLineRpm() - overshoot;
        double high = Math.min(kept, Math.floor(red / STEP) * STEP);
        String highReason = high < kept
                ? String.format(
                        Locale.ROOT, "red line less the %.0f rpm the engine gains until the nitrous is off", overshoot)
                : at(kept + STEP).firstWords() + " breaks above";
        return new Interlock(
                "rpm",
                "engine speed",
                QuantityKind.ROTATION,
                set.rpmLow(),
                set.rpmHigh(),
                HYSTERESIS,
                peak.rpm(),
                new Kept(withEnd(low, set.rpmLow(), STEP), withEnd(high, Math.min(set.rpmHigh(), red), STEP)),
                lowReason(low),
                highReason,
                Provenance.CALCULATED);
    }

    /** A speed that is set between two steps counts as itself. */
    private double withEnd(double found, double set, double within) {
        return Math.abs(found - set) < within && at(set).safe() ? set : found;
    }

    private String lowReason(double low) {
        String tapered = at(low - STEP).firstWords() + " breaks below, with the boost of the setup";
        double held = peak.plenumPressure();
        double rpm = peak.rpm();
        while (rpm > low && heldAt(rpm - STEP, held).safe()) {
            rpm -= STEP;
        }
        return rpm <= low
                ? tapered
                : String.format(
                        Locale.ROOT,
                        "%s; with the boost of the speed of most power it would be below %.0f rpm (%s)",
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

    private FaultOutcome at(double rpm) {
        return Simulation.run(sound, BoostLine.armed(plan, rpm));
    }

    private FaultOutcome heldAt(double rpm, double plenumPressure) {
        return Simulation.run(sound, BoostLine.at(rpm, plenumPressure));
    }
}
