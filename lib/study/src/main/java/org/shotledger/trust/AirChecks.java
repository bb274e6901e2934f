package org.shotledger.trust;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.shotledger.engine.AtmosphericFactor;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.PowerCorrection;
import org.shotledger.engine.StandardAtmosphere;
import org.shotledger.units.UnitFactors;

/** Ambient air and power correction (H01). */
final class AirChecks {
    private AirChecks() {}

    static Map<String, Function<Row, double[]>> all() {
        Map<String, Function<Row, double[]>> m = new LinkedHashMap<>();
        m.put("H01-01", r -> one(correction(PowerCorrection.SAE_J1349_1990, r.in("Pd") * 100, r.in("Tc") + 273)));
        m.put("H01-02", r -> one(correction(PowerCorrection.SAE_J1349_1990, r.in("Pd") * 100, r.in("Tc") + 273)));
        m.put("H01-03", r -> slopeAndOffset(PowerCorrection.SAE_J1349_1990));
        m.put("H01-04", r -> one(correction(PowerCorrection.SAE_J1349_2004, r.in("Pd") * 100, r.in("T"))));
        m.put(
                "H01-06",
                r -> one(r.in("P")
                        * correction(
                                PowerCorrection.STP,
                                r.in("p") * UnitFactors.INCH_OF_MERCURY,
                                (r.in("t") + UnitFactors.FAHRENHEIT_OFFSET) / 1.8)));
        m.put("H01-08", r -> one(correction(PowerCorrection.DIN_70020, r.in("p") * 100, r.in("t") + 273)));
        m.put("H01-09", r -> one(correction(PowerCorrection.ISO_1585, r.in("ps") * 1e3, r.in("T"))));
        m.put("H01-10", r -> one(correction(PowerCorrection.ISO_1585, r.in("ps") * 1e3, r.in("T"))));
        m.put("H01-11", AirChecks::siteToReference);
        for (String id : new String[] {"H01-18", "H01-20", "H01-21", "H01-22"}) {
            m.put(id, AirChecks::standardAtmosphere);
        }
        for (String id : new String[] {"H01-24", "H01-25", "H01-26"}) {
            m.put(
                    id,
                    r -> one(new MoistAir(UnitFactors.ATMOSPHERE, r.in("t") + UnitFactors.ICE_POINT, 1).vapourPressure()
                            / 1e3));
        }
        m.put(
                "H01-28",
                r -> one(new MoistAir(r.in("p"), r.in("t") + UnitFactors.ICE_POINT, r.in("RH") / 100).density()));
        return m;
    }

    static double[] one(double value) {
        return new double[] {value};
    }

    private static double correction(PowerCorrection standard, double pressure, double temperature) {
        return standard.factor(new MoistAir(pressure, temperature, 0));
    }

    private static double[] slopeAndOffset(PowerCorrection standard) {
        double once = correction(standard, 99e3, 298);
        double more = correction(standard, 90e3, 298);
        double slope = (more - once) / (99.0 / 90 - 1);
        return new double[] {slope, slope - once};
    }

    private static double[] siteToReference(Row r) {
        double dryReference = r.in("pr") - r.in("phr") * r.in("psr");
        double dry = r.in("py") - r.in("phy") * r.in("psy");
        return one(r.in("Py") * AtmosphericFactor.SPARK_IGNITION.of(dryReference, 298, dry, r.in("Ty")));
    }

    private static double[] standardAtmosphere(Row r) {
        double z = r.in("Z");
        return new double[] {
            StandardAtmosphere.temperature(z),
            StandardAtmosphere.pressure(z) / 1e5,
            StandardAtmosphere.density(z) / StandardAtmosphere.density(0)
        };
    }
}
