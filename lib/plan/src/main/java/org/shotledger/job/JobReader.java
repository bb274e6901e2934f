package org.shotledger.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.shotledger.car.BasePull;
import org.shotledger.car.BuilderLimits;
import org.shotledger.car.Car;
import org.shotledger.car.Controller;
import org.shotledger.car.CycleTables;
import org.shotledger.car.Electrical;
import org.shotledger.car.EngineModel;
import org.shotledger.car.FuelStreams;
import org.shotledger.car.Injection;
import org.shotledger.car.Origin;
import org.shotledger.car.Turbo;
import org.shotledger.car.Vehicle;
import org.shotledger.drive.Driveline;
import org.shotledger.engine.ChenFlynn;
import org.shotledger.engine.Engine;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.NitrousFactor;
import org.shotledger.evaluate.Calibration;
import org.shotledger.nitrous.FlowTested;
import org.shotledger.nitrous.WetKit;
import org.shotledger.setup.Case;
import org.shotledger.setup.DaySheet;
import org.shotledger.setup.Setup;
import org.shotledger.setup.Target;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.sheet.SheetReading;
import org.shotledger.sheet.SheetSection;
import org.shotledger.sheet.SheetText;
import org.shotledger.sheet.YamlSheet;
import org.shotledger.wiring.Wiring;
import org.shotledger.workshop.Workshop;

/** Reads a whole sheet section by section and gathers what was wrong in all of them. */
final class JobReader {
    static final String USUAL_NAME = "job.yaml";

    private JobReader() {}

    static Job load(Path named) {
        Path file = Files.isDirectory(named) ? named.resolve(USUAL_NAME) : named;
        String text = SheetText.read(file, named.toString());
        return read(text, file.getFileName().toString(), file.toAbsolutePath().getParent(), Optional.empty());
    }

    /** @param made tables of cycles made for a car that may have the same engine */
    static Job read(String given, String file, Path folder, Optional<CycleTables> made) {
        return read(SheetText.check(given, file), file, folder, List.of(), made);
    }

    private static Job read(String text, String file, Path folder, List<Problem> notices, Optional<CycleTables> made) {
        SheetReading reading = new SheetReading(file, folder);
        Optional<Mapping> root = YamlSheet.read(text, file, reading.problems());
        Optional<Integer> format = root.flatMap(r -> SheetFormat.of(r, reading));
        if (format.filter(f -> f < SheetFormat.CURRENT).isPresent()) {
            reading.problems().throwIfAny();
            SheetFormat.Upgraded sheet = SheetFormat.upgrade(text, root.get(), file, format.get());
            return read(sheet.text(), file, folder, sheet.notices(), made);
        }
        Job job = format.flatMap(f -> root)
                .map(r -> job(SheetSection.root(reading, r), reading, text, notices, made))
                .orElse(null);
        reading.problems().throwIfAny();
        return job;
    }

    private static Job job(
            SheetSection s, SheetReading reading, String text, List<Problem> notices, Optional<CycleTables> made) {
        s.has("format");
        String name = s.text("name");
        boolean invented = s.yesOr("invented", false, "taken as real");
        Map<String, MoistAir> places = new LinkedHashMap<>();
        s.section("conditions").namedSections().forEach((key, c) -> places.put(key, CarSections.conditions(c)));
        SheetSection targetSection = s.section("target");
        SheetSection tune = s.section("tune");
        Target target = SetupSections.target(targetSection, tune, places.keySet());
        double ambient = Optional.ofNullable(target)
                .map(t -> places.get(t.conditions()))
                .map(MoistAir::pressure)
                .orElse(Double.NaN);
        boolean onMainRail = KitSections.onMainRail(s.section("nitrous-system").section("fuel"));
        SetupSections setups = new SetupSections(s, tune, onMainRail);
        tune.make(() -> tune);
        Parts parts = parts(s, name, invented, places, ambient, setups, onMainRail);
        String usualPlace = target == null ? "" : target.conditions();
        Optional<UnaryOperator<WetKit>> tests = s.sectionIf("flow-tests")
                .map(section -> new FlowTestSections(parts.fuels, places, usualPlace).tests(section));
        MustHoldSection mustHold = new MustHoldSection(s);
        boolean unread = s.has("wiring") && parts.wiring.isEmpty();
        Workshop workshop = WorkshopSections.workshop(
                s,
                unread
                        ? Optional.empty()
                        : Optional.of(parts.wiring.map(Wiring::sensors).orElse(List.of())));
        DaySheet day = DaySection.day(s);
        if (reading.problems().count() > 0) {
            return s.make(() -> null); // nothing can be calibrated from half a sheet
        }
        return s.make(() -> {
            Setup setup = setups.setup(target, parts.turbo, parts.bottle.fill());
            parts.nitrous = tests.map(told -> told.apply(parts.nitrous)).orElse(parts.nitrous);
            Car car = parts.car(reading, made);
            Car calibrated = calibrated(s, car, setup);
            List<Case> cases = mustHold.cases(target.conditions(), places.get(target.conditions()), calibrated);
            return new Job(
                    calibrated,
                    target,
                    setup,
                    day,
                    cases,
                    places,
                    workshop,
                    new JobSource(
                            reading.file(), reading.folder(), text, reading.tables(), notices(reading, car, notices)));
        });
    }

