package org.shotledger.trust;

import static org.shotledger.trust.AirChecks.one;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.shotledger.boost.ChargeCooler;
import org.shotledger.boost.Compressor;
import org.shotledger.boost.ExhaustGas;
import org.shotledger.boost.FlowLoss;
import org.shotledger.boost.MapReference;
import org.shotledger.boost.Nozzle;
import org.shotledger.boost.ShaftBalance;
import org.shotledger.boost.Turbine;
import org.shotledger.engine.Engine;

/** Compressors, coolers, turbines, nozzles (H03). */
final class BoostChecks {
    private static final double R = 0.287;

    private BoostChecks() {}

    static Map<String, Function<Row, double[]>> all() {
        Map<String, Function<Row, double[]>> m = new LinkedHashMap<>();
        m.put("H03-02", r -> {
            double ratio = r.in("p2") / r.in("p1");
            double real = Compressor.outletTemperature(r.in("T1"), ratio, r.in("eta"), 1.4);
            // The book states the work as positive and the temperature after the real compression.
            return new double[] {r.in("cp") * (real - r.in("T1")), real};
        });
        m.put("H03-03", r -> one(netGain(r, r.in("eta_v"), r.in("p1") * 100)));
        m.put("H03-04", r -> new double[] {
            100 * r.in("PR") * 288 / Compressor.outletTemperature(288, r.in("PR"), r.in("eta_c"), 1.4),
            netGain(r, r.in("eta_v0"), 101.3)
        });
        m.put("H03-06", r -> {
            double t2 = Compressor.outletTemperature(r.in("T1"), 2.1 / 0.97, r.in("eta_c"), 1.4);
            double t4 = Turbine.outletTemperature(r.in("T3"), r.in("p3") / r.in("p4"), r.in("eta_t"), r.in("kg"));
            double compressor = r.in("cpa") * (t2 - r.in("T1"));
            double turbine = (1 + 1 / r.in("AF")) * r.in("cpg") * (r.in("T3") - t4);
            return new double[] {t2 - 273, t4 - 273, 100 * (1 - compressor / turbine)};
        });
        m.put("H03-07", BoostChecks::ownCompressor);
        m.put("H03-08", BoostChecks::altitude);
        m.put("H03-10", r -> {
            double ratio = 1.45 / 1.01;
            double volume = r.in("V") * 1e-6;
            double hot = ratio * 288.15 / Compressor.outletTemperature(288.15, ratio, 1, 1.4);
            return new double[] {
                r.in("rho") * ratio * volume, 100 * (ratio - 1), r.in("rho") * hot * volume, 100 * (hot - 1)
            };
        });
        m.put("H03-11", r -> new double[] {work(9, 1.4), work(9, 1.3), work(9, 1 + 1e-7), 2 * work(3, 1.3)});
        m.put("H03-12", r -> new double[] {
            MapReference.SI.correctedFlow(r.in("W"), r.in("T01"), r.in("p01") * 1e3),
            MapReference.US.correctedFlow(r.in("W"), r.in("T01"), r.in("p01") * 1e3)
        });
        m.put("H03-13", r -> new double[] {MapReference.US.temperature(), MapReference.US.pressure() / 1e3});
        m.put("H03-14", r -> one(cooler(r.in("eps")).outletTemperature(r.in("T2"), r.in("Tc"))));
        m.put("H03-15", r -> one(r.in("PR") * 0.97 * r.in("T1") / r.in("T3")));
        m.put("H03-16", r -> {
            double t2 = Compressor.outletTemperature(r.in("T1"), r.in("PR"), r.in("eta"), 1.4);
            return new double[] {r.in("m") * r.in("cp") * (t2 - r.in("T1")), t2};
        });
        m.put("H03-17", r -> new double[] {
            Nozzle.flow(r.in("A"), 1e6, r.in("T0"), 500e3, 287, r.in("k")),
            Nozzle.flow(r.in("A"), 1e6, r.in("T0"), 784e3, 287, r.in("k")),
            Math.sqrt(2 / (r.in("k") - 1) * (Math.pow(0.784, -(r.in("k") - 1) / r.in("k")) - 1))
        });
        m.put("H03-20", r -> {
            double t2 = Compressor.outletTemperature(298, 2.5, 0.72, 1.4);
            double power = 0.40 * 1005 * (t2 - 298);
            double gamma = r.in("kg");
            ExhaustGas gas = new ExhaustGas(
                    0.40 * (1 + 1 / r.in("AF")), r.in("T3"), r.in("cpg") * 1e3 * (gamma - 1) / gamma, gamma);
            return one(ShaftBalance.expansionRatio(power, gas, r.in("eta_t"), r.in("eta_m")));
        });
        return m;
    }

    /** Net gain of brake power of a mechanically driven blower, with the books' recipe around the library's temperatures. */
    private static double netGain(Row r, double unchargedEfficiency, double ambient) {
        double ratio = r.in("PR");
        double t1 = r.in("T1");
        double t2 = Compressor.outletTemperature(t1, ratio, r.in("eta_c"), 1.4);
        double swept = r.in("Vs") * 1e-3 * r.in("N") / 120;
        double charged = swept * ratio * t1 / t2;
        double indicated = r.in("ip'") * (charged - unchargedEfficiency * swept) * 60 + (ratio - 1) * ambient * swept;
        double flow = ratio * ambient * swept / (R * t2);
        return r.in("eta_m") * indicated - flow * 1.005 * (t2 - t1) / r.in("eta_m");
    }

    private static double[] ownCompressor(Row r) {
        Engine e = PowerChecks.engine(6, 0.09, 0.10, 9, 0.2);
        double brake = r.in("T") * Math.PI * r.in("N") / 30;
        double imep = e.meanEffectivePressure(brake / r.in("eta_m"), r.in("N"));
        double rate = e.displacementRate(r.in("N"));
        double engineFlow = r.in("eta_v") * rate * r.in("p3") * 1e5 / (R * 1e3 * r.in("T3"));
        double heat = r.in("Qcooler") * 1e3 / 60;
        // (T2 - T1)/(T2 - T3) = bp/Q with both over the whole flow.
        double ratio = brake / heat;
        double t2 = (ratio * r.in("T3") - r.in("T1")) / (ratio - 1);
        double total = heat / (1005 * (t2 - r.in("T3")));
        return new double[] {imep / 1e5, engineFlow * 60, total * 60};
    }

    private static double[] altitude(Row r) {
        double perPower = r.in("bsfc") * r.in("AF") / 3600;
        double cycles = r.in("N") / 120;
        double density = r.in("p1") * 100 / (R * r.in("T1"));
        double volume = r.in("bp") * perPower / (r.in("eta_v") * density * cycles);
        double mep = PowerChecks.ofDisplacement(volume).meanEffectivePressure(r.in("bp") * 1e3, r.in("N"));
        double flow = r.in("bp") / 0.92 * perPower;
        double pressure = flow * R * r.in("T2") / (r.in("eta_v") * volume * cycles);
        return new double[] {volume, mep / 1e5, pressure / 100 - r.in("pa")};
    }

    private static double work(double ratio, double exponent) {
        double t2 = Compressor.outletTemperature(300, ratio, 1, exponent);
        return exponent * R * (t2 - 300) / (exponent - 1);
    }

    private static ChargeCooler cooler(double effectiveness) {
        return new ChargeCooler("test", effectiveness, new FlowLoss("test", 0, 1, 1.2));
    }
}
