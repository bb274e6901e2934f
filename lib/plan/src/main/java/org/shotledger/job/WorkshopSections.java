package org.shotledger.job;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.LENGTH;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.SPEED;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TIME;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shotledger.sheet.SheetSection;
import org.shotledger.units.UnitFactors;
import org.shotledger.wiring.CheckValue;
import org.shotledger.wiring.Sensor;
import org.shotledger.wiring.SensorReading;
import org.shotledger.workshop.ListedPart;
import org.shotledger.workshop.Parts;
import org.shotledger.workshop.Readings;
import org.shotledger.workshop.Track;
import org.shotledger.workshop.Workshop;

/** Reads what the workshop writes down: the track, readings of the sensors, parts with prices and progress. */
final class WorkshopSections {
    private static final String HABIT = "common practice, no source";
    private static final double LITRE = 1e-3;
    private static final Map<String, CheckValue.State> STATES = states();
    private static final Map<String, ListedPart.Circuit> CIRCUITS = circuits();
    private static final Map<String, ListedPart.Stage> STAGES = stages();

    private WorkshopSections() {}

    /** @param sensors those of the wiring; empty where it could not be read, so that nobody knows which readings are of a sensor */
    static Workshop workshop(SheetSection root, Optional<List<Sensor>> sensors) {
        return new Workshop(
                root.sectionIf("track").map(WorkshopSections::track).orElse(Track.USUAL),
                root.sectionIf("readings").map(s -> readings(s, sensors)).orElse(Readings.NONE),
                root.sectionIf("parts").map(WorkshopSections::parts).orElse(Parts.NONE));
    }

    private static Track track(SheetSection s) {
        Track usual = Track.USUAL;
        Track.Coming coming = usual.arming();
        double finish = s.figureOr("distance", LENGTH, 1, 20_000, usual.strip(1).finishMark(), "a quarter of a mile");
        List<Double> marks = new ArrayList<>();
        if (s.has("marks")) {
            marks.addAll(s.figures("marks", LENGTH, 0.1, 20_000));
        } else {
            usual.marks().stream().filter(mark -> mark < finish).forEach(marks::add);
        }
        if (marks.isEmpty() || marks.get(marks.size() - 1) < finish) {
            marks.add(finish);
        }
        double rollOut = s.figureOr("roll-out", LENGTH, 0, 2, usual.rollOut(), HABIT);
        double wind = s.figureOr("head-wind", SPEED, -20, 20, 0, "no wind");
        double grip = s.figureOr("grip", RATIO, 0.1, 6, usual.grip(), HABIT);
        double speed = s.figureOr("start-speed", SPEED, 0, 150, 0, "a standing start");
        int gear = s.countOr("nitrous-gear", 1, 20, coming.gear(), HABIT);
        double delay = s.figureOr("nitrous-delay", TIME, 0, 60, coming.delay(), HABIT);
        double ramp = s.figureOr("nitrous-ramp", TIME, 0, 60, coming.ramp(), "opens whole");
        double share = s.figureOr(
                "nitrous-start-share",
                FRACTION,
                0,
                1,
                ramp > 0 ? 0.4 : coming.startShare(),
                ramp > 0 ? HABIT : "opens whole");
        double back = s.figureOr("speed-hysteresis", ROTATION, 0, 2_000, coming.hysteresis(), HABIT);
        return s.make(() -> {
            Track track =
                    new Track(marks, rollOut, wind, grip, speed, new Track.Coming(gear, delay, ramp, share, back));
            track.strip(1.2);
            return track;
        });
    }

    private static Readings readings(SheetSection s, Optional<List<Sensor>> sensors) {
        double barometer = s.has("barometer") ? s.figure("barometer", ABSOLUTE_PRESSURE, 4e4, 1.1e5) : Double.NaN;
        double air = s.has("air") ? s.figure("air", TEMPERATURE, 220, 340) : Double.NaN;
        List<SensorReading> list = new ArrayList<>();
        STATES.forEach((word, state) ->
                s.sectionIf(word).ifPresent(at -> sensors.ifPresent(known -> list.addAll(shown(at, state, known)))));
        return s.make(() -> new Readings(barometer, air, list));
    }

