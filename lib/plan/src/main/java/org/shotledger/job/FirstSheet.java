package org.shotledger.job;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.shotledger.boost.Turbine;
import org.shotledger.car.Car;
import org.shotledger.car.Turbo;
import org.shotledger.engine.MoistAir;
import org.shotledger.evaluate.Calibration;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.files.AtomicFile;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;
import org.shotledger.units.UnitFactors;

/**
 * A whole job sheet from the few figures a shop knows. What is not known is estimated by relations that stand beside each figure,
 * marked as estimated, with a wide band and with how to measure it: habits of the trade, not physics, good enough to begin with.
 */
final class FirstSheet {
    /** Air that an engine takes for each watt at the crankshaft, kg/J: a kilogram a second for a megawatt. */
    private static final double AIR_PER_POWER = 1e-6;
    /** Flow of air through a hole at the speed of sound from standard conditions, kg/(s m2): NACA 1135. */
    private static final double CHOKED_AIR = 241;
    /** Share of that which a compressor's inlet passes at its rated flow. */
    private static final double INLET_SHARE = 0.75;
    /** Rated flow of the generic map, kg/s, at its pressure ratio of 3. */
    private static final double GENERIC_FLOW = 0.36;
    /** Flow of the generic main pump at 3 bar and 13.5 V, m3/s. */
    private static final double GENERIC_PUMP = 284.1e-3 / 3600;
    /** The same of the generic pump of the nitrous fuel, m3/s. */
    private static final double GENERIC_NITROUS_PUMP = 205.4e-3 / 3600;
    /** The trade's 0.8 lb of nitrous oxide in 10 s for 100 hp, kg/J. */
    static final double NITROUS_PER_POWER = 0.0363 / (100 * UnitFactors.HORSEPOWER);
    /** Flow of nitrous oxide through a jet's area from a bottle at 30 degC, kg/(s m2): by the program's own jet law. */
    private static final double JET_FLUX = 11_500;
    /** Share of the exhaust that passes by the turbine on the pull. */
    private static final double WASTEGATE = 1.0 / 7;

    /** How far from the first guess a turbine area is looked for, and in which steps. */
    private static final double WIDEST = 4;

    private static final double STEP = 1.02;
    /** Largest area a sheet may state, m2. */
    private static final double LARGEST = 0.01;
    /** Shape of a breathing table over the share of the red line. */
    private static final double[] SHARE = {0.2, 0.35, 0.5, 0.65, 0.8, 0.9, 1.0};

    private static final double[] SHAPE = {0.78, 0.86, 0.93, 0.98, 1.0, 0.98, 0.93};

    /** Lines of the usual wiring that a shot from the main rail does not need. */
    private static final List<String> OF_AN_OWN_SUPPLY = List.of("nitrous-fuel-pump:", "fuel-cell-level:");

    private final FirstFigures f;
    private final Path folder;
    private final UnaryOperator<String> generic;
    private final FirstFigures.Pulled best;
    private final double redLine;
    private final double air;
    private final double shot;
    private final double temperature;

    /** What only a calibrated car tells. */
    private record Fitted(double turbineArea, double peakPressure, double crankTorque) {}

    private FirstSheet(FirstFigures figures, Path folder, UnaryOperator<String> generic) {
        this.f = figures;
        this.folder = folder;
        this.generic = generic;
        this.best = f.strongest();
        this.redLine = Double.isNaN(f.redLine())
                ? Math.max(21 * 30 / f.stroke(), 1.03 * Math.max(f.rpmHigh(), highestPulled()))
                : f.redLine();
        this.air = AIR_PER_POWER * best.wheelPower() / (1 - f.loss());
        this.shot = Math.max(0.15 * best.wheelPower(), 1.15 * f.target() - best.wheelPower());
        this.temperature = f.fuel().equals("gasoline") ? 900 : 920;
    }

    private double highestPulled() {
        return f.pull().stream().mapToDouble(FirstFigures.Pulled::rpm).max().orElse(0);
    }

    /**
     * Writes the tables into a folder and makes the sheet.
     *
     * @param generic gives the text of a generic table by its name
     * @return the text of the sheet
     * @throws org.shotledger.sheet.SheetException when the figures cannot belong to one car
     */
    static String write(FirstFigures figures, Path folder, UnaryOperator<String> generic) {
        FirstSheet sheet = new FirstSheet(figures, folder, generic);
        sheet.tables().forEach((name, text) -> AtomicFile.write(folder.resolve(name), text));
        Fitted first = new Fitted(3400 * sheet.air * 1e-6, 100e5, 1000);
        Fitted fitted = sheet.fitted(sheet.begun(first), first);
        return sheet.text(sheet.fitted(sheet.begun(fitted), fitted));
    }

