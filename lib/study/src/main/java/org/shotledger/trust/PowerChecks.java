package org.shotledger.trust;

import static org.shotledger.trust.AirChecks.one;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.shotledger.curve.Curve;
import org.shotledger.drive.Driveline;
import org.shotledger.engine.Consumption;
import org.shotledger.engine.Engine;
import org.shotledger.engine.InletMachIndex;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.Power;
import org.shotledger.flow.Incompressible;
import org.shotledger.fuel.Fuels;
import org.shotledger.units.UnitFactors;

/** Displacement, mean effective pressure, consumption, volumetric efficiency, driveline (H02, H09-09). */
final class PowerChecks {
    private static final double KG_PER_KWH = 1 / 3.6e6;
    private static final double CUBIC_INCH = 1.6387064e-5;

    private PowerChecks() {}

    static Map<String, Function<Row, double[]>> all() {
        Map<String, Function<Row, double[]>> m = new LinkedHashMap<>();
        m.put("H02-01", r -> {
            Engine e = engine(r.in("n"), r.in("d") * 1e-2, r.in("L") * 1e-2, r.in("r"), 0.2);
            return new double[] {e.displacement() * 1e6, e.clearance() * 1e6};
        });
        m.put("H02-02", PowerChecks::consumption);
        m.put("H02-03", r -> {
            double fuel = r.in("bp") * Consumption.specific(r.in("eta"), r.in("CV") * 1e3) * 3.6e6;
            double air = fuel / r.in("F/A");
            return new double[] {air, air / r.in("rho")};
        });
        m.put("H02-05", r -> {
            Engine e = engine(r.in("n"), r.in("d") * 1e-2, r.in("L") * 1e-2, 9, 0.25);
            double specific = r.in("mf") / 3600 / (r.in("bp") * 1e3);
            return new double[] {
                Consumption.efficiency(specific, r.in("CV") * 1e3),
                e.meanEffectivePressure(r.in("bp") * 1e3, r.in("N")) / 1e5
            };
        });
        m.put("H02-06", r -> {
            // "engine as above" is that of the row before, example 18.1 (a, b)
            Engine e = engine(4, 0.11, 0.13, 9, 0.25);
            double density = new MoistAir(r.in("p") * 1e5, r.in("T"), 0).density();
            double air = airBox(r, density);
            return new double[] {air, air / (density * e.displacementRate(2250))};
        });
        m.put("H02-07", r -> {
            Engine e = engine(r.in("n"), r.in("d") * 1e-2, r.in("L") * 1e-2, 9, 0.25);
            double power = r.in("T") * Math.PI * r.in("N") / 30;
            return new double[] {
                100 * Consumption.efficiency(r.in("mf") / 3600 / power, r.in("CV") * 1e3),
                e.meanEffectivePressure(power, r.in("N")) / 1e5,
                100 * airBox(r, r.in("rho")) / (r.in("rho") * e.displacementRate(r.in("N")))
            };
        });
        m.put("H02-09", r -> {
            double side = Math.cbrt(3.0e-3 / 6 * 4 / Math.PI);
            Engine e = engine(6, side, side, r.in("r"), 0.166);
            return new double[] {side * 1e3, e.meanPistonSpeed(r.in("N")), e.clearance() * 1e6};
        });
        m.put("H02-10", r -> {
            double power = r.in("T") * Math.PI * r.in("N") / 30;
            Engine e = ofDisplacement(r.in("Vd") * 1e-3);
            return new double[] {power / 1e3, e.meanEffectivePressure(power, r.in("N")) / 1e3};
        });
        m.put("H02-11", r -> {
            Engine e = engine(r.in("n"), r.in("d") * 1e-3, r.in("L") * 1e-3, 9, 0.25);
            return one(e.meanEffectivePressure(r.in("T") * Math.PI * 2000 / 30, 2000) / 1e5);
        });
        m.put("H02-14", r -> {
            double air = 2e-3 * Fuels.ISO_OCTANE.stoichiometricAirFuel();
            double rate = ofDisplacement(r.in("Vd") * 1e-3).displacementRate(r.in("N"));
            return new double[] {air * 1e3, 100 * air / (r.in("rho") * rate)};
        });
        m.put(
                "H02-15",
                r -> one(r.in("eta_v")
                        * ofDisplacement(r.in("Vd") * 1e-3).displacementRate(r.in("N"))
                        * r.in("p")
                        * 1e3
                        / (287.0 * r.in("T"))));
        m.put(
                "H02-16",
                r -> one(ofDisplacement(r.in("CID") * CUBIC_INCH).displacementRate(r.in("rpm"))
                        / Math.pow(UnitFactors.FOOT, 3)
                        * 60));
        m.put(
                "H02-17",
                r -> one(r.in("N") * Math.PI / 30 * r.in("T") * UnitFactors.POUND_FOOT / UnitFactors.HORSEPOWER));
        m.put(
                "H02-18",
                r -> one(ofDisplacement(r.in("CID") * CUBIC_INCH)
                                .meanEffectivePressure(r.in("T") * UnitFactors.POUND_FOOT * Math.PI * 3000 / 30, 3000)
                        / UnitFactors.PSI));
        m.put("H02-19", r -> {
            double specific = Consumption.specific(r.in("eta"), r.in("LHV") * 1e6);
            return new double[] {specific * 3.6e9, specific * UnitFactors.HORSEPOWER * 3600 / UnitFactors.POUND};
        });
        m.put("H02-20", r -> {
            double efficiency = Consumption.efficiency(0.300 * KG_PER_KWH, 43.4e6);
            return new double[] {
                Consumption.specific(efficiency, 26.8e6) * 3.6e9, Consumption.specific(efficiency, 20.0e6) * 3.6e9
            };
        });
        m.put("H02-21", r -> one(r.in("AFR") * r.in("bsfc")));
        m.put("H02-22", r -> {
            Engine e = engine(4, 0.08, 0.08, 9, 0.2);
            return one(e.stroke() * r.in("Up") / 60 / e.meanPistonSpeed(r.in("N")) * 1e3);
        });
        m.put(
                "H02-23",
                r -> one(1e3
                        * InletMachIndex.valveDiameter(
                                r.in("Z"),
                                r.in("D") * 1e-3,
                                2 * r.in("L") * 1e-3 * r.in("N") / 60,
                                r.in("Ki"),
                                r.in("T"))));
        m.put(
                "H08-13",
                r -> one(ofDisplacement(r.in("V") * 1e-3).meanEffectivePressure(r.in("T") * Math.PI * 3000 / 30, 3000)
                        / 1e5));
        m.put("H09-09", r -> {
            Driveline d = Driveline.proportional("test", 0.15);
            return new double[] {d.wheelPower(500, 6000), d.brakePower(500, 6000)};
        });
        return m;
    }

