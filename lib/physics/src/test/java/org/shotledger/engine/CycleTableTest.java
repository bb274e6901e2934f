package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;

class CycleTableTest {
    static Mixture mixture(CycleTable.Point at, Fuel main, Fuel second) {
        double air = Oxidisers.OXYGEN_IN_DRY_AIR;
        double oxygen = air / (1 - at.nitrousShare());
        double demand = oxygen / at.lambda();
        return new Mixture(
                1,
                at.water(),
                (oxygen - air) / Oxidisers.OXYGEN_IN_NITROUS_OXIDE,
                main,
                demand * (1 - at.secondShare()) / main.oxygenDemand(),
                second,
                demand * at.secondShare() / second.oxygenDemand());
    }

    private static final Fuel BLEND = Fuels.ethanolBlend(0.85);
    private static final CycleTable TABLE = CycleTable.of(Fuels.GASOLINE, BLEND, 9.5);

    private static void compare(CycleTable.Point at, double work) {
        FuelAirCycle cycle = FuelAirCycle.of(mixture(at, Fuels.GASOLINE, BLEND), at.temperature(), at.pressure(), 9.5);
        assertEquals(1, TABLE.workPerOxygen(at) / cycle.workPerOxygen(), work, () -> "work at " + at);
    }

    @Test
    void meets_the_direct_cycle_where_engines_run() {
        var r = new SplittableRandom(3);
        for (int i = 0; i < 1500; i++) {
            compare(
                    new CycleTable.Point(
                            r.nextDouble(0.6, 1.2),
                            r.nextDouble(0, 0.6),
                            r.nextDouble(),
                            r.nextDouble(240, 400),
                            Math.exp(r.nextDouble(Math.log(8e4), Math.log(4e5))),
                            r.nextDouble(0, 0.03)),
                    0.004);
        }
    }

    @Test
    void meets_the_direct_cycle_over_the_whole_range() {
        var r = new SplittableRandom(4);
        for (int i = 0; i < 1500; i++) {
            compare(
                    new CycleTable.Point(
                            r.nextDouble(0.45, 3),
                            r.nextDouble(0, 0.7),
                            r.nextDouble(),
                            r.nextDouble(200, 450),
                            Math.exp(r.nextDouble(Math.log(3e4), Math.log(7e5))),
                            r.nextDouble(0, 0.05)),
                    0.01);
        }
    }

    /** Where pieces of the table meet, nothing jumps. */
    @Test
    void is_continuous_in_lambda() {
        double before = TABLE.workPerOxygen(new CycleTable.Point(0.5, 0.3, 0.5, 300, 2e5, 0.01));
        for (double lambda = 0.5; lambda < 2; lambda += 0.0005) {
            double now = TABLE.workPerOxygen(new CycleTable.Point(lambda, 0.3, 0.5, 300, 2e5, 0.01));
            assertEquals(1, now / before, 0.002, "lambda " + lambda);
            before = now;
        }
    }
}
