package org.shotledger.trust;

import static org.shotledger.trust.AirChecks.one;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.shotledger.engine.AirCycle;
import org.shotledger.engine.Knock;
import org.shotledger.engine.Wiebe;
import org.shotledger.engine.Woschni;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.gas.DryAir;
import org.shotledger.gas.Element;
import org.shotledger.gas.Equilibrium;
import org.shotledger.gas.Flame;
import org.shotledger.gas.Gas;
import org.shotledger.gas.GasMixture;
import org.shotledger.gas.Gases;
import org.shotledger.units.UnitFactors;

/** Ideal cycles, flames, formation enthalpies, knock (H08, H10). */
final class CylinderChecks {
    private static final double ROOM = 298.15;

    private CylinderChecks() {}

    static Map<String, Function<Row, double[]>> all() {
        Map<String, Function<Row, double[]>> m = new LinkedHashMap<>();
        m.put("H10-01", r -> {
            AirCycle c = AirCycle.constantVolume(r.in("r"), r.in("T1"), r.in("p1") * 1e3, r.in("qin") * 1e3);
            return new double[] {
                c.peakTemperature(),
                c.peakPressure() / 1e6,
                c.work() / 1e3,
                100 * c.efficiency(),
                c.meanEffectivePressure() / 1e3
            };
        });
        m.put("H10-03", r -> {
            AirCycle capped = otto(r.in("r"), r.in("T1"), 1e5, 2700e3, r.in("pmax") * 1e5);
            AirCycle free = otto(r.in("r"), r.in("T1"), 1e5, 2700e3, Double.POSITIVE_INFINITY);
            return new double[] {
                capped.meanEffectivePressure() / 1e5,
                100 * capped.efficiency(),
                free.meanEffectivePressure() / 1e5,
                100 * free.efficiency(),
                free.peakPressure() / 1e5
            };
        });
        m.put("H10-04", r -> {
            double t2 = r.in("T1") * Math.pow(r.in("r"), 0.4);
            double p2 = r.in("p1") * Math.pow(r.in("r"), 1.4);
            double heat = 2 * 717.5 * t2 * (r.in("p3") / p2 - 1);
            AirCycle c = otto(r.in("r"), r.in("T1"), r.in("p1") * 1e5, heat, r.in("p3") * 1e5);
            return new double[] {100 * c.efficiency(), c.meanEffectivePressure() / 1e5};
        });
        m.put("H10-05", r -> {
            AirCycle c = AirCycle.limitedPressure(
                    r.in("r"), r.in("T1"), 1e5, r.in("q") * 1e3, Double.POSITIVE_INFINITY, 0.4 * r.in("cv") * 1e3, 1.4);
            return new double[] {c.peakTemperature() - 273, 100 * c.efficiency(), c.work() / 1e3};
        });
        m.put("H10-08", r -> {
            AirCycle c = AirCycle.limitedPressure(
                    r.in("CR"), 519.67, 8, 20000.0 / 16, Double.POSITIVE_INFINITY, 0.4 * r.in("cv"), 1.4);
            return new double[] {100 * c.efficiency(), c.peakPressure(), c.peakTemperature()};
        });
        m.put("H10-09", r -> one(new Wiebe(0, 50, 5, 2).burned(50)));
        m.put("H10-10", r -> one(new Wiebe(0, 50, 6.908, 2).burned(50)));
        m.put("H10-11", r -> {
            Wiebe w = Wiebe.of(0, 100);
            return new double[] {w.angleOf(0.1) / 100, w.angleOf(0.5) / 100, w.angleOf(0.9) / 100};
        });
        m.put("H10-12", r -> one(new Woschni(1).coefficient(r.in("B"), r.in("p") * 1e3, r.in("T"), r.in("w"))));
        m.put("H08-01", r -> one(1e3 * Knock.delay(r.in("ON"), r.in("p") * UnitFactors.ATMOSPHERE, r.in("T"))));
        m.put("H08-02", r -> one(1e3 * Knock.delay(r.in("ON"), r.in("p") * UnitFactors.ATMOSPHERE, r.in("T"))));
        m.put("H08-03", r -> one(Knock.delay(105, 4e6, 800) / Knock.delay(95, 4e6, 800)));
        m.put("H08-04", r -> one(Knock.delay(95, 6e6, 800) / Knock.delay(95, 4e6, 800)));
        m.put("H08-05", r -> one(Knock.delay(95, 4e6, 840) / Knock.delay(95, 4e6, 800)));
        m.put("H08-06", r -> one(ramp(r.in("k"))));
        m.put("H08-07", r -> one(1e3 * Knock.delay(100, UnitFactors.ATMOSPHERE, 1e13)));
        m.put("H10-13", r -> one(air("CH4", 2).temperature()));
        m.put("H10-15", r -> one(air("C2H2", 2.5).temperature()));
        m.put("H10-16", r -> one(air("n-C8H18", 12.5).temperature()));
        m.put("H10-17", r -> new double[] {complete(-249.91e3, 1), complete(-249.91e3, 4)});
        m.put("H10-19", r -> one(nitrous("iso-C8H18", 25)));
        m.put("H10-20", r -> one(nitrous("C2H5OH", 6)));
        m.put("H10-21", r -> one(nitrous("CH3OH", 3)));
        m.put("H10-22", r -> one(nitrous("C7H8", 18)));
        m.put("H10-23", r -> one(nitrous("C3H8", 10)));
        m.put("H10-24", r -> one(nitrous("H2", 1)));
        m.put("H10-25", r -> one(hottestAcetylene()));
        m.put("H10-26", r -> one(formation("CO2")));
        m.put("H10-27", r -> one(formation("H2O")));
        m.put("H10-29", r -> one(formation("C2H5OH")));
        m.put("H10-30", r -> one(formation("iso-C8H18")));
        m.put("H10-31", r -> one(formation("C7H8")));
        m.put("H10-33", r -> one(Oxidisers.NITROUS_OXIDE_DECOMPOSITION / 1e6));
        m.put("H10-34", r -> new double[] {DryAir.specificHeat(r.in("T")) / 1e3, DryAir.gamma(r.in("T"))});
        m.put("H10-35", r -> new double[] {DryAir.specificHeat(r.in("T")) / 1e3, DryAir.gamma(r.in("T"))});
        m.put("H10-37", r -> one(products().gamma(1500)));
        m.put("H10-38", r -> one(products().gamma(2000)));
        m.put("H10-39", r -> one(products().gamma(2500)));
        return m;
    }

