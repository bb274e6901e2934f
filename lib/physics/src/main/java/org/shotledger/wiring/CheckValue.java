package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;

/**
 * What a sensor must show in a known state of the car.
 *
 * @param sensor its name
 * @param state the state
 * @param expected value, SI
 * @param halfWidth how far the reading may lie off, SI: the error bar together with how well the state itself is known
 * @param why what makes the value known
 */
public record CheckValue(String sensor, State state, double expected, double halfWidth, String why) {
    /** Spread of temperatures after a night of standing, K: our choice, a garage is not of one temperature. */
    public static final double SOAKED = 3;

    /** States of the car that make values known. */
    public enum State {
        /** Key on, engine off, cold, bottle closed, pedal free. */
        ENGINE_OFF("key on, engine off"),
        /** The same with the pedal down. */
        PEDAL_DOWN("pedal down, engine off"),
        /** Fuel pumps primed, engine off. */
        PRIME("at prime"),
        /** Engine warm and idling. */
        WARM_IDLE("warm idle");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /**
         * The state in words.
         *
         * @return for example {@code "at prime"}
         */
        public String words() {
            return words;
        }
    }

    public CheckValue {
        Require.named("sensor", sensor);
        Require.given("state of the check of " + sensor, state);
        Require.positive("width of the check of " + sensor, halfWidth, "");
    }

    /**
     * What can be known without anything of this car: pressures to the air, temperatures after a night, the throttle's ends.
     *
     * @param sensor the sensor
     * @param barometer pressure of the air at this place and day, Pa absolute
     * @param air temperature of the air, K
     * @param error how far the shown value may lie off, by {@link ErrorBar}
     * @return none for what has no known value then, such as lambda, and for values outside the sensor's range
     */
    public static List<CheckValue> engineOff(Sensor sensor, double barometer, double air, double error) {
        List<CheckValue> list = new ArrayList<>();
        known(sensor, barometer, air).ifPresent(value -> {
            double width = sensor.kind() == QuantityKind.TEMPERATURE ? Math.hypot(error, SOAKED) : error;
            if (value >= sensor.low() && value <= sensor.high()) {
                list.add(new CheckValue(sensor.name(), State.ENGINE_OFF, value, width, why(sensor.kind())));
            }
        });
        if (sensor instanceof ThrottleSensor) {
            list.add(new CheckValue(sensor.name(), State.PEDAL_DOWN, 1, error, "the throttle is fully open"));
        }
        return list;
    }

    private static Optional<Double> known(Sensor sensor, double barometer, double air) {
        return switch (sensor.kind()) {
            case ABSOLUTE_PRESSURE -> Optional.of(barometer);
            case GAUGE_PRESSURE, ROTATION, SPEED -> Optional.of(0.0);
            case TEMPERATURE -> Optional.of(air);
            default -> sensor instanceof ThrottleSensor ? Optional.of(0.0) : Optional.empty();
        };
    }

    private static String why(QuantityKind kind) {
        return switch (kind) {
            case ABSOLUTE_PRESSURE -> "everything is open to the air: the barometer at this altitude";
            case GAUGE_PRESSURE -> "everything is open to the air: no gauge pressure";
            case TEMPERATURE -> "the car stood over night: all temperatures are that of the air";
            default -> "nothing moves";
        };
    }
}
