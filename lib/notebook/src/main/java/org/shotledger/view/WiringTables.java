package org.shotledger.view;

import java.util.Locale;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;
import org.shotledger.wiring.Cable;
import org.shotledger.wiring.CurrentBalance;
import org.shotledger.wiring.Load;
import org.shotledger.wiring.Sensor;
import org.shotledger.wiring.Wiring;

/** The wiring as tables. */
public final class WiringTables {

    private WiringTables() {}

    /**
     * Wire and fuse of every load.
     *
     * @param wiring the wiring
     * @return one row a load
     */
    public static Listing cables(Wiring wiring) {
        Listing.Builder rows = Listing.titled("Fuse and wire of every load")
                .words("Load")
                .figures("Current", QuantityKind.CURRENT)
                .figures("At switching on", QuantityKind.CURRENT)
                .figures("Fuse", QuantityKind.CURRENT)
                .words("Wire")
                .figures("It may carry", QuantityKind.CURRENT)
                .words("Cable, one way")
                .figures("Lost there and back", QuantityKind.VOLTAGE)
                .words("A thinner wire fails by");
        for (Cable cable : wiring.cables()) {
            Load load = cable.load();
            rows.row(
                    load.name(),
                    load.current(),
                    load.surge(),
                    cable.fuse().rating(),
                    cable.wire().words(),
                    cable.allowed(),
                    WireList.length(load.length()),
                    cable.drop(),
                    cable.decidedBy());
        }
        return rows.build();
    }

    /**
     * What switches each load that the plan switches.
     *
     * @param wiring the wiring
     * @return one row a load that is not always on
     */
    public static Listing switching(Wiring wiring) {
        Listing.Builder rows = Listing.titled("How each load is switched, and what its coil needs")
                .words("Load")
                .words("On")
                .words("How");
        for (Load load : wiring.loads()) {
            if (load.phase() != Load.Phase.ALWAYS) {
                rows.row(load.name(), load.phase().words(), load.switching(wiring.outputCurrent()));
            }
        }
        return rows.build();
    }

    /**
     * Who feeds the loads in each phase.
     *
     * @param wiring the wiring
     * @param passSeconds time of a pass, s
     * @param passRpm mean engine speed of a pass, rev/min
     * @param waitSeconds time between two passes, s
     * @return one row a phase
     */
    public static Listing balances(Wiring wiring, double passSeconds, double passRpm, double waitSeconds) {
        Listing.Builder rows = Listing.titled("Alternator and battery, engine running")
                .words("Phase")
                .figures("Time", QuantityKind.TIME)
                .figures("Loads take", QuantityKind.CURRENT)
                .figures("Alternator gives at most", QuantityKind.CURRENT)
                .figures("From the battery", QuantityKind.CURRENT)
                .figures("Of its charge", QuantityKind.FRACTION);
        for (CurrentBalance balance : wiring.balances(passSeconds, passRpm, waitSeconds)) {
            rows.row(
                    balance.phase() == Load.Phase.ALWAYS
                            ? "idling"
                            : balance.phase().words(),
                    balance.duration(),
                    balance.current(),
                    balance.alternator(),
                    balance.shortfall(),
                    balance.batteryShare());
        }
        return rows.build();
    }

    /**
     * Two points at which each sensor is checked in the car.
     *
     * @param wiring the wiring
     * @return two rows a sensor
     */
    public static Listing checks(Wiring wiring) {
        Listing.Builder rows = Listing.titled("Two points to check each sensor at")
                .words("Sensor")
                .words("Check")
                .mixed("Value")
                .words("Must read");
        for (Sensor sensor : wiring.sensors()) {
            for (Sensor.Check check : sensor.checks()) {
                rows.row(
                        sensor.name(),
                        check.how(),
                        new Cell.Figure(check.value(), sensor.kind()),
                        output(sensor, check.output()));
            }
        }
        return rows.build();
    }

    /** A thermocouple gives millivolts, where two places of a volt say nothing. */
    static String output(Sensor sensor, double output) {
        if (sensor.outputKind() == QuantityKind.TIME) {
            return String.format(Locale.ROOT, "%.3f ms", 1000 * output);
        }
        if (sensor.outputKind() != QuantityKind.VOLTAGE) {
            return sensor.outputKind().text(output, UnitSystem.SI);
        }
        return Math.abs(output) < 0.1
                ? String.format(Locale.ROOT, "%.3f mV", 1000 * output)
                : String.format(Locale.ROOT, "%.3f V", output);
    }
}
