package org.shotledger.trust;

import static org.shotledger.trust.AirChecks.one;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.shotledger.curve.Curve;
import org.shotledger.supply.HydraulicPower;
import org.shotledger.supply.Injector;
import org.shotledger.units.UnitFactors;

/** Injectors and pumps (H05-19 to H05-21, H06-01 to H06-06). */
final class SupplyChecks {
    private static final double GALLON_PER_MINUTE = UnitFactors.US_GALLON / 60;

    private SupplyChecks() {}

    static Map<String, Function<Row, double[]>> all() {
        Map<String, Function<Row, double[]>> m = new LinkedHashMap<>();
        m.put("H05-19", r -> one(injector(440e-6 / 60, 684, 0).volumeFlow(684, 4e5) * 60e6));
        m.put("H05-20", r -> {
            Injector i = injector(440e-6 / 60, 684, 0);
            return new double[] {
                i.massFlow(789, 3e5) / i.massFlow(684, 3e5), i.volumeFlow(789, 3e5) / i.volumeFlow(684, 3e5)
            };
        });
        m.put("H05-21", r -> {
            Injector i = injector(440e-6 / 60, 684, 0);
            double flow = i.massFlow(720, 3e5) * r.in("t_on") * 1e-3 * r.in("N") / 120;
            return one(100 * i.duty(flow, r.in("N"), 720, 3e5, 13.5));
        });
        m.put("H06-01", r -> {
            double pressure = r.in("p") * UnitFactors.PSI;
            double full = HydraulicPower.of(20 * GALLON_PER_MINUTE, pressure) / UnitFactors.HORSEPOWER;
            double rest = HydraulicPower.of(0.7 * GALLON_PER_MINUTE, pressure) / UnitFactors.HORSEPOWER;
            return new double[] {full, rest, full - rest};
        });
        m.put("H06-02", r -> one(HydraulicPower.current(r.in("Q") / 60e3, r.in("dp") * 1e5, r.in("eta"), 1)));
        m.put(
                "H06-04",
                r -> one(HydraulicPower.current(
                                100 * GALLON_PER_MINUTE,
                                421 * UnitFactors.FOOT * 62.298 * 16.018463 * UnitFactors.GRAVITY,
                                r.in("eta"),
                                1)
                        / UnitFactors.HORSEPOWER));
        m.put("H06-05", r -> {
            double ratio = 1700.0 / 3500;
            return new double[] {
                HydraulicPower.scaled(400, ratio, 1),
                HydraulicPower.scaled(126, ratio, 2),
                HydraulicPower.scaled(17.5, ratio, 3)
            };
        });
        m.put("H06-06", r -> one(HydraulicPower.current(4 / 60e3, 5e5, r.in("eta"), r.in("V"))));
        return m;
    }

    static Injector injector(double flow, double density, double deadTime) {
        return new Injector("test", flow, 3e5, density, Curve.constant("dead time", deadTime));
    }
}
