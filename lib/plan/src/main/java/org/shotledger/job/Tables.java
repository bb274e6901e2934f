package org.shotledger.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.shotledger.boost.CompressorMap;
import org.shotledger.boost.MapReference;
import org.shotledger.boost.SpeedLine;
import org.shotledger.curve.Curve;
import org.shotledger.nitrous.JetLadder;
import org.shotledger.sheet.CsvColumn;
import org.shotledger.sheet.CsvTable;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Problems;
import org.shotledger.sheet.SheetException;
import org.shotledger.supply.Pump;
import org.shotledger.units.QuantityKind;

/** Makes curves, maps and ladders of tables; what a table says wrongly is reported with its line. */
public final class Tables {
    /** Columns of a compressor map: flow as mass, or as volume at the map's reference state. */
    public static final List<CsvColumn> COMPRESSOR_MAP = List.of(
            CsvColumn.required("speed", QuantityKind.ROTATION, 5000, 400_000),
            CsvColumn.optional("flow", QuantityKind.MASS_FLOW, 1e-4, 10),
            CsvColumn.optional("volume flow", QuantityKind.VOLUME_FLOW, 1e-4, 10),
            CsvColumn.required("pressure ratio", QuantityKind.RATIO, 1, 6),
            CsvColumn.required("efficiency", QuantityKind.FRACTION, 0.2, 0.9));

    /** Columns of a fuel pump: one line of flow and current over pressure for each voltage. */
    public static final List<CsvColumn> PUMP = List.of(
            CsvColumn.required("voltage", QuantityKind.VOLTAGE, 5, 30),
            CsvColumn.required("pressure", QuantityKind.PRESSURE_DIFFERENCE, 0, 20e5),
            CsvColumn.required("flow", QuantityKind.VOLUME_FLOW, 0, 0.01),
            CsvColumn.required("current", QuantityKind.CURRENT, 0, 100));

    /** Columns of the volumetric efficiency. */
    public static final List<CsvColumn> VOLUMETRIC_EFFICIENCY = List.of(
            CsvColumn.required("engine speed", QuantityKind.ROTATION, 300, 20_000),
            CsvColumn.required("volumetric efficiency", QuantityKind.RATIO, 0.2, 1.5));

    /** Columns of a pull: power or torque, at the wheels or at the crankshaft, over engine speed. */
    public static final List<CsvColumn> PULL = List.of(
            CsvColumn.required("engine speed", QuantityKind.ROTATION, 300, 20_000),
            CsvColumn.optional("wheel power", QuantityKind.POWER, 1e3, 3e6),
            CsvColumn.optional("crank power", QuantityKind.POWER, 1e3, 3e6),
            CsvColumn.optional("wheel torque", QuantityKind.TORQUE, 5, 6000),
            CsvColumn.optional("crank torque", QuantityKind.TORQUE, 5, 6000),
            CsvColumn.optional("boost", QuantityKind.GAUGE_PRESSURE, -0.5e5, 6e5));

    /** Columns of a jet ladder. */
    public static final List<CsvColumn> JET_LADDER = List.of(CsvColumn.required("bore", QuantityKind.BORE, 1e-4, 0.01));

    /** Columns of an injector's dead time. */
    public static final List<CsvColumn> DEAD_TIME = List.of(
            CsvColumn.required("voltage", QuantityKind.VOLTAGE, 5, 30),
            CsvColumn.required("dead time", QuantityKind.TIME, 0, 5e-3));

    private static final double GAS_CONSTANT = 287.05;

    private Tables() {}

    /**
     * A curve of two columns; rows may come in any order.
     *
     * @param name what the curve is
     * @param table the table
     * @param x column of the abscissa
     * @param y column of the ordinate
     * @return the curve
     * @throws SheetException when an abscissa stands twice; the line is named
     */
    public static Curve curve(String name, CsvTable table, String x, String y) {
        return curve(name, table, x, y, order(table.column(x)));
    }

    private static Curve curve(String name, CsvTable table, String x, String y, List<Integer> rows) {
        double[] xs = table.column(x);
        double[] ys = table.column(y);
        for (int i = 1; i < rows.size(); i++) {
            if (xs[rows.get(i)] == xs[rows.get(i - 1)]) {
                throw new SheetException(new Problem(
                        table.file(),
                        table.line(Math.max(rows.get(i), rows.get(i - 1))),
                        0,
                        x,
                        "",
                        "This value of \"" + x + "\" stands twice, first on line "
                                + table.line(Math.min(rows.get(i), rows.get(i - 1))) + "; keep one of the rows."));
            }
        }
        return Curve.of(
                name,
                rows.stream().mapToDouble(i -> xs[i]).toArray(),
                rows.stream().mapToDouble(i -> ys[i]).toArray());
    }

