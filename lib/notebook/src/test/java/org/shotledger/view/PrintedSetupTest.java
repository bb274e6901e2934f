package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.job.Job;
import org.shotledger.job.Starter;
import org.shotledger.limits.Limit;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.PassPlan;
import org.shotledger.setup.Setup;
import org.shotledger.supply.Regulator;
import org.shotledger.table.Shown;
import org.shotledger.units.FigureText;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Who sets what is printed gets what is printed: the settings are read back from their tables and worked out again. */
class PrintedSetupTest {
    /** A fuel pressure of fifty psi printed to a tenth is known to a thousandth; no figure that follows from it is known better. */
    private static final double ROUNDING = 1e-3;

    private static final int DRAWN = Integer.getInteger("shotledger.printed", 3);

    @Test
    void theSettingsAsPrintedGiveThePlanAsPrinted() {
        givesItself(Demo.PLAN);
    }

    @Test
    void aShotFromTheMainRailIsPrintedWithOneFuelPressure(@TempDir Path folder) {
        Starter.write(folder.resolve("v8"), "v8", Map.of(), folder);
        Plan plan = Plan.find(Job.load(folder.resolve("v8")));
        String text = SetupTables.of(plan.setup()).in(Shown.US).toText();
        assertEquals(
                1,
                text.lines()
                        .filter(line -> line.contains("pressure, engine off"))
                        .count(),
                text);
        assertTrue(text.contains("from the main rail"), text);
        givesItself(plan);
    }

    /** Drawn from three cars by a seed: other engines, targets and bottles; {@code -Dshotledger.printed=50} draws more. */
    @Test
    void theSettingsOfOtherCarsAsPrintedGiveTheirPlans(@TempDir Path folder) {
        List<Job> cars = new ArrayList<>(List.of(Demo.PLAN.job()));
        for (String car : List.of("v8", "five-cylinder")) {
            Starter.write(folder.resolve(car), car, Map.of(), folder);
            cars.add(Job.load(folder.resolve(car)));
        }
        SplittableRandom random = new SplittableRandom(20_261_130);
        int held = 0;
        for (int i = 0; i < DRAWN; i++) {
            Plan plan = Plan.find(drawn(cars.get(i % cars.size()), random));
            if (plan.setup().jets().isPresent()) {
                givesItself(plan);
                held++;
            }
        }
        assertTrue(held >= DRAWN / 2, held + " of " + DRAWN + " have nitrous");
    }

    private static Job drawn(Job job, SplittableRandom random) {
        Job other = job.with("target.wheel-power", scaled(job.target().wheelPower(), 0.08, random, "W"))
                .with("bottle.charge", weighed(job.setup().bottle().charge(), random))
                .with("engine.stroke", scaled(1e3 * job.car().engine().stroke(), 0.005, random, "mm"))
                .with("engine.compression-ratio", scaled(job.car().engine().compressionRatio(), 0.04, random, ""));
        Setup set = other.setup();
        Setup read = set.withMainRegulator(asRead(set.mainRegulator()));
        return other.with(set.ownRegulator()
                .map(own -> read.withNitrousRegulator(asRead(own)))
                .orElse(read));
    }

    /** As a gauge in tenths of a psi shows it: where another case begins to decide, a limit hangs on less than that. */
    private static Regulator asRead(Regulator regulator) {
        return new Regulator(
                regulator.name(),
                FigureText.read(
                                us(QuantityKind.PRESSURE_DIFFERENCE, regulator.basePressure()),
                                QuantityKind.PRESSURE_DIFFERENCE)
                        .value(),
                regulator.boostReference());
    }

    /** To a tenth of a pound, as a scale shows it: the pressure of a bottle that is full of liquid hangs on less than that. */
    private static String weighed(double charge, SplittableRandom random) {
        double pounds = QuantityKind.MASS.shown(charge, UnitSystem.US);
        return String.format(Locale.ROOT, "%.1f lb", pounds * (1 + 0.08 * random.nextDouble(-1, 1)));
    }

    private static String scaled(double value, double spread, SplittableRandom random, String unit) {
        return String.format(Locale.ROOT, "%.5g %s", value * (1 + spread * random.nextDouble(-1, 1)), unit)
                .strip();
    }

