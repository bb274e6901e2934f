package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.units.QuantityKind.BORE;
import static org.shotledger.units.QuantityKind.COUNT;
import static org.shotledger.units.QuantityKind.CRANK_ANGLE;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.PRESSURE_DIFFERENCE;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.shotledger.display.Units;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.Setup;
import org.shotledger.supply.Regulator;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Everything that is set by hand before a pass. */
public final class SetupTables {
    /** Engine speeds that stand beside each other on a page in letters of nine points. */
    private static final int WIDE = 16;

    private SetupTables() {}

    /**
     * All settings but the boost.
     *
     * @param setup what is set
     * @return one row a setting
     */
    public static Listing of(Setup setup) {
        return listing("Settings", rows -> {
            fitted(rows, setup);
            entered(rows, setup);
            filled(rows, setup);
        });
    }

    /** What is fitted and set with a wrench. */
    static Listing fitted(Setup setup) {
        return listing("Jets and fuel pressures", rows -> fitted(rows, setup));
    }

    /** What is entered into the controller. */
    static Listing entered(Setup setup) {
        return listing("Entered into the controller", rows -> entered(rows, setup));
    }

    /** What is filled and warmed. */
    static Listing filled(Setup setup) {
        return listing("Bottle and passes", rows -> filled(rows, setup));
    }

    private static Listing listing(String caption, Consumer<Rows> settings) {
        Rows rows = new Rows(caption);
        settings.accept(rows);
        return rows.listing.build();
    }

    private static void fitted(Rows rows, Setup setup) {
        setup.jets()
                .ifPresentOrElse(
                        jets -> rows.add(
                                        "nitrous jet, every nozzle",
                                        jets.nitrousBore(),
                                        BORE,
                                        "the hole, by pin gauge; a stamp is not enough")
                                .add(
                                        "nitrous fuel jet, every nozzle",
                                        jets.fuelBore(),
                                        BORE,
                                        "never exchanged with the nitrous jet: that is a lean engine"),
                        () -> rows.words("nitrous jets", "none", "the bottle stays closed"));
        setup.ownRegulator()
                .ifPresentOrElse(
                        own -> rows.regulator("nitrous fuel pressure", own),
                        () -> rows.words(
                                "nitrous fuel",
                                "from the main rail",
                                "its pressure is the main fuel's: one regulator for both"));
        rows.regulator("main fuel pressure", setup.mainRegulator());
    }

    private static void entered(Rows rows, Setup setup) {
        rows.add("mixture of the main fuel", setup.mixture(), RATIO, "lambda on the air alone, nitrous on or off")
                .add(
                        "spark retard while the nitrous flows",
                        setup.retard(),
                        CRANK_ANGLE,
                        "from the builder's own timing")
                .add(
                        "nitrous may open from",
                        setup.arming().rpmLow(),
                        ROTATION,
                        "only at full throttle, with boost and fuel pressure up")
                .add(
                        "nitrous closes at",
                        setup.arming().rpmHigh(),
                        ROTATION,
                        "before the limiter, which cuts fuel and would leave nitrous alone")
                .add(
                        "boost allowed above its target at opening",
                        setup.boost().tolerance(),
                        PRESSURE_DIFFERENCE,
                        "more is a reason not to open");
    }

    private static void filled(Rows rows, Setup setup) {
        rows.add("bottle charge, by mass", setup.bottle().charge(), MASS, "on a scale, never by pressure")
                .add(
                        "bottle temperature at the start",
                        setup.bottle().startTemperature(),
                        TEMPERATURE,
                        "heater with a thermostat; never a flame")
                .add("passes on one filling", setup.passes().count(), COUNT, "")
                .add("time under nitrous in each", setup.passes().seconds(), TIME, "");
    }

    /**
     * Boost over engine speed across the page, in both units: the same figures as {@link #boost}.
     *
     * @param setup what is set
     * @return one table for each so many engine speeds as a page is wide
     */
    static List<Listing> across(Setup setup) {
        List<Double> speeds = speeds(setup);
        int tables = (speeds.size() + WIDE - 1) / WIDE;
        int each = (speeds.size() + tables - 1) / tables;
        List<Listing> across = new ArrayList<>();
        for (int from = 0; from < speeds.size(); from += each) {
            across.add(across(setup, speeds.subList(from, Math.min(speeds.size(), from + each)), from > 0));
        }
        return across;
    }

    private static Listing across(Setup setup, List<Double> speeds, boolean further) {
        Listing.Builder rows = Listing.titled(
                        further
                                ? "Boost over engine speed, further"
                                : "Boost over engine speed (rpm); between two of them in a straight line")
                .words("Nitrous");
        speeds.forEach(rpm -> rows.words(ROTATION.number(rpm, UnitSystem.US)));
        for (UnitSystem system : List.of(UnitSystem.US, UnitSystem.SI)) {
            rows.row(line("off", setup.boost().off(), speeds, system));
            rows.row(line("armed", setup.boost().armed(), speeds, system));
        }
        return rows.build();
    }

    private static Object[] line(String name, BoostTable table, List<Double> speeds, UnitSystem system) {
        String unit = Units.printed(GAUGE_PRESSURE.unit(system)).replace(" gauge", "");
        return Stream.concat(
                        Stream.of(name + ", " + unit),
                        speeds.stream().map(rpm -> GAUGE_PRESSURE.number(table.at(rpm), system)))
                .toArray();
    }

    /**
     * Boost over engine speed, with the nitrous off and armed.
     *
     * @param setup what is set
     * @return one row an engine speed; between them boost runs in a straight line
     */
    public static Listing boost(Setup setup) {
        return Listing.of(
                "Boost over engine speed",
                speeds(setup),
                column("Engine speed", ROTATION, Double::doubleValue),
                column("Nitrous off", GAUGE_PRESSURE, setup.boost().off()::at),
                column("Nitrous armed", GAUGE_PRESSURE, setup.boost().armed()::at));
    }

    /** Every engine speed that stands in one of the two tables. */
    static List<Double> speeds(Setup setup) {
        TreeSet<Double> speeds = new TreeSet<>();
        Stream.of(setup.boost().off(), setup.boost().armed())
                .flatMap(table -> table.steps().stream())
                .map(BoostTable.Step::rpm)
                .forEach(speeds::add);
        return List.copyOf(speeds);
    }

    /** Collects rows of several kinds. */
    private static final class Rows {
        private final Listing.Builder listing;

        Rows(String caption) {
            listing = Listing.titled(caption).words("Setting").mixed("Value").words("Mind");
        }

        Rows add(String name, double value, QuantityKind kind, String mind) {
            listing.row(name, new Cell.Figure(value, kind), mind);
            return this;
        }

        Rows words(String name, String words, String mind) {
            listing.row(name, words, mind);
            return this;
        }

        Rows regulator(String name, Regulator regulator) {
            return add(
                    name + ", engine off",
                    regulator.basePressure(),
                    GAUGE_PRESSURE,
                    follows(regulator.boostReference()));
        }

        private static String follows(double reference) {
            return reference == 0
                    ? "does not follow the boost"
                    : String.format(Locale.ROOT, "rises by %.2f of the boost", reference);
        }
    }
}