    /**
     * A fuel pump.
     *
     * @param name what it is called
     * @param table columns of {@link #PUMP}
     * @return the pump
     * @throws SheetException when a voltage line is wrong; the line is named
     */
    public static Pump pump(String name, CsvTable table) {
        double[] pressure = table.column("pressure");
        List<Pump.Line> lines = new ArrayList<>();
        group(table.column("voltage")).forEach((voltage, rows) -> {
            rows.sort((a, b) -> Double.compare(pressure[a], pressure[b]));
            String of = " of " + name + " at " + voltage + " V";
            try {
                lines.add(new Pump.Line(
                        voltage,
                        curve("flow" + of, table, "pressure", "flow", rows),
                        curve("current" + of, table, "pressure", "current", rows)));
            } catch (SheetException e) {
                throw e;
            } catch (IllegalArgumentException e) {
                throw bad(table, rows, e);
            }
        });
        return new Pump(name, lines);
    }

    /**
     * A compressor map. Rows with the same speed make one line; lines and points may come in any order.
     *
     * @param name what it is called
     * @param table columns of {@link #COMPRESSOR_MAP}
     * @param reference state to which flow and speed are corrected
     * @param maximumRpm highest allowed wheel speed, rpm
     * @return the map
     * @throws SheetException naming every line that cannot be used
     */
    public static CompressorMap compressorMap(String name, CsvTable table, MapReference reference, double maximumRpm) {
        double[] flow = flow(table, reference);
        double[] ratio = table.column("pressure ratio");
        double[] efficiency = table.column("efficiency");
        Problems problems = new Problems();
        List<SpeedLine> lines = new ArrayList<>();
        group(table.column("speed")).forEach((speed, rows) -> {
            try {
                lines.add(SpeedLine.of(speed, pick(flow, rows), pick(ratio, rows), pick(efficiency, rows)));
            } catch (IllegalArgumentException e) {
                problems.addAll(bad(table, rows, e));
            }
        });
        problems.throwIfAny();
        try {
            return new CompressorMap(name, reference, lines, maximumRpm);
        } catch (IllegalArgumentException e) {
            throw new SheetException(Problem.of(table.file(), e.getMessage()));
        }
    }

    private static double[] flow(CsvTable table, MapReference reference) {
        if (table.has("flow") == table.has("volume flow")) {
            throw new SheetException(Problem.of(
                    table.file(),
                    "The map must have either \"flow\" as mass per time or \"volume flow\" at its reference state; it has "
                            + (table.has("flow") ? "both." : "neither.")));
        }
        if (table.has("flow")) {
            return table.column("flow");
        }
        double density = reference.pressure() / (GAS_CONSTANT * reference.temperature());
        return Arrays.stream(table.column("volume flow")).map(v -> v * density).toArray();
    }

    /**
     * A jet ladder.
     *
     * @param table columns of {@link #JET_LADDER}
     * @return the ladder
     */
    public static JetLadder ladder(CsvTable table) {
        return JetLadder.of(table.column("bore"));
    }

    private static Map<Double, List<Integer>> group(double[] keys) {
        Map<Double, List<Integer>> groups = new TreeMap<>();
        for (int i = 0; i < keys.length; i++) {
            groups.computeIfAbsent(keys[i], k -> new ArrayList<>()).add(i);
        }
        return groups;
    }

    private static List<Integer> order(double[] x) {
        List<Integer> rows = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            rows.add(i);
        }
        rows.sort((a, b) -> Double.compare(x[a], x[b]));
        return rows;
    }

    private static double[] pick(double[] column, List<Integer> rows) {
        return rows.stream().mapToDouble(i -> column[i]).toArray();
    }

    private static SheetException bad(CsvTable table, List<Integer> rows, IllegalArgumentException e) {
        return new SheetException(new Problem(
                table.file(),
                table.line(rows.stream().min(Integer::compare).orElse(0)),
                0,
                "",
                "",
                Optional.ofNullable(e.getMessage()).orElse("The line cannot be used.")));
    }
}
