package org.shotledger.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.job.Check;
import org.shotledger.job.Job;
import org.shotledger.job.Starter;
import org.shotledger.job.ToldFigures;
import org.shotledger.limits.Verdict;

/** A sheet made from a dozen figures is a whole car that can be planned, and says of each figure whether it was told or estimated. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class FirstSheetTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"five-cylinder", "v8", "given-jets"})
    void each_car_to_begin_like_checks_good_and_holds(String like) {
        Path place = folder.resolve(like);
        Starter.write(place, like, Map.of(), folder);
        Check.Result result = Check.file(place);
        assertEquals(List.of(), result.problems());
        assertEquals(List.of(), result.unusual());
        Job job = Job.load(place);
        assertTrue(job.car().wiring().isPresent() && job.car().invented());
        Plan plan = job.setup().jets().isPresent() ? Plan.of(job, job.setup()) : Plan.find(job);
        assertNotEquals(
                Verdict.BROKEN,
                plan.verdict(),
                plan.verdictLine() + plan.limits().broken());
    }

    @Test
    void a_dozen_figures_make_a_car() {
        Path place = folder.resolve("own");
        Starter.write(place, "", ToldFigures.with(), folder);
        assertEquals(List.of(), Check.file(place).problems());
        Job job = Job.load(place);
        assertEquals(
                "estimated", job.car().origin("engine.rod-length").orElseThrow().provenance());
        assertTrue(job.car().reason("nitrous-system.nitrous.valve-kv").contains("common practice, no source"));
        assertEquals("assumed", job.car().origin("bottle.charge").orElseThrow().provenance());
        assertEquals(2.0e-3, job.car().engine().displacement(), 0.01e-3);
    }

    /** What the first sheet says of a figure stands beside whatever is written there later. */
    @Test
    void a_reason_of_the_first_sheet_does_not_excuse_a_later_slip() throws IOException {
        Path place = folder.resolve("own");
        Starter.write(place, "", ToldFigures.with(), folder);
        Path sheet = place.resolve("job.yaml");
        Files.writeString(
                sheet, Files.readString(sheet).replaceFirst("charge: \\{value: 10 lb", "charge: {value: 1 lb"));
        assertTrue(
                Check.file(place).unusual().stream().anyMatch(p -> p.field().equals("bottle.charge")),
                Check.file(place).toString());
    }

    @Test
    void the_plan_says_which_estimate_moves_the_answer_most() {
        Path place = folder.resolve("given");
        Starter.write(place, "given-jets", Map.of(), folder);
        Job job = Job.load(place);
        List<Estimate> estimates = Plan.of(job, job.setup()).estimates();
        assertTrue(estimates.size() > 30, estimates.toString());
        Estimate first = estimates.get(0);
        Estimate last = estimates.get(estimates.size() - 1);
        assertTrue(!(Math.abs(first.power()) + Math.abs(first.margin()) < 0.005), estimates.toString());
        assertEquals(0, last.power() + last.margin(), 1e-3, last.toString());
        assertTrue(first.toString().contains(first.path()), first.toString());
    }

    @Test
    void what_is_missing_or_wrong_is_said_at_once_and_nothing_is_left() {
        var said = ToldFigures.with();
        said.remove("charge");
        said.put("boost", "1.3 bar");
        said.put("cylinder", "4");
        IllegalArgumentException e = assertThrows(
                IllegalArgumentException.class, () -> Starter.write(folder.resolve("own"), "", said, folder));
        assertTrue(e.getMessage().contains("\"charge\" is missing"), e.getMessage());
        assertTrue(e.getMessage().contains("boost"), e.getMessage());
        assertTrue(e.getMessage().contains("the nearest name is \"cylinders\""), e.getMessage());
        assertTrue(Files.notExists(folder.resolve("own")));
    }
}