    /** Air through the orifice of an air box: the drop is so small that the air counts as incompressible. */
    private static double airBox(Row r, double density) {
        double bore = r.in("do") * 1e-2;
        double drop = r.in("dp") * 98.0665;
        return r.in("Cd")
                * Math.PI
                / 4
                * bore
                * bore
                * Incompressible.massFlux(density, UnitFactors.ATMOSPHERE, UnitFactors.ATMOSPHERE - drop);
    }

    private static double[] consumption(Row r) {
        double brake = r.in("bp");
        Power p = new Power(brake / r.in("em"), 0, brake / r.in("em") - brake, 3000);
        double perJoule = r.in("bsfc") * KG_PER_KWH;
        double brakeEfficiency = Consumption.efficiency(perJoule, r.in("CV") * 1e3);
        double fuel = r.in("bsfc") * p.brake();
        return new double[] {
            p.indicated(),
            p.friction(),
            100 * brakeEfficiency,
            100 * brakeEfficiency / p.mechanicalEfficiency(),
            fuel,
            fuel * r.in("AF")
        };
    }

    static Engine engine(double cylinders, double bore, double stroke, double ratio, double rod) {
        return new Engine(
                "test", (int) cylinders, bore, stroke, rod, ratio, Curve.constant("volumetric efficiency", 1), 8000);
    }

    static Engine ofDisplacement(double displacement) {
        double side = Math.cbrt(displacement / 12 * 4 / Math.PI);
        return engine(12, side, side, 9, 2 * side);
    }
}
