package org.shotledger.job;

import static org.shotledger.units.QuantityKind.DENSITY;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.PRESSURE_DIFFERENCE;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.RESISTANCE;
import static org.shotledger.units.QuantityKind.TIME;
import static org.shotledger.units.QuantityKind.VOLTAGE;
import static org.shotledger.units.QuantityKind.VOLUME_FLOW;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.shotledger.car.Injection;
import org.shotledger.curve.Curve;
import org.shotledger.sheet.SheetSection;
import org.shotledger.supply.Injector;
import org.shotledger.supply.Pump;
import org.shotledger.supply.PumpGroup;
import org.shotledger.supply.Regulator;

/** Reads injectors, pumps and regulators. */
final class SupplySections {
    private SupplySections() {}

    static Injection injection(SheetSection s) {
        s.readElsewhere("regulator");
        int count = s.count("count", 1, 32);
        Injector injector = injector(s.section("injector"));
        PumpGroup pumps = pumps(s.section("pumps"), "main fuel pump");
        double voltage = s.figure("voltage", VOLTAGE, 8, 30);
        return s.make(() -> new Injection(injector, count, pumps, voltage));
    }

    private static Injector injector(SheetSection stated) {
        SheetSection s = CatalogueParts.injector(stated);
        String name = s.textOr("name", "injector");
        double drop = s.figure("test-pressure", PRESSURE_DIFFERENCE, 1e5, 10e5);
        double density =
                s.figureOr("test-density", DENSITY, 600, 900, Injector.HEPTANE_DENSITY, "n-heptane at 20 C, SAE J1832");
        double flow = s.measures("flow", MASS_FLOW)
                ? s.figure("flow", MASS_FLOW, 1e-4, 0.12) / density
                : s.figure("flow", VOLUME_FLOW, 1e-7, 1.5e-4);
        Optional<Curve> dead = deadTime(s);
        return s.make(() -> new Injector(name, flow, drop, density, dead.orElseThrow()));
    }

    private static Optional<Curve> deadTime(SheetSection s) {
        if (s.has("dead-time")) {
            double time = s.figure("dead-time", TIME, 0, 5e-3);
            return Double.isNaN(time) ? Optional.empty() : Optional.of(Curve.constant("dead time", time));
        }
        return s.table("dead-time-table", Tables.DEAD_TIME)
                .map(t -> Tables.curve("dead time", t, "voltage", "dead time"));
    }

    static PumpGroup pumps(SheetSection s, String name) {
        int count = s.countOr("count", 1, 4, 1, "one pump");
        Map<String, PumpGroup.Arrangement> arrangements = new LinkedHashMap<>();
        arrangements.put("parallel", PumpGroup.Arrangement.PARALLEL);
        arrangements.put("series", PumpGroup.Arrangement.SERIES);
        PumpGroup.Arrangement arrangement =
                s.choiceOr("arrangement", arrangements, "parallel", "one pump, or side by side");
        double wiring = s.figureOr("wiring-resistance", RESISTANCE, 0, 1, 0.05, "common practice, no source");
        Optional<Pump> pump = s.table("curve", Tables.PUMP).map(t -> Tables.pump(name, t));
        return s.make(() -> new PumpGroup(name, Collections.nCopies(count, pump.orElseThrow()), arrangement, wiring));
    }

    static Regulator regulator(SheetSection s, String name) {
        double base = s.figure("base-pressure", PRESSURE_DIFFERENCE, 0.5e5, 10e5);
        double reference = s.figure("boost-reference", RATIO, 0, 3);
        return s.make(() -> new Regulator(name, base, reference));
    }
}
