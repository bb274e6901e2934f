package org.shotledger.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shotledger.build.Build;
import org.shotledger.nitrous.JetPair;

/** Sizing and evaluating are inverse, and every figure moves the way physics says, on seeded builds. */
class SizingLawsTest {
    private static final int POINTS = 150;
    /** A small shot beside a richer main fuel may need no fuel of its own; sizing then stays at the finest jet of the trade. */
    private static final double FINEST_JET = 0.151e-3;

    /** Four cars out of the demo build: weather, bottle, kit and fuel changed at random from a seed. */
    static List<Build> builds() {
        Build heron = Build.load(Path.of("../../data/heron/build.yaml"));
        SplittableRandom random = new SplittableRandom(4);
        List<Build> builds = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            builds.add(heron.with("conditions.event.altitude", text(random, 200, 1800, "m"))
                    .with("bottle.start-temperature", text(random, 24, 32, "degC"))
                    .with("wet-kit.fuel.regulator.base-pressure", text(random, 3, 4.5, "bar"))
                    .with("tune.nitrous-lambda", text(random, 0.76, 0.82, ""))
                    .with("fuels.main.ethanol", text(random, 60, 85, "%")));
        }
        return builds;
    }

    private static String text(SplittableRandom random, double low, double high, String unit) {
        return String.format(Locale.ROOT, "%.3f %s", low + (high - low) * random.nextDouble(), unit)
                .trim();
    }

    @ParameterizedTest
    @MethodSource("builds")
    void jets_sized_for_a_power_give_that_power_to_a_tenth_of_a_per_cent(Build build) {
        double boost = new Planner(build, Wish.of(build.target())).boostAlone();
        Budget budget = Budget.plan(build, wish(build, 1.15 * boost));
        ShotSizer sizer = ShotSizer.of(budget);
        double off = sizer.off().wheelPower();
        for (double share = 0.15; share <= 1.01; share += 0.17) {
            double wanted = off + share * (1.15 * boost - off);
            JetPair exact = sizer.exact(wanted);
            Evaluation point = sizer.strongest(exact);
            assertEquals(wanted, point.wheelPower(), 1e-3 * wanted);
            if (exact.fuelBore() > FINEST_JET) {
                assertEquals(build.tune().goal().value(), point.lambda(), 1e-3, "and the mixture");
            }
        }
    }

    private static Wish wish(Build build, double watts) {
        Wish of = Wish.of(build.target());
        return new Wish(of.conditions(), watts, of.rpmLow(), of.rpmHigh(), 1, 5, of.mixture());
    }

    @Test
    void a_larger_nitrous_jet_passes_more_runs_leaner_and_a_rich_engine_stronger() {
        each((drawn, point) -> {
            Evaluation more =
                    with(drawn, jets(point).nitrousBore() * 1.03, jets(point).fuelBore());
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
            Evaluation more = with(drawn, jets(point).nitrousBore(), jets(point).fuelBore() * 1.03);
            boolean flows = point.nitrousFuel().massFlow() > 0;
            assertTrue(flows ? more.lambda() < point.lambda() : more.lambda() == point.lambda());
        });
    }

    @Test
    void a_warmer_bottle_below_thirty_degrees_feeds_more_and_runs_leaner() {
        each((drawn, point) -> {
            double temperature = point.conditions().bottleLiquid().temperature();
            if (temperature < 301) {
                Conditions warm = drawn.at().withBottleTemperature(temperature + 2);
                Evaluation warmer = drawn.evaluator().at(warm, drawn.rpm(), drawn.demand());
                assertTrue(warmer.nitrous().massFlow() > point.nitrous().massFlow());
                assertTrue(warmer.lambda() > point.lambda());
            }
        });
    }

    @Test
    void the_nitrous_flow_does_not_feel_boost_and_the_fuel_feels_it_as_its_regulator_does() {
        each((drawn, point) -> {
            double plenum = drawn.demand().plenumPressure();
            Evaluation less = drawn.evaluator()
                    .at(
                            drawn.at(),
                            drawn.rpm(),
                            new Demand(plenum - 0.1e5, drawn.demand().jets()));
            assertEquals(
                    point.nitrous().massFlow(),
                    less.nitrous().massFlow(),
                    1e-4 * point.nitrous().massFlow());
            boolean follows =
                    drawn.evaluator().build().wetKit().fuel().regulator().boostReference() == 1;
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
            Evaluation slower = drawn.evaluator().at(drawn.at(), drawn.rpm() * 0.9, drawn.demand());
            double now = point.nitrous().massFlow() / point.rpm();
            assertTrue(slower.nitrous().massFlow() / slower.rpm() > now);
        });
    }

    private static JetPair jets(Evaluation point) {
        return point.demand().jets().orElseThrow();
    }

    private static Evaluation with(SeededBuilds.Case drawn, double nitrous, double fuel) {
        Demand demand = Demand.boost(drawn.demand().plenumPressure()).with(new JetPair(nitrous, fuel));
        return drawn.evaluator().at(drawn.at(), drawn.rpm(), demand);
    }

    private interface Law {
        void hold(SeededBuilds.Case drawn, Evaluation point);
    }

    /** A point refused by a model, for example beyond the compressor map, is no case for a law. */
    private static void each(Law law) {
        SeededBuilds builds = new SeededBuilds(7);
        int held = 0;
        int refusals = 0;
        for (int i = 0; i < 3 * POINTS && held < POINTS; i++) {
            SeededBuilds.Case drawn = builds.next();
            try {
                law.hold(drawn, drawn.evaluate());
                held++;
            } catch (IllegalArgumentException refused) {
                refusals++;
            }
        }
        assertTrue(held >= POINTS / 2, "only " + held + " points held, " + refusals + " were refused");
    }
}