    private static void givesItself(Plan plan) {
        Setup printed = printed(plan.setup());
        Plan again = Plan.of(plan.job(), printed);
        assertEquals(plan.verdict(), again.verdict());
        assertEquals(
                us(QuantityKind.POWER, plan.stated().power()),
                us(QuantityKind.POWER, again.stated().power()));
        assertEquals(plan.limits().all().size(), again.limits().all().size());
        for (Limit limit : plan.limits().all()) {
            Limit then = again.limits().find(limit.key()).orElseThrow();
            assertTrue(
                    lastDigits(limit, then) <= 1.000001 || relative(limit, then) < ROUNDING,
                    limit.name() + ": " + us(limit.kind(), limit.value()) + " / " + us(then.kind(), then.value()));
            assertEquals(limit.verdict(), then.verdict(), limit.name());
        }
        assertEquals(
                SetupTables.boost(plan.setup()).in(Shown.US).toText(),
                SetupTables.boost(printed).in(Shown.US).toText());
    }

    private static String us(QuantityKind kind, double value) {
        return kind.text(value, UnitSystem.US);
    }

    private static double relative(Limit one, Limit other) {
        return Math.abs(one.value() - other.value()) / Math.abs(one.value());
    }

    /** How many steps of the last printed digit two values lie apart. */
    private static double lastDigits(Limit one, Limit other) {
        String usual = one.kind().number(one.value(), UnitSystem.US);
        int point = usual.indexOf('.');
        double step = point < 0 ? 1 : Math.pow(10, point + 1 - usual.length());
        double difference =
                one.kind().shown(one.value(), UnitSystem.US) - other.kind().shown(other.value(), UnitSystem.US);
        return Math.abs(difference) / step;
    }

    private static Setup printed(Setup plan) {
        Map<String, String[]> rows = rows(SetupTables.of(plan).in(Shown.US).toText());
        List<double[]> boost = numbers(SetupTables.boost(plan).in(Shown.US).toText());
        BoostTarget target = new BoostTarget(
                table(boost, 1),
                table(boost, 2),
                read(rows, "boost allowed above its target at opening", QuantityKind.PRESSURE_DIFFERENCE));
        return new Setup(
                target,
                Optional.of(new JetPair(
                        read(rows, "nitrous jet, every nozzle", QuantityKind.BORE),
                        read(rows, "nitrous fuel jet, every nozzle", QuantityKind.BORE))),
                regulator(
                        rows,
                        "main fuel pressure, engine off",
                        plan.mainRegulator().name()),
                plan.ownRegulator().map(own -> regulator(rows, "nitrous fuel pressure, engine off", own.name())),
                read(rows, "mixture of the main fuel", QuantityKind.RATIO),
                read(rows, "spark retard while the nitrous flows", QuantityKind.CRANK_ANGLE),
                new ActivationWindow(
                        read(rows, "nitrous may open from", QuantityKind.ROTATION),
                        read(rows, "nitrous closes at", QuantityKind.ROTATION)),
                new BottleFill(
                        read(rows, "bottle charge, by mass", QuantityKind.MASS),
                        read(rows, "bottle temperature at the start", QuantityKind.TEMPERATURE)),
                new PassPlan(
                        Integer.parseInt(rows.get("passes on one filling")[1]),
                        read(rows, "time under nitrous in each", QuantityKind.TIME)));
    }

    private static double read(Map<String, String[]> rows, String setting, QuantityKind kind) {
        return FigureText.read(rows.get(setting)[1], kind).value();
    }

    private static Regulator regulator(Map<String, String[]> rows, String setting, String name) {
        String follows = rows.get(setting)[2];
        double reference = follows.startsWith("rises by ") ? Double.parseDouble(follows.replaceAll("[^0-9.]", "")) : 0;
        return new Regulator(name, read(rows, setting, QuantityKind.GAUGE_PRESSURE), reference);
    }

    private static BoostTable table(List<double[]> rows, int column) {
        return new BoostTable(rows.stream()
                .map(row -> new BoostTable.Step(
                        row[0],
                        FigureText.read(row[column] + " psi gauge", QuantityKind.GAUGE_PRESSURE)
                                .value()))
                .toList());
    }

    /** The rows of a table as it is printed; the first line of a row holds its name and its figure. */
    private static Map<String, String[]> rows(String text) {
        Map<String, String[]> rows = new LinkedHashMap<>();
        text.lines()
                .filter(line -> !line.startsWith(" "))
                .map(line -> line.split(" {2,}"))
                .filter(cells -> cells.length > 1)
                .forEach(cells -> rows.put(cells[0], cells));
        return rows;
    }

    private static List<double[]> numbers(String text) {
        return text.lines()
                .map(String::strip)
                .filter(line -> line.matches("[0-9].*"))
                .map(line -> Arrays.stream(line.split(" +"))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
    }
}
