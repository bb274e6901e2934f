package org.shotledger.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.job.Job;
import org.shotledger.ledger.Ledger;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.Setup;
import org.shotledger.setup.Target;
import org.shotledger.sheet.SheetException;

/** A plan on the demonstration car: what is printed is what was worked out, and a plan that breaks limits is still a plan. */
class PlanTest {
    private static final double PSI = 6894.757293168361;
    private static final double HP = 745.69987158227022;
    private static final Job JOB =
            Job.load(Path.of("../../data/whimbrel")).with("target.passes", "2").with("target.wheel-power", "680 hp");
    private static final Plan PLAN = Plan.find(JOB);

    @Test
    void the_setup_printed_is_the_setup_worked_out() {
        Plan again = Plan.of(JOB, PLAN.setup());
        for (int i = 0; i < PLAN.outcomes().size(); i++) {
            assertEquals(PLAN.outcomes().get(i).power(), again.outcomes().get(i).power());
            assertEquals(
                    PLAN.outcomes().get(i).limits(), again.outcomes().get(i).limits());
            var alone = Evaluate.of(JOB.car(), PLAN.setup(), JOB.cases().get(i));
            assertEquals(
                    alone.power(),
                    PLAN.outcomes().get(i).power(),
                    1e-9 * alone.power(),
                    JOB.cases().get(i).name());
            assertEquals(alone.limits(), PLAN.outcomes().get(i).limits());
        }
        assertEquals(PLAN.limits(), again.limits());
        assertEquals(PLAN.verdictLine(), again.verdictLine());
    }

    @Test
    void the_power_asked_for_is_reached_inside_every_limit_of_every_case() {
        assertTrue(PLAN.reached(), PLAN.verdictLine());
        assertNotEquals(Verdict.BROKEN, PLAN.verdict(), PLAN.verdictLine());
        assertEquals(JOB.cases().size(), PLAN.outcomes().size());
        for (var outcome : PLAN.outcomes()) {
            assertEquals(List.of(), outcome.limits().broken(), outcome.at().name());
        }
    }

    @Test
    void each_limit_of_the_plan_is_the_closest_of_its_cases() {
        for (Limit limit : PLAN.parts().all()) {
            double least = PLAN.outcomes().stream()
                    .flatMap(outcome -> outcome.limits().find(limit.key()).stream())
                    .mapToDouble(Limit::relativeMargin)
                    .min()
                    .orElseThrow();
            assertEquals(least, limit.relativeMargin(), limit.key());
        }
        assertTrue(PLAN.limits().find("target-power").isPresent());
    }

    /** Boost and nitrous share the crankshaft: nowhere in the window, nor while it opens, more torque than is allowed. */
    @Test
    void torque_is_held_wherever_the_nitrous_is_on_and_while_it_opens() {
        double allowed = JOB.car().limits().crankTorque();
        for (var outcome : PLAN.outcomes()) {
            for (OperatingPoint point : outcome.armed()) {
                assertTrue(point.crankTorque() <= allowed, outcome.at().name() + " at " + point.rpm());
            }
            for (OperatingPoint point : outcome.changeover()) {
                assertTrue(point.crankTorque() <= allowed, outcome.at().name() + ", " + point.mode());
            }
        }
    }

    @Test
    void a_target_beyond_everything_gives_a_plan_and_says_so() {
        Plan far = Plan.find(JOB.with(JOB.target().withWheelPower(960 * HP)));
        assertEquals(Verdict.BROKEN, far.verdict());
        assertTrue(far.verdictLine().contains("960 hp"), far.verdictLine());
        assertFalse(far.outcomes().isEmpty());
        assertFalse(far.reached());
        assertNotEquals(Verdict.BROKEN, far.parts().verdict(), far.verdictLine());
        Plan less = Plan.find(JOB.with(JOB.target().withWheelPower(850 * HP)));
        assertEquals(
                far.stated().power(), less.stated().power(), 1e-9 * far.stated().power());
        Plan least = Plan.find(
                JOB.with("fuels.main.ethanol", "30 %").with(JOB.target().withWheelPower(960 * HP)));
        assertEquals(Verdict.BROKEN, least.verdict());
    }

