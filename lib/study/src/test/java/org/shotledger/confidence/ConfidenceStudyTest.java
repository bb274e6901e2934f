package org.shotledger.confidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Setup;

/** A setup of the invented demo car under what is not known of it, in two cases. */
class ConfidenceStudyTest {
    private static final int DRAWS = 1 << 13;
    private static final double BOOST = 1.05e5;
    private static Plan plan;
    private static List<Unknown> all;
    private static List<Unknown> few;
    private static Confidence confidence;

    @BeforeAll
    static void study() {
        Job job = Job.load(Path.of("../../data/whimbrel/job.yaml"));
        job = job.withCases(job.cases().subList(0, 2));
        Setup setup =
                job.setup().withBoost(BoostTarget.constant(BOOST)).withJets(new JetPair(43 * 25.4e-6, 22 * 25.4e-6));
        plan = Plan.of(
                job.with(job.target()
                        .withWheelPower(0.99 * Plan.of(job, setup).stated().power())),
                setup);
        all = Unknowns.of(plan);
        few = new ArrayList<>(List.of(
                named("nitrous flow"),
                named("nitrous fuel jets"),
                named("work that the nitrous"),
                named("base-pull.wheel-power"),
                named("bottle temperature")));
        confidence = ConfidenceStudy.of(plan, few, DRAWS, 5);
    }

    private static Unknown named(String part) {
        return all.stream().filter(u -> u.name().contains(part)).findFirst().orElseThrow();
    }

    @Test
    void bands_of_wires_and_sensors_are_no_unknowns_of_the_answer() {
        assertTrue(plan.car().origins().values().stream()
                .anyMatch(o -> o.path().startsWith("wiring.") && o.uncertainty() > 0));
        assertTrue(Unknowns.sheet(plan.job()).stream()
                .noneMatch(unknown -> unknown.name().startsWith("wiring.")));
    }

    @Test
    void every_band_of_what_the_answer_rests_on_is_an_unknown() {
        plan.car().origins().values().stream()
                .filter(o -> o.uncertainty() > 0 && !o.path().matches("(wiring|controller)\\..*"))
                .forEach(o -> assertTrue(all.stream().anyMatch(u -> u.name().equals(o.path())), o.path()));
    }

    @Test
    void the_share_of_the_nitrous_work_moves_the_power() {
        Influence work = confidence.influences().stream()
                .filter(i -> i.unknown().equals(few.get(2)))
                .findFirst()
                .orElseThrow();
        assertTrue(work.powerAtHigh() > 1.005 * work.powerAtLow(), work.toString());
    }

    @Test
    void a_band_on_a_limit_makes_its_chance() {
        Job job = plan.job().with("limits.crank-torque", "900 N m +/- 60 N m");
        Plan banded = Plan.of(job.with(plan.target()).withCases(plan.job().cases()), plan.setup());
        List<Unknown> own = Unknowns.sheet(job).stream()
                .filter(u -> u.name().equals("limits.crank-torque"))
                .toList();
        double torque = banded.parts().find("crank-torque").orElseThrow().value();
        double exact = Math.max(0, Math.min(1, (960 - torque) / 120));
        Chance chance =
                ConfidenceStudy.quick(banded, own, DRAWS, 1).stated().limits().get("crank-torque");
        assertEquals(exact, chance.probability(), 0.02);
    }

    @Test
    void the_chances_are_those_of_drawing_the_exact_evaluation() {
        int draws = 64;
        Surface surface = new Surface(plan, few, true);
        int reached = 0;
        int kept = 0;
        int counted = 0;
        for (double[] x : SurfaceCheck.places(few, draws, 12)) {
            double[] exact = surface.exactOrNull(x);
            if (exact != null) {
                counted++;
                reached +=
                        plan.target().reachedBy((1 + exact[0]) * plan.target().wheelPower()) ? 1 : 0;
                kept += java.util.Arrays.stream(exact).skip(1).min().orElseThrow() >= 0 ? 1 : 0;
            }
        }
        assertHolds(Chance.wilson(reached, counted), confidence.stated().reach());
        assertHolds(Chance.wilson(kept, counted), confidence.stated().keep());
    }

    private static void assertHolds(Chance exact, Chance told) {
        assertTrue(exact.low() <= told.high() && told.low() <= exact.high(), told + ", exactly " + exact);
    }

    @Test
    void chances_hang_together() {
        Chances stated = confidence.stated();
        assertTrue(stated.both().probability()
                <= Math.min(stated.reach().probability(), stated.keep().probability()));
        stated.limits()
                .values()
                .forEach(c -> assertTrue(c.probability() >= stated.keep().probability()));
        stated.cases()
                .values()
                .forEach(c -> assertTrue(c.probability() >= stated.keep().probability()));
        assertTrue(confidence.exactModels().power().deviation() < stated.power().deviation());
        assertEquals(
                1,
                confidence.influences().stream()
                        .mapToDouble(i -> i.power().first())
                        .sum(),
                0.1);
    }

    @Test
    void the_same_seed_gives_the_same_answer() {
        Confidence once = ConfidenceStudy.quick(plan, few.subList(0, 2), DRAWS, 5);
        Confidence again = ConfidenceStudy.quick(plan, few.subList(0, 2), DRAWS, 5);
        assertEquals(once.stated().both(), again.stated().both());
        assertEquals(once.stated().power().mean(), again.stated().power().mean());
    }

    @Test
    void those_that_err_together_spread_more_than_those_that_do_not() {
        List<Unknown> apart = List.of(named("work that the nitrous"), named("base-pull.wheel-power"));
        double alone =
                ConfidenceStudy.quick(plan, apart, DRAWS, 5).stated().power().deviation();
        double together = ConfidenceStudy.quick(plan, List.of(Unknown.together("one cause", apart)), DRAWS, 5)
                .stated()
                .power()
                .deviation();
        assertTrue(together > 1.1 * alone, together + " against " + alone);
    }

    @Test
    void certainty_is_never_claimed() {
        assertEquals(
                ">99.9 % within the stated bands", Chance.wilson(10_000, 10_000).text());
        assertEquals("59 %", Chance.wilson(59, 100).text());
        assertTrue(!confidence.summary().contains("100.0 %"), confidence.summary());
    }

    @Test
    void bad_input_is_told_in_one_sentence() {
        Job job = plan.job();
        assertSays(
                "Did you mean \"bottle.start-temperature\"",
                () -> Unknowns.figure(job, "bottle.start-temprature", Distribution.normal(303, 1)));
        assertSays("only a number", () -> Unknowns.figure(job, "driveline.layout", Distribution.normal(1, 1)));
        assertSays("nothing unknown", () -> ConfidenceStudy.of(plan, List.of(), DRAWS, 1));
        assertSays("draws", () -> ConfidenceStudy.of(plan, few, 10, 1));
    }

    private static void assertSays(String words, org.junit.jupiter.api.function.Executable attempt) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, attempt);
        assertTrue(e.getMessage().contains(words), e.getMessage());
    }

    /** Wilson's interval: 81 of 263 gives 0.2553 to 0.3662 (Newcombe, Statistics in Medicine 17 (1998) 857, table I, method 3; from memory). */
    @Test
    void wilsons_interval_is_the_published_one() {
        Chance chance = Chance.wilson(81, 263);
        assertEquals(0.2553, chance.low(), 5e-5);
        assertEquals(0.3662, chance.high(), 5e-5);
    }
}
