package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.shotledger.display.Units;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;
import org.shotledger.wiring.ErrorBar;
import org.shotledger.wiring.Sensor;
import org.shotledger.wiring.SensorInput;
import org.shotledger.wiring.Wiring;

/** Sensors as tables: what to enter, and how far a shown value may lie off. */
public final class SensorTables {
    /** Points that stand beside each other on a page in letters of nine points. */
    private static final int WIDE = 13;

    private SensorTables() {}

    /**
     * The table of a sensor to enter in the controller.
     *
     * @param input the sensor on its input
     * @return one row a break point
     */
    public static Listing of(SensorInput input) {
        Sensor sensor = input.sensor();
        Listing.Builder rows = Listing.titled("To enter: " + sensor.name() + ", " + spacing(input) + ", at most "
                        + Both.of(difference(sensor.kind()), input.table().error()) + " off between its points")
                .figures(measured(sensor.kind()), sensor.kind())
                .words("Output");
        for (Sensor.Point point : input.table().points()) {
            rows.row(point.value(), WiringTables.output(sensor, point.output()));
        }
        return rows.build();
    }

    /** The same figures across the page, for a document that holds the tables of many sensors. */
    static List<Listing> across(SensorInput input, UnitSystem system) {
        Sensor sensor = input.sensor();
        List<Sensor.Point> points = input.table().points();
        List<Listing> tables = new ArrayList<>();
        for (int from = 0; from < points.size(); from += WIDE) {
            List<Sensor.Point> some = points.subList(from, Math.min(points.size(), from + WIDE));
            Listing.Builder rows = Listing.titled(
                    from > 0
                            ? sensor.name() + ", further"
                            : "To enter: " + sensor.name() + ", " + spacing(input) + ", at most "
                                    + Both.of(
                                            difference(sensor.kind()),
                                            input.table().error()) + " off between them");
            String unit = sensor.kind().unit(system);
            rows.words(measured(sensor.kind()) + (unit.isEmpty() ? "" : ", " + Units.printed(unit)));
            some.forEach(point -> rows.words(sensor.kind().number(point.value(), system)));
            rows.row(outputs(sensor, some));
            tables.add(rows.build());
        }
        return tables;
    }

    /** The outputs with their unit in front where they all have the same. */
    private static Object[] outputs(Sensor sensor, List<Sensor.Point> points) {
        List<String> full = points.stream()
                .map(point -> WiringTables.output(sensor, point.output()))
                .toList();
        List<String> units = full.stream()
                .map(one -> one.substring(one.indexOf(' ') + 1))
                .distinct()
                .toList();
        boolean same = units.size() == 1;
        return Stream.concat(
                        Stream.of(same ? "Output, " + units.get(0) : "Output"),
                        full.stream().map(one -> same ? one.substring(0, one.indexOf(' ')) : one))
                .toArray();
    }

    private static String spacing(SensorInput input) {
        String how = switch (input.table().spacing()) {
            case FREE -> "set freely";
            case EVEN_OUTPUT -> "evenly over the output";
            case EVEN_VALUE -> "evenly over the value";
        };
        return input.table().points().size() + " points " + how;
    }

    /**
     * How far each sensor may lie off where it is worst, and by what.
     *
     * @param wiring the wiring
     * @return one row a sensor
     */
    public static Listing errors(Wiring wiring) {
        Listing.Builder rows = Listing.titled("How far a shown value may lie off, where it is worst")
                .words("Sensor")
                .mixed("At")
                .mixed("Supply")
                .mixed("Pull-up")
                .mixed("Converter")
                .mixed("Class")
                .mixed("Table")
                .mixed("Together");
        for (SensorInput input : wiring.inputs()) {
            double at = input.worstAt();
            ErrorBar bar = input.error(at);
            QuantityKind kind = difference(input.sensor().kind());
            rows.row(
                    input.name(),
                    new Cell.Figure(at, input.sensor().kind()),
                    new Cell.Figure(bar.supply(), kind),
                    new Cell.Figure(bar.pullUp(), kind),
                    new Cell.Figure(bar.converter(), kind),
                    new Cell.Figure(bar.sensor(), kind),
                    new Cell.Figure(bar.table(), kind),
                    new Cell.Figure(bar.total(), kind));
        }
        return rows.build();
    }

    /** The kind of a difference of two values of a kind. */
    static QuantityKind difference(QuantityKind kind) {
        return switch (kind) {
            case TEMPERATURE -> QuantityKind.TEMPERATURE_DIFFERENCE;
            case GAUGE_PRESSURE, ABSOLUTE_PRESSURE -> QuantityKind.PRESSURE_DIFFERENCE;
            default -> kind;
        };
    }

    private static String measured(QuantityKind kind) {
        return switch (kind) {
            case TEMPERATURE -> "Temperature";
            case FRACTION -> "Share";
            case RATIO -> "Lambda";
            case ROTATION, SPEED -> "Speed";
            default -> "Pressure";
        };
    }
}
