package org.shotledger.trust;

import static org.shotledger.trust.AirChecks.one;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.shotledger.flow.Incompressible;
import org.shotledger.flow.LongOrifice;

/** Holes that pass a liquid (H05-08, H05-24). */
final class FlowChecks {
    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168;
    private static final double GALLON_PER_MINUTE = 3.785411784e-3 / 60;

    private FlowChecks() {}

    static Map<String, Function<Row, double[]>> all() {
        Map<String, Function<Row, double[]>> m = new LinkedHashMap<>();
        m.put("H05-08", r -> {
            double density = 1000 * r.in("SG");
            double area = Math.PI / 4 * r.in("D") * INCH * r.in("D") * INCH;
            double flux = Incompressible.massFlux(density, r.in("dp") * PSI, 0);
            return one(r.in("C") * area * flux / density / GALLON_PER_MINUTE);
        });
        m.put("H05-24", r -> one(LongOrifice.coefficient(r.in("Re"), r.in("l/d"))));
        return m;
    }
}
