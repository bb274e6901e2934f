package org.shotledger.supply;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.curve.Curve;
import org.shotledger.units.AllowedRange;

/** The ranges that the documentation of the parts states, each tried on both sides. */
class SupplyRangesTest {
    private static final Curve DEAD = Curve.constant("dead time", 1e-3);

    @Test
    void injector() {
        AllowedRange.check("static flow of i", 1e-7, 1e-3, "m3/s", x -> new Injector("i", x, 3e5, 684, DEAD));
        AllowedRange.check("test pressure drop of i", 1e5, 10e5, "Pa", x -> new Injector("i", 1e-5, x, 684, DEAD));
        AllowedRange.check("test density of i", 600, 900, "kg/m3", x -> new Injector("i", 1e-5, 3e5, x, DEAD));
        AllowedRange.check(
                "dead time of i", 0, 5e-3, "s", x -> new Injector("i", 1e-5, 3e5, 684, Curve.constant("dead time", x)));
    }

    @Test
    void regulator() {
        AllowedRange.check("base pressure of r", 0.5e5, 10e5, "Pa", x -> new Regulator("r", x, 1));
        AllowedRange.check("boost reference of r", 0, 3, "", x -> new Regulator("r", 3e5, x));
    }

    @Test
    void pump_and_its_wiring() {
        AllowedRange.check("voltage of a pump line", 5, 30, "V", x -> PumpTest.line(x, 9e-5, 5e-5, 6, 9));
        AllowedRange.check("flow", 0, 0.01, "m3/s", x -> PumpTest.line(12, x, 0, 6, 9));
        Pump pump = new Pump("p", List.of(PumpTest.line(12, 9e-5, 5e-5, 6, 9)));
        AllowedRange.check(
                "wiring resistance of g",
                0,
                1,
                "ohm",
                x -> new PumpGroup("g", List.of(pump), PumpGroup.Arrangement.PARALLEL, x));
    }
}