    private Job begun(Fitted fitted) {
        try {
            return Job.read(text(fitted), folder);
        } catch (SheetException e) {
            Problem problem = e.problems().get(0);
            throw new IllegalArgumentException("The figures that were told do not make a car that runs: "
                    + problem.sentence() + " (" + problem.field() + ")");
        }
    }

    private Map<String, String> tables() {
        Map<String, String> tables = new LinkedHashMap<>();
        double flow = ratedFlow() / GENERIC_FLOW;
        double rise = (f.compressorRatio() - 1) / 2;
        tables.put(
                "compressor-map.csv",
                FirstTables.compressor(generic.apply("compressor-map.csv"), flow, rise, wheelSpeed()));
        if (f.pump().isEmpty()) {
            tables.put("fuel-pump.csv", FirstTables.pump(generic.apply("fuel-pump.csv"), pumpFlow() / GENERIC_PUMP));
        }
        if (!f.mainRail()) {
            tables.put(
                    "nitrous-fuel-pump.csv",
                    FirstTables.pump(
                            generic.apply("nitrous-fuel-pump.csv"),
                            Math.max(1, 2.5 * nitrousFuel() / GENERIC_NITROUS_PUMP)));
        }
        tables.put("injector-dead-time.csv", generic.apply("injector-dead-time.csv"));
        tables.put("jets.csv", generic.apply("jets.csv"));
        tables.put("volumetric-efficiency.csv", breathing());
        if (f.curve()) {
            tables.put("pull.csv", FirstTables.pull(f.pull()));
        }
        return tables;
    }

    /** The wheel's tip speed follows the pressure ratio, its diameter the flow. */
    private double wheelSpeed() {
        return Math.sqrt((f.compressorRatio() - 1) / 2 / (ratedFlow() / GENERIC_FLOW));
    }

    private double ratedFlow() {
        if (!Double.isNaN(f.compressorFlow())) {
            return f.compressorFlow();
        }
        return Double.isNaN(f.inducer())
                ? 1.2 * air * UnitFactors.ATMOSPHERE / homePressure()
                : INLET_SHARE * CHOKED_AIR * Math.PI / 4 * f.inducer() * f.inducer();
    }

    /** Fuel of the pull at the mixture of the tune, m3/s: air over about 9 for alcohols and 11.8 for gasoline, density 0.75 to 0.79. */
    private double mainFuel() {
        return switch (f.fuel()) {
            case "gasoline" -> air / 11.8 / 745;
            case "methanol" -> air / 5.1 / 790;
            case "ethanol" -> air / 7.2 / 789;
            default -> air / (11.8 - 4.4 * f.ethanol()) / 770;
        };
    }

    private double pumpFlow() {
        double carried = mainFuel() + (f.mainRail() ? nitrousFuel() : 0);
        return Double.isNaN(f.pumpFlow()) ? 1.9 * carried / f.pumps() : f.pumpFlow();
    }

    private double nitrousFlow() {
        return NITROUS_PER_POWER * shot / (1 - f.loss());
    }

    private double nitrousFuel() {
        boolean methanol = f.nitrousFuel().equals("methanol")
                || (f.nitrousFuel().equals("same") && f.fuel().equals("methanol"));
        return nitrousFlow() / (methanol ? 3.2 : 5) / 770;
    }

    private double homePressure() {
        return MoistAir.atAltitude(f.altitude(), 293.15, 0.5).pressure();
    }

    private double efficiency(FirstFigures.Pulled point) {
        double power = point.wheelPower() / (1 - f.loss());
        double density = (homePressure() + point.boost()) / (287.05 * 318);
        return AIR_PER_POWER * power / (f.displacement() * point.rpm() / 120 * density);
    }

    private String breathing() {
        double[] rpm = new double[SHARE.length];
        double[] efficiency = new double[SHARE.length];
        double top = shape(best.rpm() / redLine);
        double peak = Math.min(1.15, Math.max(0.7, efficiency(best))) / top;
        for (int i = 0; i < SHARE.length; i++) {
            rpm[i] = SHARE[i] * 1.04 * redLine;
            efficiency[i] = Math.min(1.25, peak * SHAPE[i]);
        }
        return FirstTables.breathing(rpm, efficiency);
    }