    @Test
    void a_range_of_speeds_outside_the_arming_conditions_gives_a_plan_without_nitrous() {
        Target t = JOB.target();
        Target low = new Target(t.conditions(), t.wheelPower(), 3000, 4000, t.passes(), t.passSeconds(), t.mixture());
        Plan plan = Plan.find(JOB.with(low));
        assertTrue(plan.setup().jets().isEmpty());
        assertEquals(Verdict.BROKEN, plan.verdict());
        assertFalse(plan.verdictLine().isBlank());
    }

    @Test
    void a_target_that_boost_alone_reaches_needs_no_nitrous() {
        Plan plan = Plan.find(JOB.with(JOB.target().withWheelPower(350 * HP)));
        assertTrue(plan.setup().jets().isEmpty(), plan.verdictLine());
        assertTrue(plan.reached());
    }

    @Test
    void every_figure_is_explained_down_to_what_was_given() {
        Ledger ledger = PLAN.ledger();
        assertEquals(
                PLAN.stated().power(), ledger.find("wheel-power").orElseThrow().value());
        assertEquals(
                PLAN.target().wheelPower(), ledger.find("target").orElseThrow().value());
        assertTrue(PLAN.why("wheel-power").size() > 25);
    }

    /**
     * Half a per cent of one figure (of the bore a quarter: half a per cent of the displacement) moves the boost by less than half a
     * psi and a jet by one rung at most; where a jet moves, both plans are as good on the car as it was. A sheet may be refused in words, a plan never throws.
     */
    @Test
    void half_a_per_cent_moves_the_plan_little() {
        SplittableRandom random = new SplittableRandom(7);
        List<String> paths = List.of(
                "engine.bore",
                "engine.compression-ratio",
                "bottle.charge",
                "nitrous-system.fuel.regulator.base-pressure",
                "turbo.boost-ceiling",
                "turbo.turbine.efficiency",
                "base-pull.wheel-power",
                "limits.crank-torque",
                "limits.peak-pressure",
                "target.wheel-power");
        int refused = 0;
        for (int i = 0; i < Integer.getInteger("shotledger.changes", 10); i++) {
            String path = paths.get(i % paths.size());
            double half = path.equals("engine.bore") ? 0.0025 : 0.005;
            try {
                Plan moved = Plan.find(JOB.with(path, times(path, random.nextBoolean() ? 1 + half : 1 - half)));
                assertFalse(moved.verdictLine().contains("NaN"), moved.verdictLine());
                near(PLAN.setup(), moved.setup(), path);
            } catch (SheetException words) {
                refused++;
            }
        }
        assertTrue(refused < 4, "refused: " + refused);
    }

    private static void near(Setup one, Setup other, String path) {
        double most = 0;
        for (double rpm = one.arming().rpmLow(); rpm <= one.arming().rpmHigh(); rpm += 100) {
            most = Math.max(
                    most,
                    Math.abs(one.boost().armed().at(rpm) - other.boost().armed().at(rpm)));
        }
        JetPair jets = one.jets().orElseThrow();
        JetPair then = other.jets().orElseThrow();
        if (jets.equals(then)) {
            assertTrue(most < 0.5 * PSI, path + ": boost moves by " + most / PSI + " psi");
        } else {
            // a rung of the nitrous jet is worth near 1 psi; then the two setups must be as good as each other for the
            // same car
            assertTrue(most < 1.2 * PSI, path + ": boost moves by " + most / PSI + " psi with " + jets + " / " + then);
            Plan equal = Plan.of(JOB, other);
            assertEquals(PLAN.parts().leastMargin(), equal.parts().leastMargin(), 0.01, path);
            assertEquals(1, equal.stated().power() / PLAN.stated().power(), 0.01, path);
        }
        assertTrue(beside(jets.nitrousBore(), then.nitrousBore()), path + ": " + jets + " / " + then);
        assertTrue(beside(jets.fuelBore(), then.fuelBore()), path + ": " + jets + " / " + then);
    }

    private static boolean beside(double bore, double other) {
        var ladder = JOB.car().nitrous().ladder();
        long between = Arrays.stream(ladder.bores())
                .filter(rung -> rung > Math.min(bore, other) && rung < Math.max(bore, other))
                .count();
        return between == 0;
    }

    private static String times(String path, double factor) {
        String[] words = JOB.car().origin(path).orElseThrow().text().split(" ", 2);
        String unit =
                words.length == 1 ? "" : words[1].replaceFirst(" *\\+/-.*", "").replaceFirst("^\\+/-.*", "");
        return String.format(Locale.ROOT, "%.6f %s", Double.parseDouble(words[0]) * factor, unit)
                .trim();
    }
}