    private static AirCycle otto(double ratio, double t1, double p1, double heat, double cap) {
        return AirCycle.limitedPressure(ratio, t1, p1, heat, cap, 287, 1.4);
    }

    private static double ramp(double gamma) {
        int n = 4001;
        double[] time = new double[n];
        double[] pressure = new double[n];
        double[] temperature = new double[n];
        for (int i = 0; i < n; i++) {
            double share = i / (n - 1.0);
            time[i] = 5e-3 * share;
            pressure[i] = (20 + 60 * share) * UnitFactors.ATMOSPHERE;
            temperature[i] = 700 * Math.pow(1 + 3 * share, (gamma - 1) / gamma);
        }
        return Knock.integral(95, time, pressure, temperature);
    }

    private static double formation(String gas) {
        return Gases.of(gas).enthalpy(ROOM) / 1e3;
    }

    private static Flame air(String fuel, double oxygen) {
        Map<Gas, Double> amounts = new LinkedHashMap<>();
        amounts.put(Gases.of(fuel), 1.0);
        amounts.put(Gases.O2, oxygen);
        amounts.put(Gases.N2, oxygen * 3.76);
        return Flame.of(GasMixture.of(amounts), ROOM, UnitFactors.ATMOSPHERE, Equilibrium.DISSOCIATED);
    }

    private static double nitrous(String fuel, double moles) {
        Map<Gas, Double> amounts = new LinkedHashMap<>();
        amounts.put(Gases.of(fuel), 1.0);
        amounts.put(Gases.N2O, moles);
        return Flame.of(GasMixture.of(amounts), ROOM, UnitFactors.ATMOSPHERE, Equilibrium.DISSOCIATED)
                .temperature();
    }

    private static double hottestAcetylene() {
        double best = 0;
        for (double phi = 0.8; phi <= 2.5; phi += 0.1) {
            Map<Gas, Double> amounts = new LinkedHashMap<>();
            amounts.put(Gases.of("C2H2"), phi);
            amounts.put(Gases.N2O, 5.0);
            best = Math.max(
                    best,
                    Flame.of(GasMixture.of(amounts), ROOM, UnitFactors.ATMOSPHERE, Equilibrium.RICH)
                            .temperature());
        }
        return best;
    }

    /** Liquid octane with theoretical air times a factor, burned completely without dissociation. */
    private static double complete(double liquidFormation, double factor) {
        Map<Element, Double> atoms = new EnumMap<>(Element.class);
        atoms.put(Element.C, 8.0);
        atoms.put(Element.H, 18.0);
        atoms.put(Element.O, 25 * factor);
        atoms.put(Element.N, 25 * factor * 3.76);
        Equilibrium complete = new Equilibrium(List.of(Gases.CO2, Gases.H2O, Gases.O2, Gases.N2));
        return Flame.of(atoms, liquidFormation, UnitFactors.ATMOSPHERE, complete)
                .temperature();
    }

    private static GasMixture products() {
        Map<Gas, Double> amounts = new LinkedHashMap<>();
        amounts.put(Gases.CO2, 8.0);
        amounts.put(Gases.H2O, 9.0);
        amounts.put(Gases.N2, 47.0);
        return GasMixture.of(amounts);
    }
}
