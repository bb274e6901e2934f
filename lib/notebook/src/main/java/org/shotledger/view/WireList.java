package org.shotledger.view;

import java.util.Locale;
import java.util.Optional;
import org.shotledger.commission.JobList;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitFactors;
import org.shotledger.wiring.Cable;
import org.shotledger.wiring.Load;
import org.shotledger.wiring.Pin;
import org.shotledger.wiring.PinPlacement;
import org.shotledger.wiring.Wiring;

/** Every wire of the added circuits with both its ends, gauge, length and fuse, returns and signal wires included. */
final class WireList {
    /** Gauge of a wire that carries a signal only: common practice, no source. */
    private static final String SIGNAL = "20 AWG";

    private WireList() {}

    /** Feet and metres to a tenth, rounded up: a wire that is rounded down is too short. */
    static String length(double metres) {
        return String.format(
                Locale.ROOT,
                "%.1f ft (%.1f m)",
                Math.ceil(metres / UnitFactors.FOOT * 10) / 10,
                Math.ceil(metres * 10 - 1e-9) / 10);
    }

    static Listing of(Wiring wiring) {
        Listing.Builder rows = Listing.titled("Wire list")
                .words("No.")
                .words("From")
                .words("To")
                .words("Wire")
                .words("Length")
                .figures("Fuse", QuantityKind.CURRENT)
                .words("Connector");
        int[] number = {0};
        Optional<Cable> feed = wiring.feed(JobList.FEED_LENGTH);
        feed.ifPresent(f -> rows.row(
                "" + ++number[0],
                "battery, over the isolator",
                "fuse box of the nitrous system",
                f.wire().words(),
                length(f.load().length()),
                f.fuse().rating(),
                "ring terminals"));
        for (Cable cable : wiring.cables()) {
            Load load = cable.load();
            if (load.phase() == Load.Phase.ALWAYS) {
                continue;
            }
            String rated = "rated " + Math.round(cable.fuse().rating()) + " A or more";
            rows.row(
                    "" + ++number[0],
                    "fuse box",
                    load.name() + ", over its switch",
                    cable.wire().words(),
                    length(load.length()),
                    cable.fuse().rating(),
                    rated);
            rows.row(
                    "" + ++number[0],
                    load.name(),
                    "ground point at the battery",
                    cable.wire().words(),
                    length(load.length()),
                    Double.NaN,
                    rated);
        }
        for (PinPlacement one : wiring.pins().placements()) {
            if (one.placed() && one.pin().isPresent()) {
                String what = one.signal().name();
                boolean output = one.signal().need().kinds().stream().allMatch(org.shotledger.wiring.PinKind::output);
                String pin = one.expander().map(e -> e.name() + ", ").orElse("controller, ")
                        + one.pin().map(Pin::name).orElse("");
                rows.row(
                        "" + ++number[0],
                        output ? pin : what,
                        output ? what + ", its switch" : pin,
                        SIGNAL,
                        "",
                        Double.NaN,
                        output ? "" : "sensor's own, with its ground back to the controller");
            }
        }
        return rows.build();
    }
}
