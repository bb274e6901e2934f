package org.shotledger.job;

import static org.shotledger.units.QuantityKind.BORE;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.LENGTH;
import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.VOLUME;
import static org.shotledger.units.QuantityKind.VOLUME_FLOW;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shotledger.drive.Driveline;
import org.shotledger.sheet.SheetException;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.sheet.SheetReading;
import org.shotledger.sheet.SheetSection;
import org.shotledger.sheet.YamlSheet;

/**
 * The figures a shop knows of a car before it has measured anything for a job sheet; {@link FirstSheet} estimates the rest.
 * Figures are NaN and words empty where nothing was said.
 */
record FirstFigures(
        String name,
        boolean invented,
        int cylinders,
        double bore,
        double stroke,
        boolean square,
        double compression,
        double redLine,
        String fuel,
        double ethanol,
        String nitrousFuel,
        boolean mainRail,
        List<Pulled> pull,
        boolean curve,
        String correction,
        double ceiling,
        int injectors,
        double injectorFlow,
        String injector,
        double pumpFlow,
        String pump,
        int pumps,
        double compressorFlow,
        double compressorRatio,
        double inducer,
        int nozzles,
        String position,
        double charge,
        double target,
        double rpmLow,
        double rpmHigh,
        int passes,
        double altitude,
        double temperature,
        double mass,
        String drive,
        double nitrousJet,
        double fuelJet,
        double setBoost) {

    /** One point of the pull: engine speed in rev/min, boost in Pa above ambient, power at the wheels in W. */
    record Pulled(double rpm, double boost, double wheelPower) {}

    /** What can be said, in the order in which it is asked for, and what each is. */
    static final Map<String, String> NAMES = names();

    private static Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        names.put("name", "what the job is called");
        names.put("invented", "yes where the figures are made up");
        names.put("cylinders", "how many");
        names.put("displacement", "such as \"2.0 L\"; or bore and stroke");
        names.put("bore", "such as \"86 mm\"");
        names.put("stroke", "such as \"86 mm\"");
        names.put("compression", "geometric ratio, such as 9.0");
        names.put("red-line", "such as \"7400 rpm\"");
        names.put("fuel", "ethanol-blend, gasoline, methanol or ethanol");
        names.put("ethanol", "of a blend by volume, such as \"78 %\"");
        names.put("nitrous-fuel", "same, ethanol-blend (as bought), gasoline, methanol or ethanol");
        names.put("nitrous-fuel-supply", "own-cell, or main-rail where it comes from the rail of the injectors");
        names.put("boost", "of the pull, such as \"1.3 bar gauge\"");
        names.put("pull-power", "at the wheels, such as \"330 hp\"; as observed unless a correction is said");
        names.put("pull-rpm", "engine speed of that power, such as \"6200 rpm\"");
        names.put(
                "pull",
                "the whole pull instead: a CSV file with engine speed and power or torque, and boost if it was logged");
        names.put(
                "correction",
                "the standard the pull's power was corrected to, such as din-70020 or sae-j1349; none otherwise");
        names.put("boost-ceiling", "highest boost the builder allows; that of the pull otherwise");
        names.put("injectors", "how many; one for each cylinder otherwise");
        names.put("injector-flow", "of one held open at 3 bar, such as \"1050 cc/min\"");
        names.put("injector", "a size class of the catalogue instead: small, medium, large or very large");
        names.put("pump-flow", "of one main pump at 3 bar, such as \"280 L/h\"");
        names.put("pump", "a size class of the catalogue instead: small, medium or large");
        names.put("pumps", "how many main pumps, side by side");
        names.put("compressor-flow", "rated flow, such as \"0.36 kg/s\" or \"50 lb/min\"");
        names.put("compressor-ratio", "pressure ratio of that flow; 3 otherwise");
        names.put("inducer", "diameter of the compressor wheel's inlet instead of its flow, such as \"54 mm\"");
        names.put("nozzles", "how many");
        names.put("position", "plenum, before-throttle or runner");
        names.put("charge", "of the bottle, such as \"10 lb\"");
        names.put("target-power", "at the wheels, such as \"400 hp\"");
        names.put("rpm-low", "from which the power is asked for");
        names.put("rpm-high", "up to which the power is asked for");
        names.put("passes", "from one bottle");
        names.put("altitude", "of the place where the power is asked for, such as \"200 m\"");
        names.put("temperature", "of the air there, such as \"25 degC\"");
        names.put("mass", "of the car with driver, such as \"1400 kg\"");
        names.put("drive", "rear, front or all");
        names.put("nitrous-jet", "jets to analyse instead of finding some, such as \"44 thou\"");
        names.put("fuel-jet", "the fuel jet beside it");
        names.put("set-boost", "the boost to analyse them at; that of the pull otherwise");
        return names;
    }

    /**
     * Reads figures.
     *
     * @param said what was said, by the names of {@link #NAMES}
     * @param folder where the table of the pull lies
     * @throws SheetException with everything that is wrong or missing
     */
    static FirstFigures of(Map<String, String> said, Path folder) {
        String text = said.entrySet().stream()
                .map(e -> e.getKey() + ": '" + e.getValue().replace("'", "''") + "'\n")
                .collect(Collectors.joining());
        SheetReading reading = new SheetReading("first figures", folder);
        Optional<Mapping> root = YamlSheet.read(text, "first figures", reading.problems());
        FirstFigures figures =
                root.map(r -> read(SheetSection.root(reading, r), said)).orElse(null);
        reading.problems().throwIfAny();
        return figures;
    }

    private static FirstFigures read(SheetSection s, Map<String, String> said) {
        String name = s.textOr("name", "my car");
        boolean invented = s.yesOr("invented", false, "taken as real");
        int cylinders = s.count("cylinders", 1, 16);
        boolean square = !s.has("bore") && !s.has("stroke");
        double displacement = square ? s.figure("displacement", VOLUME, 3e-4, 15e-3) : Double.NaN;
        double side = Math.cbrt(4 * displacement / (Math.PI * cylinders));
        double bore = square ? side : s.figure("bore", LENGTH, 0.04, 0.16);
        double stroke = square ? side : s.figure("stroke", LENGTH, 0.03, 0.18);
        double compression = s.figure("compression", RATIO, 5, 20);
        String fuel = word(s, "fuel", "ethanol-blend", "gasoline", "methanol", "ethanol");
        double ethanol = fuel.equals("ethanol-blend") ? s.figure("ethanol", FRACTION, 0, 1) : Double.NaN;
        String nitrousFuel = s.has("nitrous-fuel")
                ? word(s, "nitrous-fuel", "same", "ethanol-blend", "gasoline", "methanol", "ethanol")
                : "same";
        boolean mainRail = s.has("nitrous-fuel-supply")
                && "main-rail".equals(word(s, "nitrous-fuel-supply", "own-cell", "main-rail"));
        if (mainRail && !nitrousFuel.equals("same")) {
            s.report(
                    "nitrous-fuel",
                    "The main rail has the fuel of the tank; leave \"nitrous-fuel\" out or say \"same\".");
        }
        String drive = s.has("drive") ? word(s, "drive", "rear", "front", "all") : "rear";
        List<Pulled> pull = pull(s, loss(drive));
        double low = s.figure("rpm-low", ROTATION, 500, 20_000);
        double high = s.figure("rpm-high", ROTATION, 500, 20_000);
        String injector = s.has("injector") ? word(s, "injector", "small", "medium", "large", "very large") : "";
        String pump = s.has("pump") ? word(s, "pump", "small", "medium", "large") : "";
        oneOf(s, "injector", "injector-flow");
        oneOf(s, "pump", "pump-flow");
        boolean jets = s.has("nitrous-jet") || s.has("fuel-jet");
        FirstFigures figures = new FirstFigures(
                name,
                invented,
                cylinders,
                bore,
                stroke,
                square,
                compression,
                maybe(s, "red-line", ROTATION, 1000, 20_000),
                fuel,
                ethanol,
                nitrousFuel,
                mainRail,
                pull,
                said.containsKey("pull"),
                s.has("correction")
                        ? word(s, "correction", PullSection.CORRECTIONS.keySet().toArray(String[]::new))
                        : "none",
                maybe(s, "boost-ceiling", GAUGE_PRESSURE, 0, 6e5),
                s.has("injectors") ? s.count("injectors", 1, 32) : cylinders,
                injector.isEmpty()
                        ? s.figure("injector-flow", VOLUME_FLOW, 1e-7, 1.5e-4)
                        : CatalogueParts.injectorFlow(injector),
                injector,
                maybe(s, "pump-flow", VOLUME_FLOW, 1e-6, 1e-3),
                pump,
                s.has("pumps") ? s.count("pumps", 1, 4) : 1,
                maybe(s, "compressor-flow", MASS_FLOW, 1e-3, 10),
                s.has("compressor-ratio") ? s.figure("compressor-ratio", RATIO, 1.5, 5) : 3,
                maybe(s, "inducer", BORE, 0.02, 0.2),
                s.has("nozzles") ? s.count("nozzles", 1, 16) : 1,
                s.has("position") ? word(s, "position", "plenum", "before-throttle", "runner") : "plenum",
                s.figure("charge", MASS, 0.05, 60),
                s.figure("target-power", POWER, 10e3, 3e6),
                low,
                high,
                s.has("passes") ? s.count("passes", 1, 50) : 3,
                s.has("altitude") ? s.figure("altitude", LENGTH, -430, 5000) : 200,
                s.has("temperature") ? s.figure("temperature", TEMPERATURE, 220, 340) : 298.15,
                maybe(s, "mass", MASS, 100, 10_000),
                drive,
                jets ? s.figure("nitrous-jet", BORE, 1e-4, 0.01) : Double.NaN,
                jets ? s.figure("fuel-jet", BORE, 1e-4, 0.01) : Double.NaN,
                maybe(s, "set-boost", GAUGE_PRESSURE, 0, 6e5));
        return s.make(() -> figures);
    }

    private static void oneOf(SheetSection s, String part, String figure) {
        if (s.has(part) && s.has(figure)) {
            s.report(figure, "\"" + part + "\" and \"" + figure + "\" both stand here; keep one of them.");
        }
    }

    private static double maybe(
            SheetSection s, String key, org.shotledger.units.QuantityKind kind, double low, double high) {
        return s.has(key) ? s.figure(key, kind, low, high) : Double.NaN;
    }

    private static String word(SheetSection s, String key, String... words) {
        Map<String, String> choices = new LinkedHashMap<>();
        Arrays.stream(words).forEach(word -> choices.put(word, word));
        return s.choice(key, choices);
    }

    private static List<Pulled> pull(SheetSection s, double loss) {
        double boost = s.figure("boost", GAUGE_PRESSURE, -0.5e5, 6e5);
        if (!s.has("pull")) {
            double rpm = s.figure("pull-rpm", ROTATION, 500, 20_000);
            return List.of(new Pulled(rpm, boost, s.figure("pull-power", POWER, 10e3, 3e6)));
        }
        return s
                .table("pull", Tables.PULL)
                .map(table -> PullSection.points(s, table, boost, new Driveline("as told", 0, loss)))
                .orElse(List.of())
                .stream()
                .map(p -> new Pulled(p.rpm(), p.gaugePressure(), p.wheelPower()))
                .toList();
    }

    /** The point of most power. */
    Pulled strongest() {
        return pull.stream()
                .max(java.util.Comparator.comparingDouble(Pulled::wheelPower))
                .orElseThrow();
    }

    double displacement() {
        return cylinders * Math.PI / 4 * bore * bore * stroke;
    }

    /** Share of the crankshaft's power lost on the way to the wheels: common practice, no source. */
    double loss() {
        return loss(drive);
    }

    private static double loss(String drive) {
        return switch (drive) {
            case "front" -> 0.12;
            case "all" -> 0.18;
            default -> 0.14;
        };
    }
}
