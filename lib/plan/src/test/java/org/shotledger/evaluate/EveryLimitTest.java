package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.car.BuilderLimits;
import org.shotledger.car.Car;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.job.Job;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Provenance;
import org.shotledger.limits.Side;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Setup;
import org.shotledger.units.QuantityKind;

/**
 * Each limit alone: which figure is held against which bound and on which side. The figures are read or worked out anew here, by what the
 * limit's name says, from the points and the sizes in the sheet of the demonstration car.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class EveryLimitTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Car CAR = JOB.car();
    private static final BuilderLimits SET = CAR.limits();
    private static final Setup SETUP =
            JOB.setup().withBoost(BoostTarget.constant(1.3e5)).withJets(new JetPair(1.0e-3, 0.56e-3));
    private static final Outcome OUTCOME = Evaluate.of(CAR, SETUP, JOB.stated());
    private static final OperatingPoint ON = OUTCOME.strongest().orElseThrow();
    private static final OperatingPoint OFF = OUTCOME.off().get(OUTCOME.off().size() - 1);
    /** The sheet of the car, engine and nozzles. */
    private static final double STROKE = 84.6e-3;

    private static final int NOZZLES = 6;

    /** A figure that is held against a bound of the builder, and what the builder must set for a given bound. */
    private record Held(String key, Side side, double reached, DoubleFunction<BuilderLimits> set) {}

    private static List<Held> held() {
        var place = ON.compressor().place();
        double lost = 1 - ON.nitrous().jetInlet().pressure() / ON.bottle().pressure();
        return List.of(
                most("peak-pressure", "peakPressure", ON.cylinder().peakPressure()),
                most("crank-torque", "crankTorque", ON.power().brake() / (2 * Math.PI * ON.rpm() / 60)),
                most("piston-speed", "pistonSpeed", 2 * STROKE * ON.rpm() / 60),
                most("lambda-lean", "lambdaHigh", ON.lambda()),
                new Held("lambda-rich", Side.AT_LEAST, ON.lambda(), bound -> with("lambdaLow", bound)),
                most("exhaust-temperature", "exhaustTemperature", ON.exhaustTemperature()),
                new Held(
                        "compressor-choke",
                        Side.AT_MOST,
                        place.correctedFlow(),
                        bound -> with("chokeMargin", 1 - bound / place.chokeFlow())),
                new Held(
                        "compressor-surge",
                        Side.AT_LEAST,
                        place.correctedFlow(),
                        bound -> with("surgeMargin", 1 - place.surgeFlow() / bound)),
                most("injector-duty", "injectorDuty", ON.main().duty()),
                new Held(
                        "main-pump",
                        Side.AT_MOST,
                        ON.charge().mixture().mainFlow(),
                        bound -> with("pumpReserve", 1 - bound / ON.main().pumpCapacity())),
                new Held(
                        "kit-pump",
                        Side.AT_MOST,
                        ON.charge().mixture().nitrousFuelFlow(),
                        bound ->
                                with("pumpReserve", 1 - bound / ON.nitrousFuel().pumpCapacity())),
                most("feed-loss", "feedLoss", lost));
    }

    private static Held most(String key, String component, double reached) {
        return new Held(key, Side.AT_MOST, reached, bound -> with(component, bound));
    }

    private static BuilderLimits with(String component, double value) {
        try {
            List<Object> values = new ArrayList<>();
            List<Class<?>> types = new ArrayList<>();
            for (RecordComponent one : BuilderLimits.class.getRecordComponents()) {
                types.add(one.getType());
                values.add(
                        one.getName().equals(component)
                                ? value
                                : one.getAccessor().invoke(SET));
            }
            return BuilderLimits.class
                    .getDeclaredConstructor(types.toArray(Class[]::new))
                    .newInstance(values.toArray());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Limit limit(List<Limit> all, String key) {
        return all.stream().filter(l -> l.key().equals(key)).findFirst().orElseThrow();
    }

    /** A tenth of room holds, a tenth beyond is broken; the share is that of the bound. */
    @Test
    void what_the_builder_sets_turns_at_the_figure_that_is_reached() {
        for (Held one : held()) {
            for (double room : new double[] {0.1, -0.1}) {
                double bound = one.side == Side.AT_MOST ? one.reached / (1 - room) : one.reached / (1 + room);
                Car car = CAR.with(one.set.apply(bound));
                Limit limit = limit(PointLimits.all(car, ON, "a case"), one.key);
                assertEquals(one.reached, limit.value(), 1e-9 * one.reached, one.key);
                assertEquals(bound, limit.bound(), 1e-9 * bound, one.key);
                assertEquals(room, limit.relativeMargin(), 1e-9, one.key);
                assertEquals(room > 0 ? Verdict.HOLDS : Verdict.BROKEN, limit.verdict(), one.key);
                assertEquals("a case", limit.caseName());
                assertFalse(limit.hard());
            }
        }
    }

    /** The bounds that parts have: ends of the map and the turbocharger's ceiling as in the sheet. */
    @Test
    void what_the_parts_bear_is_their_bound() {
        List<Limit> all = PointLimits.all(CAR, ON, "");
        assertHeld(all, "turbo-speed", ON.compressor().rpm(), 118_000);
        assertHeld(all, "boost-ceiling", ON.plenumPressure() - ON.air().pressure(), 1.85e5);
        assertHeld(all, "knock", ON.cylinder().knock(), 1);
        var m = ON.charge().mixture();
        double exhaust = m.dryAir() + m.waterVapour() + m.nitrous() + m.mainFlow() + m.nitrousFuelFlow();
        assertHeld(all, "turbine-flow", ON.shaft().turbineFlow(), exhaust);
        assertEquals(0, limit(all, "boost-reached").value(), 1e-12);
    }

    private static void assertHeld(List<Limit> all, String key, double value, double bound) {
        Limit limit = limit(all, key);
        assertEquals(value, limit.value(), 1e-9 * value, key);
        assertEquals(bound, limit.bound(), 1e-9 * bound, key);
        assertEquals(Side.AT_MOST, limit.side(), key);
    }

    @Test
    void boost_that_is_missing_with_nitrous_is_a_share_of_the_plenum_pressure_asked_for() {
        OperatingPoint less = ON.as(Mode.NITROUS, ON.plenumPressure() / 0.98);
        Limit limit = limit(PointLimits.all(CAR, less, ""), "boost-reached");
        assertEquals(0.02, limit.value(), 1e-12);
        assertEquals(Verdict.BROKEN, limit.verdict());
        OperatingPoint near = ON.as(Mode.NITROUS, ON.plenumPressure() / 0.995);
        assertEquals(
                Verdict.HOLDS,
                limit(PointLimits.all(CAR, near, ""), "boost-reached").verdict());
    }

    @Test
    void with_the_nitrous_closed_its_own_limits_concern_nothing() {
        Set<String> on = keys(PointLimits.all(CAR, ON, ""));
        Set<String> off = keys(PointLimits.all(CAR, OFF, ""));
        on.removeAll(off);
        assertEquals(Set.of("turbine-flow", "boost-reached", "kit-pump", "feed-loss"), on);
        assertEquals(Mode.BOOST_ALONE, OFF.mode());
    }

    private static Set<String> keys(List<Limit> all) {
        return all.stream().map(Limit::key).collect(Collectors.toSet());
    }

    /** Four ways to ask for the same margins. */
    @Test
    void searches_see_the_margins_that_a_reader_sees() {
        for (OperatingPoint point : List.of(ON, OFF)) {
            List<Limit> all = PointLimits.all(CAR, point, "");
            double[] margins = PointLimits.margins(CAR, point);
            List<String> keys = PointLimits.keys();
            assertEquals(margins.length, PointLimits.count());
            assertEquals(margins.length, keys.size());
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < margins.length; i++) {
                String key = keys.get(i);
                Optional<Limit> said =
                        all.stream().filter(l -> l.key().equals(key)).findFirst();
                assertEquals(said.map(Limit::relativeMargin).orElse(Double.POSITIVE_INFINITY), margins[i], 1e-15, key);
                least = Math.min(least, margins[i]);
            }
            PointLimits.Closest closest = PointLimits.of(CAR, point);
            assertEquals(least, closest.margin());
            double found = least;
            assertEquals(
                    all.stream()
                            .filter(l -> Math.abs(l.relativeMargin() - found) < 1e-15)
                            .map(Limit::name)
                            .findFirst()
                            .orElseThrow(),
                    closest.name());
        }
    }

    @Test
    void the_closer_of_two_is_kept_and_nothing_is_the_farthest() {
        var near = new PointLimits.Closest("near", 0.1);
        var far = new PointLimits.Closest("far", 0.2);
        assertEquals(near, near.or(far));
        assertEquals(near, far.or(near));
        assertEquals(near, near.or(new PointLimits.Closest("same", 0.1)));
        assertEquals(far, PointLimits.Closest.NONE.or(far));
    }

    @Test
    void load_is_the_larger_share_of_torque_and_pressure() {
        double torque = ON.crankTorque();
        double pressure = ON.cylinder().peakPressure();
        Car weakRods = CAR.with(with("crankTorque", 0.8 * torque)).with(CAR.model());
        assertEquals(Math.max(1 / 0.8, pressure / 160e5), PointLimits.load(weakRods, ON), 1e-9);
        Car weakGasket = CAR.with(with("peakPressure", 0.5 * pressure));
        assertEquals(2, PointLimits.load(weakGasket, ON), 1e-9);
    }

    /** Over all points of an outcome each limit is that of the point where its margin is least, and says where that is. */
    @Test
    void an_outcome_keeps_the_worst_point_of_each_limit() {
        List<OperatingPoint> points = Stream.of(OUTCOME.off(), OUTCOME.armed(), OUTCOME.changeover())
                .flatMap(List::stream)
                .toList();
        for (String key : PointLimits.keys()) {
            Optional<Limit> worst = points.stream()
                    .flatMap(point -> PointLimits.all(CAR, point, OUTCOME.at().name()).stream())
                    .filter(limit -> limit.key().equals(key))
                    .min(java.util.Comparator.comparingDouble(Limit::relativeMargin));
            assertEquals(worst.map(Limit::value), OUTCOME.limits().find(key).map(Limit::value), key);
            assertEquals(worst.map(Limit::place), OUTCOME.limits().find(key).map(Limit::place), key);
        }
        assertEquals(
                "7,800 rpm, nitrous on",
                limit(PointLimits.all(CAR, last(OUTCOME.withNitrous()), ""), "knock")
                        .place());
    }

    private static OperatingPoint last(List<OperatingPoint> points) {
        return points.get(points.size() - 1);
    }

    /** Flow of nitrous fuel that a test gives, m3/s. */
    private static final double FUEL_DRAWN = 1e-4;

    private static final Day DAY = Day.of(
            CAR,
            SETUP,
            Draw.of(CAR, SETUP, JOB.stated().air().pressure()).outflow(),
            JOB.stated().air().temperature(),
            1);

    private static List<Limit> day(Car car, Setup setup) {
        return DayRules.of(car, setup, "a case", DAY, FUEL_DRAWN);
    }

    // hole areas by their diameters: 6 jets of 1.0 mm behind 4.1 mm, 6 of 0.56 mm behind 2.9 mm, passages of 1.8 and
    // 1.2 mm
    @Test
    void sizes_are_shares_of_areas() {
        List<Limit> all = day(CAR, SETUP);
        assertShare(all, "nitrous-solenoid", NOZZLES * 1.0 / (4.1 * 4.1), SET.solenoidShare());
        assertShare(all, "fuel-solenoid", NOZZLES * 0.56 * 0.56 / (2.9 * 2.9), SET.solenoidShare());
        assertShare(all, "nitrous-passage", 1.0 / (1.8 * 1.8), SET.passageShare());
        assertShare(all, "fuel-passage", 0.56 * 0.56 / (1.2 * 1.2), SET.passageShare());
        // of all four the nitrous jets are nearest to what is allowed
        PointLimits.Closest closest = PointLimits.sizes(CAR, SETUP, SETUP.jets().orElseThrow());
        assertEquals(limit(all, "nitrous-solenoid").name(), closest.name());
        assertEquals(1 - NOZZLES / (4.1 * 4.1) / 0.8, closest.margin(), 1e-9);
    }

    private static void assertShare(List<Limit> all, String key, double share, double allowed) {
        Limit limit = limit(all, key);
        assertEquals(share, limit.value(), 1e-9, key);
        assertEquals(allowed, limit.bound(), key);
        assertEquals(1 - share / allowed, limit.relativeMargin(), 1e-9, key);
    }

    /**
     * 17 lb in 12.6 L; a tenth of a litre a second for three passes of 10 s from a cell of 6 L, of which nine tenths can be drawn; the
     * nitrous on over 2000 of the 2200 rpm under the red line.
     */
    @Test
    void what_is_held_against_the_day_follows_from_the_sheet() {
        List<Limit> all = day(CAR, SETUP);
        Limit filling = limit(all, "filling-density");
        assertEquals(17 * 0.45359237 / 12.6, filling.value(), 1e-9);
        assertEquals(0.68, filling.bound(), 1e-3);
        assertEquals(1 - filling.value() / filling.bound(), filling.relativeMargin(), 1e-9);
        Limit cell = limit(all, "fuel-cell");
        assertEquals(3 * 10 * FUEL_DRAWN, cell.value(), 1e-12);
        assertEquals(0.9 * 6e-3, cell.bound(), 1e-12);
        Limit window = limit(all, "rpm-window");
        assertEquals(2000.0 / 2200, window.value(), 1e-9);
        assertEquals(1, window.bound());
        Limit passes = limit(all, "passes");
        assertEquals(Side.AT_LEAST, passes.side());
        assertEquals(3, passes.bound());
        // the bottle gives more than is asked for: all of those, and one more or a part of it
        assertTrue(passes.value() > 3 && passes.value() <= 4, passes::toString);
        Limit hot = limit(all, "bottle-hot");
        assertEquals(NitrousOxide.saturationPressure(303.15), hot.value(), 1);
        // one kelvin under the critical 309.52 K (Lemmon and Span, 2006)
        assertEquals(NitrousOxide.saturationPressure(308.52), hot.bound(), 1e3);
    }

    /** Temperatures count in kelvin, a marking as kept or not, pressures and densities by their bound. */
    @Test
    void margins_of_the_bottle_can_be_compared() {
        List<Limit> all = day(CAR, SETUP);
        Limit start = limit(all, "start-temperature");
        assertEquals(303.15, start.value(), 1e-9);
        assertEquals((start.bound() - 303.15) / 60, start.relativeMargin(), 1e-9);
        Limit heater = limit(all, "heater-off");
        assertEquals((heater.bound() - 303.15) / 60, heater.relativeMargin(), 1e-9);
        for (String key : List.of("service-pressure", "disc-rating")) {
            assertEquals(1, limit(all, key).relativeMargin(), 1e-9, key);
        }
        Limit soak = limit(all, "soak-pressure-disc");
        assertEquals(1 - soak.value() / soak.bound(), soak.relativeMargin(), 1e-9);
        assertEquals(Side.AT_LEAST, limit(all, "service-pressure").side());
        assertEquals(Side.AT_LEAST, limit(all, "start-pressure-low").side());
        assertEquals(Side.AT_MOST, limit(all, "start-pressure-high").side());
        assertTrue(limit(all, "disc-rating").hard());
        assertEquals(QuantityKind.RATIO, limit(all, "filling-density").kind());
        assertEquals(QuantityKind.TEMPERATURE, start.kind());
        assertEquals(QuantityKind.TEMPERATURE, heater.kind());
        assertEquals(QuantityKind.ABSOLUTE_PRESSURE, soak.kind());
    }

    /** A rule is published; the marking counts so only where the sheet states it. */
    @Test
    void a_marking_is_known_as_well_as_the_sheet_says() throws IOException {
        String sheet = Files.readString(Path.of("../../data/whimbrel/job.yaml"));
        for (Limit limit : day(CAR, SETUP)) {
            if (limit.hard() && !limit.key().equals("pins")) {
                assertEquals(Provenance.PUBLISHED, limit.provenance(), limit.key());
            }
        }
        Car unread = Job.read(sheet.replaceFirst("(?m)^  service-pressure:.*$", ""), Path.of("../../data/whimbrel"))
                .car();
        List<Limit> all = day(unread, SETUP);
        for (String key : List.of("service-pressure", "pressure-at-21", "disc-rating")) {
            assertEquals(Provenance.ASSUMED, limit(all, key).provenance(), key);
        }
        assertEquals(Provenance.PUBLISHED, limit(all, "filling-density").provenance());
    }

    /** 0.95 kg/L at 50 degC is beyond 500 bar, where the equation of state ends; 0.04 kg/L never fills the bottle with liquid. */
    @Test
    void a_charge_that_cannot_be_judged_is_broken_and_a_small_one_is_not() {
        Limit soak = limit(day(CAR, SETUP.withBottle(new BottleFill(12, 303.15))), "soak-pressure-disc");
        assertEquals(Verdict.BROKEN, soak.verdict());
        assertTrue(Double.isNaN(soak.value()));
        Limit start = limit(day(CAR, SETUP.withBottle(new BottleFill(0.5, 303.15))), "start-temperature");
        assertEquals(Verdict.HOLDS, start.verdict());
        assertEquals(525, start.bound());
    }

    @Test
    void a_signal_without_a_pin_is_named_and_broken() throws IOException {
        Limit placed = limit(day(CAR, SETUP), "pins");
        assertEquals("every signal that must be there has a pin", placed.reason());
        assertEquals(0, placed.value());
        String sheet =
                Files.readString(Path.of("../../data/whimbrel/job.yaml")).replace("inputs-used: 13", "inputs-used: 16");
        Limit missing =
                limit(day(Job.read(sheet, Path.of("../../data/whimbrel")).car(), SETUP), "pins");
        assertEquals(Verdict.BROKEN, missing.verdict());
        assertEquals(3, missing.value());
        assertTrue(
                missing.reason().contains("bottle pressure (")
                        && missing.reason().contains("arming switch ("),
                missing.reason());
    }
}
