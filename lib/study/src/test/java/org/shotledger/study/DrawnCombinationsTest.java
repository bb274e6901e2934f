package org.shotledger.study;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The tables of a study against the exact outcomes of random combinations of eight cars; {@code -Dshotledger.combinations=10000} draws
 * as many.
 */
class DrawnCombinationsTest {
    private static final int ALL = Integer.getInteger("shotledger.combinations", 320);
    private static final int CHECKS = Study.Exact.USUAL.checks();
    private static final List<ToDoubleFunction<Difference>> FIGURES =
            List.of(Difference::power, Difference::margin, Difference::lambda);
    private static final double CONFIDENCE = 0.95;

    @TempDir
    private static Path folder;

    /** By space, in random order. */
    private static final List<List<Difference>> DRAWN = new ArrayList<>();

    @BeforeAll
    static void draw() throws IOException {
        for (Space space : DrawnSpaces.all(folder)) {
            List<Difference.Sample> samples = new ArrayList<>(Sweep.of(space, ALL / 8).samples);
            Collections.shuffle(samples, new Random(1));
            List<Candidate> exact = Candidates.of(
                    space, samples.stream().map(Difference.Sample::index).toList());
            long kept = exact.stream().filter(one -> one.margin() >= 0).count();
            List<Difference> each = IntStream.range(0, samples.size())
                    .mapToObj(i -> Difference.one(samples.get(i), exact.get(i)))
                    .toList();
            DRAWN.add(each);
            System.out.println(space.plan().job().name() + ": " + kept + " kept; " + Difference.largest(each));
        }
    }

    /** Whatever few are drawn, what is said of all others by them holds as often as is said. */
    @Test
    void whatIsStatedOfTheTablesHoldsWithItsConfidence() {
        int statements = 0;
        int wrong = 0;
        double expected = 0;
        for (List<Difference> all : DRAWN) {
            for (int from = 0; from + CHECKS <= all.size(); from += CHECKS) {
                Difference stated = Difference.largest(all.subList(from, from + CHECKS));
                List<Difference> others = new ArrayList<>(all);
                others.subList(from, from + CHECKS).clear();
                boolean holds = FIGURES.stream()
                        .allMatch(figure -> others.stream()
                                        .filter(one -> figure.applyAsDouble(one) <= figure.applyAsDouble(stated))
                                        .count()
                                >= stated.covered() * others.size());
                statements++;
                wrong += holds ? 0 : 1;
                expected += chanceOfWrong(others.size(), stated.covered());
            }
        }
        System.out.printf(Locale.ROOT, "%d statements, %d wrong, %.1f expected%n", statements, wrong, expected);
        // three standard deviations of a count
        assertTrue(wrong <= expected + 3 * Math.sqrt(expected), wrong + " wrong of " + statements);
        // of whole populations no more than the confidence leaves
        assertTrue(ALL < 10_000 || expected <= 1.1 * (1 - CONFIDENCE) * statements, expected + " expected");
    }

    /** The chance that more than the uncovered of so many others exceed the largest check, at most, in three figures: all of the largest are others. */
    private static double chanceOfWrong(int others, double covered) {
        double chance = FIGURES.size();
        int more = others - (int) Math.ceil(covered * others) + 1;
        for (int i = 0; i < more; i++) {
            chance *= (others - i) / (double) (others + CHECKS - i);
        }
        return chance;
    }

    /** Else the front would be blurred by more than the grain it states; far broken ones have no place in it. */
    @Test
    void nineOfTenMarginsAndPowersAreWithinTheGrainOfTheFront() {
        for (List<Difference> drawn : DRAWN) {
            List<Difference> all = drawn.stream().filter(one -> one.power() > 0).toList();
            assertTrue(all.size() >= CHECKS, "too few that are compared");
            for (ToDoubleFunction<Difference> figure : FIGURES.subList(0, 2)) {
                long fine = all.stream()
                        .filter(one -> figure.applyAsDouble(one) <= Front.GRAIN)
                        .count();
                assertTrue(fine >= 0.9 * all.size(), fine + " of " + all.size() + " of space " + DRAWN.indexOf(drawn));
            }
        }
    }
}
