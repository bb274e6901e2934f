package org.shotledger.job;

import static org.shotledger.units.QuantityKind.AREA;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.INERTIA;
import static org.shotledger.units.QuantityKind.LENGTH;
import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TIME;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.shotledger.car.Chassis;
import org.shotledger.car.Vehicle;
import org.shotledger.pass.RollingCar.Axle;
import org.shotledger.sheet.SheetSection;

/** Reads the car as a mass on wheels. */
final class VehicleSection {
    private static final String HABIT = "common practice, no source";
    private static final Map<String, Axle> AXLES = axles();
    private static final Map<String, Pattern> DRIVEN = driven();

    private VehicleSection() {}

    static Vehicle vehicle(SheetSection s, String layout) {
        double mass = s.figure("mass", MASS, 100, 10_000);
        double drag = s.figure("drag-area", AREA, 0.1, 4);
        List<Double> gears = s.figures("gears", RATIO, 0.3, 10);
        double drive = s.figure("final-drive", RATIO, 1, 10);
        String tyres = s.text("tyres");
        double rolling = s.figureOr("rolling-resistance", RATIO, 0.002, 0.1, 0.013, HABIT);
        Chassis chassis = chassis(s, layout);
        return s.make(() -> new Vehicle(mass, drag, gears, drive, tyres, rolling, chassis));
    }

    private static Chassis chassis(SheetSection s, String layout) {
        Axle axle = s.choiceOr("axle", AXLES, axle(layout), "by the layout of the driveline");
        double share = s.figureOr(
                "driven-share", FRACTION, 0.1, 1, axle == Axle.ALL ? 1 : axle == Axle.REAR ? 0.52 : 0.60, HABIT);
        double base = s.figureOr("wheelbase", LENGTH, 1, 6, 2.7, HABIT);
        double height = s.figureOr("centre-height", LENGTH, 0, 1.5, 0.2 * base, HABIT);
        double radius = s.has("tyre-radius") ? s.figure("tyre-radius", LENGTH, 0.15, 0.6) : Double.NaN;
        double driven = s.figureOr("driven-inertia", INERTIA, 0, 50, 2.5, HABIT);
        double free = s.figureOr("free-inertia", INERTIA, 0, 50, 2, HABIT);
        double engine = s.figureOr("engine-inertia", INERTIA, 0, 5, 0.2, HABIT);
        double turbo = s.figureOr("turbo-inertia", INERTIA, 1e-6, 1e-2, 1e-4, HABIT);
        double shift = s.figureOr("shift-time", TIME, 0, 3, 0.3, HABIT);
        double leave = s.has("shift-speed") ? s.figure("shift-speed", ROTATION, 500, 20_000) : Double.NaN;
        double launch = s.figureOr("launch-speed", ROTATION, 500, 15_000, 3_500, HABIT);
        return new Chassis(axle, share, base, height, radius, driven, free, engine, turbo, shift, leave, launch);
    }

    /**
     * The axle that is said to be driven, as in "rear drive", "front-wheel drive" or "awd": an engine in front or four gears are none.
     * Where none is said to be, the one of which the words speak.
     */
    private static String axle(String layout) {
        String low = layout.toLowerCase(java.util.Locale.ROOT);
        for (String which : DRIVEN.keySet()) {
            if (DRIVEN.get(which).matcher(low).find()) {
                return which;
            }
        }
        return low.matches(".*\\bfront\\b.*") ? "front" : low.matches(".*\\ball\\b.*") ? "all" : "rear";
    }

    private static Map<String, Pattern> driven() {
        Map<String, Pattern> map = new LinkedHashMap<>();
        map.put("front", driven("fwd", "front"));
        map.put("rear", driven("rwd", "rear"));
        map.put("all", driven("awd|4wd|4x4", "all|four"));
        return map;
    }

    private static Pattern driven(String letters, String words) {
        return Pattern.compile("\\b(" + letters + "|(" + words + ")[- ]?((wheels?|axle)[- ]?)?driv)");
    }

    private static Map<String, Axle> axles() {
        Map<String, Axle> map = new LinkedHashMap<>();
        map.put("front", Axle.FRONT);
        map.put("rear", Axle.REAR);
        map.put("all", Axle.ALL);
        return map;
    }
}