    /** What was converted, and the flow tests that do not go with what was known before them. */
    private static List<Problem> notices(SheetReading reading, Car car, List<Problem> converted) {
        List<Problem> all = new ArrayList<>(converted);
        car.nitrous().tests().stream().filter(FlowTested::isSurprising).forEach(test -> {
            String path = "flow-tests." + test.name();
            int line = car.origin(path + ".seconds").map(Origin::line).orElse(0);
            String sentence = String.format(
                    Locale.ROOT,
                    "The %s passed %.0f %% of what was expected of their class, further off than two standard deviations; check"
                            + " the test, its jets and nozzles, and the sheet.",
                    test.side().words(),
                    100 * test.test().flow() / test.expected());
            all.add(new Problem(reading.file(), line, 0, path, "", sentence));
        });
        return all;
    }

    private static Car calibrated(SheetSection s, Car car, Setup setup) {
        try {
            return Calibration.of(car, setup);
        } catch (IllegalArgumentException refused) {
            s.report("base-pull", refused.getMessage());
            return car;
        }
    }

    private static Parts parts(
            SheetSection s,
            String name,
            boolean invented,
            Map<String, MoistAir> places,
            double ambient,
            SetupSections setups,
            boolean onMainRail) {
        Parts p = new Parts();
        p.name = name;
        p.invented = invented;
        SheetSection engine = s.section("engine");
        p.friction = EngineSections.friction(engine);
        p.nitrousWork = EngineSections.nitrousWork(engine);
        p.engine = EngineSections.engine(engine);
        p.fuels = EngineSections.fuels(s.section("fuels"));
        p.driveline = CarSections.driveline(s.section("driveline"));
        p.basePull = PullSection.basePull(s.section("base-pull"), places, p.fuels, p.driveline);
        p.injection = SupplySections.injection(s.section("injection"));
        p.turbo = BoostSections.turbo(s.section("turbo"));
        p.nitrous = KitSections.nitrousSystem(s.section("nitrous-system"), onMainRail);
        KitSections.oneFuel(s.section("fuels").section("nitrous"), onMainRail, p.fuels);
        SheetSection bottle = s.section("bottle");
        p.bottle = KitSections.bottle(bottle, ambient);
        p.limits = KitSections.limits(s.section("limits"), ambient);
        KitSections.heaterWithin(bottle, p.bottle, p.limits);
        p.vehicle = s.sectionIf("vehicle")
                .map(v -> VehicleSection.vehicle(v, p.driveline == null ? "" : p.driveline.name()));
        p.electrical = s.sectionIf("electrical").map(CarSections::electrical);
        p.controller = s.sectionIf("controller").map(ControllerSection::controller);
        p.wiring = s.sectionIf("wiring")
                .map(w -> new WiringSections(setups, p.injection, p.nitrous, p.bottle, p.turbo)
                        .wiring(w, p.electrical.orElse(null), p.controller.orElse(null)));
        return p;
    }

    /** The parts while they are gathered; each is null when its own section was wrong. */
    private static final class Parts {
        private String name;
        private boolean invented;
        private Engine engine;
        private ChenFlynn friction;
        private NitrousFactor nitrousWork;
        private FuelStreams fuels;
        private BasePull basePull;
        private Injection injection;
        private Turbo turbo;
        private WetKit nitrous;
        private KitSections.Bottled bottle;
        private Driveline driveline;
        private BuilderLimits limits;
        private Optional<Vehicle> vehicle;
        private Optional<Electrical> electrical;
        private Optional<Controller> controller;
        private Optional<Wiring> wiring;

        private Car car(SheetReading reading, Optional<CycleTables> made) {
            Map<String, Origin> origins = new LinkedHashMap<>();
            reading.found().forEach((path, found) -> origins.put(path, Origin.of(found)));
            return new Car(
                    name,
                    invented,
                    engine,
                    friction,
                    fuels,
                    basePull,
                    injection,
                    turbo,
                    nitrous,
                    bottle.bottle(),
                    driveline,
                    limits,
                    vehicle,
                    electrical,
                    controller,
                    wiring,
                    EngineModel.uncalibrated(engine, friction, CycleTables.of(engine.compressionRatio(), made))
                            .with(nitrousWork),
                    origins);
        }
    }
}
