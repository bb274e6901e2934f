package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.limits.Provenance;
import org.shotledger.supply.Regulator;
import org.shotledger.units.Require;

/**
 * A sensor that can close the nitrous, with its interlock.
 *
 * @param name in the words of the trade
 * @param interlock when it closes
 * @param delay time from a change in the engine to its reading, s
 * @param early true when it reads rightly before the nitrous opens
 * @param fitted true when it belongs to the arming conditions; false for one that could be added
 * @param reading what it reads
 */
public record Channel(String name, Interlock interlock, double delay, boolean early, boolean fitted, Reading reading) {
    /** Sensor with its filter, s: common practice, no source. */
    private static final double PRESSURE_DELAY = 0.03;

    /** s: our choice, some samples of a controller. */
    private static final double VOLTAGE_DELAY = 0.02;
    /** Gas from the port to the sensor, its cell and its filter, s: common practice, no source. */
    private static final double LAMBDA_DELAY = 0.25;

    /** What a sensor reads. */
    @FunctionalInterface
    public interface Reading {
        /**
         * Reads.
         *
         * @param now the scenario
         * @param outcome its outcome
         * @return the value, SI; NaN where the models have no answer
         */
        double of(Scenario now, FaultOutcome outcome);
    }

    public Channel {
        Require.notNegative("delay of the channel " + name, delay, "s");
    }

    /**
     * The channels of the arming conditions: bottle pressure, fuel pressure before the solenoid, mixture in the collector, boost and voltage;
     * and two that could be added: fuel pressure behind the solenoid and the mixture of each cylinder.
     *
     * @param arming the arming conditions
     * @param sound the sound scenario
     * @param planned its outcome
     * @return the channels
     */
    public static List<Channel> of(ArmingConditions arming, Scenario sound, FaultOutcome planned) {
        List<Channel> all = new ArrayList<>();
        Interlock fuel = arming.find("fuel-pressure").orElseThrow();
        Interlock lambda = arming.find("lambda").orElseThrow();
        all.add(fitted(
                "bottle pressure",
                arming.find("bottle-pressure").orElseThrow(),
                PRESSURE_DELAY,
                true,
                (s, o) -> s.bottle().pressure()));
        all.add(fitted("fuel pressure before the solenoid", fuel, PRESSURE_DELAY, true, (s, o) -> set(s, o, false)));
        all.add(fitted("mixture in the collector", lambda, LAMBDA_DELAY, false, (s, o) -> o.lambda()));
        all.add(fitted("boost", arming.find("boost").orElseThrow(), PRESSURE_DELAY, false, (s, o) -> s.boostShift()));
        all.add(fitted(
                "supply voltage",
                arming.find("voltage").orElseThrow(),
                VOLTAGE_DELAY,
                true,
                (s, o) -> s.at().voltage()));
        all.add(new Channel(
                "fuel pressure behind the solenoid",
                behind(fuel, sound, planned),
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

    private static Channel fitted(String name, Interlock interlock, double delay, boolean early, Reading reading) {
        return new Channel(name, interlock, delay, early, true, reading);
    }

    /** The same interlock around what the pressure behind the solenoid is as planned; a quarter of it below and above. */
    private static Interlock behind(Interlock before, Scenario sound, FaultOutcome planned) {
        double usual = set(sound, planned, true);
        return new Interlock(
                "fuel-pressure-behind",
                "nitrous fuel pressure behind the solenoid",
                before.kind(),
                0.75 * usual,
                1.25 * usual,
                0.05 * usual,
                usual,
                Interlock.Kept.UNKNOWN,
                "less than three quarters of the planned pressure at the jets",
                "more than five quarters of it: jets blocked",
                Provenance.COMMON_PRACTICE);
    }

    /** Fuel pressure as the regulator is set: what stands above ambient less the boost it is meant to refer to. */
    private static double set(Scenario s, FaultOutcome o, boolean behindSolenoid) {
        if (o.peak().isEmpty()) {
            return Double.NaN;
        }
        OperatingPoint at = o.peak().get();
        Regulator regulator = s.onMainRail() ? s.tuned() : s.setup().nitrousRegulator();
        double ambient = s.at().air().pressure();
        double boost = at.plenumPressure() - ambient;
        double pressure = behindSolenoid
                ? at.nitrousFuel().jetPressure()
                : at.nitrousFuel().railPressure();
        return pressure - ambient - regulator.boostReference() * boost;
    }

    boolean trips(Scenario now, FaultOutcome outcome) {
        return interlock.closesAt(reading.of(now, outcome));
    }
}
