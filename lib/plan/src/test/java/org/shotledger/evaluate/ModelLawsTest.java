package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;

/** Every figure of a point moves the way physics says, on seeded cars. */
class ModelLawsTest {
    private static final int POINTS = 150;

    @Test
    void a_larger_nitrous_jet_passes_more_runs_leaner_and_a_rich_engine_stronger() {
        each((drawn, point) -> {
            OperatingPoint more =
                    with(drawn, drawn.jets().nitrousBore() * 1.03, drawn.jets().fuelBore());
            assertTrue(more.nitrous().massFlow() > point.nitrous().massFlow());
            assertTrue(more.lambda() > point.lambda());
            if (more.lambda() < 0.98) {
                assertTrue(more.wheelPower() > point.wheelPower(), point.lambda() + " to " + more.lambda());
            }
        });
    }

    @Test
    void a_larger_fuel_jet_runs_richer() {
        each((drawn, point) -> {
            OperatingPoint more =
                    with(drawn, drawn.jets().nitrousBore(), drawn.jets().fuelBore() * 1.03);
            boolean flows = point.nitrousFuel().massFlow() > 0;
            assertTrue(flows ? more.lambda() < point.lambda() : more.lambda() == point.lambda());
        });
    }

    @Test
    void a_warmer_bottle_below_thirty_degrees_feeds_more_and_runs_leaner() {
        each((drawn, point) -> {
            double temperature = point.bottle().temperature();
            if (temperature < 301) {
                Case warm = drawn.at().withBottle(BottleState.at(temperature + 2));
                OperatingPoint warmer = drawn.in(warm);
                assertTrue(warmer.nitrous().massFlow() > point.nitrous().massFlow());
                assertTrue(warmer.lambda() > point.lambda());
            }
        });
    }

    @Test
    void the_nitrous_flow_does_not_feel_boost_and_the_fuel_feels_it_as_its_regulator_does() {
        each((drawn, point) -> {
            OperatingPoint less = drawn.at(drawn.rpm(), drawn.plenum() - 0.1e5);
            assertEquals(
                    point.nitrous().massFlow(),
                    less.nitrous().massFlow(),
                    1e-4 * point.nitrous().massFlow());
            boolean follows = drawn.setup().nitrousRegulator().boostReference() == 1;
            double fuel = point.nitrousFuel().massFlow();
            boolean same = Math.abs(less.nitrousFuel().massFlow() - fuel) < 1e-9 + 1e-3 * fuel;
            if (!point.nitrousFuel().pumpLimited() && !less.nitrousFuel().pumpLimited()) {
                assertEquals(
                        follows,
                        same,
                        "fuel " + fuel + " and " + less.nitrousFuel().massFlow());
            }
        });
    }

    @Test
    void the_same_shot_loads_a_cylinder_more_the_slower_the_engine_turns() {
        each((drawn, point) -> {
            OperatingPoint slower = drawn.at(drawn.rpm() * 0.9, drawn.plenum());
            double now = point.nitrous().massFlow() / point.rpm();
            assertTrue(slower.nitrous().massFlow() / slower.rpm() > now);
        });
    }

    private static OperatingPoint with(SeededCars.Drawn drawn, double nitrous, double fuel) {
        return drawn.with(drawn.setup().withJets(new JetPair(nitrous, fuel)));
    }

    private interface Law {
        void hold(SeededCars.Drawn drawn, OperatingPoint point);
    }

    /** A point refused by a model, for example beyond the compressor map, is no case for a law. */
    private static void each(Law law) {
        SeededCars cars = new SeededCars(7);
        int held = 0;
        int refusals = 0;
        for (int i = 0; i < 3 * POINTS && held < POINTS; i++) {
            SeededCars.Drawn drawn = cars.next();
            try {
                law.hold(drawn, drawn.point());
                held++;
            } catch (NoAnswerException refused) {
                refusals++;
            }
        }
        assertTrue(held >= POINTS / 2, "only " + held + " points held, " + refusals + " were refused");
    }
}