    private static double shape(double share) {
        int i = 1;
        while (i < SHARE.length - 1 && SHARE[i] < share) {
            i++;
        }
        double part = Math.min(1, Math.max(0, (share - SHARE[i - 1]) / (SHARE[i] - SHARE[i - 1])));
        return SHAPE[i - 1] + part * (SHAPE[i] - SHAPE[i - 1]);
    }

    /** The largest turbine area at which a seventh of the pull's exhaust passes by, or the best there is, and what the pull loads the engine with. */
    private Fitted fitted(Job job, Fitted before) {
        Fitted best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (double times = WIDEST; times > 1 / WIDEST && most < WASTEGATE; times /= STEP) {
            double area = Math.min(LARGEST, times * before.turbineArea);
            Optional<OperatingPoint> point = pulled(job, area);
            double share = point.map(p -> Math.min(WASTEGATE, p.shaft().wastegateShare()))
                    .orElse(Double.NEGATIVE_INFINITY);
            if (share > most) {
                most = share;
                OperatingPoint p = point.orElseThrow();
                best = new Fitted(area, p.cylinder().peakPressure(), p.crankTorque());
            }
        }
        if (most < 0) {
            throw new IllegalArgumentException(
                    "By the figures that were told the exhaust of the pull cannot drive the compressor to its boost;"
                            + " check boost and power of the pull, and the compressor's rated flow and pressure ratio or"
                            + " its inducer.");
        }
        return best;
    }

    private Optional<OperatingPoint> pulled(Job job, double area) {
        Car car = job.car();
        Turbo t = car.turbo();
        Turbine turbine = new Turbine(
                t.turbine().name(),
                area,
                t.turbine().efficiency(),
                t.turbine().mechanicalEfficiency(),
                t.turbine().exhaustLoss());
        Turbo other = new Turbo(t.map(), turbine, t.inlet(), t.cooler(), t.exhaustTemperature(), t.boostCeiling());
        return Calibration.pulled(car.with(other), job.setup(), best.rpm(), best.boost());
    }

    private String text(Fitted fitted) {
        SheetPen pen = new SheetPen();
        pen.comment("A first sheet from the figures that were told; all others are estimates by habits of the"
                        + " trade, with wide bands.")
                .comment("Replace them one after the other by measured figures; ./shotledger explain FIELD says how to"
                        + " get each.")
                .comment("Nitrous oxide can kill an engine and a person. What comes out of this sheet is an estimate,"
                        + " to be proven in small steps.")
                .plain("format", String.valueOf(SheetFormat.CURRENT))
                .plain("name", "\"" + f.name().replace("\\", " ").replace("\"", "'") + "\"")
                .plain("invented", f.invented() ? "yes" : "no");
        asked(pen);
        engine(pen);
        fuels(pen);
        pull(pen);
        supply(pen);
        turbo(pen, fitted);
        nitrous(pen);
        bottle(pen);
        car(pen);
        limits(pen, fitted);
        setup(pen);
        return pen.toString();
    }

    private void asked(SheetPen pen) {
        pen.section("conditions.event")
                .told("altitude", f.altitude(), "m")
                .told("temperature", f.temperature() - UnitFactors.ICE_POINT, "degC")
                .guess("humidity", "40 %", "a usual summer day");
        pen.section("conditions.home")
                .guess("altitude", SheetPen.figure(f.altitude(), "m"), "as at the event")
                .guess("temperature", "20 degC", "a usual dynamometer cell")
                .guess("humidity", "50 %", "a usual dynamometer cell");
        pen.section("target")
                .plain("conditions", "event")
                .told("wheel-power", f.target() / UnitFactors.HORSEPOWER, "hp")
                .told("rpm-low", f.rpmLow(), "rpm")
                .told("rpm-high", f.rpmHigh(), "rpm")
                .plain("passes", String.valueOf(f.passes()))
                .guess("pass-time", "10 s", "full nitrous in one pass");
    }

