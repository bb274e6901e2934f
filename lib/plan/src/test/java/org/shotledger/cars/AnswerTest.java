package org.shotledger.cars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.job.Check;
import org.shotledger.job.Job;
import org.shotledger.limits.Verdict;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;

/**
 * What an answer must be, whatever the car: held against drawn cars and mutants of their sheets. The usual build draws a few;
 * {@code -Dshotledger.cars=2000} plans and {@code -Dshotledger.evaluated=2000} evaluates as many as there is time for, {@code -Dshotledger.cars.seed=N} from another seed. The sheet of a
 * car that breaks a law is left under {@code target/cars}. Last drawn at length (80 cars from seed 500 on): 159 plans of cars and mutants, of
 * which 100 give the power asked for, 47 less with every limit kept, 12 break a limit that boost alone breaks too; no law was broken.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class AnswerTest {
    private static final int CARS = Integer.getInteger("shotledger.cars", 5);
    private static final long SEED = Long.getLong("shotledger.cars.seed", 1);
    private static final int MUTANTS = 2;
    private static final int EVALUATED = Integer.getInteger("shotledger.evaluated", 600);
    /** Mutants are cheap beside a car, whose first sheet is fitted to its pull. */
    private static final int OF_EACH = 10;

    @Test
    void a_drawn_car_and_its_mutants_get_an_answer_that_holds(@TempDir Path folder) {
        List<String> broken = new ArrayList<>();
        Map<Laws.End, Integer> ends = new EnumMap<>(Laws.End.class);
        int alarms = 0;
        int refused = 0;
        for (int i = 0; i < CARS; i++) {
            CarLot lot = new CarLot(SEED + i);
            Path place = folder.resolve("car" + i);
            Job job;
            try {
                job = lot.car(place);
            } catch (IllegalArgumentException e) {
                assertTrue(Laws.isSentence(e.getMessage()), e.getMessage());
                refused++;
                continue;
            }
            assertEquals(List.of(), Check.file(place).problems(), "seed " + (SEED + i));
            alarms += job.unusual().size() > 1 ? 1 : 0;
            tally(Laws.of(job, "seed " + (SEED + i)), ends, broken);
            for (int m = 0; m < MUTANTS; m++) {
                List<CarLot.Change> changes = lot.changes(job);
                Optional<Job> mutant = Laws.mutant(job, changes, broken);
                if (mutant.isPresent()) {
                    tally(Laws.of(mutant.get(), "seed " + (SEED + i) + " " + changes), ends, broken);
                }
            }
        }
        System.out.println(CARS + " drawn cars, " + refused + " refused, " + alarms
                + " with more than one false alarm; plans of cars and mutants " + ends + "; " + broken.size()
                + " laws broken");
        assertTrue(broken.isEmpty(), () -> String.join("\n", broken));
        assertTrue(alarms == 0, alarms + " cars with more than one false alarm");
        assertTrue(refused <= 0.1 * CARS, refused + " of the drawn cars are refused");
    }

    private static void tally(Laws.Answer answer, Map<Laws.End, Integer> ends, List<String> broken) {
        ends.merge(answer.end(), 1, Integer::sum);
        broken.addAll(answer.broken());
    }

    /** Cars, mutants and setups by the thousand: what is evaluated holds, whether a plan would choose it or not. */
    @Test
    void any_setup_of_any_car_gets_an_outcome_that_holds(@TempDir Path folder) {
        List<String> broken = Collections.synchronizedList(new ArrayList<>());
        int evaluated = IntStream.range(0, EVALUATED / OF_EACH)
                .parallel()
                .map(car -> evaluated(SEED + 1_000_000 + car, folder, broken))
                .sum();
        System.out.println(evaluated + " cars and mutants evaluated; " + broken.size() + " laws broken");
        assertTrue(broken.isEmpty(), () -> String.join("\n", broken));
        // about half of the mutants are refused by a sentence
        assertTrue(evaluated >= EVALUATED / 3, evaluated + " sheets only had an outcome");
    }

    private static int evaluated(long seed, Path folder, List<String> broken) {
        CarLot lot = new CarLot(seed);
        Job car;
        try {
            car = lot.car(folder.resolve("car" + seed));
        } catch (IllegalArgumentException e) {
            if (!Laws.isSentence(e.getMessage())) {
                broken.add("seed " + seed + " is refused by no sentence: " + e.getMessage());
            }
            return 0;
        }
        int evaluated = 0;
        for (int m = 0; m < OF_EACH; m++) {
            List<CarLot.Change> changes = m == 0 ? List.of() : lot.changes(car);
            Optional<Job> job = Laws.mutant(car, changes, broken);
            if (job.isPresent()) {
                Setup setup = lot.setup(job.get());
                broken.addAll(Laws.of(job.get(), setup, m, "seed " + seed + " " + changes + " " + setup.jets()));
                evaluated++;
            }
        }
        return evaluated;
    }

    /** Cars whose plans once had no shot or broke a limit, where another boost or other jets of the ladder keep every limit. */
    @ParameterizedTest
    @ValueSource(longs = {15, 20})
    void a_car_that_can_give_the_power_asked_for_does(long seed, @TempDir Path folder) {
        Plan plan = Plan.find(new CarLot(seed).car(folder.resolve("car")));
        assertNotEquals(Verdict.BROKEN, plan.verdict(), plan.verdictLine());
    }

    /** Four passes hold the shot down, not the turbocharger: less nitrous keeps every limit, and the verdict says what stops more. */
    @Test
    void a_car_that_cannot_gets_the_most_that_keeps_every_limit_and_the_reason(@TempDir Path folder) {
        Plan plan = Plan.find(new CarLot(4).car(folder.resolve("car")));
        assertFalse(plan.reached(), plan.verdictLine());
        assertNotEquals(Verdict.BROKEN, plan.parts().verdict(), plan.verdictLine());
        assertTrue(plan.setup().jets().isPresent(), plan.verdictLine());
        assertTrue(plan.stopped().orElseThrow().startsWith("passes from one filling"), plan.verdictLine());
    }

    /** The nitrous takes the place of air: at the lowest speed of this sheet's range the compressor then passes less than its map covers. */
    @Test
    void a_shot_without_an_answer_at_low_speed_opens_later_and_that_is_said(@TempDir Path folder) {
        Job job = new CarLot(26).car(folder.resolve("car"));
        Plan plan = Plan.find(job);
        assertNotEquals(Verdict.BROKEN, plan.parts().verdict(), plan.verdictLine());
        assertTrue(plan.setup().jets().isPresent(), plan.verdictLine());
        assertTrue(plan.setup().arming().rpmLow() > job.setup().arming().rpmLow(), plan.verdictLine());
        assertTrue(plan.verdictLine().contains("the nitrous opens from"), plan.verdictLine());
        // the sheet's own range is what has no answer
        Plan asIs = Plan.of(job, plan.setup().withArming(job.setup().arming()));
        assertEquals(
                Verdict.BROKEN, asIs.limits().find("answered").orElseThrow().verdict(), asIs.verdictLine());
    }

    /** Sheets that once ended in an exception, a false diagnosis or a plan that a kept one of its own options belied. */
    @ParameterizedTest
    @CsvSource({
        "bottle.start-temperature, 34 degC",
        "injection.injector.flow, 105 cc/min",
        "bottle.charge, 1 lb",
        "engine.red-line, 1000 rpm",
        "conditions.home.altitude, 299 m",
        "tune.lambda, 1.1",
        "engine.compression-ratio, 19",
        "turbo.turbine.effective-area, 120 mm2",
        "target.wheel-power, 100 hp",
        "nitrous-system.fuel.pumps.wiring-resistance, 500 mohm",
        "vehicle.gears[1], 2.4",
    })
    void a_known_counterexample_gets_an_answer(String path, String text, @TempDir Path folder) {
        org.shotledger.job.Starter.write(folder.resolve("job"));
        List<String> broken = new ArrayList<>();
        Laws.mutant(Job.load(folder.resolve("job")), List.of(new CarLot.Change(path, text)), broken)
                .ifPresent(job -> broken.addAll(Laws.of(job, path + " " + text).broken()));
        assertEquals(List.of(), broken);
    }
}
