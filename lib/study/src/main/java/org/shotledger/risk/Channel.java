package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Standing;
import org.shotledger.supply.Regulator;
import org.shotledger.units.Require;

/**
 * A sensor that can close the nitrous, with its gate.
 *
 * @param name in the words of the trade
 * @param gate when it closes
 * @param delay time from a change in the engine to its reading, s
 * @param early true when it reads rightly before the nitrous opens
 * @param fitted true when it belongs to the computed window; false for one that could be added
 * @param reading what it reads
 */
public record Channel(String name, Gate gate, double delay, boolean early, boolean fitted, Reading reading) {
    /** Sensor with its filter, s: common practice, no source. */
    private static final double PRESSURE_DELAY = 0.03;

    private static final double VOLTAGE_DELAY = 0.02;
    /** Gas from the port to the sensor, its cell and its filter, s: common practice, no source. */
    private static final double LAMBDA_DELAY = 0.25;

    /** What a sensor reads. */
    @FunctionalInterface
    public interface Reading {
        /**
         * Reads.
         *
         * @param now the situation
         * @param outcome its outcome
         * @return the value, SI; NaN where the models have no answer
         */
        double of(Situation now, Outcome outcome);
    }

    /** Checks the delay. */
    public Channel {
        Require.notNegative("delay of the channel " + name, delay, "s");
    }

    /**
     * The channels of a window: bottle pressure, fuel pressure before the solenoid, mixture in the collector, boost and voltage;
     * and two that could be added: fuel pressure behind the solenoid and the mixture of each cylinder.
     *
     * @param window the window
     * @param plan the sound situation
     * @param planned its outcome
     * @return the channels
     */
    public static List<Channel> of(NitrousWindow window, Situation plan, Outcome planned) {
        List<Channel> all = new ArrayList<>();
        Gate fuel = window.find("fuel-pressure").orElseThrow();
        Gate lambda = window.find("lambda").orElseThrow();
        all.add(fitted(
                "bottle pressure",
                window.find("bottle-pressure").orElseThrow(),
                PRESSURE_DELAY,
                true,
                (s, o) -> s.conditions().bottleLiquid().pressure()));
        all.add(fitted("fuel pressure before the solenoid", fuel, PRESSURE_DELAY, true, (s, o) -> set(s, o, false)));
        all.add(fitted("mixture in the collector", lambda, LAMBDA_DELAY, false, (s, o) -> o.lambda()));
        all.add(fitted("boost", window.find("boost").orElseThrow(), PRESSURE_DELAY, false, (s, o) -> s.boostShift()));
        all.add(fitted(
                "supply voltage",
                window.find("voltage").orElseThrow(),
                VOLTAGE_DELAY,
                true,
                (s, o) -> s.conditions().voltage()));
        all.add(new Channel(
                "fuel pressure behind the solenoid",
                behind(fuel, plan, planned),
                PRESSURE_DELAY,
                false,
                false,
                (s, o) -> set(s, o, true)));
        all.add(new Channel(
                "mixture of each cylinder",
                lambda,
                LAMBDA_DELAY,
                false,
                false,
                (s, o) -> o.leanest() > lambda.high() ? o.leanest() : o.richest()));
        return all;
    }

    private static Channel fitted(String name, Gate gate, double delay, boolean early, Reading reading) {
        return new Channel(name, gate, delay, early, true, reading);
    }

    /** The same gate around what the pressure behind the solenoid is as planned; a quarter of it below and above. */
    private static Gate behind(Gate before, Situation plan, Outcome planned) {
        double usual = set(plan, planned, true);
        return new Gate(
                "fuel-pressure-behind",
                "nitrous fuel pressure behind the solenoid",
                before.kind(),
                0.75 * usual,
                1.25 * usual,
                0.05 * usual,
                usual,
                "less than three quarters of the planned pressure at the jets",
                "more than five quarters of it: jets blocked",
                Standing.COMMON_PRACTICE);
    }

    /** Fuel pressure as the regulator is set: what stands above ambient less the boost it refers to. */
    private static double set(Situation s, Outcome o, boolean behindSolenoid) {
        if (o.peak().isEmpty()) {
            return Double.NaN;
        }
        Evaluation at = o.peak().get();
        Regulator regulator = s.build().wetKit().fuel().regulator();
        double ambient = s.conditions().air().pressure();
        double boost = at.demand().plenumPressure() - ambient;
        double pressure = behindSolenoid ? jets(s, at) : rail(s, at);
        return pressure - ambient - regulator.boostReference() * boost;
    }

    /** With the fuel solenoid closed the regulator holds the rail and nothing reaches the jets. */
    private static double jets(Situation s, Evaluation at) {
        return s.fuelOpen() == 0
                ? at.demand().plenumPressure()
                : at.nitrousFuel().jetPressure();
    }

    private static double rail(Situation s, Evaluation at) {
        Regulator regulator = s.build().wetKit().fuel().regulator();
        return s.fuelOpen() == 0
                ? regulator.railPressure(
                        s.conditions().air().pressure(), at.demand().plenumPressure())
                : at.nitrousFuel().railPressure();
    }

    boolean trips(Situation now, Outcome outcome) {
        return gate.closesAt(reading.of(now, outcome));
    }
}