    private void engine(SheetPen pen) {
        pen.section("engine").plain("cylinders", String.valueOf(f.cylinders()));
        if (f.square()) {
            pen.guess("bore", f.bore() * 1e3, "mm", 0.05, "from the displacement, bore and stroke taken as equal")
                    .guess(
                            "stroke",
                            f.stroke() * 1e3,
                            "mm",
                            0.1,
                            "from the displacement, bore and stroke taken as equal");
        } else {
            pen.told("bore", f.bore() * 1e3, "mm").told("stroke", f.stroke() * 1e3, "mm");
        }
        pen.guess("rod-length", 1.7e3 * f.stroke(), "mm", 0.12, "1.7 times the stroke")
                .told("compression-ratio", f.compression(), "");
        if (Double.isNaN(f.redLine())) {
            pen.guess(
                    "red-line",
                    SheetPen.figure(redLine, "rpm"),
                    "a mean piston speed of 21 m/s, or just above the highest speed told");
        } else {
            pen.told("red-line", redLine, "rpm");
        }
        pen.plain("volumetric-efficiency", "volumetric-efficiency.csv");
    }

    private void fuels(SheetPen pen) {
        pen.section("fuels")
                .guess("temperature", "25 degC", "a mild day")
                .guess("main-evaporated", 40, "%", 0.5, "port injection")
                .guess("nitrous-evaporated", 25, "%", 0.5, "fuel sprayed by a nozzle");
        pen.section("fuels.main").plain("kind", f.fuel());
        if (f.fuel().equals("ethanol-blend")) {
            pen.told("ethanol", 100 * f.ethanol(), "%");
        }
        pen.section("fuels.nitrous").plain("kind", f.nitrousFuel());
        if (f.nitrousFuel().equals("ethanol-blend")) {
            pen.guess("ethanol", 75, "%", 0.15, "as bought");
        }
        pen.section("tune")
                .guess("lambda", 0.80, "", 0.04, "usual under boost")
                .guess("nitrous-lambda", 0.78, "", 0.04, "usual with nitrous")
                .guess("nitrous-retard", "6 deg", "usual for a shot of this size");
    }

    private void pull(SheetPen pen) {
        pen.section("base-pull").plain("conditions", "home");
        if (f.curve()) {
            pen.plain("curve", "pull.csv");
        } else {
            pen.told("rpm", best.rpm(), "rpm")
                    .told("boost", best.boost() / 1e5, "bar gauge")
                    .told("wheel-power", best.wheelPower() / UnitFactors.HORSEPOWER, "hp");
        }
        if (!f.correction().equals("none")) {
            pen.plain("correction", f.correction());
        }
        pen.guess("lambda", 0.80, "", 0.04, "as the tune");
    }

    private void supply(SheetPen pen) {
        pen.section("injection")
                .plain("count", String.valueOf(f.injectors()))
                .guess("voltage", 13.5, "V", 0.03, "engine running");
        pen.section("injection.injector");
        if (f.injector().isEmpty()) {
            pen.told("flow", f.injectorFlow() * 6e7, "cc/min").guess("test-pressure", "3 bar", "usual on a flow bench");
        } else {
            pen.plain("part", f.injector());
        }
        pen.guess("test-density", "684 kg/m3", "n-heptane").plain("dead-time-table", "injector-dead-time.csv");
        pen.section("injection.pumps")
                .plain("count", String.valueOf(f.pumps()))
                .guess("wiring-resistance", 45, "mohm", 0.4, "usual wires of a pump")
                .plain("curve", f.pump().isEmpty() ? "fuel-pump.csv" : "catalogue/fuel-pump-" + f.pump() + ".csv");
        pen.section("injection.regulator")
                .guess("base-pressure", 3, "bar", 0.1, "usual")
                .guess("boost-reference", "1", "the hose goes to the plenum");
    }

