package org.shotledger.job;

import static org.shotledger.units.QuantityKind.FRACTION;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shotledger.sheet.SheetSection;
import org.shotledger.units.QuantityKind;
import org.shotledger.wiring.BreakPoints;
import org.shotledger.wiring.InputStage;
import org.shotledger.wiring.Sensor;
import org.shotledger.wiring.SensorInput;
import org.shotledger.wiring.SensorRole;

/** Reads how a sensor is read: its own tolerances, what it measures of the car, and what is known of it at warm idle. */
final class SensorInputs {
    static final Map<String, BreakPoints.Spacing> SPACINGS = spacings();
    private static final Map<String, SensorRole> ROLES = roles();

    private SensorInputs() {}

    static SensorInput input(String name, SheetSection s, InputStage stage) {
        SensorRole byName = SensorRole.of(name);
        SensorRole role = s.choiceOr("reads", ROLES, byName.word(), "by its name");
        double given = s.has("class") ? classWidth(s) : Double.NaN;
        boolean share = s.has("class") && s.measures("class", FRACTION);
        int points = s.countOr("table-points", 2, 128, stage.points(), "as the controller takes");
        BreakPoints.Spacing spacing =
                s.choiceOr("table-spacing", SPACINGS, word(stage.spacing()), "as the controller takes");
        double[] idle = {Double.NaN, Double.NaN};
        s.readElsewhere("warm-idle");
        Sensor sensor = SensorSections.sensor(name, s);
        if (sensor == null) {
            return null;
        }
        if (s.has("warm-idle")) {
            idle[0] = s.figure("warm-idle", sensor.kind(), sensor.low(), sensor.high());
            idle[1] = s.halfWidth("warm-idle");
            if (Double.isNaN(idle[1])) {
                s.report(
                        "warm-idle",
                        "The value at warm idle has no band; write it with \"+/-\", as \"2.5 bar gauge +/- 0.5 bar\".");
            }
        }
        double classWidth = Double.isNaN(given) ? 0 : share ? given * (sensor.high() - sensor.low()) : given;
        double supply = tolerance(s, "supply");
        double pullUp = tolerance(s, "pull-up");
        SensorInput.Tolerances tolerances =
                new SensorInput.Tolerances(supply, Double.isNaN(pullUp) ? 0 : pullUp, classWidth);
        try {
            SensorInput plain = SensorInput.of(
                    sensor,
                    new InputStage(
                            stage.supplyTolerance(),
                            stage.sharedReference(),
                            stage.bits(),
                            stage.range(),
                            points,
                            spacing),
                    tolerances,
                    role);
            return Double.isNaN(idle[0]) ? plain : plain.atWarmIdle(idle[0], idle[1]);
        } catch (IllegalArgumentException refused) {
            s.report("kind", refused.getMessage());
            return null;
        }
    }

    private static double classWidth(SheetSection s) {
        for (QuantityKind kind : new QuantityKind[] {
            FRACTION, QuantityKind.PRESSURE_DIFFERENCE, QuantityKind.TEMPERATURE_DIFFERENCE, QuantityKind.SPEED
        }) {
            if (s.measures("class", kind)) {
                return s.figure("class", kind, 0, 1e7);
            }
        }
        return s.figure("class", FRACTION, 0, 1);
    }

    /** A band behind a supply or a pull-up, as a share of it. */
    private static double tolerance(SheetSection s, String key) {
        QuantityKind kind = key.equals("supply") ? QuantityKind.VOLTAGE : QuantityKind.RESISTANCE;
        double width = s.halfWidth(key);
        return Double.isNaN(width) ? Double.NaN : width / s.figure(key, kind, 0, 1e7);
    }

    static String word(BreakPoints.Spacing spacing) {
        return SPACINGS.entrySet().stream()
                .filter(e -> e.getValue() == spacing)
                .findFirst()
                .orElseThrow()
                .getKey();
    }

    private static Map<String, BreakPoints.Spacing> spacings() {
        Map<String, BreakPoints.Spacing> map = new LinkedHashMap<>();
        map.put("free", BreakPoints.Spacing.FREE);
        map.put("even-output", BreakPoints.Spacing.EVEN_OUTPUT);
        map.put("even-value", BreakPoints.Spacing.EVEN_VALUE);
        return map;
    }

    private static Map<String, SensorRole> roles() {
        Map<String, SensorRole> map = new LinkedHashMap<>();
        for (SensorRole role : SensorRole.values()) {
            map.put(role.word(), role);
        }
        return map;
    }
}