    private static List<SensorReading> shown(SheetSection s, CheckValue.State state, List<Sensor> sensors) {
        List<SensorReading> list = new ArrayList<>();
        for (Sensor sensor : sensors) {
            String key = sensor.name().replace(' ', '-');
            if (s.has(key)) {
                double width = sensor.high() - sensor.low();
                double figure = s.figure(key, sensor.kind(), sensor.low() - width, sensor.high() + width);
                list.add(new SensorReading(sensor.name(), state, figure));
            }
        }
        s.make(() -> s);
        return list;
    }

    private static Parts parts(SheetSection s) {
        String currency = s.textOr("currency", "");
        double hour = money(s, "hour", 1);
        double nitrous = price(s, "nitrous-per-kg", 1, "nitrous-per-lb", UnitFactors.POUND);
        double fuel = price(s, "fuel-per-litre", LITRE, "fuel-per-gallon", UnitFactors.US_GALLON);
        Map<String, ListedPart> items = new LinkedHashMap<>();
        s.sectionIf("items").ifPresent(all -> all.namedSections().forEach((key, one) -> items.put(key, part(one))));
        return s.make(() -> new Parts(currency, hour, nitrous, fuel, items));
    }

    /** A price for one of two measures. */
    private static double price(SheetSection s, String usual, double measure, String other, double otherMeasure) {
        s.readElsewhere(usual, other);
        if (s.has(usual) && s.has(other)) {
            s.report(other, "\"" + usual + "\" and \"" + other + "\" both stand here; keep one of them.");
        }
        return s.has(other) ? money(s, other, otherMeasure) : money(s, usual, measure);
    }

    private static ListedPart part(SheetSection s) {
        String what = s.textOr("what", "");
        ListedPart.Circuit circuit = s.choiceOr("for", CIRCUITS, "other", "as listed");
        double count = s.has("count") ? s.figure("count", RATIO, 0, 10_000) : Double.NaN;
        double price = money(s, "price", 1);
        double hours = s.has("hours") ? s.figure("hours", RATIO, 0, 10_000) : Double.NaN;
        boolean fitted = s.yesOr("fitted", false, "taken as still to be done");
        ListedPart.Stage before = s.choiceOr("before", STAGES, "later", "as listed");
        return s.make(() -> new ListedPart(what, circuit, count, price, hours, fitted, before));
    }

    /** A price over an amount; NaN where none stands here. */
    private static double money(SheetSection s, String key, double amount) {
        return s.has(key) ? s.figure(key, RATIO, 0, 1e7) / amount : Double.NaN;
    }

    private static Map<String, CheckValue.State> states() {
        Map<String, CheckValue.State> map = new LinkedHashMap<>();
        map.put("engine-off", CheckValue.State.ENGINE_OFF);
        map.put("pedal-down", CheckValue.State.PEDAL_DOWN);
        map.put("prime", CheckValue.State.PRIME);
        map.put("warm-idle", CheckValue.State.WARM_IDLE);
        return map;
    }

    private static Map<String, ListedPart.Circuit> circuits() {
        Map<String, ListedPart.Circuit> map = new LinkedHashMap<>();
        for (ListedPart.Circuit circuit : ListedPart.Circuit.values()) {
            map.put(circuit.words(), circuit);
        }
        return map;
    }

    private static Map<String, ListedPart.Stage> stages() {
        Map<String, ListedPart.Stage> map = new LinkedHashMap<>();
        for (ListedPart.Stage stage : ListedPart.Stage.values()) {
            map.put(stage.words(), stage);
        }
        return map;
    }
}