    private void turbo(SheetPen pen, Fitted fitted) {
        String rated = Double.isNaN(f.compressorFlow()) && Double.isNaN(f.inducer())
                ? "the air of the pull and a fifth"
                : Double.isNaN(f.compressorFlow())
                        ? "0.75 of the choked flow through the inducer"
                        : "the rated flow told";
        pen.section("turbo.compressor")
                .comment("a generic map scaled to " + SheetPen.figure(ratedFlow(), "kg/s") + " (" + rated
                        + ") at a pressure ratio of " + SheetPen.figure(f.compressorRatio(), ""))
                .plain("map", "compressor-map.csv")
                .plain("reference-temperature", "298 K")
                .plain("reference-pressure", "1.00 bar abs")
                .guess("max-speed", 150_000 * wheelSpeed(), "rpm", 0.1, "the fastest line of the scaled map");
        pen.section("turbo.turbine")
                .guess(
                        "effective-area",
                        fitted.turbineArea * 1e6,
                        "mm2",
                        0.25,
                        "so that the pull closes with a seventh through the wastegate")
                .guess("efficiency", 68, "%", 0.08, "usual")
                .guess("mechanical-efficiency", 96, "%", 0.02, "usual");
        loss(pen, "turbo.turbine.exhaust-loss", 0.15, "0.35 kg/m3");
        loss(pen, "turbo.inlet-loss", 0.015, "1.15 kg/m3");
        pen.section("turbo.charge-cooler").guess("effectiveness", 70, "%", 0.12, "usual of air to air");
        loss(pen, "turbo.charge-cooler.loss", 0.12, "3 kg/m3");
        pen.section("turbo")
                .guess("exhaust-temperature", temperature, "degC", 0.05, "usual under boost with this fuel");
        if (Double.isNaN(f.ceiling())) {
            pen.guess(
                    "boost-ceiling",
                    SheetPen.figure(best.boost() / 1e5, "bar gauge"),
                    "the boost of the pull, which the engine bore");
        } else {
            pen.told("boost-ceiling", f.ceiling() / 1e5, "bar gauge");
        }
    }

    private void loss(SheetPen pen, String section, double bar, String density) {
        pen.section(section)
                .guess("pressure", bar, "bar", 0.5, "usual at the air of the pull")
                .guess(
                        "at-flow",
                        SheetPen.figure(air, "kg/s"),
                        "the air of the pull: a kilogram a second for a megawatt at the crankshaft")
                .guess("at-density", density, "usual there");
    }

    private void nitrous(SheetPen pen) {
        double jets = nitrousFlow() / JET_FLUX;
        double solenoid = Math.sqrt(4 / Math.PI * jets / 0.55);
        double hose = nitrousFlow() < 0.03 ? 5.6 : nitrousFlow() < 0.1 ? 8.7 : 11.1;
        String sized = "for the shot that the target asks, 0.8 lb in 10 s for each 100 hp";
        pen.section("nitrous-system")
                .plain("position", f.position())
                .plain("nozzles", String.valueOf(f.nozzles()))
                .plain("jet-ladder", "jets.csv");
        pen.section("nitrous-system.nitrous")
                .guess(
                        "valve-kv",
                        Math.max(1.2 * hose * hose / 75.7, 0.5),
                        "m3/h",
                        0.3,
                        "a valve that passes about what its hose does")
                .guess("hose-bore", hose, "mm", 0.05, sized)
                .guess("hose-length", 3.5, "m", 0.25, "bottle in the boot")
                .guess("filter-loss", 2, "", 0.5, "usual");
        solenoid(pen, "nitrous-system.nitrous", solenoid);
        pen.section("nitrous-system.nitrous")
                .guess(
                        "line-bore",
                        f.nozzles() > 1 ? 4 : Math.max(4, 1.4 * solenoid * 1e3),
                        "mm",
                        0.1,
                        "usual behind a solenoid of this size")
                .guess("line-length", 0.35, "m", 0.4, "usual");
        if (f.mainRail()) {
            pen.section("nitrous-system.fuel").plain("supply", "main-rail");
        } else {
            ownSupply(pen);
        }
        pen.section("nitrous-system.fuel").guess("jet-discharge-coefficient", 0.8, "", 0.08, "usual");
        solenoid(pen, "nitrous-system.fuel", 0.75 * solenoid);
        pen.section("nitrous-system.arming")
                .guess(
                        "rpm-low",
                        SheetPen.figure(Math.max(f.rpmLow(), 0.55 * redLine), "rpm"),
                        "the lower end of the target, not below 0.55 of the red line")
                .told("rpm-high", f.rpmHigh(), "rpm");
    }

    private void ownSupply(SheetPen pen) {
        pen.section("nitrous-system.fuel")
                .guess(
                        "cell-volume",
                        Math.max(2, 2 * nitrousFuel() * 10 * f.passes() * 1e3),
                        "L",
                        0.25,
                        "twice what the passes need");
        pen.section("nitrous-system.fuel.pumps")
                .plain("count", "1")
                .guess("wiring-resistance", 50, "mohm", 0.4, "usual wires of a pump")
                .plain("curve", "nitrous-fuel-pump.csv");
        pen.section("nitrous-system.fuel.regulator")
                .guess("base-pressure", 3.5, "bar", 0.1, "usual")
                .guess("boost-reference", "1", "the hose goes to the plenum");
    }

