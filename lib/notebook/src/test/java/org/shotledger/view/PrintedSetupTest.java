package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
