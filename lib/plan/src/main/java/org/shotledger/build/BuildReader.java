package org.shotledger.build;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shotledger.drive.Driveline;
import org.shotledger.engine.Engine;
import org.shotledger.engine.FrictionModel;
import org.shotledger.engine.MoistAir;
import org.shotledger.nitrous.WetKit;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Section;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.sheet.SheetReading;
import org.shotledger.sheet.SheetText;
import org.shotledger.sheet.YamlSheet;
import org.shotledger.wiring.Wiring;

/** Reads a whole sheet section by section and gathers what was wrong in all of them. */
final class BuildReader {
    static final String USUAL_NAME = "build.yaml";

    private BuildReader() {}

    static Build load(Path named) {
        Path file = Files.isDirectory(named) ? named.resolve(USUAL_NAME) : named;
        String text = SheetText.read(file, named.toString());
        return read(text, file.getFileName().toString(), file.toAbsolutePath().getParent());
    }

    static Build read(String given, String file, Path folder) {
        return read(SheetText.check(given, file), file, folder, List.of());
    }

    private static Build read(String text, String file, Path folder, List<Problem> notices) {
        SheetReading reading = new SheetReading(file, folder);
        Optional<Mapping> root = YamlSheet.read(text, file, reading.problems());
        Optional<Integer> format = root.flatMap(r -> SheetFormat.of(r, reading));
        if (format.filter(f -> f < SheetFormat.CURRENT).isPresent()) {
            reading.problems().throwIfAny();
            SheetFormat.Upgraded sheet = SheetFormat.upgrade(text, root.get(), file, format.get());
            return read(sheet.text(), file, folder, sheet.notices());
        }
        Build build = format.flatMap(f -> root)
                .map(r -> build(Section.root(reading, r), reading, text, notices))
                .orElse(null);
        reading.problems().throwIfAny();
        return build;
    }

    private static Build build(Section s, SheetReading reading, String text, List<Problem> notices) {
        s.has("format");
        String name = s.text("name");
        boolean invented = s.yesOr("invented", false, "taken as real");
        Map<String, MoistAir> air = new LinkedHashMap<>();
        s.section("conditions").namedSections().forEach((key, c) -> air.put(key, CarSections.conditions(c)));
        Target target = CarSections.target(s.section("target"), air.keySet());
        double ambient = Optional.ofNullable(target)
                .map(t -> air.get(t.conditions()))
                .map(MoistAir::pressure)
                .orElse(Double.NaN);
        Section engineSection = s.section("engine");
        FrictionModel friction = EngineSections.friction(engineSection);
        Engine engine = EngineSections.engine(engineSection);
        FuelStreams fuels = EngineSections.fuels(s.section("fuels"));
        Tune tune = EngineSections.tune(s.section("tune"));
        BasePullSheet pull = EngineSections.basePull(s.section("base-pull"), air.keySet());
        Injection injection = SupplySections.injection(s.section("injection"));
        Turbo turbo = BoostSections.turbo(s.section("turbo"));
        WetKit kit = KitSections.wetKit(s.section("wet-kit"));
        Section bottleSection = s.section("bottle");
        BottleSheet bottle = KitSections.bottle(bottleSection, ambient);
        Driveline driveline = CarSections.driveline(s.section("driveline"));
        BuilderLimits limits = KitSections.limits(s.section("limits"), ambient);
        KitSections.heaterWithin(bottleSection, bottle, limits);
        Optional<Vehicle> vehicle = s.sectionIf("vehicle").map(CarSections::vehicle);
        Optional<Electrical> electrical = s.sectionIf("electrical").map(CarSections::electrical);
        Optional<Controller> controller = s.sectionIf("controller").map(CarSections::controller);
        Optional<Wiring> wiring = s.sectionIf("wiring")
                .map(w -> new WiringSections(injection, kit, bottle, turbo)
                        .wiring(w, electrical.orElse(null), controller.orElse(null)));
        return s.make(() -> new Build(
                name,
                invented,
                air,
                target,
                engine,
                fuels,
                tune,
                pull,
                injection,
                turbo,
                kit,
                bottle,
                driveline,
                limits,
                friction,
                vehicle,
                electrical,
                controller,
                wiring,
                origins(reading),
                new BuildSource(reading.file(), reading.folder(), text, reading.tables(), notices)));
    }

    private static Map<String, Origin> origins(SheetReading reading) {
        Map<String, Origin> origins = new LinkedHashMap<>();
        reading.found().forEach((path, found) -> origins.put(path, Origin.of(found)));
        return origins;
    }
}
