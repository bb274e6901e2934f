package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;

/** The tabulated cycle with one factor and the closed cycle of the cylinder are one book. */
class PowerBookTest {
    private static final Engine ENGINE = CylinderTest.ENGINE;

    /** Work of the closed cycle over work of the ideal cycle. */
    private static double share(CycleTable table, Fuel fuel, double rpm, double lambda, double nitrous) {
        EnginePoint p =
                EnginePoint.at(ENGINE, table, new EngineFactor(1), EnginePoint.Setting.of(fuel, rpm, lambda, nitrous));
        double cycles = ENGINE.cylinders() * rpm / 120;
        return p.cycle().work() * cycles / p.indicated();
    }

    /** Residual at one speed over mixture, nitrous oxide and fuel: within 2 % of the base point. */
    @Test
    void one_factor_serves_all_mixtures() {
        for (Fuel fuel : new Fuel[] {Fuels.GASOLINE, Fuels.ethanolBlend(0.85)}) {
            CycleTable table = CycleTable.of(fuel, fuel, ENGINE.compressionRatio());
            for (double rpm : new double[] {4500, 6500}) {
                double base = share(table, fuel, rpm, 0.8, 0);
                for (double lambda = 0.65; lambda < 1.12; lambda += 0.05) {
                    for (double nitrous : new double[] {0, 0.05, 0.1}) {
                        assertEquals(
                                1,
                                share(table, fuel, rpm, lambda, nitrous) / base,
                                0.02,
                                fuel.name() + " " + rpm + " rpm lambda " + lambda + " nitrous " + nitrous);
                    }
                }
            }
        }
    }

    /** Over speed heat loss changes: 3000 against 6500 rpm within 3 %. */
    @Test
    void one_factor_serves_all_speeds() {
        CycleTable table = CycleTable.of(Fuels.GASOLINE, Fuels.GASOLINE, ENGINE.compressionRatio());
        double high = share(table, Fuels.GASOLINE, 6500, 0.8, 0);
        assertEquals(1, share(table, Fuels.GASOLINE, 3000, 0.8, 0) / high, 0.03);
        assertTrue(share(table, Fuels.GASOLINE, 3000, 0.8, 0) < high);
    }

    /** After the heat loss is fitted, both tell the base pull's work. */
    @Test
    void a_fitted_cylinder_meets_the_base_pull() {
        CycleTable table = CycleTable.of(Fuels.GASOLINE, Fuels.GASOLINE, ENGINE.compressionRatio());
        EngineFactor factor = new EngineFactor(0.87);
        EnginePoint base = EnginePoint.at(ENGINE, table, factor, EnginePoint.Setting.of(Fuels.GASOLINE, 6500, 0.8, 0));
        double work = base.indicated() / (ENGINE.cylinders() * 6500 / 120.0);
        Cylinder fitted = Cylinder.fitted(ENGINE, base.base(), work);
        assertEquals(1, fitted.run(base.base()).work() / work, 1e-4);
        EnginePoint shot = EnginePoint.at(
                ENGINE,
                table,
                factor,
                EnginePoint.Setting.of(Fuels.GASOLINE, 6500, 0.78, 0.08).retarded(6));
        double there = fitted.run(shot.base().withBurning(BurnPhasing.USUAL.burning(6, 1)))
                .work();
        assertEquals(1, there * ENGINE.cylinders() * 6500 / 120 / shot.indicated(), 0.02);
    }

    /** The peak of the ideal cycle is a bound; the cylinder stays below it and within sizes of the trade. */
    @Test
    void the_cylinder_stays_below_the_ideal_cycle() {
        CycleTable table = CycleTable.of(Fuels.GASOLINE, Fuels.GASOLINE, ENGINE.compressionRatio());
        for (double nitrous : new double[] {0, 0.05, 0.1}) {
            EnginePoint p = EnginePoint.at(
                    ENGINE, table, new EngineFactor(0.85), EnginePoint.Setting.of(Fuels.GASOLINE, 6500, 0.8, nitrous));
            FuelAirCycle ideal = FuelAirCycle.of(
                    p.charge().mixture(), p.trapped().temperature(), EnginePoint.PLENUM, ENGINE.compressionRatio());
            double share = p.cycle().peakPressure() / ideal.peakPressure();
            assertTrue(share > 0.4 && share < 0.75, "share of the ideal peak: " + share);
            assertTrue(p.cycle().peakTemperature() < ideal.peakTemperature());
        }
    }

    /** A burning without time or wall reaches the ideal cycle: fast burning, thirty times the usual speed, little heat loss. */
    @Test
    void without_losses_the_cylinder_is_the_ideal_cycle() {
        CycleTable table = CycleTable.of(Fuels.GASOLINE, Fuels.GASOLINE, ENGINE.compressionRatio());
        EnginePoint p = EnginePoint.at(
                ENGINE, table, new EngineFactor(1), EnginePoint.Setting.of(Fuels.GASOLINE, 6500, 0.9, 0.05));
        Cylinder cylinder = new Cylinder(ENGINE, -180, 180, 0.05, new Woschni(0.3));
        CycleInput base = p.base();
        CycleInput fast = new CycleInput(
                20000,
                base.mass(),
                base.temperature(),
                base.unburned(),
                base.burned(),
                base.heat(),
                Wiebe.of(-2.5, 5),
                700,
                EnginePoint.PLENUM,
                95);
        double cycles = ENGINE.cylinders() * 6500 / 120.0;
        // Residual gas expands too and the liquid rest of the fuel takes its heat: 2 % each at most; 1 % heat loss is
        // left.
        double fresh = p.trapped().freshMass() / p.trapped().mass();
        assertEquals(1, cylinder.run(fast).work() * cycles / p.indicated(), 0.04);
        assertTrue(fresh > 0.95);
    }
}
