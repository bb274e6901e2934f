package org.shotledger.whathelps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.limits.Provenance;
import org.shotledger.limits.Side;
import org.shotledger.limits.Verdict;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Setup;
import org.shotledger.units.QuantityKind;

/** What counts as help, on plans with one made-up limit, so that every figure is known beforehand. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class WhatHelpsFiguresTest {
    private static final String BORE = "nitrous-system.nitrous.solenoid.bore";
    private final Job job = Job.load(Path.of("../../data/whimbrel"));
    private final Setup setup =
            job.setup().withBoost(BoostTarget.constant(0.9e5)).withoutJets();
    private final Outcome outcome = Evaluate.of(job.car(), setup, job.stated());

    /** A plan with one limit whose relative margin is the one given, asked for its own power over the share given. */
    private Plan plan(double margin, double share) {
        Job asked = job.withCases(List.of(job.stated())).with(job.target().withWheelPower(outcome.power() / share));
        Limit limit = new Limit(
                "made-up",
                "made up",
                QuantityKind.RATIO,
                1 - margin,
                1,
                Side.AT_MOST,
                false,
                "",
                Provenance.ASSUMED,
                "",
                "",
                "",
                1);
        return new Plan(
                asked, setup, List.of(outcome), new Limits(List.of(limit)), List.of(), Optional.empty(), List.of());
    }

    /** Missing: what the power lacks and what the worst limit lacks, each at most the whole; room counts up to 5 %. */
    @ParameterizedTest
    @CsvSource({
        "-0.12, 0.8, 0.32, -0.12",
        "-0.12, 1, 0.12, -0.12",
        "0.03, 0.8, 0.2, 0.03",
        "0.4, 1, 0, 0.05",
        "-3, 0.8, 1.2, -3",
        "-3, 1, 1, -3"
    })
    void missing_adds_power_and_the_worst_limit(double margin, double share, double missing, double room) {
        Quality quality = Quality.of(plan(margin, share));
        assertEquals(missing, quality.missing(), 1e-12);
        assertEquals(room, quality.margin(), 1e-12);
    }

    /** Half a per cent counts as the same, a plan that lacks nothing is better than any that lacks something. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.01, 0.001, 0.05, true",
        "0, 0.01, 0, 0.01, false",
        "0, 0.02, 0, 0.01, true",
        "0, 0.005, 0, 0, false",
        "0, 0.01, 0, 0.02, false",
        "0.1, 0, 0.11, 0.05, true",
        "0.1, 0, 0.104, 0, false",
        "4.9e-324, 0, 0.005, 0, false",
        "0.1, 0.05, 0.1, 0.01, true",
        "0.1, 0.05, 0.104, 0.01, true",
        "0.104, 0.05, 0.1, 0.01, false",
        "0.001, 0.05, 0, 0.01, false"
    })
    void better_means_less_missing_or_more_room(double a, double roomA, double b, double roomB, boolean better) {
        assertEquals(better, new Quality(a, roomA).betterThan(new Quality(b, roomB)));
    }

    /** Where nothing is lacking and nothing tight, no change is tried. */
    @Test
    void a_plan_that_holds_needs_no_help() {
        Change absurd = Change.to("an absurd solenoid", BORE, Cost.SETTING, "4 m");
        assertEquals(List.of(), WhatHelps.of(plan(0.4, 1), List.of(absurd), 1).attempts());
        assertEquals(
                1, WhatHelps.of(plan(0.04, 1), List.of(absurd), 1).attempts().size());
    }

    /** A figure cannot move a word; the other changes are tried all the same. */
    @Test
    void a_step_that_finds_no_figure_is_told_and_the_search_goes_on() {
        Change word = Change.times("a word", "fuels.nitrous.kind", Cost.SETTING, 2, 3);
        Change absurd = Change.to("an absurd solenoid", BORE, Cost.ENGINE, "4 m");
        WhatHelps search = WhatHelps.of(plan(-0.1, 1), List.of(word, absurd), 1);
        assertEquals(
                List.of(word, absurd),
                search.attempts().stream().map(Attempt::change).toList());
        String said = search.attempts().get(0).limit();
        assertTrue(said.startsWith("refused: The value at \"fuels.nitrous.kind\""), said);
    }

    /** The cheap one first, each step once; what stands already, what no catalogue has and what no sheet states is left out. */
    @Test
    void refused_changes_are_told_in_the_order_of_cost() {
        Change same = Change.to("the same again", BORE, Cost.SETTING, "4.1 mm");
        Change none = new Change("no such part", BORE, Cost.SETTING, List.of(old -> Optional.empty()));
        Change unknown = Change.to("not in the sheet", "nitrous-system.third-solenoid", Cost.SETTING, "4 m");
        Change dear = Change.to("dear", BORE, Cost.ENGINE, "5 m");
        Change cheap = Change.to("cheap", BORE, Cost.SETTING, "4 m", "3 m");
        WhatHelps search = WhatHelps.of(plan(-0.1, 1), List.of(dear, same, none, unknown, cheap), 1);
        assertEquals(
                List.of("4 m", "3 m", "5 m"),
                search.attempts().stream().map(Attempt::after).toList());
        for (Attempt attempt : search.attempts()) {
            assertEquals("4.1 mm", attempt.before());
            assertEquals(Verdict.BROKEN, attempt.verdict());
            assertFalse(attempt.helps());
            assertFalse(attempt.mends());
            assertTrue(Double.isNaN(attempt.powerGained()) && Double.isNaN(attempt.marginGained()));
            assertTrue(
                    attempt.limit().startsWith("refused: ") && attempt.limit().contains(BORE), attempt.limit());
        }
        assertTrue(search.cheapest().isEmpty());
        assertEquals(List.of(), search.helping());
    }

    /**
     * A plan said to break a limit by half, and a change after which the search finds one that breaks none: the gain is that plan's
     * room, at most 5 %, and the half. The first step is enough, and so is the first change.
     */
    @Test
    void the_first_step_that_mends_ends_the_search() {
        Plan broken = plan(-0.5, 1);
        Change wider = Change.to("wider", BORE, Cost.SMALL_PART, "4.4 mm", "4.8 mm");
        Change dear = Change.to("dear", BORE, Cost.ENGINE, "5 mm");
        WhatHelps search = WhatHelps.of(broken, List.of(dear, wider), 1);
        assertEquals(1, search.attempts().size());
        Attempt only = search.cheapest().orElseThrow();
        assertEquals("4.4 mm", only.after());
        assertTrue(only.mends() && only.helps());
        Plan then = Plan.find(broken.job()
                .with(BORE, "4.4 mm")
                .with(broken.target())
                .withCases(broken.job().cases()));
        assertEquals(then.verdict(), only.verdict());
        assertEquals(then.stated().power() - outcome.power(), only.powerGained(), 1e-6);
        assertEquals(Math.min(0.05, then.parts().leastMargin()) + 0.5, only.marginGained(), 1e-9);
        assertEquals(then.parts().first().orElseThrow().name(), only.limit());
    }

    /** Those that mend stand first, each group as it was tried; the cheapest is one that both helps and mends. */
    @Test
    void what_mends_stands_before_what_only_helps() {
        Attempt kept = attempt("kept, no help", Verdict.HOLDS, false);
        Attempt less = attempt("less broken", Verdict.BROKEN, true);
        Attempt tight = attempt("tight", Verdict.TIGHT, true);
        Attempt holds = attempt("holds", Verdict.HOLDS, true);
        WhatHelps search = new WhatHelps(plan(-0.1, 1), List.of(kept, less, tight, holds));
        assertEquals(List.of(tight, holds, less), search.helping());
        assertEquals(Optional.of(tight), search.cheapest());
    }

    private static Attempt attempt(String words, Verdict verdict, boolean helps) {
        return new Attempt(
                Change.to(words, BORE, Cost.SETTING, "5 mm"), "4.1 mm", "5 mm", verdict, helps, 1, 1, "a limit");
    }
}
