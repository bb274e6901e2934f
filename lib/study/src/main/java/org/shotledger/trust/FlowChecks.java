package org.shotledger.trust;

import static org.shotledger.trust.AirChecks.one;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.shotledger.flow.Incompressible;
import org.shotledger.flow.LongOrifice;
import org.shotledger.units.UnitFactors;

/** Holes that pass a liquid (H05-08, H05-24). */
final class FlowChecks {
    private static final double GALLON_PER_MINUTE = UnitFactors.US_GALLON / 60;

    private FlowChecks() {}

    static Map<String, Function<Row, double[]>> all() {
        Map<String, Function<Row, double[]>> m = new LinkedHashMap<>();
        m.put("H05-08", r -> {
            double density = 1000 * r.in("SG");
            double area = Math.PI / 4 * r.in("D") * UnitFactors.INCH * r.in("D") * UnitFactors.INCH;
            double flux = Incompressible.massFlux(density, r.in("dp") * UnitFactors.PSI, 0);
            return one(r.in("C") * area * flux / density / GALLON_PER_MINUTE);
        });
        m.put("H05-24", r -> one(LongOrifice.coefficient(r.in("Re"), r.in("l/d"))));
        return m;
    }
}
