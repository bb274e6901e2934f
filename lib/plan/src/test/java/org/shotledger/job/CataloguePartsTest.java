package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.car.Origin;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;

/** A sheet may name a part of the catalogue; what it states itself stands. The expected figures are read off the files by eye. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CataloguePartsTest {
    private static final String INJECTOR =
            "    flow: {value: 1130 cc/min +/- 2 %, from: flow bench with n-heptane, provenance: measured}\n";

    @Test
    void an_injector_by_its_size_class() throws IOException {
        Job job = read(demo().replace(INJECTOR + "    test-pressure: 3.0 bar\n", "    part: large\n"));
        assertEquals(1050e-6 / 60, job.car().injection().injector().staticFlow(), 1e-12);
        Origin flow = job.car().origin("injection.injector.flow").orElseThrow();
        assertEquals("estimated", flow.provenance());
        assertTrue(flow.from().startsWith("catalogue injectors.csv, large: Generic and invented"), flow.from());
        assertEquals(0.1 * 1050e-6 / 60 / Math.sqrt(3), flow.uncertainty(), 1e-10);
        assertEquals(line("part: large", job), flow.line());
        assertEquals(3e5, job.car().injection().injector().testDrop(), 1e-6);
    }

    @Test
    void what_the_sheet_states_itself_stands() throws IOException {
        Job job = read(demo().replace("    test-pressure: 3.0 bar\n", "    part: small\n    test-pressure: 3.5 bar\n"));
        assertEquals(1130e-6 / 60, job.car().injection().injector().staticFlow(), 1e-12);
        assertEquals(3.5e5, job.car().injection().injector().testDrop(), 1e-6);
    }

    @Test
    void a_pump_by_the_name_of_its_file() throws IOException {
        Job job = read(demo().replace("curve: main-pump.csv", "curve: catalogue/fuel-pump-large.csv"));
        Job copied = read(demo());
        assertTrue(job.car().injection().pumps().flow(3e5, 13.5)
                != copied.car().injection().pumps().flow(3e5, 13.5));
        assertTrue(
                job.car().origin("injection.pumps.curve").orElseThrow().from().startsWith("Generic and invented"));
    }

    @Test
    void bottle_hose_and_solenoids() throws IOException {
        Job job = read(demo().replaceFirst("  water-capacity: [^\n]*\n", "  part: 20 lb\n")
                .replaceFirst("  shell-mass: [^\n]*\n", "")
                .replaceFirst("    hose-bore: [^\n]*\n", "    hose: 8\n")
                .replaceFirst("      bore: [^\n]*\n", "      part: large\n"));
        assertEquals(13.34e-3, job.car().bottle().vessel().waterCapacity(), 1e-9);
        assertEquals(14.0, job.car().bottle().vessel().wallMass(), 1e-9);
        assertEquals(10.3e-3, job.car().nitrous().nitrous().hoseBore(), 1e-9);
        assertEquals(3.6e-3, job.car().nitrous().nitrous().solenoid().bore(), 1e-9);
    }

    /** The same class is another part on either side; what stands beside it in the sheet counts for it. */
    @Test
    void a_solenoid_is_that_of_its_side_and_dead_times_that_stand_stay() throws IOException {
        Job job = read(demo().replace(
                        "      bore: 2.9 mm\n      discharge-coefficient: 0.65\n      opening-delay: 12 ms\n      closing-delay: 10 ms\n",
                        "      part: large\n"));
        var fuel = job.car().nitrous().fuel().solenoid();
        assertEquals(3.3e-3, fuel.bore(), 1e-9);
        assertEquals(0.014, fuel.openingDelay(), 1e-9);
        assertEquals(0.011, fuel.closingDelay(), 1e-9);
        Job table = read(demo().replace(INJECTOR + "    test-pressure: 3.0 bar\n", "    part: large\n"));
        assertEquals(2.6e-3, table.car().injection().injector().deadTime().at(8), 1e-9);
        Job none = read(demo().replace(INJECTOR + "    test-pressure: 3.0 bar\n", "    part: large\n")
                .replace("    dead-time-table: injector-dead-time.csv\n", ""));
        assertEquals(1.02e-3, none.car().injection().injector().deadTime().at(8), 1e-9);
        assertEquals(1050e-6 / 60, CatalogueParts.injectorFlow("large"), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "part: enormous|There is no \"enormous\" in the catalogue's injectors.csv; it has small, medium, large, very large.",
                "dead-time-table: catalogue/none.csv|\"catalogue/none.csv\" is not in the catalogue; its README.md lists what is, such as \"catalogue/fuel-pump-large.csv\".",
            })
    void what_the_catalogue_does_not_have_is_said(String line, String sentence) {
        SheetException refused = assertThrows(
                SheetException.class,
                () -> read(demo().replace("    dead-time-table: injector-dead-time.csv", "    " + line)));
        assertTrue(
                refused.problems().stream()
                        .anyMatch(problem -> problem.sentence().equals(sentence)),
                refused.getMessage());
    }

    @Test
    void a_first_sheet_names_parts_instead_of_figures(@TempDir Path folder) {
        Starter.write(
                folder.resolve("job"), "five-cylinder", Map.of("injector", "very large", "pump", "large"), folder);
        Job job = Job.load(folder.resolve("job"));
        assertEquals(1650e-6 / 60, job.car().injection().injector().staticFlow(), 1e-12);
        assertFalse(Files.exists(folder.resolve("job/fuel-pump.csv")));
        IllegalArgumentException both = assertThrows(
                IllegalArgumentException.class,
                () -> Starter.write(
                        folder.resolve("both"),
                        "",
                        Map.of("injector", "large", "injector-flow", "900 cc/min"),
                        folder));
        assertTrue(both.getMessage().contains("both stand here; keep one of them."), both.getMessage());
    }

    @Test
    void a_part_that_is_not_there_is_one_problem() throws IOException {
        String text = demo().replace(INJECTOR + "    test-pressure: 3.0 bar\n", "    part: enormous\n");
        assertEquals(
                List.of("injection.injector.part"),
                assertThrows(SheetException.class, () -> read(text)).problems().stream()
                        .map(Problem::field)
                        .filter(field -> field.startsWith("injection"))
                        .toList());
    }

    private static int line(String words, Job job) {
        String text = job.source().text();
        return (int) text.substring(0, text.indexOf(words)).lines().count();
    }

    private static String demo() throws IOException {
        return Files.readString(DemoSheetTest.DEMO);
    }

    private static Job read(String text) {
        return Job.read(text, DemoSheetTest.DEMO.getParent());
    }

    /** The other car tells its displacement; bore and stroke that are said stand in its place. */
    @Test
    void bore_and_stroke_replace_the_displacement_of_another_car(@TempDir Path size) {
        Starter.write(size.resolve("job"), "five-cylinder", Map.of("bore", "83 mm", "stroke", "85 mm"), size);
        var engine = Job.load(size.resolve("job")).car().engine();
        assertEquals(5 * Math.PI / 4 * 0.083 * 0.083 * 0.085, engine.displacement(), 1e-9);
    }
}