    private static void solenoid(SheetPen pen, String side, double bore) {
        pen.section(side + ".solenoid")
                .guess("bore", bore * 1e3, "mm", 0.1, "so that its jets have 0.55 of its area")
                .guess("discharge-coefficient", 0.65, "", 0.12, "usual")
                .guess("opening-delay", 12, "ms", 0.5, "usual")
                .guess("closing-delay", 10, "ms", 0.5, "usual");
    }

    private void bottle(SheetPen pen) {
        double litres = f.charge() / 0.54;
        pen.section("bottle")
                .told("charge", f.charge() / UnitFactors.POUND, "lb")
                .guess(
                        "water-capacity",
                        litres,
                        "L",
                        0.15,
                        "so that the full bottle stays below its relief disc at 50 degC: 0.54 kg for each litre")
                .guess("shell-mass", litres, "kg", 0.4, "an aluminium bottle: a kilogram for each litre")
                .guess("shell-specific-heat", "900 J/(kg K)", "aluminium")
                .guess("start-temperature", 30, "degC", 0.1, "with a heater")
                .guess("heater-power", "350 W", "usual")
                .guess("heater-off-temperature", "30 degC", "as the start")
                .guess("hottest-soak", "50 degC", "a boot in the sun")
                .guess("relief-pressure", "3000 psi gauge", "the usual disc");
    }

    private void car(SheetPen pen) {
        pen.section("driveline")
                .plain("layout", f.drive() + " drive")
                .guess("loss", 100 * f.loss(), "%", 0.25, "usual of this layout");
        pen.section("vehicle");
        if (Double.isNaN(f.mass())) {
            pen.guess("mass", 1400, "kg", 0.2, "a usual car");
        } else {
            pen.told("mass", f.mass(), "kg");
        }
        pen.guess("drag-area", 0.7, "m2", 0.2, "a usual car")
                .plain("gears", "[3.62, 2.19, 1.54, 1.18, 1.00, 0.83]")
                .guess("final-drive", 3.46, "", 0.15, "a usual car")
                .guess("tyres", "245/40R18", "usual");
        pen.section("electrical")
                .guess("alternator", 140, "A", 0.2, "a usual car")
                .guess("battery", 70, "A h", 0.2, "a usual car");
        pen.section("controller")
                .guess("inputs", "16", "a usual controller")
                .guess("inputs-used", "10", "a usual turbocharged engine")
                .guess("outputs", "14", "a usual controller")
                .guess("outputs-used", "8", "a usual turbocharged engine")
                .guess("pulsing-outputs", "8", "a usual controller")
                .guess("pulsing-outputs-used", "5", "injectors and boost valve");
        pen.top().raw(f.mainRail() ? withoutOwnSupply(generic.apply("wiring.yaml")) : generic.apply("wiring.yaml"));
    }

    /** The usual wiring without what only a nitrous fuel cell and its pump need. */
    private static String withoutOwnSupply(String wiring) {
        return wiring.lines()
                .filter(line -> OF_AN_OWN_SUPPLY.stream().noneMatch(line.strip()::startsWith))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private void limits(SheetPen pen, Fitted fitted) {
        pen.section("limits")
                .comment("Nobody can tell from outside what an engine bears. These stand for the builder's own limits"
                        + " until he has given them.")
                .guess(
                        "peak-pressure",
                        1.35 * fitted.peakPressure / 1e5,
                        "bar abs",
                        0.15,
                        "a third above the pull: ask the builder")
                .guess(
                        "crank-torque",
                        Math.max(1.35, 1.2 * f.target() / best.wheelPower()) * fitted.crankTorque,
                        "N m",
                        0.15,
                        "the pull's torque and what the target adds: ask the builder")
                .guess("lambda-low", "0.70", "usual")
                .guess("lambda-high", "0.85", "usual")
                .guess("bottle-pressure-low", "650 psi gauge", "usual")
                .guess("bottle-pressure-high", "1000 psi gauge", "usual");
    }

    private void setup(SheetPen pen) {
        if (!Double.isNaN(f.nitrousJet())) {
            pen.section("setup")
                    .told("boost", (Double.isNaN(f.setBoost()) ? best.boost() : f.setBoost()) / 1e5, "bar gauge")
                    .told("nitrous-jet", f.nitrousJet() * 1e3, "mm")
                    .told("fuel-jet", f.fuelJet() * 1e3, "mm");
        }
    }
}
