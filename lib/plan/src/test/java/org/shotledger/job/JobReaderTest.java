package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;

/** A sheet as a whole: what is told of it before, while and after it is read, with the line on which a person would look. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class JobReaderTest {
    private static final Path FOLDER = DemoSheetTest.DEMO.getParent();

    @Test
    void a_flow_test_far_from_what_was_known_is_told_with_its_line_and_share() throws IOException {
        String plain = Files.readString(DemoSheetTest.DEMO);
        String test =
                "    kind: nitrous\n    jets: 43 thou\n    seconds: 10 s\n    before: 24 kg\n    after: %s kg\n    bottle-pressure: 900 psi gauge\n";
        double expected = Job.read(plain + "flow-tests:\n  one:\n" + test.formatted("23.3"), FOLDER)
                .flowTests()
                .get(0)
                .expected();
        String after = String.format(java.util.Locale.ROOT, "%.4f", 24 - 0.4 * expected * 10);
        String text = plain + "flow-tests:\n  one:\n" + test.formatted(after);
        List<Problem> notices = Job.read(text, FOLDER).notices();
        assertEquals(1, notices.size());
        assertEquals(
                "The nitrous jets passed 40 % of what was expected of their class, further off than two standard deviations;"
                        + " check the test, its jets and nozzles, and the sheet.",
                notices.get(0).sentence());
        assertEquals("flow-tests.one", notices.get(0).field());
        assertEquals(
                "    seconds: 10 s", text.lines().toList().get(notices.get(0).line() - 1));
        String good = String.format(java.util.Locale.ROOT, "%.4f", 24 - expected * 10);
        assertEquals(
                List.of(),
                Job.read(plain + "flow-tests:\n  one:\n" + test.formatted(good), FOLDER)
                        .notices());
    }

    @Test
    void a_pull_that_the_car_cannot_give_is_one_problem_at_its_section() throws IOException {
        String text = Files.readString(DemoSheetTest.DEMO).replace("wheel-power: 590 hp", "wheel-power: 900 hp");
        Problem only = only(text);
        assertEquals("base-pull", only.field());
        assertEquals("base-pull:", text.lines().toList().get(only.line() - 2));
        assertTrue(only.sentence().startsWith("The base pull gives 900 hp "), only.sentence());
    }

    /** Nothing is calibrated from half a sheet: what is wrong elsewhere is told alone. */
    @Test
    void half_a_sheet_is_not_held_against_its_pull() throws IOException {
        String text = Files.readString(DemoSheetTest.DEMO)
                .replace("wheel-power: 590 hp", "wheel-power: 900 hp")
                .replace("drag-area: 0.70 m2", "drag-area: 0.70 kg");
        assertEquals("vehicle.drag-area", only(text).field());
    }

    private static Problem only(String text) {
        List<Problem> problems =
                assertThrows(SheetException.class, () -> Job.read(text, FOLDER)).problems();
        assertEquals(1, problems.size(), problems.toString());
        return problems.get(0);
    }

    @Test
    void a_sheet_is_named_as_its_file_and_a_folder_has_its_usual_one(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("my.yaml"), "format: 3\nname: x\n");
        Files.writeString(folder.resolve("job.yaml"), "format: 3\nname: x\n");
        assertEquals("my.yaml", first(folder.resolve("my.yaml")).file());
        assertEquals("job.yaml", first(folder).file());
        // without a sheet the folder's own is the one that is missing
        Files.delete(folder.resolve("job.yaml"));
        assertTrue(first(folder).sentence().startsWith("There is no such file"));
        Job demo = Job.load(DemoSheetTest.DEMO);
        assertEquals(FOLDER.toRealPath(), demo.source().folder().toRealPath());
        assertEquals("job.yaml", demo.source().file());
        assertEquals(6, demo.source().tables().size());
    }

    private static Problem first(Path file) {
        return assertThrows(SheetException.class, () -> Job.load(file))
                .problems()
                .get(0);
    }
}
